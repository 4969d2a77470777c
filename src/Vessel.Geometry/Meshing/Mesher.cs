using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>Turns a solid into a closed mesh that stays within a chord of it.</summary>
public static class Mesher
{
    /// <summary>
    /// Flattens every edge once, then every face between its edges. Facets lie within <c>accuracy.Chord</c> of the
    /// surface; along edges they turn by <c>accuracy.Angle</c> at most, but for the holes of a field, which are small and
    /// many.
    /// </summary>
    public static Mesh Flatten(Solid solid, Accuracy accuracy)
    {
        var mesh = new MeshBuilder();
        var skins = solid.Faces.OfType<Skin>().Select(skin => (Skin: skin, Cut: SkinCut.Of(skin))).ToList();
        var walls = solid.Faces.OfType<SideFace>().ToLookup(wall => wall.A);
        foreach (var group in Groups(solid))
        {
            var demanded = skins
                .SelectMany(
                    s => s.Skin.Bounds.Where(bound => group.Contains(bound.Edge)).SelectMany(bound => Demanded(bound, s.Skin.On, s.Cut)));
            var near = Near(solid, group, accuracy);
            ImmutableArray<double> parameters =
                [.. WallMesher.Refined(
                    group.SelectMany(edge => walls[edge]).ToList(), EdgePoints.Choose(group, demanded, near), near.Chord)];
            foreach (var edge in group)
                mesh.AddRing(edge, parameters);
        }

        foreach (var (skin, cut) in skins)
            SkinMesher.Add(skin, cut, mesh, accuracy);
        foreach (var plate in solid.Faces.OfType<PerforatedFaces>())
            PerforatedMesher.Add(plate, mesh, accuracy);
        foreach (var wall in solid.Faces.OfType<SideFace>())
            WallMesher.Add(wall, mesh, accuracy);
        return mesh.ToMesh();
    }

    /// <summary>Where a bound must get vertices for its skin's sake: on the cut and on creases.</summary>
    private static IEnumerable<double> Demanded(Bound bound, Surface on, double? cut) =>
        EdgePoints.Crossings(bound, cut, on.Period ?? 0, on.Creases);

    /// <summary>Beside a field of holes facets of the rim stay well within the margin.</summary>
    private static Accuracy Near(Solid solid, List<Edge3> group, Accuracy accuracy) => solid.Faces
        .OfType<PerforatedFaces>()
        .Where(plate => plate.Bounds.Any(bound => group.Contains(bound.Upper)))
        .Aggregate(accuracy, (near, plate) => near with { Chord = Math.Min(near.Chord, plate.Field.Within.Margin / 2) });

    /// <summary>Edges in the order of the faces, those that walls tie together in one group.</summary>
    private static List<List<Edge3>> Groups(Solid solid)
    {
        var groups = new List<List<Edge3>>();
        List<Edge3> GroupOf(Edge3 edge)
        {
            var group = groups.Find(g => g.Contains(edge));
            if (group is null)
                groups.Add(group = [edge]);
            return group;
        }

        foreach (var bound in solid.Faces.OfType<Skin>().SelectMany(skin => skin.Bounds))
            GroupOf(bound.Edge);
        foreach (var bound in solid.Faces.OfType<PerforatedFaces>().SelectMany(plate => plate.Bounds))
            GroupOf(bound.Upper);
        foreach (var wall in solid.Faces.OfType<SideFace>())
        {
            var (a, b) = (GroupOf(wall.A), GroupOf(wall.B));
            if (a == b)
                continue;
            a.AddRange(b);
            groups.Remove(b);
        }

        return groups;
    }
}
