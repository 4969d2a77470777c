using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Members.Cups;
using Vessel.Members.Screens;
using Vessel.Parts;
using Vessel.Tests.Members.Inside;
using Vessel.Tests.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Function;

/// <summary>The rooms and openings that sleeve, cap and discs make, and what oil and gas do in them.</summary>
public sealed class CavityTests
{
    private const double Face = 197;
    private const double Rim = Face - 80;

    private static readonly Assembly _up = Compiler.Assemble(InsideTests.Vessel(InsideTests.Cap(CupOpening.Up)));
    private static readonly Assembly _down = Compiler.Assemble(InsideTests.Vessel(InsideTests.Cap(CupOpening.Down)));

    [Fact]
    public void What_the_internals_take_out_of_the_vessel_is_their_metal()
    {
        foreach (var built in new[] { _up, _down })
        {
            var bare = Compiler.Assemble(built.Design.With(InsideDesign.None));
            var metal = built.Parts.Where(part => part.Word is "sleeve" or "skirt" or "plate").Sum(part => part.Volume);
            Near.Relative(metal + Gap(built), bare.Capacity.Brim - built.Capacity.Brim, 1e-6);
        }
    }

    /// <summary>The ring round an outlet that carries its cap is welded shut and holds nothing.</summary>
    private static double Gap(Assembly built) => built.Design.Inside.Caps[0].Opens == CupOpening.Up
        ? 0
        : Math.PI * ((16.2 * 16.2) - (16 * 16)) * 2;

    [Fact]
    public void Oil_that_reaches_the_sleeves_rim_seals_the_gas_path()
    {
        Assert.Contains("rim of sleeve", _up.Capacity.LimitedBy, StringComparison.Ordinal);
        Near.Relative(_up.Attitude.VolumeBelow(Rim), _up.Capacity.Usable, 1e-12);
    }

    [Fact]
    public void Windows_in_the_sleeve_above_the_rim_keep_the_path_open_past_it()
    {
        var design = _up.Design;
        var windowed = InsideTests.Sleeve with { Windows = [new("inside.sleeve.windows", 3, 10, 10, 2, 5, 0)] };
        var built = Compiler.Assemble(design.With(design.Inside with { Sleeves = [windowed] }));

        var sealing = built.Capacity.Events.First(e => e.What.Contains("gas path", StringComparison.Ordinal));

        Assert.Equal(Rim + 15, sealing.Height, 9);
        Assert.Contains("windows of sleeve", sealing.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Gas_goes_round_the_sleeve_and_through_the_cap_to_the_outlet()
    {
        var path = GasPath.At(_up.Attitude, double.NegativeInfinity);

        Assert.Equal(1, path.ConnectedPairs);
        Assert.Equal(0, GasPath.At(_up.Attitude, Rim).ConnectedPairs);
        Assert.Equal("cap", _up.Cavity.Openings.Single(way => way.Name == "outlet").From);
        Assert.Equal("vessel", _up.Cavity.Openings.Single(way => way.Name == "inlet").From);
    }

    [Fact]
    public void A_cap_without_windows_or_drain_blocks_the_path_and_traps_oil()
    {
        var shut = InsideTests.Cap(CupOpening.Up) with { Windows = [], DrainHole = 0 };
        var findings = Assessment.Of(Compiler.Assemble(InsideTests.Vessel(shut)));

        Assert.Contains(findings, finding => finding is { Code: FindingCodes.GasPathBlocked, Severity: Severity.Error });
        // 56 mm bore, 36 mm deep.
        var trapped = Assert.Single(findings, finding => finding.Code == FindingCodes.TrappedOil);
        Near.Relative(Math.PI * 28 * 28 * 36 / 1000, trapped.Figures[0].Value, 1e-12);
        Assert.DoesNotContain(Assessment.Of(_up), finding => finding.Code is FindingCodes.GasPathBlocked or FindingCodes.TrappedOil);
    }

    [Fact]
    public void Air_above_the_inlet_outside_the_sleeve_stays_when_both_ways_out_are_sealed()
    {
        var inlet = _up.Cavity.Openings.Single(way => way.Name == "inlet");
        var ring = Math.PI * ((58 * 58) - (45 * 45)) * (Face - inlet.Axial.End);

        // The sleeve's rim is sealed first; inside it air still leaves through the cap until the outlet's end is sealed.
        var outlet = _up.Cavity.Openings.Single(way => way.Name == "outlet");
        var cup = Math.PI * ((28 * 28) - (16 * 16) + (14 * 14)) * (Face - outlet.Axial.End);
        Assert.InRange(_up.Capacity.Brim - _up.Capacity.Fillable, ring + cup, ring + cup + (Math.PI * ((43 * 43) - (30 * 30)) * 36));
    }

    [Fact]
    public void A_disc_parts_a_sleeve_into_two_rooms()
    {
        var design = _up.Design;
        var disc = new ScreenDesign(
            "inside.discs[0]", "screen", design.Shell.Material, "sleeve", Rim + 10, 1.5, 0.2, Fixing.Tabs, 0, 85.6,
            new("inside.discs[0]", 3, 5, HolePattern.Staggered60, 4));
        var built = Compiler.Assemble(design.With(design.Inside with { Discs = [disc] }));

        Assert.Equal(["sleeve 1", "sleeve 2"],
            built.Cavity.Rooms.Select(room => room.Name).Where(name => name.StartsWith("sleeve", StringComparison.Ordinal)));
        Assert.Equal(1, GasPath.At(built.Attitude, double.NegativeInfinity).ConnectedPairs);
        Near.Absolute(
            built.Parts.Single(part => part.Id == "screen").Volume, _up.Capacity.Brim - built.Capacity.Brim, 1e-6 * _up.Capacity.Brim);
    }

    [Theory]
    [InlineData(CupOpening.Up)]
    [InlineData(CupOpening.Down)]
    public void A_pattern_in_the_plate_lets_gas_through_by_the_area_of_its_holes(CupOpening opens)
    {
        var cap = InsideTests.Cap(opens) with
        {
            Windows = [],
            DrainHole = 0,
            Pattern = new("inside.cap.pattern", 3, 6, HolePattern.Square, 2),
        };
        var built = Compiler.Assemble(InsideTests.Vessel(cap));
        var lattice = built.Parts.Single(part => part.Word == "plate").Fields[0].Lattice;

        Near.Relative(lattice.Area, built.Cavity.Openings.Single(way => way.Name == "plate of cap").Area, 1e-9);
        Assert.Equal(1, GasPath.At(built.Attitude, double.NegativeInfinity).ConnectedPairs);
    }
}
