using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>
/// The shape of a part as far as it keeps a torch away, in closed form. A closed set: <see cref="RingBody"/>,
/// <see cref="DomeBody"/>, <see cref="ConeBody"/>, <see cref="BoxBody"/>. Openings in it are not seen.
/// </summary>
/// <param name="Part">Id.</param>
internal abstract record Body(string Part)
{
    /// <summary>Shapes are this much smaller than the parts, so that a ray along a face is free, mm.</summary>
    protected const double Skin = 0.01;

    /// <summary>Whether turning it round the vessel's axis changes nothing.</summary>
    public virtual bool IsCoaxial => true;

    /// <summary>Whether a ray meets it. <paramref name="way"/> is a unit vector.</summary>
    public abstract bool Stops(Vector3 from, Vector3 way);

    /// <summary>
    /// Whether a |d|^2-like quadratic a t^2 + 2 b t + c takes a value between two squares somewhere on a span of t >= 0:
    /// it is convex, so its least value lies at its vertex and its greatest at an end; between them it takes every value.
    /// </summary>
    protected static bool Meets((double Start, double End) span, (double A, double B, double C) q, double inner, double outer)
    {
        if (!(span.Start <= span.End))
            return false;
        double At(double t) => double.IsInfinity(t) ? (q.A > 0 ? t : q.C) : (((q.A * t) + (2 * q.B)) * t) + q.C;
        var lowest = At(q.A > 0 ? Math.Clamp(-q.B / q.A, span.Start, span.End) : span.Start);
        return lowest <= outer * outer && Math.Max(At(span.Start), At(span.End)) >= inner * inner;
    }

    /// <summary>Where along a ray a coordinate lies between two values; empty (start beyond end) where it never does.</summary>
    protected static (double Start, double End) Slab(double at, double speed, double low, double high, (double Start, double End) within)
    {
        if (speed == 0)
            return at >= low && at <= high ? within : (1, 0);
        var (a, b) = ((low - at) / speed, (high - at) / speed);
        return (Math.Max(within.Start, Math.Min(a, b)), Math.Min(within.End, Math.Max(a, b)));
    }

    protected static (double Start, double End) Ahead => (0, double.PositiveInfinity);
}

/// <summary>A tube, ring or disc along the Z of its frame.</summary>
/// <param name="Inner">Radius of its bore, mm; zero for a disc.</param>
internal sealed record RingBody(string Part, Frame3 Frame, double Inner, double Outer, double Low, double High) : Body(Part)
{
    public override bool IsCoaxial =>
        Math.Abs(Frame.Z.Z) > 1 - 1e-12 && Math.Abs(Frame.Origin.X) < 1e-9 && Math.Abs(Frame.Origin.Y) < 1e-9;

    public override bool Stops(Vector3 from, Vector3 way)
    {
        var o = Frame.ToLocal(from);
        var (x, y, z) = (way.Dot(Frame.X), way.Dot(Frame.Y), way.Dot(Frame.Z));
        var span = Slab(o.Z, z, Low + Skin, High - Skin, Ahead);
        return Meets(
            span, ((x * x) + (y * y), (o.X * x) + (o.Y * y), (o.X * o.X) + (o.Y * o.Y)), Inner > 0 ? Inner + Skin : 0, Outer - Skin);
    }
}

/// <summary>A head of revolution: its pole on -Z of its frame, its rim towards +Z, round everywhere (no inner corner).</summary>
internal sealed record DomeBody(string Part, Frame3 Frame, Profile Outer, Profile Inner) : Body(Part)
{
    private const int Halvings = 60;

    private readonly double _widest = Outer.Pieces.Max(piece => piece.At(piece.Length).U);

    /// <summary>
    /// From outside: the distance from the axis less the outside radius at that height is convex along a ray, since the head is;
    /// it is stopped where the least of it is below zero. From inside it goes free through the rim alone.
    /// </summary>
    public override bool Stops(Vector3 from, Vector3 way)
    {
        var o = Frame.ToLocal(from);
        var d = new Vector3(way.Dot(Frame.X), way.Dot(Frame.Y), way.Dot(Frame.Z));
        var reach = 2 * (o.Length + Outer.End.U - Outer.Start.V);
        var span = Slab(o.Z, d.Z, Outer.Start.V + Skin, Outer.End.V - Skin, (0, reach));
        if (!(span.Start <= span.End))
            return false;
        var (speed, toward) = ((d.X * d.X) + (d.Y * d.Y), (o.X * d.X) + (o.Y * d.Y));
        // Most rays pass it by.
        if (FromAxis(speed > 0 ? Math.Clamp(-toward / speed, span.Start, span.End) : span.Start) > _widest)
            return false;
        if (FromAxis(span.Start) < Inner.RadiusAt(o.Z + (span.Start * d.Z)))
            return !(d.Z > 0 && FromAxis(span.End) < Inner.End.U);
        double Off(double t) => FromAxis(t) - Outer.RadiusAt(o.Z + (t * d.Z));
        // Most rays lead away from it, and then the first place is the nearest.
        if (Off(span.Start) <= Off(Math.Min(span.End, span.Start + Skin)))
            return Off(span.Start) < -Skin;
        var (low, high) = span;
        for (var i = 0; i < Halvings && high - low > Skin; i++)
        {
            var (a, b) = (low + ((high - low) / 3), high - ((high - low) / 3));
            var (atA, atB) = (Off(a), Off(b));
            if (Math.Min(atA, atB) < -Skin)
                return true;
            (low, high) = atA < atB ? (low, b) : (a, high);
        }

        return Off((low + high) / 2) < -Skin;

        double FromAxis(double t)
        {
            var (x, y) = (o.X + (t * d.X), o.Y + (t * d.Y));
            return Math.Sqrt((x * x) + (y * y));
        }
    }
}

/// <summary>A conical course of the shell, in the vessel's frame.</summary>
internal sealed record ConeBody(string Part, ShellCourse Course) : Body(Part)
{
    /// <summary>Places looked at along the part of a ray between its edges: they lie closer than a wall.</summary>
    private const int Most = 400;

    public override bool Stops(Vector3 from, Vector3 way)
    {
        // Beyond its own size nothing of it is left.
        var reach = from.Length + (2 * (Course.Low + Course.High + Course.End));
        var span = Slab(from.Z, way.Z, Course.Start + Skin, Course.End - Skin, (0, reach));
        if (!(span.Start <= span.End))
            return false;
        var steps = (int)Math.Clamp(Math.Ceiling((span.End - span.Start) / (Course.Wall / 4)), 1, Most);
        var last = 0;
        for (var i = 0; i <= steps; i++)
        {
            var at = from + ((span.Start + ((span.End - span.Start) * i / steps)) * way);
            var (ring, outer) = (double.Hypot(at.X, at.Y), Course.OuterAt(at.Z));
            // Outside, in the wall, or inside; a ray that passes from one side to the other met the wall between two places.
            var side = ring > outer - Skin ? 1 : ring < outer - Course.Across + Skin ? -1 : 0;
            if (side == 0 || side == -last)
                return true;
            last = side;
        }

        return false;
    }
}

/// <summary>A box square to its frame.</summary>
internal sealed record BoxBody(string Part, Frame3 Frame, Vector3 Low, Vector3 High) : Body(Part)
{
    public override bool IsCoaxial => false;

    public override bool Stops(Vector3 from, Vector3 way)
    {
        var o = Frame.ToLocal(from);
        var span = Slab(o.X, way.Dot(Frame.X), Low.X + Skin, High.X - Skin, Ahead);
        span = Slab(o.Y, way.Dot(Frame.Y), Low.Y + Skin, High.Y - Skin, span);
        span = Slab(o.Z, way.Dot(Frame.Z), Low.Z + Skin, High.Z - Skin, span);
        return span.Start <= span.End;
    }
}
