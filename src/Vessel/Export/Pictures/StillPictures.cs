using System.Collections.Immutable;
using Vessel.Export.Report.Model;
using Vessel.Export.Solids;
using Vessel.Geometry;

namespace Vessel.Export.Pictures;

/// <summary>The vessel whole and cut open, as PNG: the same for the files and for the report, drawn when first asked for.</summary>
/// <param name="size">Samples of the longer side; half as many pixels.</param>
internal sealed class StillPictures(Build build, int size = 1520)
{
    private const int Margin = 24;

    private const double Degree = Math.PI / 180;

    /// <summary>The plane may have been moved aside by so much, mm, where it ran along a face.</summary>
    private const double PlaneWidth = 0.03;

    private readonly Lazy<ShownModel> _model = new(() => ShownModel.Of(build));
    private Lazy<(Raster Raster, byte[] Png)>? _whole;
    private Lazy<byte[]>? _section;

    public ShownModel Model => _model.Value;

    /// <summary>Seen from before it on the left and from above.</summary>
    public byte[] Whole => WholeDrawn.Png;

    /// <summary>Tells what hides what in <see cref="Whole"/>.</summary>
    public Raster WholeRaster => WholeDrawn.Raster;

    /// <summary>The half behind the section's plane, seen from a little beside it.</summary>
    public byte[] Section => (_section ??= new(DrawSection)).Value;

    private (Raster Raster, byte[] Png) WholeDrawn => (_whole ??= new(DrawWhole)).Value;

    private (Raster Raster, byte[] Png) DrawWhole()
    {
        var model = Model;
        var points = model.Pieces.SelectMany(piece => model.Meshes[piece.Part].Vertices.Select(piece.Place.ToOuter));
        var raster = new Raster(Outlook.Of(points, -50 * Degree, 24 * Degree, size, Margin));
        foreach (var piece in model.Pieces)
            raster.Draw(model.Meshes[piece.Part], piece.Place, piece.Part + 1);
        return (raster, Finished(raster));
    }

    private byte[] DrawSection()
    {
        var section = build.Section;
        var points = section.Pieces.SelectMany(piece => piece.Cut.Mesh.Vertices.Select(piece.Placement.ToOuter));
        // The viewer stands a quarter turn before the direction that lies to the right, and a little to the side of that.
        var raster = new Raster(Outlook.Of(points, section.Angle - (90 * Degree) + (18 * Degree), 20 * Degree, size, Margin));
        var (sin, cos) = Math.SinCos(section.Angle);
        var toViewer = new Vector3(sin, -cos, 0);
        foreach (var piece in section.Pieces)
        {
            var vertices = piece.Cut.Mesh.Vertices;
            bool OnPlane(int vertex) => Math.Abs(piece.Placement.ToOuter(vertices[vertex]).Dot(toViewer)) < PlaneWidth;
            raster.Draw(
                piece.Cut.Mesh,
                piece.Placement,
                build.Parts.IndexOf(piece.Of) + 1,
                triangle => OnPlane(triangle.A) && OnPlane(triangle.B) && OnPlane(triangle.C));
        }

        return Finished(raster);
    }

    private byte[] Finished(Raster raster)
    {
        ImmutableArray<Colour> tints = [.. build.Parts.Select((_, i) => Tints.Of(i))];
        return Png.Of(Finish.Of(raster, tints), raster.Outlook.Width / Finish.Fine, raster.Outlook.Height / Finish.Fine);
    }
}
