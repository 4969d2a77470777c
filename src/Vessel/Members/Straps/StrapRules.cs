using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Stock;
using static Vessel.Model.Allowed;

namespace Vessel.Members.Straps;

/// <summary>How a strap bends, bolts and bears on the shell.</summary>
internal static class StrapRules
{
    /// <summary>Cap of a butt over its wall: half its width, and its height; see <c>Assumptions</c>.</summary>
    private const double CapHalfWidth = 1.875 / 2;
    private const double CapHeight = 0.3125;

    /// <summary>A liner so many times as thick as a bead is high gives way to it. Common practice, no source.</summary>
    private const double LinerShare = 2;

    public static IEnumerable<Measure> Of(Strap member, Assembly assembly)
    {
        var strap = member.Spec;
        yield return Radius(assembly, strap);
        yield return Washer(assembly, strap, strap.Bolts, strap.Ear, "ear");
        // Feet that carry the ears straight on have no bend beside them.
        if (strap.Feet.StandOff is not null)
            yield return Washer(assembly, strap, strap.Feet.Bolts, strap.Feet.Length, "feet.length");
        if (Beads(assembly, member) is { } beads)
            yield return beads;
        if (Metals(assembly, strap) is { } metals)
            yield return metals;
    }

    private static Measure Radius(Assembly assembly, StrapDesign strap)
    {
        var least = BendRadii.Least(strap.Material, strap.Thickness);
        return Warning(
            assembly, strap, FindingCodes.BendTooTight, "inside_radius",
            () => $"'{strap.Name}' is bent to {NoteText.Length(strap.InsideRadius)} mm inside; {strap.Material.Name} of "
                + $"{NoteText.Length(strap.Thickness)} mm "
                + $"may crack below {NoteText.Length(least.Value)} mm ({least.Source}): give a larger inside_radius, or take a softer "
                + "temper.",
            [new("inside radius", strap.InsideRadius, AtLeast(least.Value), "mm")],
            $"inside radius of '{strap.Name}'");
    }

    private static Measure Washer(Assembly assembly, StrapDesign strap, BoltsDesign bolts, double length, string key)
    {
        var (distance, limit) = ((length - bolts.Slot - bolts.WasherDiameter) / 2, BoltHole.WasherShare * strap.Thickness);
        return Warning(
            assembly, strap, FindingCodes.WasherNearBend, key,
            () => $"a washer of {NoteText.Length(bolts.WasherDiameter)} mm on '{strap.Name}' comes within "
                + $"{NoteText.Length(Math.Max(0, distance))} mm of a bend; keep "
                + $"{NoteText.Length(limit)} mm of flat beside it: make '{key}' at least "
                + $"{NoteText.Length(length + (2 * (limit - distance)))} mm.",
            [new("washer to bend", distance, AtLeast(limit), "mm")],
            $"washer to bend at {(key == "ear" ? "an ear" : "a foot")} of '{strap.Name}'");
    }

    /// <summary>Welds of which some station's bead reaches under the band, neither in a gap nor dressed.</summary>
    private static Measure? Beads(Assembly assembly, Strap member)
    {
        var strap = member.Spec;
        var shell = assembly.Design.Shell.At(strap.Height);
        var band = member.Halves[0].HalfBand;
        var found = assembly.Welds.Where(weld => IsUnder(weld)).ToList();
        if (found.Count == 0)
            return null;
        var most = AtMost(strap.Liner / LinerShare);
        var gap = Math.PI / 2;
        return Warning(assembly, strap, FindingCodes.BeadUnderStrap, "at",
            () => $"'{strap.Name}' lies over the bead of {Names()}, up to {NoteText.Length(found.Max(Height))} mm high, and bears on it "
            + "alone: move or turn the strap so that "
            + $"the bead lies beside it or in a gap (now at {Degrees(strap.Angle - gap)} and {Degrees(strap.Angle + gap)} deg), dress the "
            + "bead flush there, "
            + $"or give a liner of {NoteText.Length(LinerShare * found.Max(Height))} mm.",
            [new("bead's height", found.Max(Height), most, "mm")],
            $"height of the beads under '{strap.Name}'");

        string Names() =>
            string.Join(", ", found.Where(weld => !most.Holds(Height(weld))).Select(weld => $"{weld.Joint.Number} ({weld.Joint.Name})"));

        double Height(WeldFigures weld) => weld.Leg.End > 0 ? weld.Leg.End : CapHeight * weld.Joint.Wall;

        bool IsUnder(WeldFigures weld)
        {
            var reach = weld.Leg.End > 0 ? weld.Leg.End : CapHalfWidth * weld.Joint.Wall;
            return weld.Stations.Any(station =>
            {
                var at = station.At.Root;
                var (radius, aside) = (new Point2(at.X, at.Y).Length, reach / shell.OuterRadius);
                var off = Math.Abs(Turns.Signed(Math.Atan2(at.Y, at.X) - strap.Angle));
                return radius > (shell.InnerRadius + shell.OuterRadius) / 2
                    && at.Z > strap.Low - reach && at.Z < strap.High + reach
                    && (off < band + aside || off > Math.PI - band - aside);
            });
        }
    }

    /// <summary>Bare metal on bare metal in the wet; a liner keeps them apart.</summary>
    private static Measure? Metals(Assembly assembly, StrapDesign strap)
    {
        var shell = assembly.Design.Shell.Material;
        if (strap.Liner > 0 || MetalPairs.Of(strap.Material.Family, shell.Family) is not { } severity)
            return null;
        return Warning(assembly, strap, FindingCodes.UnlikeMetals, "material",
            () => $"'{strap.Name}' of {strap.Material.Name} lies on {shell.Name}: the less noble of the two corrodes in the wet; give a "
                + "liner, or take one metal for both.", []) with
        {
            Beyond = severity,
        };
    }

    private static string Degrees(double angle) => NoteText.Degrees(Turns.From(angle, 0));

    private static Measure Warning(
        Assembly assembly, StrapDesign strap, string code, string key, Func<string> words, Measured[] figures, string? of = null) => new(
        code, Severity.Warning, [Slug.Of(StrapDesign.BackOf(strap.Name)), Slug.Of(StrapDesign.FrontOf(strap.Name))], words, [.. figures],
        assembly.Design.PlaceOf($"{strap.Path}.{key}"), of);
}
