using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Tests.Support;

namespace Vessel.Tests.Reassembly;

/// <summary>The shell with itself, its heads and its ports.</summary>
internal static class ShellMeetings
{
    public static IEnumerable<Meeting> Of(Assembly vessel, IReadOnlyDictionary<string, CutPiece> pieces)
    {
        var shell = pieces[Names.Shell];
        return
        [
            .. Ends(vessel, shell),
            .. vessel.Design.Shell.MadeFrom == StockForm.Sheet ? LongSeam(vessel.Design.Shell, shell) : [],
            .. Holes(vessel, shell),
            .. vessel.Sites.Where(site => site.Port.Host == PortHost.Shell && site.Port.Joint == PortJoint.SetOn)
                .Where(site => pieces.ContainsKey(Slug.Of(site.Port.Name)))
                .SelectMany(site => Cope(vessel, site, pieces[Slug.Of(site.Port.Name)])),
            .. vessel.Sites.Where(site => site.Port is { Host: PortHost.Shell, IsFlush: true })
                .SelectMany(site => Flush(vessel.Design.Shell, site.Port, pieces[Slug.Of(site.Port.Name)])),
        ];
    }

    /// <summary>Its two ends lie where the heads expect them.</summary>
    private static IEnumerable<Meeting> Ends(Assembly vessel, CutPiece shell)
    {
        var heights = shell.InVessel(shell.Outline, 0).Select(p => p.Z).ToList();
        yield return new("shell's lower end", Math.Abs(heights.Min()), shell.Allowed);
        yield return new("shell's upper end", Math.Abs(heights.Max() - vessel.Design.Shell.Height), shell.Allowed);
    }

    /// <summary>The two edges face each other over the root gap on the mean circle, all the way up.</summary>
    private static IEnumerable<Meeting> LongSeam(ShellDesign design, CutPiece shell)
    {
        var (left, right) = (shell.Outline.Min(p => p.U), shell.Outline.Max(p => p.U));
        foreach (var height in shell.Outline.Select(p => p.V).Distinct())
        {
            var (a, b) = (shell.InVessel(new Point2(left, height), design.Wall / 2), shell.InVessel(new Point2(right, height), design.Wall / 2));
            // The gap is an arc of the mean circle; its chord is what lies between the edges.
            var chord = 2 * design.MidRadius * Math.Sin(design.RootGap / 2 / design.MidRadius);
            yield return new("long seam", Math.Abs((a - b).Length - chord), 2 * shell.Allowed);
        }
    }

    private static IEnumerable<Meeting> Holes(Assembly vessel, CutPiece shell)
    {
        var left = shell.Holes.ToList();
        foreach (var site in vessel.Sites.Where(site => site.Port.Host == PortHost.Shell))
        {
            var axis = Axis(vessel.Design.Shell, site.Port.Place);
            double From(Vector3 p) => (p - axis.Origin).Across(axis.Way).Length;
            var hole = left.MinBy(loop => loop.Average(at => (shell.InVessel(at, 0) - axis.Origin).Length));
            left.Remove(hole);
            var drilled = vessel.Design.Shell.MadeFrom == StockForm.Tube || site.Port.Joint == PortJoint.SetOn;
            if (drilled)
            {
                foreach (var at in hole)
                    yield return new($"hole for {site.Port.Name}", Math.Abs(From(shell.InVessel(at, 0)) - site.OpeningRadius), shell.Allowed * Stretch(vessel));
                continue;
            }

            // Cut before rolling its wall runs along radii, and the clearance was given square to the line on the flat: seen
            // along a tilted tube it is less, but never less than nothing.
            var room = hole.Min(at => Convex.Least(depth => From(shell.InVessel(at, depth)), 0, vessel.Design.Shell.Wall)) - site.Port.OuterRadius;
            yield return new($"way for {site.Port.Name}", Meeting.Outside(room, 0, site.Port.Clearance), shell.Allowed * Stretch(vessel));
        }
    }

    /// <summary>Rolling makes lengths round the outside longer than on the flat by this.</summary>
    private static double Stretch(Assembly vessel) => vessel.Design.Shell.OuterRadius / vessel.Design.Shell.MidRadius;

    /// <summary>The edge of a set-on tube's outside stands off the shell as the joint says, and no depth of its wall runs into it.</summary>
    private static IEnumerable<Meeting> Cope(Assembly vessel, PortSite site, CutPiece tube)
    {
        var (port, radius) = (site.Port, vessel.Design.Shell.OuterRadius);
        var joint = vessel.Welds.Single(weld => weld.Joint.Path == port.Path).Joint;
        double Off(Vector3 p) => Math.Sqrt((p.X * p.X) + (p.Y * p.Y)) - radius;
        var whole = port.WholeLength + ((WrappedDevelopment)tube.Part.Flat!.From).Lift;
        // The fitted line may tell the gap of a place beside it, as far off as it deviates.
        var beside = tube.Allowed / port.OuterRadius;
        foreach (var at in tube.Outline.Where(p => p.V < whole - tube.Allowed && p.U > 0 && p.U < Turns.Full * port.OuterRadius))
        {
            if (IsOnSide(at, port.OuterRadius, tube.Allowed))
                continue;
            var phi = at.U / port.OuterRadius;
            var gaps = new[] { phi - beside, phi, phi + beside }.Select(angle => joint.Along(angle).GapNormal).ToList();
            yield return new($"{port.Name} on shell", Meeting.Outside(Off(tube.InVessel(at, 0)), gaps.Min(), gaps.Max()), tube.Allowed);
            if (port.Cut == EndCut.Square)
            {
                var least = Enumerable.Range(0, 9).Min(i => Off(tube.InVessel(at, port.Wall * i / 8)));
                yield return new($"{port.Name} into shell", Math.Max(0, -least), tube.Allowed);
            }
        }
    }

    /// <summary>The outer edge of a flush end lies on the shell's inside.</summary>
    private static IEnumerable<Meeting> Flush(ShellDesign shell, PortDesign port, CutPiece tube)
    {
        // No part of the end lies as far out as the foot of the shortest line from the free end or mitre.
        var outside = ((WrappedDevelopment)tube.Part.Flat!.From).Lift + new BranchAxis(shell, port.Place).GreatestReach(port.OuterRadius);
        return tube.Outline.Where(p => p.V < outside && !IsOnSide(p, port.OuterRadius, tube.Allowed)).Select(at =>
        {
            var p = tube.InVessel(at, 0);
            return new Meeting($"{port.Name} flush in shell", Math.Abs(Math.Sqrt((p.X * p.X) + (p.Y * p.Y)) - (shell.OuterRadius - shell.Wall)), tube.Allowed);
        });
    }

    /// <summary>The wrap's two straight sides belong to no joint.</summary>
    private static bool IsOnSide(Point2 at, double radius, double close) => at.U < close || at.U > (Turns.Full * radius) - close;

    /// <summary>Of a port on the shell, from the design alone.</summary>
    private static (Vector3 Origin, Vector3 Way) Axis(ShellDesign shell, PortPlace place)
    {
        var (outward, sideways) = (new Vector3(Math.Cos(place.Angle), Math.Sin(place.Angle), 0), new Vector3(-Math.Sin(place.Angle), Math.Cos(place.Angle), 0));
        var reach = Math.Sqrt((shell.OuterRadius * shell.OuterRadius) - (place.Offset * place.Offset));
        return (
            (reach * outward) + (place.Offset * sideways) + (place.Height * Vector3.UnitZ),
            (Math.Cos(place.Tilt) * outward) + (Math.Sin(place.Tilt) * Vector3.UnitZ));
    }
}
