using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Cones;
using Vessel.Heads.Dishes;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Tests.Support;

namespace Vessel.Tests.Reassembly;

/// <summary>The shell with itself, its heads and its ports.</summary>
internal static class ShellMeetings
{
    public static IEnumerable<Meeting> Of(Assembly vessel, IReadOnlyDictionary<string, CutPiece> pieces) =>
    [
        .. vessel.Design.Shell.Courses.SelectMany(course => Course(course, vessel, pieces)),
        .. vessel.Sites.Where(site => site.Port.Host == PortHost.Shell && site.Port.Joint == PortJoint.SetOn)
            .Where(site => pieces.ContainsKey(Slug.Of(site.Port.Name)))
            .SelectMany(site => Cope(vessel, site, pieces[Slug.Of(site.Port.Name)])),
        .. vessel.Sites.Where(site => site.Port is { Host: PortHost.Shell, IsFlush: true })
            .SelectMany(site => Flush(vessel, site, pieces[Slug.Of(site.Port.Name)])),
    ];

    private static IEnumerable<Meeting> Course(ShellCourse course, Assembly vessel, IReadOnlyDictionary<string, CutPiece> pieces)
    {
        var alike = SheetPiece.Of(course, vessel.Design).ToDictionary(piece => piece, piece => pieces[piece.Id]);
        // In the order of the seams before them.
        var sheets = alike.SelectMany(piece => piece.Key.Numbers.Select((number, i) => (number, Sheet: (piece.Value, i))))
            .OrderBy(sheet => sheet.number).Select(sheet => sheet.Sheet).ToList();
        return
        [
            new($"{course.Name}'s sheets", sheets.Count == course.Seams.Count ? 0 : 1, 0),
            .. course.IsCone
                ? alike.Values.SelectMany(piece => Cone(course, piece)).Concat(ConeSeams.Of(
                    course.Name, sheets, Math.Atan2(Math.Abs(course.High - course.Low), course.Height), course.RootGap,
                    course.Wall, course.NarrowsUp))
                : alike.SelectMany(piece => Ends(course, piece.Value).Concat(Holes(course, vessel, piece.Key, piece.Value)))
                    .Concat(course.IsRolled ? LongSeams(course, sheets) : []),
        ];
    }

    /// <summary>Its two ends lie where its neighbours expect them.</summary>
    private static IEnumerable<Meeting> Ends(ShellCourse course, CutPiece piece)
    {
        var heights = piece.InVessel(piece.Outline, 0).Select(p => p.Z).ToList();
        yield return new($"{course.Name}'s lower end", Math.Abs(heights.Min() - course.Start), piece.Allowed);
        yield return new($"{course.Name}'s upper end", Math.Abs(heights.Max() - course.End), piece.Allowed);
    }

    /// <summary>
    /// Cut square, a cone's narrow edge is right on its inside and its wide edge on its outside, where its neighbours begin; the other
    /// corner stands out by the wall times the sine of its lean, to be dressed off.
    /// </summary>
    private static IEnumerable<Meeting> Cone(ShellCourse course, CutPiece piece)
    {
        var (narrow, wide) = course.NarrowsUp ? (course.End, course.Start) : (course.Start, course.End);
        var (least, most) = (Math.Min(course.Low, course.High), Math.Max(course.Low, course.High));
        var lean = Math.Atan2(most - least, course.Height);
        var (from, to) = (piece.Outline.Min(at => at.Length), piece.Outline.Max(at => at.Length));
        foreach (var at in piece.Outline.Where(at => at.Length > to - piece.Allowed))
        {
            var (outside, inside) = (piece.InVessel(at, 0), piece.InVessel(at, course.Wall));
            yield return new($"{course.Name}'s wide girth", Math.Abs(FromAxis(outside) - most), piece.Allowed * Stretch(course));
            yield return new($"{course.Name}'s wide edge", Math.Abs(outside.Z - wide), piece.Allowed);
            yield return new($"{course.Name} to dress",
                Math.Abs(Math.Abs(inside.Z - wide) - (course.Wall * Math.Sin(lean))), piece.Allowed);
        }

        foreach (var at in piece.Outline.Where(at => at.Length < from + piece.Allowed))
        {
            var (outside, inside) = (piece.InVessel(at, 0), piece.InVessel(at, course.Wall));
            yield return new($"{course.Name}'s narrow girth", Math.Abs(FromAxis(inside) - (least - (course.Wall / Math.Cos(lean)))),
                piece.Allowed * Stretch(course));
            yield return new($"{course.Name}'s narrow edge", Math.Abs(inside.Z - narrow), piece.Allowed);
            yield return new($"{course.Name} to dress",
                Math.Abs(Math.Abs(outside.Z - narrow) - (course.Wall * Math.Sin(lean))), piece.Allowed);
        }
    }

    private static double FromAxis(Vector3 p) => Math.Sqrt((p.X * p.X) + (p.Y * p.Y));

    /// <summary>Two edges each, of one sheet or of neighbours, face each other over the root gap on the mean circle,
    /// all the way up.</summary>
    private static IEnumerable<Meeting> LongSeams(ShellCourse course, List<(CutPiece Cut, int Number)> sheets)
    {
        for (var i = 0; i < sheets.Count; i++)
        {
            var (next, shell) = (sheets[(i + 1) % sheets.Count], sheets[i]);
            var (left, right) = (next.Cut.Outline.Min(p => p.U), shell.Cut.Outline.Max(p => p.U));
            foreach (var height in shell.Cut.Outline.Select(p => p.V).Distinct())
            {
                var a = next.Cut.InVessel(new Point2(left, height), course.Wall / 2, next.Number);
                var b = shell.Cut.InVessel(new Point2(right, height), course.Wall / 2, shell.Number);
                // The gap is an arc of the mean circle; its chord is what lies between the edges.
                var chord = 2 * course.MidRadius * Math.Sin(course.RootGap / 2 / course.MidRadius);
                yield return new("long seam", Math.Abs((a - b).Length - chord), 2 * shell.Cut.Allowed);
            }
        }
    }

    private static IEnumerable<Meeting> Holes(ShellCourse course, Assembly vessel, SheetPiece piece, CutPiece shell)
    {
        var left = shell.Holes.ToList();
        // Over a head's seam it is drilled when that is welded.
        foreach (var site in vessel.Sites.Where(site => site.Over is null && piece.Ports.Contains(site.Port)))
        {
            var axis = Axis(course, site.Port.Place);
            double From(Vector3 p) => (p - axis.Origin).Across(axis.Way).Length;
            ImmutableArray<Point2> Nearest() => left.MinBy(loop => loop.Average(at => (shell.InVessel(at, 0) - axis.Origin).Length));
            // Over a quarter of the diameter.
            if (course is { IsRolled: true, Shell.LargeHoles: LargeHoles.OnTabs } && 2 * site.OpeningRadius > 0.25 * 2 * course.Low)
            {
                for (var slots = 4; slots > 0; slots--)
                {
                    var slot = Nearest();
                    left.Remove(slot);
                    // Within the hole, its outer side on it.
                    yield return new($"slot of the hole for {site.Port.Name}",
                        Math.Abs(slot.Max(at => From(shell.InVessel(at, 0))) - site.OpeningRadius), shell.Allowed * Stretch(course));
                }

                continue;
            }

            var hole = Nearest();
            left.Remove(hole);
            var drilled = !course.IsRolled || site.Port.Joint == PortJoint.SetOn;
            if (drilled)
            {
                foreach (var at in hole)
                    yield return new($"hole for {site.Port.Name}", Math.Abs(From(shell.InVessel(at, 0)) - site.OpeningRadius),
                        shell.Allowed * Stretch(course));
                continue;
            }

            // Cut before rolling its wall runs along radii, and the clearance was given square to the line on the flat: seen
            // along a tilted tube it is less, but never less than nothing.
            var room = hole.Min(at => Convex.Least(depth => From(shell.InVessel(at, depth)), 0, course.Wall)) - site.Port.OuterRadius;
            yield return new($"way for {site.Port.Name}", Meeting.Outside(room, 0, site.Port.Clearance), shell.Allowed * Stretch(course));
        }
    }

    /// <summary>Rolling makes lengths round the outside longer than on the flat by this.</summary>
    private static double Stretch(ShellCourse course) =>
        Math.Min(course.Low, course.High) is var radius ? radius / (radius - (course.Wall / 2)) : 0;

    /// <summary>The edge of a set-on tube's outside stands off the shell as the joint says,
    /// and no depth of its wall runs into it.</summary>
    private static IEnumerable<Meeting> Cope(Assembly vessel, PortSite site, CutPiece tube)
    {
        var (port, course) = (site.Port, vessel.Design.Shell.CourseAt(site.Port.Place.Height));
        var joint = vessel.Welds.Single(weld => weld.Joint.Path == port.Path).Joint;
        // Square to the line of a cone.
        var lean = Math.Atan2(course.High - course.Low, course.Height);
        var over = site.Over is { } end ? Over(vessel.Design, end, outside: true) : null;
        double Off(Vector3 p) => over?.Off(Beside(vessel.Design, site, p))
            ?? (FromAxis(p) - course.Low - ((p.Z - course.Start) * Math.Tan(lean))) * Math.Cos(lean);
        var allowed = tube.Allowed + (over?.Error ?? 0);
        var whole = port.WholeLength + ((WrappedDevelopment)tube.Part.Flat!.From).Lift;
        // The fitted line may tell the gap of a place beside it, as far off as it deviates.
        var beside = tube.Allowed / port.OuterRadius;
        foreach (var at in tube.Outline.Where(p => p.V < whole - tube.Allowed && p.U > 0 && p.U < Turns.Full * port.OuterRadius))
        {
            if (IsOnSide(at, port.OuterRadius, tube.Allowed))
                continue;
            var phi = at.U / port.OuterRadius;
            var gaps = new[] { phi - beside, phi, phi + beside }.Select(angle => joint.Along(angle).GapNormal).ToList();
            yield return new($"{port.Name} on shell", Meeting.Outside(Off(tube.InVessel(at, 0)), gaps.Min(), gaps.Max()), allowed);
            if (port.Cut == EndCut.Square)
            {
                var least = Enumerable.Range(0, 9).Min(i => Off(tube.InVessel(at, port.Wall * i / 8)));
                yield return new($"{port.Name} into shell", Math.Max(0, -least), allowed);
            }
        }
    }

    /// <summary>The outer edge of a flush end lies on the shell's inside.</summary>
    private static IEnumerable<Meeting> Flush(Assembly vessel, PortSite site, CutPiece tube)
    {
        var (port, shell) = (site.Port, vessel.Design.Shell.At(site.Port.Place.Height));
        var over = site.Over is { } end ? Over(vessel.Design, end, outside: false) : null;
        // No part of the end lies as far out as the foot of the shortest line from the free end or mitre.
        var outside = ((WrappedDevelopment)tube.Part.Flat!.From).Lift + site.OnShell!.Outside.Reaches(port.OuterRadius).End;
        return tube.Outline.Where(p => p.V < outside && !IsOnSide(p, port.OuterRadius, tube.Allowed)).Select(at =>
        {
            var p = tube.InVessel(at, 0);
            var off = over?.Off(Beside(vessel.Design, site, p)) ?? FromAxis(p) - shell.InnerRadius;
            return new Meeting($"{port.Name} flush in shell", Math.Abs(off), tube.Allowed + (over?.Error ?? 0));
        });
    }

    /// <summary>Shell and head together, as a port over the seam between them finds them.</summary>
    private static DishCurve Over(VesselDesign design, VesselEnd end, bool outside) =>
        DishCurve.Of(design.Shell.AtEnd(end), (DishedHead)design.Head(end), outside ? design.Head(end).Wall : 0);

    /// <summary>A place in the half plane of the head, the pole below.</summary>
    private static Point2 Beside(VesselDesign design, PortSite site, Vector3 p) =>
        new(FromAxis(p), site.Over == VesselEnd.Top ? design.Shell.Height - p.Z : p.Z);

    /// <summary>The wrap's two straight sides belong to no joint.</summary>
    private static bool IsOnSide(Point2 at, double radius, double close) => at.U < close || at.U > (Turns.Full * radius) - close;

    /// <summary>Of a port on the shell, from the design alone.</summary>
    private static (Vector3 Origin, Vector3 Way) Axis(ShellCourse course, PortPlace place)
    {
        var (outward, sideways) =
            (new Vector3(Math.Cos(place.Angle), Math.Sin(place.Angle), 0), new Vector3(-Math.Sin(place.Angle), Math.Cos(place.Angle), 0));
        var reach = Math.Sqrt((course.Low * course.Low) - (place.Offset * place.Offset));
        return (
            (reach * outward) + (place.Offset * sideways) + (place.Height * Vector3.UnitZ),
            (Math.Cos(place.Tilt) * outward) + (Math.Sin(place.Tilt) * Vector3.UnitZ));
    }
}
