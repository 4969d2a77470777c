using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Sites;

namespace Vessel.Members.Plates;

/// <summary>Whether a plate that stands on the shell meets it, has room for its corners and bolts, and stands over no port.</summary>
internal static class PlateCheck
{
    /// <summary>Points looked at along a side or edge.</summary>
    private const int Samples = 64;

    public static IEnumerable<Fault> Find(VesselDesign design, PortSites sites)
    {
        var shown = new UnitFormat(design.Units);
        foreach (var plate in design.All<PlateDesign>())
        {
            var shell = design.Shell.At(plate.Height);
            var cope = new PlateCope(plate, shell.OuterRadius);
            if (HeightCheck.Of(shown, design.Shell, plate, cope.HalfHeight, "width") is { } off)
                yield return off;
            if (cope.Furthest >= shell.OuterRadius)
            {
                yield return new Fault(FaultCodes.BracketTooWide, $"{plate.Path}.width", "The plate reaches beside the shell.",
                    $"{shown.Length(cope.Furthest)} from the axis", $"less than {shown.LengthDown(shell.OuterRadius)}",
                    "Make it narrower, or its offset smaller.");
                continue;
            }

            foreach (var fault in OnPlate(shown, cope))
                yield return fault;
            foreach (var hole in sites.Openings.Where(hole => StandsOver(cope, hole)))
            {
                yield return new Fault(FaultCodes.BracketOverPort, $"{plate.Path}.at", $"The plate stands over '{hole.Port.Name}'.",
                    null, null, "Move one of the two round the shell or along it.");
            }
        }
    }

    private static IEnumerable<Fault> OnPlate(UnitFormat shown, PlateCope cope)
    {
        var plate = cope.Plate;
        var most = Math.Min(plate.FreeWidth / 2, cope.FreeLevel - cope.Highest);
        if (cope.FreeLevel <= cope.Highest)
        {
            yield return new Fault(FaultCodes.PlateTooShort, $"{plate.Path}.depth", "The plate's free edge does not clear the shell.",
                shown.Length(plate.Depth), $"more than {shown.LengthUp(plate.Depth + cope.Highest - cope.FreeLevel)}",
                "Make the plate deeper, narrower, or its offset smaller.");
        }
        else if (plate.Corner > 0.99 * most)
        {
            yield return new Fault(FaultCodes.PlateCornerTooLarge, $"{plate.Path}.corner",
                "The free edge's corners find no room on the plate.",
                shown.Length(plate.Corner), $"at most {shown.LengthDown(0.99 * most)}", "Make the radius smaller, or the plate larger.");
        }
        else if (Room(cope) is var (room, need) && room < need - Ring.Hair)
        {
            yield return new Fault(FaultCodes.BoltOffPlate, plate.Bolts.Path,
                $"The bolts' washers, {shown.Length(plate.Bolts.WasherDiameter)} wide, do not lie wholly on the plate.",
                $"{shown.Length(room)} from a bolt's middle to the plate's edge", $"at least {shown.LengthUp(need)}",
                "Move the bolts inward (across, up, from_shell), or make the plate larger.");
        }
    }

    /// <summary>Least distance from a bolt's middle, wherever it stands in its slot, to an edge of the plate; and half a washer.</summary>
    private static (double Room, double Need) Room(PlateCope cope)
    {
        var (plate, bolts) = (cope.Plate, cope.Plate.Bolts);
        // On the plate: u along its coped edge, v from the vessel's axis outward.
        Point2 Side(int side, double share) => (1 - share) * new Point2(side * plate.Width / 2, cope.Level(side * plate.Width / 2))
            + (share * new Point2(side * plate.FreeWidth / 2, cope.FreeLevel));
        var edge = Enumerable.Range(0, Samples + 1).Select(i => plate.Width * (((double)i / Samples) - 0.5))
            .Select(u => new Point2(u, cope.Level(u))).ToList();
        var middle = cope.Level(0) + plate.BoltsAt;
        var least = double.PositiveInfinity;
        foreach (var (across, up) in from a in (double[])[-1, 1] from b in (double[])[-1, 1] select (a, b))
        {
            var at = new Point2(across * bolts.Across / 2, middle + (up * (bolts.Up + bolts.Slot) / 2));
            foreach (var side in (int[])[-1, 1])
            {
                var (a, b) = (Side(side, 0), Side(side, 1));
                // Outward is to the right of the right side going outward.
                var way = (1 / (b - a).Length) * (b - a);
                least = Math.Min(least, side * (way.Turned.Dot(at - a)));
            }

            least = Math.Min(least, cope.FreeLevel - at.V);
            // Below the coped edge the sign tells, above it the distance.
            least = Math.Min(least, at.V > cope.Level(Math.Clamp(at.U, -plate.Width / 2, plate.Width / 2))
                ? edge.Min(point => (point - at).Length)
                : -1);
        }

        return (least, bolts.WasherDiameter / 2);
    }

    private static bool StandsOver(PlateCope cope, ShellOpening hole)
    {
        // A value at fault gives no outline.
        if (!double.IsFinite(cope.Furthest + cope.HalfHeight + cope.Plate.Height + cope.Plate.Angle))
            return false;
        var (half, thick, radius) = (cope.Plate.Width / 2, cope.Plate.Thickness / 2, cope.ShellRadius);
        var own = Ring(
        [
            .. Along(-half, half).Select(u => cope.OnShell(u, -thick)),
            .. Along(-thick, thick).Select(n => cope.OnShell(half, n)),
            .. Along(half, -half).Select(u => cope.OnShell(u, thick)),
            .. Along(thick, -thick).Select(n => cope.OnShell(-half, n)),
        ]);
        return new[] { -Turns.Full, 0, Turns.Full, 2 * Turns.Full }
            .SelectMany(turn => hole.FlatWithFoot(radius, turn * radius))
            .Any(own.Intersects);

        Polygon Ring(ImmutableArray<(double Angle, double Z)> outline) => new(new LinearRing(
            [.. outline.Append(outline[0]).Select(p => new Coordinate(p.Angle * radius, p.Z))]));
    }

    private static IEnumerable<double> Along(double from, double to) =>
        Enumerable.Range(0, Samples).Select(i => from + ((to - from) * i / Samples));
}
