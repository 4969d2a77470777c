using System.Collections.Immutable;
using Vessel.Export.Solids;
using Vessel.Geometry;

namespace Vessel.Export.General;

/// <summary>One piece where it stands, with its sharp edges in the vessel's frame.</summary>
/// <param name="Part">Number of the part in the list of parts, from zero.</param>
internal sealed record Piece(int Part, Mesh Mesh, Frame3 Frame, Solid Solid, double Sharp, ImmutableArray<(Vector3 A, Vector3 B)> Edges)
{
    private const int MostHoles = 60;

    /// <param name="sharp">Edges that turn by more are drawn, radians.</param>
    public static IEnumerable<Piece> Of(int number, BuiltPart built, double sharp)
    {
        var edges = SharpEdges.Of(built.Mesh, sharp);
        return built.Part.Placements.Select(frame => new Piece(number, built.Mesh, frame, built.Part.Solid, sharp, Placed(edges, frame)));
    }

    /// <summary>
    /// What a cut leaves of one. Of a plate with many holes only the outlines of its cut faces are drawn: the rims of the holes
    /// behind would be thousands of lines on the same two.
    /// </summary>
    public static Piece Of(int number, SectionPiece cut, View view, double sharp)
    {
        var (mesh, frame) = (cut.Cut.Mesh, cut.Placement);
        Vector3 InPlane(Point2 p) => (p.U * view.Right) + (p.V * view.Up);
        return new(
            number,
            mesh,
            frame,
            cut.Of.Part.Solid,
            sharp,
            cut.Of.Part.Flat?.Cut.FieldHoles > MostHoles
                ? [.. cut.Outlines.SelectMany(line => line.Zip(line.Skip(1).Append(line[0])))
                    .Select(pair => (InPlane(pair.First), InPlane(pair.Second)))]
                : Placed(SharpEdges.Of(mesh, sharp), frame));
    }

    /// <summary>Where its curved faces turn away: from the surfaces, or from the facets of one whose silhouettes are not known.</summary>
    /// <returns>Points of each curve with the normals there; none where the curve is an edge of facets.</returns>
    public IEnumerable<ImmutableArray<(Vector3 At, Vector3 Normal)>> Turns(Vector3 toward)
    {
        var local = new Vector3(toward.Dot(Frame.X), toward.Dot(Frame.Y), toward.Dot(Frame.Z));
        var frame = Frame;
        return Silhouettes.AreExact(Solid, local)
            ? Silhouettes.Of(Solid, local)
                .Select(curve => ImmutableArray.CreateRange(curve, point => (frame.ToOuter(point.At), frame.Turn(point.Normal))))
            : SharpEdges.Turning(Mesh, Sharp, local)
                .Select(edge => ImmutableArray.Create((frame.ToOuter(edge.A), Vector3.Zero), (frame.ToOuter(edge.B), Vector3.Zero)));
    }

    private static ImmutableArray<(Vector3 A, Vector3 B)> Placed(ImmutableArray<(Vector3 A, Vector3 B)> edges, Frame3 frame) =>
        ImmutableArray.CreateRange(edges, edge => (frame.ToOuter(edge.A), frame.ToOuter(edge.B)));
}
