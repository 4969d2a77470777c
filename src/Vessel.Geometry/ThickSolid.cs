using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// One rim of a thick skin: the end of a tube, the edge of a disc, a hole. Both faces have their own curve, of one
/// parameter; the wall between them joins equal parameters.
/// </summary>
/// <param name="Outer">Image in the outer surface's chart.</param>
/// <param name="Inner">Image in the inner surface's chart.</param>
/// <param name="Winding">Sense of turning, as of <see cref="Bound"/>; the same for both faces.</param>
/// <param name="Through">Place in the wall's thickness, as of <see cref="SideFace"/>; w = 0 on the outer face.</param>
public sealed record Rim(
    Interval Domain,
    ImmutableArray<double> Breaks,
    Func<double, Point2> Outer,
    Func<double, Point2> Inner,
    int Winding = 0,
    Func<double, double, Vector3>? Through = null)
{
    /// <summary>A rim whose two curves have equal chart coordinates: the wall of a square cut through a plate.</summary>
    public static Rim Square(Loop2 loop)
    {
        var path = LoopPath.Of(loop);
        return new(path.Domain, path.Breaks, path.At, path.At);
    }

    /// <summary>The end of a tube along +Z, square to its axis.</summary>
    public static Rim SquareEnd(CylinderSurface outer, CylinderSurface inner, double z) =>
        new(Interval.Turn, [], t => outer.ChartOf(new(t, z)), t => inner.ChartOf(new(t, z)), 1);
}

/// <summary>Sheet with two faces and a wall at every rim: the shape of every plate, tube and spun head.</summary>
public static class ThickSolid
{
    /// <summary>Closed by construction: genus is the number of rims less one.</summary>
    /// <param name="outward">Whether the outer chart's d/du x d/dv points out of the metal; the inner's then does not.</param>
    public static Solid Of(Surface outer, Surface inner, bool outward, ImmutableArray<Rim> rims)
    {
        var outerBounds = ImmutableArray.CreateBuilder<Bound>(rims.Length);
        var innerBounds = ImmutableArray.CreateBuilder<Bound>(rims.Length);
        var faces = ImmutableArray.CreateBuilder<Face>(rims.Length + 2);
        foreach (var rim in rims)
        {
            var a = new Edge3(t => outer.At(rim.Outer(t)), rim.Domain, rim.Breaks);
            var b = new Edge3(t => inner.At(rim.Inner(t)), rim.Domain, rim.Breaks);
            outerBounds.Add(new(a, rim.Outer, rim.Winding));
            innerBounds.Add(new(b, rim.Inner, rim.Winding));
            faces.Add(new SideFace(a, b, rim.Through));
        }

        faces.Add(new Skin(outer, outerBounds.MoveToImmutable(), outward));
        faces.Add(new Skin(inner, innerBounds.MoveToImmutable(), !outward));
        return new(faces.MoveToImmutable());
    }

    /// <summary>
    /// A plate between z = 0 and its thickness, cut square: its outline, single holes, and fields of holes. Genus is the
    /// number of all holes.
    /// </summary>
    /// <exception cref="ArgumentException">More than one field.</exception>
    public static Solid Plate(Region2 region, double thickness)
    {
        var (upper, lower) = (new PlaneSurface(Frame3.At(new(0, 0, thickness))), new PlaneSurface(Frame3.Identity));
        ImmutableArray<Rim> rims = [Rim.Square(region.Outer), .. region.Holes.Select(Rim.Square)];
        if (region.FieldHoles == 0)
            return Of(upper, lower, true, rims);
        if (region.Fields.Length > 1)
            throw new ArgumentException("a plate has one field of holes at most");
        var bounds = rims.Select(rim => (
            new Edge3(t => upper.At(rim.Outer(t)), rim.Domain, rim.Breaks),
            new Edge3(t => lower.At(rim.Outer(t)), rim.Domain, rim.Breaks),
            rim.Outer)).ToImmutableArray();
        return new(
        [
            .. bounds.Select(bound => new SideFace(bound.Item1, bound.Item2)),
            new PerforatedFaces(upper, lower, bounds, region.Fields[0]),
        ]);
    }
}
