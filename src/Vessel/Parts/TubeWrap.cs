using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>The wrap of a port's tube, from phi = 0 (the side that faces down the host) once round its outside.</summary>
internal static class TubeWrap
{
    private const double LetterHeight = 3;

    public static Flat Of(PortSite site, TubeEnd end, WeldNumbers welds)
    {
        var port = site.Port;
        var radius = port.OuterRadius;
        var lift = -Lowest(end);
        var wrapped = new WrappedDevelopment(radius, 0, lift);
        var (width, height) = (Turns.Full * radius, port.Length + lift);
        Curve2 cope = end.IsPlain
            ? new Line2(new(0, 0), new(width, 0))
            : new GraphCurve2(
                phi => new(radius * phi, end.Outer(phi) + lift),
                phi => new(radius, end.OuterSlope(phi)),
                Interval.Turn,
                end.Breaks);
        var cut = new Region2(
            new(
            [
                cope,
                new Line2(cope.End, new(width, height)),
                new Line2(new(width, height), new(0, height)),
                new Line2(new(0, height), cope.Start),
            ]),
            []);
        var marks = new FlatMarks(width, height, []);
        var sides = Sides(port.Host);
        for (var quarter = 0; quarter < sides.Length; quarter++)
        {
            var phi = quarter * Math.PI / 2;
            marks.AddVertical(
                quarter * width / 4, sides[quarter], LetterHeight, end.Outer(phi) + lift, Highest(end, phi, LabelRoom(sides[quarter]) / radius) + lift);
        }

        if (port.Joint == PortJoint.SetIn)
            AddWeldLine(marks, site, wrapped, radius);
        marks.AddTitle($"{port.Name} {welds[port.Path]}", LetterHeight);
        return new(
            FlatKind.Wrap, cut, marks.ToImmutable(), [], Notes(site, end), wrapped,
            port.Cut == EndCut.Square && !end.IsPlain ? "furthest reach through the wall" : "outside diameter");
    }

    /// <summary>How a set-in tube knows how deep it goes: the line on which its outside meets the host's.</summary>
    private static void AddWeldLine(FlatMarks marks, PortSite site, WrappedDevelopment wrapped, double radius)
    {
        const int pieces = 72;
        Point2 At(int i) => new(
            radius * i * Turns.Full / pieces, site.Outside.Reach(radius, i * Turns.Full / pieces) + wrapped.Lift);
        if (site.Outside is PlaneFootprint)
        {
            marks.AddLine(At(0), At(pieces));
            return;
        }

        for (var i = 0; i < pieces; i++)
            marks.AddLine(At(i), At(i + 1));
    }

    private static double LabelRoom(string label) => TextMark.Width(label, LetterHeight) + LetterHeight;

    /// <summary>Of the end under a label, at a few places.</summary>
    private static double Highest(TubeEnd end, double from, double room) =>
        Enumerable.Range(0, 9).Max(i => end.Outer(from + (room * i / 8)));

    /// <summary>The lowest place of the end on the outside, to a hair; where the wrap's y = 0 lies.</summary>
    private static double Lowest(TubeEnd end)
    {
        const int samples = 720;
        var best = Enumerable.Range(0, samples).Select(i => Turns.Full * i / samples).MinBy(end.Outer);
        var (low, high) = (best - (Turns.Full / samples), best + (Turns.Full / samples));
        // Golden section: the end is smooth but for kinks that point up.
        const double share = 0.6180339887498949;
        while (high - low > 1e-9)
        {
            var (a, b) = (high - (share * (high - low)), low + (share * (high - low)));
            if (end.Outer(a) < end.Outer(b))
                high = b;
            else
                low = a;
        }

        return end.Outer((low + high) / 2);
    }

    /// <summary>
    /// The tube's sides at phi = 0, 90, 180 and 270 degrees, as seen from outside the vessel: counter-clockwise from the
    /// side that faces down, so the second is the one towards increasing angle.
    /// </summary>
    private static string[] Sides(PortHost host) =>
        host == PortHost.Shell ? ["down", "right", "up", "left"] : ["out", "90", "in", "270"];

    private static ImmutableArray<string> Notes(PortSite site, TubeEnd end)
    {
        var port = site.Port;
        var notes = ImmutableArray.CreateBuilder<string>();
        notes.Add($"{port.Name.ToUpperInvariant()}, {port.Material.Name}, outside {NoteText.Length(port.OutsideDiameter)} mm, wall {NoteText.Length(port.Wall)} mm");
        notes.Add("WRAP FOR THE OUTSIDE OF THE TUBE, OUTSIDE FACE UP, free end at the top. Millimetres. Do not cut from sheet.");
        notes.Add(port.Host == PortHost.Shell
            ? "Both side edges on the tube's down side; left and right as seen from outside the vessel."
            : "Both side edges on the tube's side away from the vessel's axis.");
        notes.Add(CutNote(site, end));
        return notes.ToImmutable();
    }

    private static string CutNote(PortSite site, TubeEnd end) => (site.Port.Cut, site.Outside) switch
    {
        _ when end.IsPlain => "Plain end, square to the axis.",
        (EndCut.Square, _) => "Cut square through the wall along the line.",
        (EndCut.HoleSaw, CylinderFootprint host) => HoleSawNote(site.Port, host),
        _ => "Line on the outside; grind the end face back through the wall to the host's curve.",
    };

    private static string HoleSawNote(PortDesign port, CylinderFootprint host)
    {
        var depth = port.Length + (Math.Sqrt((host.Radius - host.Offset) * (host.Radius + host.Offset)) / Math.Cos(host.Tilt));
        return $"Hole saw {NoteText.Length(2 * host.Radius)} mm; tube and saw axes {NoteText.Degrees((Math.PI / 2) - host.Tilt)} deg apart, "
            + $"offset {NoteText.Length(host.Offset)} mm; saw axis {NoteText.Length(depth)} mm from the free end along the tube.";
    }
}
