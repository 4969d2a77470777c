using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>A bolt's clearance hole, round or drawn out to a slot: upward and downward unless told otherwise.</summary>
internal static class BoltHole
{
    /// <summary>A washer stays so many thicknesses off a bend. Common practice, no source.</summary>
    public const double WasherShare = 1;

    public static Hole Of(int number, BoltsDesign bolts, Point2 middle, Loop2 outline, bool alongStrip = false) => new(
        number,
        bolts.Slot == 0
            ? $"bolt of {NoteText.Length(bolts.Diameter)} mm"
            : $"bolt of {NoteText.Length(bolts.Diameter)} mm: {(alongStrip ? "slot along the strip" : "upright slot")} "
                + $"{NoteText.Length(bolts.HoleDiameter)} x "
                + $"{NoteText.Length(bolts.HoleDiameter + bolts.Slot)} mm",
        middle,
        outline,
        bolts.HoleDiameter,
        null,
        null,
        bolts.Slot == 0 ? HoleMethods.Through(bolts.HoleDiameter) : HoleMethod.CutOrFile,
        null)
    {
        Shape = bolts.Slot == 0 ? null
            : alongStrip ? new(bolts.HoleDiameter + bolts.Slot, bolts.HoleDiameter, bolts.HoleDiameter / 2)
            : new(bolts.HoleDiameter, bolts.HoleDiameter + bolts.Slot, bolts.HoleDiameter / 2),
    };

    /// <summary>Middles of the holes of a pattern, row by row from the lower left.</summary>
    public static ImmutableArray<Point2> Places(BoltsDesign bolts, Point2 middle) =>
    [
        .. from y in Both(bolts.Up)
           from x in Both(bolts.Across)
           select middle + new Point2(x, y),
    ];

    private static double[] Both(double distance) => distance == 0 ? [0] : [-distance / 2, distance / 2];

    /// <summary>Clockwise: a circle, or two lines and two half-circles.</summary>
    public static Loop2 Outline(BoltsDesign bolts, Point2 middle) => Outline(bolts, middle, new(0, 1));

    /// <param name="way">Unit; along the slot.</param>
    public static Loop2 Outline(BoltsDesign bolts, Point2 middle, Point2 way)
    {
        var radius = bolts.HoleDiameter / 2;
        if (bolts.Slot == 0)
            return Loop2.Circle(middle, radius, clockwise: true);
        var rise = bolts.Slot / 2 * way;
        var lower = new Arc2(middle - rise, radius, way.Angle - (Math.PI / 2), -Math.PI);
        var upper = new Arc2(middle + rise, radius, way.Angle + (Math.PI / 2), -Math.PI);
        return new([new Line2(upper.End, lower.Start), lower, new Line2(lower.End, upper.Start), upper]);
    }

    /// <summary>Area of one hole, mm2.</summary>
    public static double Area(BoltsDesign bolts) =>
        (Math.PI / 4 * bolts.HoleDiameter * bolts.HoleDiameter) + (bolts.Slot * bolts.HoleDiameter);

    /// <summary>Area of the hole between two lines square to an axis of the flat, mm2.</summary>
    public static double AreaWithin(BoltsDesign bolts, Point2 middle, Point2 across, Interval zone)
    {
        var place = middle.Dot(across);
        var alongSlot = across.V != 0;
        return AreaBelow(bolts, zone.End - place, alongSlot) - AreaBelow(bolts, zone.Start - place, alongSlot);
    }

    /// <summary>Left of, or below, a line that lies so far from the middle; from the hole's own left or lower end.</summary>
    private static double AreaBelow(BoltsDesign bolts, double line, bool alongSlot)
    {
        var (r, half) = (bolts.HoleDiameter / 2, bolts.Slot / 2);
        if (!alongSlot)
            return Segment(r, line) + (2 * half * (Math.Clamp(line, -r, r) + r));
        return Segment(r, Math.Min(line + half, 0)) + (2 * r * (Math.Clamp(line, -half, half) + half))
            + Segment(r, Math.Max(line - half, 0)) - Segment(r, 0);
    }

    /// <summary>Area of a circle below a line that lies so far from its centre, mm2.</summary>
    private static double Segment(double radius, double line)
    {
        var y = Math.Clamp(line, -radius, radius);
        return (radius * radius * (Math.Asin(y / radius) + (Math.PI / 2))) + (y * Math.Sqrt((radius - y) * (radius + y)));
    }
}
