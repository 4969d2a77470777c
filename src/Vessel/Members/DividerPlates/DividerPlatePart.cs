using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Members.DividerPlates;

/// <summary>The plate of a divider. Its frame has the lower face at z = 0 and stands at the divider's height.</summary>
internal static class DividerPlatePart
{
    private const double LetterHeight = 4;

    private const double CrossReach = 5;

    public static Part Build(DividerPlateDesign plate, Welds welds)
    {
        ImmutableArray<Loop2> holes = plate.Vent > 0 ? [Loop2.Circle(VentMiddle(plate), plate.Vent / 2, clockwise: true)] : [];
        var cut = new Region2(Rim(plate), holes);
        return new(
            Slug.Of(plate.Name),
            plate.Name,
            PartKind.Member,
            plate.Material,
            plate.Thickness,
            StockPieces.Disc(plate.OutsideDiameter, plate.Thickness, plate.Material),
            [Frame3.At(new(0, 0, plate.Height))],
            ThickSolid.Plate(cut, plate.Thickness),
            CurveMeasures.Area(cut) * plate.Thickness,
            new(FlatKind.Sheet, cut, Marks(plate, welds), [], Notes(plate), new PlaneDevelopment(), "plate"),
            [.. holes.Select(hole => new Hole(
                1, $"vent hole of {plate.Name}", VentMiddle(plate), hole, plate.Vent, null, null, HoleMethods.Through(plate.Vent), null))],
            plate.Path)
        {
            Word = "disc",
            IsInside = true,
            Centre = Centre(plate, cut),
        };
    }

    /// <summary>A place along the notch's edge, at a share of it; null where there is none.</summary>
    public static Point2? NotchAt(DividerPlateDesign plate, double share) => plate.Notch > 0 ? Notch(plate).At(share) : null;

    /// <summary>A place along the vent hole's edge, at a share of it; null where there is none.</summary>
    public static Point2? VentAt(DividerPlateDesign plate, double share) =>
        plate.Vent > 0 ? VentMiddle(plate) + Point2.Polar(plate.Vent / 2, Turns.Full * share) : null;

    /// <summary>A circle, or what the notch's circle about a place on it leaves of it.</summary>
    private static Loop2 Rim(DividerPlateDesign plate) => plate.Notch > 0
        ? new([new Arc2(default, plate.Radius, plate.NotchAngle + plate.HalfNotch, Turns.Full - (2 * plate.HalfNotch)), Notch(plate)])
        : Loop2.Circle(default, plate.Radius);

    /// <summary>Clockwise about its middle on the rim: chords of the rim stand at half of their angle off the tangent.</summary>
    private static Arc2 Notch(DividerPlateDesign plate) => new(
        Point2.Polar(plate.Radius, plate.NotchAngle), plate.Notch, plate.NotchAngle - ((Math.PI + plate.HalfNotch) / 2),
            plate.HalfNotch - Math.PI);

    private static Point2 VentMiddle(DividerPlateDesign plate) => Point2.Polar(plate.VentRadius, plate.NotchAngle + Math.PI);

    private static Vector3 Centre(DividerPlateDesign plate, Region2 cut)
    {
        var at = CurveMeasures.Centre(cut);
        return new(at.U, at.V, plate.Height + (plate.Thickness / 2));
    }

    private static ImmutableArray<Mark> Marks(DividerPlateDesign plate, Welds welds)
    {
        var words = $"{plate.Name} {welds.One(WeldRole.Hold, plate.Path)}";
        // At half the radius a chord is sqrt 3 radii long.
        var letter = Math.Min(LetterHeight, plate.Radius / TextMark.Width(words, 1));
        return
        [
            new LineMark(new(-CrossReach, 0), new(CrossReach, 0)),
            new LineMark(new(0, -CrossReach), new(0, CrossReach)),
            new TextMark(words, new(0, -plate.Radius / 2), letter, 0),
        ];
    }

    private static ImmutableArray<string> Notes(DividerPlateDesign plate) =>
    [
        $"{plate.Name.ToUpperInvariant()}, {plate.Material.Name}, {NoteText.Length(plate.Thickness)} mm, diameter "
            + $"{NoteText.Length(plate.OutsideDiameter)} mm",
        "UPPER FACE UP. Millimetres, from the centre; angles as on the vessel.",
        .. plate.Notch > 0
            ? new[] { $"Drain notch, radius {NoteText.Length(plate.Notch)} mm, at {NoteText.Degrees(plate.NotchAngle)} deg: leave it free "
                + "of weld." }
            : [],
        $"Welded all round on one face, {NoteText.Length(plate.Clearance)} mm clear.",
    ];
}
