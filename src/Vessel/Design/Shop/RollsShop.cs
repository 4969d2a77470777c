namespace Vessel.Design;

/// <summary>What the shop's rolls make of a sheet; mm.</summary>
/// <param name="LeastDiameter">Inside, of the tightest cylinder that they make; null where it is not known.</param>
/// <param name="FlatEnd">What they leave flat at each end of a sheet; null where it is not known.</param>
/// <param name="TrimsEnds">Whether flat ends are added to the blank and cut off, rather than bent beforehand.</param>
/// <param name="SeamShrinkage">Length by which a long seam draws the girth in.</param>
public sealed record RollsShop(double? LeastDiameter, double? FlatEnd, bool TrimsEnds, double SeamShrinkage)
{
    public static RollsShop Unknown { get; } = new(null, null, false, 0);

    /// <summary>Added to a blank at each end, to be cut off when it is rolled, mm.</summary>
    public double Trim => TrimsEnds ? FlatEnd ?? 0 : 0;

    /// <summary>
    /// What a blank is shorter than the girth that it makes, for each seam, mm: the root gap, less what the seam draws in.
    /// </summary>
    public double BlankGap(double rootGap) => rootGap - SeamShrinkage;

    internal static RollsShop Of(Section section) => new(
        section.Has("least_diameter") ? section.Number("least_diameter") : null,
        section.Has("flat_end") ? section.Number("flat_end") : null,
        section.Text("ends") == "trim",
        section.Number("seam_shrinkage"));
}
