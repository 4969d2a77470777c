using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>What is left of a closed mesh on one side of a plane, closed again by flat caps.</summary>
/// <param name="Mesh">Without triangles where nothing lies on that side.</param>
/// <param name="Outlines">Outlines of the caps, in the plane's X and Y; metal lies on the left.</param>
/// <param name="Area">Area of the caps together, mm2.</param>
public sealed record PlaneCut(Mesh Mesh, ImmutableArray<ImmutableArray<Point2>> Outlines, double Area)
{
    private const int Attempts = 8;

    /// <summary>Attempts before needles are put up with.</summary>
    private const int FineAttempts = 3;

    /// <summary>Neighbours on an outline keep so far apart, mm.</summary>
    public const double Usual = 0.004;

    /// <summary>
    /// The plane is moved aside by so much, mm, where it runs along the mesh so that outlines touch or facets become needles.
    /// </summary>
    private const double Aside = (2 * PlaneCutter.InPlane) + 0.0005;

    /// <summary>Keeps the side that the plane's Z points to.</summary>
    /// <param name="pegs">Pegs on the cap, clear of its outlines and of each other.</param>
    public static PlaneCut Of(Mesh mesh, Frame3 plane, params ImmutableArray<Peg> pegs)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return new PlaneCutter(mesh, plane, pegs).Cut(attempt <= FineAttempts ? Usual : 0);
            }
            catch (InvalidOperationException) when (attempt < Attempts)
            {
                plane = plane with { Origin = plane.ToOuter(new(0, 0, Aside)) };
            }
        }
    }

    /// <summary>A cut at just this plane, which is not moved aside. Throws where outlines touch or facets become needles.</summary>
    /// <param name="close">Neighbours on an outline that are nearer than so become one, mm.</param>
    public static PlaneCut Finely(Mesh mesh, Frame3 plane, double close, params ImmutableArray<Peg> pegs) =>
        new PlaneCutter(mesh, plane, pegs).Cut(close);
}
