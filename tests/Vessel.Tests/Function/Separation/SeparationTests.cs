using Vessel.Design;
using Vessel.Function;
using Vessel.Members.Cups;
using Vessel.Tests.Members.Inside;
using Vessel.Tests.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Function;

/// <summary>What holds oil back: limits, order and honesty of the bounds.</summary>
public sealed class SeparationTests
{
    private static readonly VesselDesign _bare = FlowPathTests.Flowing(InsideTests.Vessel(InsideTests.Cap(CupOpening.Up)), 60);

    private static readonly VesselDesign _packed = FlowPathTests.Packed(_bare);

    private static readonly MovingGas _air = new(null, Air.Density(80, Air.Atmosphere), Air.Viscosity(80));

    [Fact]
    public void The_drop_that_is_carried_just_falls_at_that_speed()
    {
        // Re from 1e-4 to 900; both are roots found to rounding, and the fall's slope in d is at most 2 in logarithms.
        for (var speed = 1e-4; speed < 8; speed *= 1.7)
            Near.Relative(speed, Droplet.Fall(Droplet.Carried(speed, 870, _air), 870, _air), 1e-9);
    }

    [Fact]
    public void Small_drops_fall_by_Stokes_and_large_ones_slower()
    {
        Near.Relative(Droplet.Stokes(1e-6, 870, _air), Droplet.Fall(1e-6, 870, _air), 1e-4);
        for (var d = 1e-6; d < 2e-3; d *= 2)
        {
            Assert.True(Droplet.Fall(d, 870, _air) < Droplet.Stokes(d, 870, _air));
            Assert.True(Droplet.Fall(d, 870, _air) < Droplet.Fall(2 * d, 870, _air));
        }
    }

    [Fact]
    public void Gas_that_stands_carries_nothing_and_faster_gas_larger_drops()
    {
        Assert.Equal(0, Droplet.Carried(0, 870, _air));
        for (var speed = 1e-5; speed < 50; speed *= 1.5)
            Assert.True(Droplet.Carried(speed, 870, _air) < Droplet.Carried(1.5 * speed, 870, _air));
    }

    [Fact]
    public void The_slowest_rise_sets_the_cut()
    {
        var separation = Of(_packed);

        Assert.All(separation.Rises, stage => Assert.True(
            separation.Carried(separation.Slowest!).Likely <= separation.Carried(stage).Likely));
        // The sleeve's bore of 86.
        var speed = 60.0 / 60_000 / (Math.PI / 4 * Math.Pow(0.086, 2));
        Near.Relative(Droplet.Carried(speed, 870, separation.Path.Gas) * 1e6, separation.Carried(separation.Slowest!).Likely, 1e-9);
    }

    [Fact]
    public void More_flow_carries_larger_drops()
    {
        var carried = Enumerable.Range(1, 4)
            .Select(i => Of(FlowPathTests.Flowing(_packed, Math.Pow(4, i))))
            .Select(separation => separation.Carried(separation.Slowest!).Likely)
            .ToList();

        Assert.Equal(carried.Order(), carried);
        Assert.Distinct(carried);
    }

    [Fact]
    public void No_packing_catches_nothing_and_a_packing_something()
    {
        Assert.All(Separation.Sizes, size => Assert.Equal(new Amount(0, 0, 0), Of(_bare).ByPads(size)));
        Assert.All(Separation.Sizes, size => Assert.True(Of(_packed).ByPads(size).Low > 0));
    }

    [Fact]
    public void Fine_mist_is_not_said_to_fall()
    {
        // At most what an uneven stream lets fall (speed of fall over speed of rise, below a thousandth for 1 um),
        // and what edges throw out.
        Assert.All(Separation.Sizes.Where(size => size <= 1), size =>
        {
            Assert.Equal(0, Of(_bare).Caught(size).Likely);
            Assert.True(Of(_bare).Caught(size).High < 1e-3 + Of(_bare).AtEdges(size));
        });
        var group = FunctionFigures.Of(Compiler.Assemble(_bare)).Single(g => g.Name == "separation");
        Assert.Contains(group.Words, word => word.Contains("Gravity in a can of this size does not catch it", StringComparison.Ordinal));
        Assert.Contains(group.Words, word => word.Contains("No packing", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(60)]
    [InlineData(2000)]
    public void Shares_lie_in_order_and_rise_with_the_size(double flow)
    {
        var separation = Of(FlowPathTests.Flowing(_packed, flow));
        var shares = Enumerable.Range(0, 60).Select(i => separation.Caught(0.3 * Math.Pow(1.15, i))).ToList();

        Assert.All(shares, share =>
            Assert.True(share is { Low: >= 0, High: <= 1 } && share.Low <= share.Likely && share.Likely <= share.High));
        Assert.All(shares.Zip(shares.Skip(1)), pair => Assert.True(
            pair.First.Low <= pair.Second.Low && pair.First.Likely <= pair.Second.Likely && pair.First.High <= pair.Second.High + 1e-12));
    }

    [Fact]
    public void A_deeper_or_denser_packing_and_finer_fibres_catch_more()
    {
        Amount At(double share, double fibre, double length) => new PadCatch(share, fibre, length, 0.2, 870, _air).Share(5e-6);
        var plain = At(0.01, 5e-5, 0.02);

        Assert.True(Above(At(0.01, 5e-5, 0.04), plain));
        Assert.True(Above(At(0.02, 5e-5, 0.02), plain));
        Assert.True(Above(At(0.01, 2.5e-5, 0.02), plain));
        static bool Above(Amount a, Amount b) => a.Low > b.Low && a.Likely > b.Likely && a.High > b.High;
    }

    /// <summary>
    /// Gas turns by half a circle between two walls; drops that begin at its speed are followed by their equation of motion. What strikes
    /// the outer wall is never more than the bound, and comes near it (80 %) where a drop stops within a fiftieth of the gap.
    /// </summary>
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.1)]
    [InlineData(0.3)]
    [InlineData(1)]
    public void A_turn_throws_out_no_more_than_its_bound(double stopOverGap)
    {
        const double gap = 0.02;
        const double inner = 0.02;
        const double speed = 1;
        var time = stopOverGap * gap / speed;
        const int starts = 400;

        var struck = Enumerable.Range(0, starts).Count(i => Strikes(inner + (gap * (i + 0.5) / starts))) / (double)starts;

        var bound = Impaction.TurnAtMost(stopOverGap * gap, gap);
        Assert.True(struck <= bound + (1.0 / starts), $"{struck} of at most {bound}");
        if (stopOverGap <= 0.02)
            Assert.True(struck > 0.8 * bound);

        bool Strikes(double r)
        {
            var (x, y, vx, vy) = (r, 0.0, 0.0, speed);
            // Steps far shorter than the time in which a drop takes up the gas's speed.
            for (var step = time / 20; y > 0 || x > 0;)
            {
                var radius = Math.Sqrt((x * x) + (y * y));
                if (radius > inner + gap)
                    return true;
                (vx, vy) = (vx + (step * ((-speed * y / radius) - vx) / time), vy + (step * ((speed * x / radius) - vy) / time));
                (x, y) = (x + (step * vx), y + (step * vy));
            }

            return false;
        }
    }

    [Fact]
    public void An_opening_catches_nothing_that_follows_the_gas_and_what_flies_straight_by_its_closed_share()
    {
        const double width = 3e-3;
        double At(double stop, double drop) => Impaction.OpeningAtMost(stop, drop, width, 0.4);

        // A point that stops at once follows the gas; one that never stops passes where the section is open.
        Near.Absolute(0, At(0, 0), 1e-15);
        Near.Relative(0.6, At(1, 0), 1e-12);
        Assert.Equal(1, At(0, width));
        for (var stop = 1e-6; stop < 1e-2; stop *= 2)
            Assert.True(At(stop, 1e-5) <= At(2 * stop, 1e-5) && At(stop, 1e-5) <= At(stop, 2e-5));
    }

    [Fact]
    public void Screens_raise_what_may_be_caught_at_most_and_nothing_else()
    {
        Assert.All(Separation.Sizes, size => Assert.True(
            Of(_bare).AtEdges(size) == 1 || Of(_packed).AtEdges(size) > Of(_bare).AtEdges(size)));
        Assert.All(Separation.Sizes, size => Assert.True(Of(_bare).AtEdges(size) <= Of(_bare).Caught(size).High));
    }

    /// <summary>St on the jet's radius, rho d^2 v / (9 mu D), is 0.49^2 at the cut.</summary>
    [Fact]
    public void A_jet_cuts_at_its_Stokes_number()
    {
        var cut = Impaction.JetCut(0.03, 1.4, 870, _air);

        Near.Relative(0.49 * 0.49, 2 * Impaction.Stokes(cut, 0.03, 1.4, 870, _air), 1e-12);
        Assert.True(Impaction.JetCut(0.03, 2.8, 870, _air) < cut);
    }

    /// <summary>
    /// d50 goes with D^1.5 / sqrt Q: bore and speed are always of one bore, that of the mouth,
    /// or for the low bound that of a narrower fitting.
    /// </summary>
    [Fact]
    public void A_jets_cut_takes_bore_and_speed_of_one_bore()
    {
        var plain = Of(_packed);
        var port = _packed.Ports.Single(p => p.Name == "inlet") with { Fitting = Vessel.Stock.Threads.Find("dash 16") };
        var fitted = Of(_packed with { Ports = [port, .. _packed.Ports.Where(p => p.Name != "inlet")] });
        var (bore, narrow) = (26e-3, 0.844 * 25.4e-3);

        Near.Relative(plain.JetCut!.Value.Likely, fitted.JetCut!.Value.Likely, 1e-12);
        // Slip moves drops of this size by less than 1 %.
        Near.Relative(Math.Pow(narrow / bore, 1.5), fitted.JetCut.Value.Low / fitted.JetCut.Value.Likely, 0.01);
        Near.Relative(0.49 * Math.Sqrt(9 * _air.Viscosity * bore / (870 * 1e-3 / (Math.PI / 4 * bore * bore))) * 1e6,
            plain.JetCut.Value.Likely, 0.01);
    }

    [Fact]
    public void No_size_is_said_to_be_caught_for_certain()
    {
        var group = FunctionFigures.Of(Compiler.Assemble(_packed)).Single(g => g.Name == "separation");

        Assert.DoesNotContain(group.Tables.SelectMany(table => table.Columns),
            column => column.Title.Contains("caught", StringComparison.Ordinal));
        Assert.Contains(group.Words, word => word.Contains("tears it off again", StringComparison.Ordinal)
            && word.Contains("not even where 100 %", StringComparison.Ordinal));
    }

    [Fact]
    public void An_offset_inlet_swirls_and_a_centred_one_does_not()
    {
        var offset = _packed.Ports.Single(port => port.Name == "inlet");
        offset = offset with { Place = offset.Place with { Offset = 30 } };
        var design = _packed with { Ports = [.. _packed.Ports.Where(port => port.Name != "inlet"), offset] };

        Assert.Null(Of(_packed).SwirlCut);
        Assert.True(Of(design).SwirlCut > 0);
    }

    /// <summary>Steam tables: 2339 Pa at 20 degC, 12 352 Pa at 50, 47 414 Pa at 80 (from memory);
    /// Magnus' form is for -40 to 50 degC.</summary>
    [Theory]
    [InlineData(20, 2339, 0.003)]
    [InlineData(50, 12_352, 0.003)]
    [InlineData(80, 47_414, 0.014)]
    public void Vapour_pressure_is_that_of_steam_tables(double celsius, double pascals, double within) =>
        Near.Relative(pascals, Condensation.Saturation(celsius), within);

    [Fact]
    public void Gas_leaves_between_its_own_and_the_airs_temperature()
    {
        double At(double flow) => Condensation.Leaves(80, 20, 6, 0.1, flow, 1);

        Near.Relative(80, At(1e6), 1e-6);
        Near.Absolute(20, At(1e-9), 1e-6);
        Assert.True(At(1e-3) < At(2e-3));
        // No colder than it comes in: nothing falls out; without vapour neither.
        Assert.Equal(0, Condensation.Water(0.13, Air.Atmosphere, 80, 80, 1e-3));
        Assert.Equal(0, Condensation.Water(0, Air.Atmosphere, 80, 20, 1e-3));
    }

    private static Separation Of(VesselDesign design)
    {
        var built = Compiler.Assemble(design);
        return Separation.Of(FlowPath.Of(built), design)!;
    }
}
