using Vessel.Design;
using Vessel.Export.Paper;
using Vessel.Parts;

namespace Vessel.Export;

/// <summary>The files of a part, by role; paths relative to the output folder.</summary>
internal static class PartFiles
{
    public static IEnumerable<(string Role, string Path)> Of(Part part)
    {
        if (part.Flat is { } flat)
        {
            yield return flat.Kind == FlatKind.Wrap
                ? ("wrap", $"wraps/{Stem(part)}.dxf")
                : ("flat", $"flats/{Stem(part)}.dxf");
        }

        if (TemplatesPdf.Has(part))
            yield return ("template", $"templates/{part.Id}.pdf");
        yield return ("solid", $"solids/{part.Id}.stl");
        if (part.Holes.IsEmpty && part.Fields.IsEmpty)
            yield break;
        yield return ("holes", $"holes/{part.Id}.csv");
        yield return ("holes_drawing", $"holes/{part.Id}.dxf");
    }

    /// <summary>Part, material, thickness and quantity, so that a file that is sent alone still says what it is.</summary>
    private static string Stem(Part part) =>
        $"{part.Id}_{Slug.Of(part.Material.Name)}_{Numbers.Text(part.Thickness, 3)}mm_x{part.Quantity}";
}
