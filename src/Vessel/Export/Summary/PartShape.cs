using Vessel.Export.Dxf;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Summary;

/// <summary>Layout of one entry of summary.json's <c>parts</c>.</summary>
internal static class PartShape
{
    public static Shape<BuiltPart> Entry { get; } = new RecordShape<BuiltPart>("A part")
        .Text("id", "Also in file names", built => built.Part.Id)
        .Text("name", "As the design calls it", built => built.Part.Name)
        .Text("kind", "Kind of part", built => built.Part.Word)
        .Text("material", "Metal", built => built.Part.Material.Name)
        .Number("thickness_mm", "Of sheet or wall", built => built.Part.Thickness)
        .Count("quantity", "Number of equal ones", built => built.Part.Quantity)
        .Number("mass_g", "Of one", built => built.Part.Mass)
        .Number("volume_mm3", "Of its metal, exact", built => built.Part.Volume)
        .Of("files", built => PartFiles.Of(built.Part), new ItemShape<IEnumerable<(string Role, string Path)>>(
            () => JsonSchemas.Map(
                "By role: flat, wrap, template, solid, holes, holes_drawing", JsonSchemas.Text("Path in the output folder")),
            (json, files) => json.Object(() =>
            {
                foreach (var (role, path) in files)
                    json.Put(role, path);
            })))
        .Of("placement", built => built.Part.Placements, new ItemShape<IReadOnlyList<Frame3>>(
            () => JsonSchemas.Any(
                "4 x 4 matrix by rows that takes the part to its place, mm; a list of them for several",
                Matrix("Rows").Schema(),
                JsonSchemas.List("Places", Matrix("Rows").Schema())),
            WritePlacements))
        .Optional("flat", built => built.Fitted is null ? null : built, Flat())
        .Optional("patterns", built => built.Part.Fields.IsEmpty ? null : built.Part.Fields.AsEnumerable(),
            Items.List("Holes by rule", Pattern()))
        .Object("solid", "The mesh in the STL file", built => built, solid => solid
            .Number("volume_mm3", "Volume", built => built.Mesh.Volume)
            .Number("area_mm2", "Surface", built => built.Mesh.Area)
            .Count("triangles", "Facets", built => built.Mesh.Triangles.Length)
            // The mesher refuses to hand out an open mesh.
            .Flag("closed", "Always true", _ => true)
            .Count("genus", "Handles", built => built.Part.Solid.Genus)
            .Number("chord_mm", "Greatest deviation", built => built.Chord)
            // A gore that is only bent would make a faceted head.
            .OptionalChoice(
                "drawn", "Gore and polar cap: as dished, or as bent only",
                built => built.Part.Forming == Forming.Dished ? "round" : null, "round", "faceted"));

    private static Shape<IEnumerable<IEnumerable<double>>> Matrix(string description) =>
        Items.List(description, Items.List("A row", Items.Number("An element")));

    /// <summary>Rows of a 4 x 4 matrix that takes the part's own coordinates to the vessel's; a list of them for several.</summary>
    private static void WritePlacements(SummaryWriter json, IReadOnlyList<Frame3> places)
    {
        void Rows(Frame3 f) => Matrix("Rows").Write(
            json,
            [
                [f.X.X, f.Y.X, f.Z.X, f.Origin.X],
                [f.X.Y, f.Y.Y, f.Z.Y, f.Origin.Y],
                [f.X.Z, f.Y.Z, f.Z.Z, f.Origin.Z],
                [0, 0, 0, 1],
            ]);
        if (places is [var only])
            Rows(only);
        else
            json.List(places, Rows);
    }

    private static RecordShape<BuiltPart> Flat() => new RecordShape<BuiltPart>("Cut outlines")
        .Number("width_mm", "Of the cut lines", built => built.Figures!.WidthMm)
        .Number("height_mm", "Of the cut lines", built => built.Figures!.HeightMm)
        .Number("area_mm2", "Of the metal", built => built.Figures!.AreaMm2)
        .Number("cut_length_mm", "Of all cut lines", built => built.Figures!.CutLengthMm)
        .Count("pierces", "Closed cut lines", built => built.Figures!.Pierces)
        .Count("holes", "Closed cut lines inside the outline", built => built.Figures!.Holes)
        .Count(
            "left_to_cut", "Holes of the part that are made later, when it is formed or welded",
            built => built.Part.Holes.Count(hole => hole.Outline is null))
        .MaybeText("governed_by", "Face of the metal that decided the cut", built => built.Part.Flat!.Governing)
        .Of("development", built => built.Part.Flat!, DevelopmentShape.Entry)
        .Object("fit", "Deviation of the drawing from the curves", built => built, fit => fit
            .Number("tolerance_mm", "Allowed", built => built.Tolerance)
            .Number("deviation_mm", "Reached", built => built.Figures!.DeviationMm)
            .Count("entities", "Lines and arcs", built => built.Figures!.Entities));

    private static RecordShape<HoleField> Pattern() => new RecordShape<HoleField>("Equal round holes")
        .Text("purpose", "Purpose", field => field.Purpose)
        .Choice(
            "kind", "Arrangement", field => field.Lattice is GridLattice2 grid ? grid.Kind.ToString().ToLowerInvariant() : "rings",
            "staggered60", "staggered45", "square", "rings")
        .Number("hole_diameter_mm", "Of each", field => field.Diameter)
        .Number("pitch_mm", "Least distance of centres", field => field.Lattice.Pitch)
        .Number("margin_mm", "From a hole to an edge", field => field.Lattice.Within.Margin)
        .Count("holes", "Whole ones that fit", field => field.Lattice.Count)
        .Number("open_area_mm2", "Of all together", field => field.Lattice.Area)
        .Number("open_share", "Of the plate, 0 to 1", OpenShare);

    /// <summary>Open share of the whole plate, rim and all: what is left for the flow.</summary>
    private static double OpenShare(HoleField field)
    {
        var within = field.Lattice.Within;
        return field.Lattice.Area / (Math.PI * ((within.Outer * within.Outer) - (within.Inner * within.Inner)));
    }
}
