using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export.Solids;

/// <summary>
/// The assembly cut in half by a plane through the vessel's axis: what lies behind the plane, as seen with the direction
/// <paramref name="Angle"/> to the right and up upward.
/// </summary>
/// <param name="Angle">Round the vessel, radians.</param>
/// <param name="Pieces">Those that the plane leaves something of.</param>
public sealed record AxialSection(double Angle, ImmutableArray<SectionPiece> Pieces)
{
    /// <summary>Area of all cut faces, mm2.</summary>
    public double Area => Pieces.Sum(piece => piece.Cut.Area);

    public static AxialSection Of(ImmutableArray<BuiltPart> parts, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        // Z points away from the viewer, up stays up, so X points to the left.
        var behind = new Frame3(Vector3.Zero, new(-cos, -sin, 0), Vector3.UnitZ, new(-sin, cos, 0));
        return new(
            angle,
            [
                .. from built in parts.AsParallel().AsOrdered()
                   from number in Enumerable.Range(0, built.Part.Quantity)
                   let placement = built.Part.Placements[number]
                   let cut = PlaneCut.Of(built.Mesh, placement.ToLocal(behind))
                   where cut.Mesh.Triangles.Length > 0
                   select new SectionPiece(built, Numbered(built, number), placement, cut),
            ]);
    }

    private static string Numbered(BuiltPart built, int number) =>
        built.Part.Quantity == 1 ? built.Part.Name : $"{built.Part.Name} {number + 1}";
}

/// <param name="Placement">Placement of the part, in whose frame the cut is told.</param>
public sealed record SectionPiece(BuiltPart Of, string Name, Frame3 Placement, PlaneCut Cut)
{
    public PlacedSolid Placed => new(Name, Cut.Mesh, [Placement], Of.Part.Material.Name, Colour.Of(Of.Part.Material.Family));

    /// <summary>Cut faces as the viewer sees them: x along the section's angle, y up; metal on the right.</summary>
    public IEnumerable<ImmutableArray<Point2>> Outlines =>
        Cut.Outlines.Select(outline => outline.Select(p => new Point2(-p.U, p.V)).ToImmutableArray());
}
