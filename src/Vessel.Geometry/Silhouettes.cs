using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// Where a curved face turns away from someone who looks along parallel lines: exact, from the surface itself. On a cylinder
/// two straight lines; on a surface of revolution seen square to its axis its two meridians, which are lines of the chart.
/// </summary>
public static class Silhouettes
{
    /// <summary>Two crossings of a bound with one line lie further apart than this share of it.</summary>
    private const int Samples = 128;

    private const int Halvings = 44;

    /// <summary>Pieces of a meridian.</summary>
    private const int Pieces = 32;

    /// <summary>Sine of the angle below which a view counts as along, or square to, an axis.</summary>
    private const double Square = 1e-9;

    /// <summary>Sine of the angle to the view below which a face counts as upright at its rim: 3 degrees.</summary>
    private const double Upright = 0.05;

    /// <summary>Whether silhouettes of every curved face are found; planes have none.</summary>
    public static bool AreExact(Solid solid, Vector3 toward) => solid.Faces.OfType<Skin>().All(skin => skin.On switch
    {
        PlaneSurface or CylinderSurface => true,
        SphereSurface or RevolvedSurface => IsSquare(toward) || IsAlong(toward),
        _ => false,
    });

    /// <param name="toward">Unit direction to the viewer, in the solid's own frame.</param>
    /// <returns>Points of each curve with the unit normals there, out of the metal and square to the view.</returns>
    public static IEnumerable<ImmutableArray<(Vector3 At, Vector3 Normal)>> Of(Solid solid, Vector3 toward) =>
        solid.Faces.OfType<Skin>().SelectMany(skin => skin.On switch
    {
        CylinderSurface cylinder when !IsAlong(toward) => OnCylinder(skin, cylinder, toward),
        SphereSurface or RevolvedSurface when IsSquare(toward) => OnMeridians(skin, toward),
        SphereSurface or RevolvedSurface when IsAlong(toward) => OnRims(skin, toward),
        _ => [],
    });

    private static bool IsAlong(Vector3 toward) => double.Hypot(toward.X, toward.Y) < Square;

    private static bool IsSquare(Vector3 toward) => Math.Abs(toward.Z) < Square;

    private static IEnumerable<double> Sides(Vector3 toward)
    {
        var facing = Math.Atan2(toward.Y, toward.X);
        return [facing + (Math.PI / 2), facing - (Math.PI / 2)];
    }

    /// <summary>The face's bounds cut the line into pieces; metal begins at the lowest.</summary>
    private static IEnumerable<ImmutableArray<(Vector3 At, Vector3 Normal)>> OnCylinder(Skin skin, CylinderSurface on, Vector3 toward)
    {
        foreach (var side in Sides(toward))
        {
            var u = on.Radius * side;
            double Off(Point2 chart) => (chart.U - u) / (Turns.Full * on.Radius);
            var cuts = skin.Bounds
                .SelectMany(bound => Crossings(bound, chart => Off(chart) - Math.Round(Off(chart)), 0.5))
                .Select(chart => chart.V)
                .Order()
                .ToList();
            for (var i = 0; i + 1 < cuts.Count; i += 2)
                yield return [On(skin, new(u, cuts[i])), On(skin, new(u, cuts[i + 1]))];
        }
    }

    /// <summary>Seen along its axis a dome ends at the rim where it stands upright.</summary>
    private static IEnumerable<ImmutableArray<(Vector3 At, Vector3 Normal)>> OnRims(Skin skin, Vector3 toward) => skin.Bounds
        .Select(bound => Enumerable.Range(0, Samples + 1)
            .Select(i => On(skin, bound.Image(bound.Edge.Domain.At((double)i / Samples))))
            .ToImmutableArray())
        .Where(rim => rim.All(point => Math.Abs(point.Normal.Dot(toward)) < Upright));

    /// <summary>Outward from the chart's origin, which is inside the face when bounds are crossed an odd number of times.</summary>
    private static IEnumerable<ImmutableArray<(Vector3 At, Vector3 Normal)>> OnMeridians(Skin skin, Vector3 toward)
    {
        foreach (var side in Sides(toward))
        {
            var way = Point2.Polar(1, side);
            var cuts = skin.Bounds
                .SelectMany(bound => Crossings(bound, chart => way.Cross(chart), double.PositiveInfinity))
                .Select(way.Dot)
                .Where(along => along > 0)
                .Order()
                .ToList();
            if (cuts.Count % 2 == 1)
                cuts.Insert(0, 0);
            for (var i = 0; i + 1 < cuts.Count; i += 2)
            {
                var (from, length) = (cuts[i], cuts[i + 1] - cuts[i]);
                yield return [.. Enumerable.Range(0, Pieces + 1).Select(k => On(skin, (from + (length * k / Pieces)) * way))];
            }
        }
    }

    private static (Vector3 At, Vector3 Normal) On(Skin skin, Point2 chart)
    {
        var normal = skin.On.Normal(chart);
        return (skin.On.At(chart), skin.Outward ? normal : -normal);
    }

    /// <summary>Chart points of the bound where the function changes its sign by less than a jump.</summary>
    private static IEnumerable<Point2> Crossings(Bound bound, Func<Point2, double> off, double jump)
    {
        var domain = bound.Edge.Domain;
        double At(double t) => off(bound.Image(t));
        // Off round fractions, where corners are and where a bound may touch the line.
        double Sample(int i) => domain.At((i + 0.318) / Samples);
        var (low, below) = (Sample(0), At(Sample(0)));
        var first = below;
        for (var i = 1; i < Samples; i++)
        {
            var (high, above) = (Sample(i), At(Sample(i)));
            if (Changes(below, above, jump))
                yield return bound.Image(Root(At, low, high));
            (low, below) = (high, above);
        }

        // The last piece runs over the domain's end, which is its start; rounding may hide a change just there from both sides.
        if (Changes(below, first, jump))
        {
            yield return bound.Image(
                Changes(below, At(domain.End), jump) ? Root(At, low, domain.End)
                : Changes(At(domain.Start), first, jump) ? Root(At, domain.Start, Sample(0))
                : domain.End);
        }
    }

    private static bool Changes(double a, double b, double jump) => (a < 0) != (b < 0) && Math.Abs(a - b) < jump;

    private static double Root(Func<double, double> at, double low, double high)
    {
        var negative = at(low) < 0;
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            if (at(middle) < 0 == negative)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }
}
