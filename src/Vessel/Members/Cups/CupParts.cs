using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Members.Cups;

/// <summary>Heights of a cap, mm in the vessel's frame; it hangs from the top.</summary>
/// <param name="Skirt">Lower and upper end of the skirt.</param>
/// <param name="Plate">Lower and upper face of the plate.</param>
public sealed record CupSite(Interval Skirt, Interval Plate)
{
    public static CupSite Of(CupDesign cap, VesselDesign vessel)
    {
        var face = HeadSite.Of(cap.HangsFrom, vessel).InnerFace;
        if (cap.Opens == CupOpening.Up)
        {
            var foot = face - cap.Skirt;
            return new(new(foot, face), new(foot - cap.Wall, foot));
        }

        var plate = face - cap.Drop - cap.Wall;
        return new(new(plate - cap.Skirt, plate), new(plate, plate + cap.Wall));
    }
}

/// <summary>A cap: a plate, and a skirt that stands on its rim.</summary>
internal static class CupParts
{
    private const double LetterHeight = 4;

    /// <summary>Ids of the two pieces.</summary>
    public static (string Skirt, string Plate) Ids(CupDesign cap) =>
        (Slug.Of(CupDesign.SkirtOf(cap.Name)), Slug.Of(CupDesign.PlateOf(cap.Name)));

    public static Part Skirt(CupDesign cap, VesselDesign vessel, Welds welds)
    {
        var site = CupSite.Of(cap, vessel);
        return new WindowedTube(
            Ids(cap).Skirt, CupDesign.SkirtOf(cap.Name), "skirt", cap.Material,
            cap.OutsideDiameter / 2, cap.Wall, cap.Skirt,
            cap.MadeFrom, cap.MadeFrom == StockForm.Sheet ? cap.SeamAngle : WindowRows.Between(cap.Windows, cap.OutsideDiameter / 2),
            [.. cap.Windows.Select(row => new WindowRow(row, Sill(row, cap)))],
            Frame3.At(new(0, 0, site.Skirt.Start)),
            $"{CupDesign.SkirtOf(cap.Name)} {welds.One(WeldRole.Within, cap.Path)}",
            cap.Path)
        {
            Rolls = vessel.Shop.Rolls,
        }.ToPart();
    }

    /// <summary>
    /// Height of a row's lower edge above the skirt's lower end: <c>up</c> counts from the plate, which lies below or above.
    /// </summary>
    public static double Sill(WindowsDesign row, CupDesign cap) =>
        cap.Opens == CupOpening.Up ? row.Up : cap.Skirt - row.Up - row.Height;

    public static Part Plate(CupDesign cap, VesselDesign vessel, Welds welds)
    {
        var site = CupSite.Of(cap, vessel);
        var radius = cap.OutsideDiameter / 2;
        // The outside of the cup is up on the flat: below when it opens up.
        var frame = cap.Opens == CupOpening.Up
            ? new Frame3(new(0, 0, site.Plate.End), Vector3.UnitX, -Vector3.UnitY, -Vector3.UnitZ)
            : Frame3.At(new(0, 0, site.Plate.Start));
        var opening = MiddleHole(cap, vessel);
        ImmutableArray<Loop2> holes = opening > 0 ? [Loop2.Circle(default, opening / 2, clockwise: true)] : [];
        // The skirt stands on the rim, so the pattern keeps its margin from the skirt's inside.
        ImmutableArray<HoleField> fields = cap.Pattern is { } pattern
            ? [new($"pattern of {cap.Name}", HoleFields.Of(pattern, radius - cap.Wall, opening / 2), pattern.Path)]
            : [];
        var cut = new Region2(Loop2.Circle(default, radius), holes) { Fields = [.. fields.Select(field => field.Lattice)] };
        return new(
            Ids(cap).Plate,
            CupDesign.PlateOf(cap.Name),
            PartKind.Member,
            cap.Material,
            cap.Wall,
            StockPieces.Disc(cap.OutsideDiameter, cap.Wall, cap.Material),
            [frame],
            ThickSolid.Plate(cut, cap.Wall),
            CurveMeasures.Area(cut) * cap.Wall,
            new(FlatKind.Sheet, cut, Marks(cap, radius, opening, welds), [], Notes(cap), new PlaneDevelopment(), "plate"),
            opening > 0 ? [Middle(cap, opening, holes[0])] : [],
            cap.Path)
        {
            Word = "plate",
            IsInside = true,
            Fields = fields,
        };
    }

    /// <summary>Diameter of the hole in the plate's middle: for the drain, or for the outlet that carries the cap.</summary>
    private static double MiddleHole(CupDesign cap, VesselDesign vessel) =>
        cap.Outlet is { } outlet
            ? vessel.Ports.Single(port => port.Name == outlet).OutsideDiameter + (2 * cap.Clearance)
            : cap.DrainHole;

    private static Hole Middle(CupDesign cap, double diameter, Loop2 outline) => new(
        1, cap.Outlet is { } outlet ? $"way for {outlet}" : "drain", default, outline, diameter, null, null,
        HoleMethods.Through(diameter), null)
    {
        Clearance = cap.Outlet is null ? null : cap.Clearance,
    };

    private static ImmutableArray<Mark> Marks(CupDesign cap, double radius, double opening, Welds welds)
    {
        var text = $"{CupDesign.PlateOf(cap.Name)} {welds.One(WeldRole.Within, cap.Path)}";
        var cross = Math.Max(4, (opening / 2) + 2);
        ImmutableArray<Mark> middle = [new LineMark(new(-cross, 0), new(cross, 0)), new LineMark(new(0, -cross), new(0, cross))];
        // Letters would run across the holes of a pattern; the note names the part.
        return cap.Pattern is not null
            ? middle
            : middle.Add(new TextMark(
                text, new(0, -Math.Max(radius / 2, (opening / 2) + LetterHeight)), Math.Min(LetterHeight, radius / 8), 0));
    }

    private static ImmutableArray<string> Notes(CupDesign cap) =>
    [
        $"{cap.Name.ToUpperInvariant()} PLATE, {cap.Material.Name}, {NoteText.Length(cap.Wall)} mm, diameter "
            + $"{NoteText.Length(cap.OutsideDiameter)} mm",
        "OUTSIDE FACE OF THE CUP UP. Millimetres, from the centre.",
        cap.Opens == CupOpening.Up ? "The skirt stands on the other face; the cup opens up."
            : "The skirt stands on the other face; the cup hangs open.",
    ];
}
