using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Heads.Cones;
using Vessel.Heads.Dishes;
using Vessel.Heads.FlatHeads;
using Vessel.Sites;
using Xunit;

namespace Vessel.Tests.Support;

/// <summary>What random designs have, and what is left of them when they are shrunk.</summary>
public sealed class RandomDesignTests
{
    private const int Count = 100;

    private static readonly ImmutableDictionary<string, Func<VesselDesign, bool>> _features =
        new Dictionary<string, Func<VesselDesign, bool>>
        {
            ["port"] = vessel => !vessel.Ports.IsEmpty,
            ["elbow"] = vessel => vessel.Ports.Any(port => port.Elbow is not null),
            ["windows"] = vessel => vessel.Ports.Any(port => !port.Windows.IsEmpty),
            ["set in"] = vessel => vessel.Ports.Any(port => port.Joint == PortJoint.SetIn),
            ["flush"] = vessel => vessel.Ports.Any(port => port.IsFlush),
            ["bung"] = vessel => vessel.Ports.Any(port => port.Thread is not null),
            ["ground"] = vessel => vessel.Ports.Any(port => port.Cut == EndCut.Ground),
            ["tilt"] = vessel => vessel.Ports.Any(port => port.Place.Tilt != 0),
            ["offset"] = vessel => vessel.Ports.Any(port => port.Place.Offset != 0),
            ["square to a head"] = vessel => vessel.Ports.Any(port => port.Place.SquareToSurface),
            ["over a seam"] = vessel => vessel.Ports.Any(port => PortSites.Of(vessel).Of(port).Over is not null),
            ["sheet"] = vessel => vessel.Shell.MadeFrom == StockForm.Sheet,
            ["sheets"] = vessel => vessel.Shell.Sheets > 1,
            ["dish"] = vessel => Heads(vessel).Any(head => head is DishedHead),
            ["gores"] = vessel => Heads(vessel).Any(head => head is DishedHead { Gores: not null }),
            ["cone"] = vessel => Heads(vessel).Any(head => head is ConeHead),
            ["segments"] = vessel => Heads(vessel).Any(head => head is ConeHead { Segments: > 1 }),
        }.ToImmutableDictionary();

    private static readonly ImmutableArray<VesselDesign> _drawn = [.. Enumerable.Range(0, Count).Select(RandomDesigns.At)];

    /// <summary>Each feature with what it cannot be without: a cone's tip is closed by a port, and only a dish is bridged.</summary>
    [Theory]
    [InlineData("port")]
    [InlineData("elbow", "port")]
    [InlineData("windows", "port", "set in")]
    [InlineData("set in", "port")]
    [InlineData("flush", "port", "set in")]
    [InlineData("bung", "port")]
    [InlineData("ground", "port")]
    [InlineData("tilt", "port")]
    [InlineData("offset", "port")]
    [InlineData("square to a head", "port")]
    [InlineData("over a seam", "port", "dish")]
    [InlineData("sheet")]
    [InlineData("sheets", "sheet")]
    [InlineData("dish")]
    [InlineData("gores", "dish")]
    [InlineData("cone", "port")]
    [InlineData("segments", "cone", "port")]
    public void A_law_that_a_feature_breaks_shrinks_to_a_vessel_with_that_feature_only(string feature, params string[] needed)
    {
        var drawn = _drawn.First(vessel => _features[feature](vessel));

        var smallest = SmallestFailure.Of(drawn, vessel => Assert.False(_features[feature](vessel)));

        Assert.True(DesignFit.Holds(smallest));
        Assert.Equal(needed.Append(feature).Order(), _features.Keys.Where(one => _features[one](smallest)).Order());
        Assert.InRange(smallest.Ports.Length, 0, 1);
    }

    [Fact]
    public void A_broken_law_tells_its_seed_and_the_smallest_vessel()
    {
        var seed = Enumerable.Range(0, Count).First(seed => _features["elbow"](RandomDesigns.At(seed)));

        var told = Assert.ThrowsAny<Exception>(() =>
            RandomDesigns.Hold(seed, vessel => Assert.False(_features["elbow"](vessel.Design), "An elbow")));

        Assert.StartsWith($"Seed {seed}: An elbow", told.Message, StringComparison.Ordinal);
        // The shell, two heads and the one port that has it.
        Assert.Equal(4, told.Message.Split('\n').Count(line => line.StartsWith("  ", StringComparison.Ordinal)));
        Assert.Contains("Elbow = ElbowDesign {", told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_feature_is_drawn() => Assert.All(_features, feature => Assert.Contains(_drawn, vessel => feature.Value(vessel)));

    [Fact]
    public void Every_kind_of_head_joint_and_cut_is_drawn_and_shells_of_one_to_four_sheets()
    {
        Assert.Equal(
            new[] { nameof(ConeHead), nameof(EllipsoidHead), nameof(FlangedFlatHead), nameof(FlatHead), nameof(HemisphereHead),
                nameof(ToriconeHead), nameof(TorisphereHead) },
            _drawn.SelectMany(Heads).Select(head => head.GetType().Name).Distinct().Order());
        foreach (var kind in new[] { typeof(HemisphereHead), typeof(EllipsoidHead), typeof(TorisphereHead) })
        {
            var gores = _drawn.SelectMany(Heads).OfType<DishedHead>()
                .Where(head => head.Gores is not null && head.GetType() == kind).ToList();
            Assert.True(gores.Exists(head => head.Flange > 0) && gores.Exists(head => head.Flange == 0), $"{kind}");
        }

        Assert.Equal(Enum.GetValues<Seat>(), _drawn.SelectMany(Heads).OfType<FlatHead>().Select(head => head.Seat).Distinct().Order());
        (PortJoint, EndCut)[] ways = [(PortJoint.SetOn, EndCut.Square), (PortJoint.SetOn, EndCut.Ground), (PortJoint.SetOn, EndCut.HoleSaw),
            (PortJoint.SetIn, EndCut.Square)];
        // A hole saw's cut fits a cylinder only.
        Assert.Equal(
            from host in Enum.GetValues<PortHost>()
            from way in ways
            where host == PortHost.Shell || way.Item2 != EndCut.HoleSaw
            select (host, way.Item1, way.Item2),
            _drawn.SelectMany(vessel => vessel.Ports).Select(port => (port.Host, port.Joint, port.Cut)).Distinct().Order());
        Assert.Equal([1, 2, 3, 4], _drawn.Select(vessel => vessel.Shell.Sheets).Distinct().Order());
    }

    [Fact]
    public void Walls_are_thin_and_thick_and_ports_lean_and_stand_near_the_tangent_and_are_nearly_as_wide_as_the_shell()
    {
        var walls = _drawn.Select(vessel => vessel.Shell.Wall / vessel.Shell.OuterRadius).ToList();
        Assert.True(walls.Min() < 0.03 && walls.Max() > 0.1);
        var ports =
            (from vessel in _drawn from port in vessel.Ports where port.Host == PortHost.Shell select (vessel.Shell, port)).ToList();
        Assert.Contains(ports, at => (Math.Abs(at.port.Place.Offset) + at.port.OuterRadius) / at.Shell.OuterRadius > 0.98);
        Assert.Contains(ports, at => at.port.OuterRadius / at.Shell.OuterRadius > 0.85);
        Assert.Contains(ports, at => at.port.Place.Tilt > 0.9);
        Assert.Contains(ports, at => at.port.Place.Tilt < -0.9);
    }

    private static IEnumerable<HeadDesign> Heads(VesselDesign vessel) => [vessel.Top, vessel.Bottom];
}
