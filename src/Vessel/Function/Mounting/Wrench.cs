using Vessel.Geometry;

namespace Vessel.Function;

/// <summary>
/// Force and moment at a place for a load in any direction: each component is the scalar product of its vector here with the unit vector
/// of that direction; N and N mm.
/// </summary>
internal readonly record struct Wrench(Vector3 Fx, Vector3 Fy, Vector3 Fz, Vector3 Mx, Vector3 My, Vector3 Mz)
{
    public Vector3 this[int component] => component switch
    {
        0 => Fx,
        1 => Fy,
        2 => Fz,
        3 => Mx,
        4 => My,
        _ => Mz,
    };

    /// <summary>Wrench of a force that acts at the place itself, N.</summary>
    public static Wrench Of(double force) =>
        new(force * Vector3.UnitX, force * Vector3.UnitY, force * Vector3.UnitZ, default, default, default);

    /// <param name="rows">Six rows of three columns, which stand for the directions.</param>
    public static Wrench Of(SmallMatrix rows)
    {
        Vector3 Row(int i) => new(rows[i, 0], rows[i, 1], rows[i, 2]);
        return new(Row(0), Row(1), Row(2), Row(3), Row(4), Row(5));
    }

    /// <summary>The wrench about another place.</summary>
    public Wrench At(Vector3 from, Vector3 to)
    {
        var p = from - to;
        return this with
        {
            Mx = Mx + (p.Y * Fz) - (p.Z * Fy),
            My = My + (p.Z * Fx) - (p.X * Fz),
            Mz = Mz + (p.X * Fy) - (p.Y * Fx),
        };
    }

    /// <summary>Components along the axes of a frame.</summary>
    public Wrench In(Frame3 axes)
    {
        var (fx, fy, fz, mx, my, mz) = this;
        Vector3 Force(Vector3 axis) => (axis.X * fx) + (axis.Y * fy) + (axis.Z * fz);
        Vector3 Moment(Vector3 axis) => (axis.X * mx) + (axis.Y * my) + (axis.Z * mz);
        return new(Force(axes.X), Force(axes.Y), Force(axes.Z), Moment(axes.X), Moment(axes.Y), Moment(axes.Z));
    }

    /// <summary>The greatest sum of these, each with either sign, over all directions.</summary>
    public static double Worst(params ReadOnlySpan<Vector3> shares)
    {
        var most = 0.0;
        for (var signs = 0; signs < 1 << shares.Length; signs++)
        {
            var sum = Vector3.Zero;
            for (var i = 0; i < shares.Length; i++)
                sum += (signs >> i & 1) == 0 ? shares[i] : -shares[i];
            most = Math.Max(most, sum.Length);
        }

        return most;
    }
}
