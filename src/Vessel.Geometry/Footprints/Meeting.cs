namespace Vessel.Geometry;

/// <summary>How a line of a port meets a surface; see <see cref="Footprint"/>.</summary>
/// <param name="Reach">mm along the axis.</param>
/// <param name="Slope">d Reach / d phi.</param>
/// <param name="Normal">Unit, out of the body, in the axis' own frame.</param>
public readonly record struct Meeting(double Reach, double Slope, Vector3 Normal)
{
    /// <summary>The meeting of a line that misses: not a number throughout.</summary>
    public static Meeting None { get; } = new(double.NaN, double.NaN, new(double.NaN, double.NaN, double.NaN));
}
