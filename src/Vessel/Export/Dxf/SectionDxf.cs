using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Export.Solids;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Dxf;

/// <summary>Outlines of a section's cut faces, on MARK since nothing in it is to be cut; x along its angle, y up.</summary>
internal static class SectionDxf
{
    /// <summary>
    /// Points nearer than this to the line between their neighbours are left out, mm: less than the facets stand off, and
    /// more than a reader's rounding.
    /// </summary>
    private const double Straight = 0.001;

    public static void Write(AxialSection section, string vessel, DrawingOptions options, Stream to)
    {
        var outlines = section.Pieces
            .SelectMany(piece => piece.Outlines)
            .Select(Plain)
            .Where(points => points.Length > 2)
            .Select(points => Stroke.Through(points, Pens.Mark, closed: true))
            .ToList();
        var notes = FlatDxf.Notes(
            [$"{vessel}: section at {NoteText.Degrees(section.Angle)} deg, mm",
                "from the vessel's axis and the shell's lower edge; not to be cut"],
            outlines);
        DxfDocument.Write([.. outlines, .. notes], options.Release, to);
    }

    /// <summary>Without the points that hardly leave the line between their neighbours.</summary>
    internal static ImmutableArray<Point2> Plain(ImmutableArray<Point2> outline)
    {
        var kept = new List<Point2>();
        for (var i = 0; i < outline.Length; i++)
        {
            var before = kept.Count > 0 ? kept[^1] : outline[^1];
            var (at, after) = (outline[i], outline[(i + 1) % outline.Length]);
            var along = after - before;
            var off = along.Length < Straight ? (at - before).Length : Math.Abs(along.Cross(at - before)) / along.Length;
            if (off >= Straight && (at - before).Length >= Straight)
                kept.Add(at);
        }

        return [.. kept];
    }
}
