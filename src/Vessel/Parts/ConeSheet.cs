using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Parts;

/// <summary>What a cone is rolled from, be it a head or a part of the shell.</summary>
/// <param name="Wall">mm.</param>
/// <param name="HalfAngle">Between axis and line, radians.</param>
/// <param name="Seams">Between its equal sheets.</param>
/// <param name="RootGap">Left open along each seam before welding, mm.</param>
public sealed record ConeSheet(Material Material, double Wall, double HalfAngle, SheetSeams Seams, double RootGap)
{
    public int Segments => Seams.Count;

    public double Pitch => Seams.Pitch;

    public double SeamAngle => Seams.First;
}
