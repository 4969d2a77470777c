using Vessel.Geometry;

namespace Vessel.Export.General;

/// <summary>A parallel view of the vessel.</summary>
/// <param name="Right">Unit, to the right of the viewer.</param>
/// <param name="Up">Unit.</param>
internal sealed record View(string Name, Vector3 Right, Vector3 Up)
{
    /// <summary>Direction to the viewer.</summary>
    public Vector3 Toward { get; } = Right.Cross(Up);

    /// <summary>View from 0 degrees.</summary>
    public static View Front { get; } = new("front", Vector3.UnitY, Vector3.UnitZ);

    /// <summary>View from 90 degrees: what is right in the front view lies before the viewer.</summary>
    public static View FromRight { get; } = new("from the right (90 deg)", -Vector3.UnitX, Vector3.UnitZ);

    /// <summary>View from 270 degrees.</summary>
    public static View FromLeft { get; } = new("from the left (270 deg)", Vector3.UnitX, Vector3.UnitZ);

    /// <summary>View from above, the front towards the lower edge of the sheet.</summary>
    public static View Top { get; } = new("from above", Vector3.UnitY, -Vector3.UnitX);

    /// <summary>View at the half behind a plane through the axis.</summary>
    /// <param name="angle">Angle of the direction to the right, radians.</param>
    public static View Section(double angle) => new("section A-A", new(Math.Cos(angle), Math.Sin(angle), 0), Vector3.UnitZ);

    public Point2 On(Vector3 p) => new(p.Dot(Right), p.Dot(Up));

    /// <summary>Greater is nearer to the viewer.</summary>
    public double Depth(Vector3 p) => p.Dot(Toward);
}
