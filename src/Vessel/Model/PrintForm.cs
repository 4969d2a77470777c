using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>A member as it is printed with the mock-up: carried on to the vessel's outside, where its welds close the gap.</summary>
/// <param name="Path">Path of its mapping in the file.</param>
/// <param name="Name">What the welder calls it.</param>
/// <param name="Angle">About where it stands round the vessel, radians.</param>
internal abstract record PrintForm(string Path, string Name, double Angle)
{
    public string Id => Slug.Of(Name);

    /// <summary>Footprints of the form on the vessel.</summary>
    public abstract ImmutableArray<Imprint> Feet(Profile outside);

    /// <summary>Handles that it adds: bolt holes, and the loop that two feet make with the vessel.</summary>
    public abstract int Handles { get; }

    /// <summary>How far <see cref="Hulls"/> may lie inside its surface, mm.</summary>
    public abstract double Sagitta { get; }

    /// <summary>
    /// A plane that it is bolted to, by the direction out of the vessel and how far out it lies; null where either side may be.
    /// </summary>
    public abstract (Vector3 Outward, double Level)? BoltedTo { get; }

    /// <summary>What it takes up outside the vessel, before it is carried on.</summary>
    public OutsideBody Body
    {
        get
        {
            ImmutableArray<ConvexBody> hulls = [.. Hulls(InnerLevel)];
            return new(Id, Name, Path, [.. hulls.Select(hull => (hull, Sagitta))], Ball.Round(hulls)) { BoltedTo = BoltedTo };
        }
    }

    /// <summary>Faces of the form, with the edges that each foot shares with the vessel.</summary>
    public abstract (ImmutableArray<Face> Faces, ImmutableArray<ImmutableArray<Edge3>> Feet) Build(Profile outside);

    /// <summary>Convex bodies that together are the member, but for <see cref="Sagitta"/>.</summary>
    /// <param name="reach">How far in each foot may go, from the vessel's axis, mm.</param>
    public abstract ImmutableArray<Hull> Hulls(double reach);

    /// <summary>How far in its metal goes before it is carried on, from the vessel's axis, mm.</summary>
    public abstract double InnerLevel { get; }

    /// <summary>The footprint of a rectangle as four edges between four corners.</summary>
    protected static (ImmutableArray<Corner3> Corners, ImmutableArray<Edge3> Edges) Ring(Imprint foot)
    {
        var corners = Enumerable.Range(0, 4).Select(i => new Corner3(foot.At(i))).ToImmutableArray();
        return (
            corners,
            [.. Enumerable.Range(0, 4).Select(i => new Edge3(foot.At, new(i, i + 1), []) { Ends = (corners[i], corners[(i + 1) % 4]) })]);
    }

    /// <summary>A flat face between edges that lie in its plane.</summary>
    protected static Skin Flat(Frame3 plane, IEnumerable<Edge3> bounds, bool outward)
    {
        Point2 Image(Vector3 at) => plane.ToLocal(at) is var local ? new(local.X, local.Y) : default;
        return new(new PlaneSurface(plane), [.. bounds.Select(edge => new Bound(edge, t => Image(edge.At(t))))], outward);
    }
}
