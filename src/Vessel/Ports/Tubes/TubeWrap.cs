using System.Collections.Immutable;
using MathNet.Numerics.Integration;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>
/// The wraps of a port's tube, once round its outside: of the piece on the host from phi = 0, the side that faces down the host, unless
/// a window is there; of an elbow's others from the inside of the bend.
/// </summary>
internal static class TubeWrap
{
    private const double LetterHeight = 3;

    /// <summary>Places at which a lap's height is taken: its area is told to far less than a square millimetre.</summary>
    private const int LapPlaces = 16;

    public static Flat OfPort(PortSite site, TubePiece piece, Welds welds)
    {
        var port = site.Port;
        var end = piece.Lower;
        Action<FlatMarks, WrappedDevelopment>? line = port.Joint == PortJoint.SetIn
            ? (marks, wrapped) => AddWeldLine(marks, site, wrapped)
            : null;
        return Drawn(
            piece,
            Sides(port.Host),
            port.Elbow is null ? $"{port.Name} {welds.One(WeldRole.PortSeam, port.Path)}"
                : $"{port.Name} {welds.One(WeldRole.PortSeam, port.Path)} {welds.Of(WeldRole.MitreSeam, port.Path)[0]}",
            line,
            Notes(site, piece),
            port is { Joint: PortJoint.SetOn, Cut: EndCut.Square } && !end.IsPlain ? "furthest reach through the wall"
                : "outside diameter");
    }

    public static Flat OfElbow(PortSite site, PortPiece piece, Welds welds)
    {
        var (port, elbow) = (site.Port, site.Port.Elbow!);
        var isEnd = piece.Shape.Upper.IsPlain;
        var mitres = isEnd ? [elbow.Mitres - 1] : Enumerable.Range(0, elbow.Mitres);
        return Drawn(
            piece.Shape,
            ["inside", "", "outside", ""],
            $"{piece.Name} {string.Join(' ', mitres.Select(i => welds.Of(WeldRole.MitreSeam, site.Port.Path)[i]))}",
            null,
            [
                Title(port, piece.Name),
                "WRAP FOR THE OUTSIDE OF THE TUBE, OUTSIDE FACE UP, the way to the free end at the top. Millimetres. Do not cut from "
                    + "sheet.",
                "Both side edges on the inside of the bend.",
                MitreNote(elbow, isEnd ? "Lower end" : "Both ends"),
            ],
            elbow.Cut == MitreCut.Square ? "edge of the wall that meets the mitre first" : "outside diameter");
    }

    /// <param name="sides">Words at phi = 0, 90, 180 and 270 degrees; none where empty.</param>
    private static Flat Drawn(
        TubePiece piece,
        string[] sides,
        string title,
        Action<FlatMarks, WrappedDevelopment>? more,
        ImmutableArray<string> notes,
        string governing)
    {
        var (radius, start) = (piece.OuterRadius, piece.WrapStart);
        var lift = -Extreme(piece.Lower.Outer, 1);
        var round = Turns.Full + piece.WrapLap;
        var (width, height) = (round * radius, Extreme(piece.Upper.Outer, -1) + lift);
        var (lower, upper) = (Edge(piece.Lower, false), Edge(piece.Upper, true));
        var wrapped = new WrappedDevelopment(radius, start, lift) { Lap = radius * piece.WrapLap };
        var windows = piece.Windows.Outlines(wrapped, radius);
        var cut = new Region2(new([lower, new Line2(lower.End, upper.Start), upper, new Line2(upper.End, lower.Start)]), windows);
        var marks = new FlatMarks(width, height, windows);
        double Across(double phi) => wrapped.Flatten(new(phi, 0)).U;
        for (var quarter = 0; quarter < sides.Length; quarter++)
        {
            if (sides[quarter].Length == 0)
                continue;
            var (phi, room) = (quarter * Math.PI / 2, LabelRoom(sides[quarter]) / radius);
            marks.AddVertical(
                Across(phi), sides[quarter], LetterHeight, piece.Lower.Outer(phi) + lift, Highest(phi, room), piece.Upper.Outer(phi) + lift,
                Lowest(phi, room));
        }

        more?.Invoke(marks, wrapped);
        // Under a mitred edge the title stands beside the line that leaves it most room, best where it crosses no other line.
        var (at, wide) = (start, LabelRoom(title) / radius);
        double Room(int quarter) => Lowest(quarter * Math.PI / 2, wide) - Highest(quarter * Math.PI / 2, wide);
        if (!piece.Upper.IsPlain)
        {
            at = Enumerable.Range(0, sides.Length).Where(quarter => Across(quarter * Math.PI / 2) / radius + wide < Turns.Full)
                .OrderBy(
                    quarter => Room(quarter) < 3 * LetterHeight || (wide > Math.PI / 2 && sides[(quarter + 1) % sides.Length].Length > 0))
                .ThenByDescending(Room)
                .Select(quarter => quarter * Math.PI / 2)
                .FirstOrDefault(start);
        }

        marks.AddTitle(title, LetterHeight, Across(at), Lowest(at, wide));
        return Wraps.Lapping(
            new(FlatKind.Wrap, cut, marks.ToImmutable(), [], notes, wrapped, governing),
            radius * GaussLegendreRule.Integrate(
                t => piece.Upper.Outer(start + t) - piece.Lower.Outer(start + t), 0, piece.WrapLap, LapPlaces));

        Curve2 Edge(TubeEnd end, bool reversed)
        {
            if (end.IsPlain)
            {
                var (left, right) = (new Point2(0, end.Outer(0) + lift), new Point2(width, end.Outer(0) + lift));
                return reversed ? new Line2(right, left) : new Line2(left, right);
            }

            // What lies at the left edge of other wraps may be a corner within this one.
            var breaks = start == 0 && round == Turns.Full ? end.Breaks
                : [.. end.Breaks.Append(0).Select(phi => Turns.From(phi, start) - start).SelectMany(t => new[] { t, t + Turns.Full })
                    .Where(t => t > 0 && t < round).Distinct().Order()];
            return reversed
                ? new GraphCurve2(
                    t => new(radius * (round - t), end.Outer(start + round - t) + lift),
                    t => new(-radius, -end.OuterSlope(start + round - t)),
                    new(0, round),
                    [.. breaks.Select(t => round - t).Order()])
                : new GraphCurve2(
                    t => new(radius * t, end.Outer(start + t) + lift), t => new(radius, end.OuterSlope(start + t)), new(0, round), breaks);
        }

        // Of the ends beside a label, at a few places.
        IEnumerable<double> Beside(double from, double room) => Enumerable.Range(0, 9).Select(i => from + (room * i / 8));
        double Highest(double from, double room) => Beside(from, room).Max(piece.Lower.Outer) + lift;
        double Lowest(double from, double room) => Beside(from, room).Min(piece.Upper.Outer) + lift;
    }

    /// <summary>How a set-in tube knows how deep it goes: the line on which its outside meets the host's.</summary>
    private static void AddWeldLine(FlatMarks marks, PortSite site, WrappedDevelopment wrapped)
    {
        var (host, radius, start) = (site.Outside, wrapped.Radius, wrapped.Start);
        Point2 At(double t) => new(radius * t, host.Reach(radius, start + t) + wrapped.Lift);
        if (host is PlaneFootprint)
        {
            marks.AddLine(At(0), At(Turns.Full));
            return;
        }

        marks.AddCurve(new GraphCurve2(
            At,
            t => new(radius, host.ReachSlope(radius, start + t)),
            Interval.Turn,
            [.. host.Breaks(radius).Append(0).Select(phi => Turns.From(phi, start) - start).Where(t => t > 0).Distinct().Order()]));
    }

    private static double LabelRoom(string label) => TextMark.Width(label, LetterHeight) + LetterHeight;

    /// <summary>The lowest place of an end on the outside (sign 1) or the highest (-1), to a hair; where the wrap ends.</summary>
    private static double Extreme(Func<double, double> along, int sign)
    {
        const int samples = 720;
        var best = Enumerable.Range(0, samples).Select(i => Turns.Full * i / samples).MinBy(phi => sign * along(phi));
        var (low, high) = (best - (Turns.Full / samples), best + (Turns.Full / samples));
        // Golden section: an end is smooth but for kinks that point into the tube.
        const double share = 0.6180339887498949;
        while (high - low > 1e-9)
        {
            var (a, b) = (high - (share * (high - low)), low + (share * (high - low)));
            if (sign * along(a) < sign * along(b))
                high = b;
            else
                low = a;
        }

        return along((low + high) / 2);
    }

    /// <summary>
    /// The tube's sides at phi = 0, 90, 180 and 270 degrees, as seen from outside the vessel: counter-clockwise from the
    /// side that faces down, so the second is the one towards increasing angle.
    /// </summary>
    private static string[] Sides(PortHost host) =>
        host == PortHost.Shell ? ["down", "right", "up", "left"] : ["out", "90", "in", "270"];

    private static string Title(PortDesign port, string name) =>
        $"{name.ToUpperInvariant()}, {port.Material.Name}, outside {NoteText.Length(port.OutsideDiameter)} mm, wall "
            + $"{NoteText.Length(port.Wall)} mm";

    private static ImmutableArray<string> Notes(PortSite site, TubePiece piece)
    {
        var port = site.Port;
        var notes = ImmutableArray.CreateBuilder<string>();
        notes.Add(Title(port, port.Name));
        notes.Add("WRAP FOR THE OUTSIDE OF THE TUBE, OUTSIDE FACE UP, free end at the top. Millimetres. Do not cut from sheet.");
        var beside = piece.WrapStart == 0 ? "on" : $"{NoteText.Degrees(piece.WrapStart)} deg round from";
        notes.Add(port.Host == PortHost.Shell
            ? $"Both side edges {beside} the tube's down side; left and right as seen from outside the vessel."
            : $"Both side edges {beside} the tube's side away from the vessel's axis.");
        notes.Add(CutNote(site, piece.Lower));
        if (port.Elbow is { } elbow)
            notes.Add(MitreNote(elbow, "Upper end"));
        return notes.ToImmutable();
    }

    private static string MitreNote(ElbowDesign elbow, string which) =>
        $"{which} mitred {NoteText.Degrees(elbow.Slant)} deg from square; " + (elbow.Cut == MitreCut.Sawn
            ? "the line is the wall's outer edge, the cut goes through in one plane."
            : "cut square through the wall along the line.");

    private static string CutNote(PortSite site, TubeEnd end) => (site.Port.Cut, site.Outside) switch
    {
        _ when end.IsPlain => "Plain end, square to the axis.",
        _ when site.Port.IsFlush =>
            $"Line on the outside; grind the end face back through the wall to the curve of the {Names.Of(site.Port.Host)}'s inside, with "
                + "which it ends flush.",
        (EndCut.Square, _) => "Cut square through the wall along the line.",
        (EndCut.HoleSaw, CylinderFootprint host) => HoleSawNote(site.Port, host),
        _ => "Line on the outside; grind the end face back through the wall to the host's curve.",
    };

    private static string HoleSawNote(PortDesign port, CylinderFootprint host)
    {
        var depth = port.FirstLength + (Math.Sqrt((host.Radius - host.Offset) * (host.Radius + host.Offset)) / Math.Cos(host.Tilt));
        return $"Hole saw {NoteText.Length(2 * host.Radius)} mm; tube and saw axes {NoteText.Degrees((Math.PI / 2) - host.Tilt)} deg "
            + "apart, "
            + $"offset {NoteText.Length(host.Offset)} mm; saw axis {NoteText.Length(depth)} mm from the "
            + $"{(port.Elbow is null ? "free end" : "middle of the mitre")} along the tube.";
    }
}
