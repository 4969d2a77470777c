using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>A window with corners, or a slot, upright on the flat; mm.</summary>
/// <param name="Width">Along x on the flat.</param>
/// <param name="Height">Along y.</param>
/// <param name="Corner">Radius of its corners; half of the smaller side of a slot, zero where they are sharp.</param>
public sealed record HoleShape(double Width, double Height, double Corner)
{
    /// <summary>Round the outside of the finished part, where that is not the width on the flat.</summary>
    public double WidthOutside { get; init; } = Width;

    public bool IsSlot => Corner >= (Math.Min(Width, Height) / 2) - 1e-9;

    /// <summary>Diameter of the drill that makes its corners or ends, mm; sharp corners are started with one and filed out.</summary>
    public double Drill => 2 * Math.Max(Corner, Math.Min(HoleMethods.LeastCornerDrill, Math.Min(Width, Height)) / 2);

    /// <summary>Where that drill's middle goes: two ends of a slot, four corners else.</summary>
    public ImmutableArray<Point2> Centres(Point2 middle)
    {
        var (u, v) = ((Width - Drill) / 2, (Height - Drill) / 2);
        return
        [
            .. new Point2[] { new(-u, -v), new(u, -v), new(u, v), new(-u, v) }
                .Select(corner => middle + corner)
                .DistinctBy(at => (Math.Round(at.U, 6), Math.Round(at.V, 6))),
        ];
    }

    /// <summary><c>18 x 16, R3</c> or <c>slot 9 x 14</c>, with the width on the flat where that differs.</summary>
    /// <param name="length">A length without its unit.</param>
    public string Text(Func<double, string> length)
    {
        var (outside, flat) = (length(WidthOutside), length(Width));
        var size = $"{outside} x {length(Height)}{(IsSlot ? "" : Corner > 0 ? $", R{length(Corner)}" : ", sharp corners")}";
        return (IsSlot ? $"slot {size}" : size) + (flat == outside ? "" : $" ({flat} wide on the flat)");
    }
}
