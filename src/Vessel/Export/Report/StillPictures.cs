using System.Collections.Immutable;
using Vessel.Export.Pictures;
using Vessel.Export.Report.Model;
using Vessel.Export.Solids;
using Vessel.Geometry;

namespace Vessel.Export.Report;

/// <summary>The vessel whole and cut open, as PNG: the same for the files and for the report, drawn when first asked for.</summary>
internal sealed class StillPictures
{
    private const int Margin = 24;

    private const double Degree = Math.PI / 180;

    /// <summary>The plane may have been moved aside by so much, mm, where it ran along a face.</summary>
    private const double PlaneWidth = 0.03;

    private readonly Build _build;
    private readonly int _size;
    private readonly Lazy<ShownModel> _model;
    private readonly Lazy<(Raster Raster, byte[] Png)> _whole;
    private readonly Lazy<byte[]> _section;

    /// <param name="size">Samples of the longer side; half as many pixels.</param>
    public StillPictures(Build build, int size = 1520)
    {
        (_build, _size) = (build, size);
        _model = new(() => ShownModel.Of(build));
        _whole = new(DrawWhole);
        _section = new(DrawSection);
    }

    public ShownModel Model => _model.Value;

    /// <summary>Seen from before it on the left and from above.</summary>
    public byte[] Whole => _whole.Value.Png;

    /// <summary>Tells what hides what in <see cref="Whole"/>.</summary>
    public Raster WholeRaster => _whole.Value.Raster;

    /// <summary>The half behind the section's plane, seen from a little beside it.</summary>
    public byte[] Section => _section.Value;

    private (Raster Raster, byte[] Png) DrawWhole()
    {
        var model = Model;
        var points = model.Pieces.SelectMany(piece => model.Meshes[piece.Part].Vertices.Select(piece.Place.ToOuter));
        var raster = new Raster(Outlook.Of(points, -50 * Degree, 24 * Degree, _size, Margin));
        foreach (var piece in model.Pieces)
            raster.Draw(model.Meshes[piece.Part], piece.Place, piece.Part + 1);
        return (raster, Finished(raster));
    }

    private byte[] DrawSection()
    {
        var section = _build.Section;
        var points = section.Pieces.SelectMany(piece => piece.Cut.Mesh.Vertices.Select(piece.Placement.ToOuter));
        // The viewer stands a quarter turn before the direction that lies to the right, and a little to the side of that.
        var raster = new Raster(Outlook.Of(points, section.Angle - (90 * Degree) + (18 * Degree), 20 * Degree, _size, Margin));
        var (sin, cos) = Math.SinCos(section.Angle);
        var toViewer = new Vector3(sin, -cos, 0);
        foreach (var piece in section.Pieces)
        {
            var vertices = piece.Cut.Mesh.Vertices;
            bool OnPlane(int vertex) => Math.Abs(piece.Placement.ToOuter(vertices[vertex]).Dot(toViewer)) < PlaneWidth;
            raster.Draw(
                piece.Cut.Mesh,
                piece.Placement,
                _build.Parts.IndexOf(piece.Of) + 1,
                triangle => OnPlane(triangle.A) && OnPlane(triangle.B) && OnPlane(triangle.C));
        }

        return Finished(raster);
    }

    private byte[] Finished(Raster raster)
    {
        ImmutableArray<Colour> tints = [.. _build.Parts.Select((_, i) => Tints.Of(i))];
        return Png.Of(Finish.Of(raster, tints), raster.Outlook.Width / Finish.Fine, raster.Outlook.Height / Finish.Fine);
    }
}
