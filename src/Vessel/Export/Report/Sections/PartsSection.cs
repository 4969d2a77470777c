using Vessel.Export.Report.Drawing;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Planning;

namespace Vessel.Export.Report.Sections;

/// <summary>Each part with its flat, its holes and its files.</summary>
internal static class PartsSection
{
    public static ReportSection Section { get; } = new("parts", "Parts: flats and holes", (report, html) =>
    {
        html.Tag("p", "Every flat is drawn with the finished part's outside face up. Names and numbers are those on the drawings.");
        foreach (var built in report.Build.Parts)
            WritePart(built, report.Sizes, html);
    });

    private static void WritePart(BuiltPart built, Sizes sizes, Html html)
    {
        var part = built.Part;
        html.Tag(
            "details",
            () =>
            {
                html.Tag("summary", () =>
                {
                    html.Tag("h3", part.Name);
                    html.Text(
                        $" {Sizes.Count(part.Quantity)} of {part.Material.Name}, {StockWords.Section(part, sizes.Fine)} {sizes.Unit}");
                });
                if (part.Flat is { } flat)
                    WriteFlat(built, flat, sizes, html);
                WriteHoles(part, sizes, html);
                WritePatterns(part, sizes, html);
                html.Tag(
                    "p",
                    () =>
                    {
                        html.Text("Files:");
                        foreach (var (_, path) in PartFiles.Of(part))
                        {
                            html.Text(" ");
                            html.Link(path, path);
                        }
                    },
                    ("class", "files"));
            },
            ("id", $"part-{part.Id}"),
            ("class", "part"),
            ("open", string.Empty));
    }

    private static void WriteFlat(BuiltPart built, Flat flat, Sizes sizes, Html html)
    {
        html.Tag("figure", () =>
        {
            FlatPicture.Of(built, sizes).Write(html);
            var figures = built.Figures!;
            html.Tag("figcaption", $"{Kind(flat)}: {sizes.Length(figures.WidthMm)} x {sizes.Length(figures.HeightMm)} {sizes.Unit}, "
                + $"cut length {sizes.Length(figures.CutLengthMm)} {sizes.Unit}, {Sizes.Count(figures.Pierces)} "
                + $"{(figures.Pierces == 1 ? "pierce" : "pierces")}. "
                + $"Sized by: {flat.Governing}.");
        });
        if (FlatPicture.Leaves(built.Part))
            html.Tag("p", "The pattern has too many holes to be shown here; the drawing has them all.");
        if (flat.Bends.IsEmpty)
            return;
        html.Table(
            $"bends-{built.Part.Id}",
            $"Bends of {built.Part.Name}, in the order in which they are drawn",
            ["Bend", $"Line, {sizes.Unit}", Column.Figure("K")],
            [
                .. flat.Bends.Select((bend, i) => new Cell[]
                {
                    BendLine.Words(i + 1, bend.Angle, sizes.WithUnit(bend.InsideRadius)), Line(bend, sizes), Sizes.Text(bend.K, 2),
                }),
            ]);
    }

    /// <summary>Where a bend line lies on the flat, from its lower left corner.</summary>
    private static string Line(BendLine bend, Sizes sizes)
    {
        var (a, b) = (bend.A, bend.B);
        return Math.Abs(a.U - b.U) < 1e-6 ? $"x = {sizes.Length(a.U)}"
            : Math.Abs(a.V - b.V) < 1e-6 ? $"y = {sizes.Length(a.V)}"
            : $"({sizes.Length(a.U)}, {sizes.Length(a.V)}) to ({sizes.Length(b.U)}, {sizes.Length(b.V)})";
    }

    private static void WriteHoles(Part part, Sizes sizes, Html html)
    {
        if (part.Holes.IsEmpty)
            return;
        var unit = sizes.Unit;
        html.Table(
            $"holes-{part.Id}",
            $"Holes of {part.Name}, from the flat's origin",
            [
                "No.", "For", Column.Figure($"x, {unit}"), Column.Figure($"y, {unit}"), Column.Figure($"Size, {unit}"),
                "Depth", "Made by",
            ],
            [
                .. part.Holes.Select(hole => new Cell[]
                {
                    Sizes.Count(hole.Number), hole.Purpose, sizes.Length(hole.Center.U), sizes.Length(hole.Center.V),
                    hole.Shape?.Text(sizes.Fine) ?? sizes.Fine(hole.Diameter), hole.Depth is { } depth ? sizes.WithUnit(depth) : "through",
                    HoleWords.MadeBy(hole) + Corners(hole, sizes)
                        + (hole.Thread is { } thread ? $" {thread.Thread}, tap drill {sizes.Fine(thread.TapDrill)} {unit}" : string.Empty),
                }),
            ]);
    }

    /// <summary>Where the drill of a window or slot goes.</summary>
    private static string Corners(Hole hole, Sizes sizes) => hole.Shape is null ? string.Empty
        : $"; x and y of the drill: {string.Join(", ", hole.ToolPlaces.Select(at => $"{sizes.Length(at.U)} and {sizes.Length(at.V)}"))}";

    private static void WritePatterns(Part part, Sizes sizes, Html html)
    {
        foreach (var field in part.Fields)
        {
            html.Tag("p", $"{field.Purpose}: {Sizes.Count(field.Lattice.Count)} holes of {sizes.Fine(field.Diameter)} {sizes.Unit} at a "
                + $"pitch of {sizes.Fine(field.Lattice.Pitch)} {sizes.Unit}, {Kind(field.Lattice)}, "
                + $"{HoleWords.Round(field.Diameter, null)}. Each one's place is in the table of holes among the files.");
        }
    }

    private static string Kind(Lattice2 lattice) => lattice switch
    {
        GridLattice2 { Kind: GridKind.Square } => "in squares",
        GridLattice2 { Kind: GridKind.Staggered45 } => "staggered by 45 degrees",
        GridLattice2 => "staggered by 60 degrees",
        _ => "in rings",
    };

    private static string Kind(Flat flat) => flat.Kind switch
    {
        FlatKind.Wrap => "Drawing to wrap round the piece, never to be cut from sheet",
        FlatKind.Blank => "Blank for forming, starting size",
        _ => "Sheet to cut",
    };
}
