using System.Runtime.CompilerServices;

namespace Vessel.Geometry;

/// <summary>
/// A right-handed orthonormal frame. <see cref="Identity"/> is the vessel's own: axis = +Z, up, +X = front.
/// </summary>
public readonly record struct Frame3(Vector3 Origin, Vector3 X, Vector3 Y, Vector3 Z)
{
    public static readonly Frame3 Identity = new(Vector3.Zero, Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ);

    /// <summary>The identity moved to <paramref name="origin"/>.</summary>
    public static Frame3 At(Vector3 origin) => Identity with { Origin = origin };

    /// <summary>A point of this frame in the frame that this one is given in.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector3 ToOuter(Vector3 local) => Origin + Turn(local);

    /// <summary>A direction of this frame in the frame that this one is given in.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector3 Turn(Vector3 local) => (local.X * X) + (local.Y * Y) + (local.Z * Z);

    /// <summary>The inverse of <see cref="Turn"/>.</summary>
    public Vector3 TurnBack(Vector3 outer) => new(outer.Dot(X), outer.Dot(Y), outer.Dot(Z));

    /// <summary>The inverse of <see cref="ToOuter"/>.</summary>
    public Vector3 ToLocal(Vector3 outer) => TurnBack(outer - Origin);

    /// <summary>The inverse of <see cref="Place"/>.</summary>
    public Frame3 ToLocal(Frame3 outer) => new(ToLocal(outer.Origin), TurnBack(outer.X), TurnBack(outer.Y), TurnBack(outer.Z));

    /// <summary>This frame turned about its own Z, counter-clockwise; radians.</summary>
    public Frame3 TurnedAboutZ(double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return this with { X = (cos * X) + (sin * Y), Y = (cos * Y) - (sin * X) };
    }

    /// <summary>A frame given in this one, expressed in the frame that this one is given in.</summary>
    public Frame3 Place(Frame3 inner) => new(ToOuter(inner.Origin), Turn(inner.X), Turn(inner.Y), Turn(inner.Z));
}
