using Vessel.Geometry;

namespace Vessel.Export.Solids;

/// <summary>An extent is the smallest box along the axes that holds some points; of none its low corner lies above its high one.</summary>
internal readonly record struct Extent(Vector3 Low, Vector3 High)
{
    public static Extent Of(IEnumerable<Vector3> points)
    {
        var (low, high) = (new Vector3(double.MaxValue, double.MaxValue, double.MaxValue),
            new Vector3(double.MinValue, double.MinValue, double.MinValue));
        foreach (var v in points)
        {
            low = new(Math.Min(low.X, v.X), Math.Min(low.Y, v.Y), Math.Min(low.Z, v.Z));
            high = new(Math.Max(high.X, v.X), Math.Max(high.Y, v.Y), Math.Max(high.Z, v.Z));
        }

        return new(low, high);
    }
}
