using Vessel.Geometry;
using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// Machinery's Handbook 31, p. 1421: developed lengths of bends, in inches, with pi / 2 taken as 1.57 (5.1e-4 short). The
/// table of allowance, setback and deduction is recomputed from the formulas as The Fabricator prints them, to half of
/// its last digit.
/// </summary>
public sealed class Bending
{
    private const double ShortQuarter = 1 - (1.57 / (Math.PI / 2));
    private const double LastDigit = 0.6e-7;

    /// <summary>K from the handbook's 0.64 T + 1.57 R for soft steel.</summary>
    private const double SoftSteel = 0.64 / (Math.PI / 2);

    [Theory]
    [InlineData(90, 0.125, 0.44, 0.125, 0.2827433, 0.2500000, 0.2172567)]
    [InlineData(90, 0.0625, 0.42, 0.063, 0.1397380, 0.1255000, 0.1112620)]
    [InlineData(90, 3, 0.446, 2, 6.1135390, 5.0000000, 3.8864610)]
    [InlineData(60, 3, 0.446, 2, 4.0756930, 2.8867510, 1.6978100)]
    [InlineData(120, 3, 0.446, 2, 8.1513860, 8.6602540, 9.1691220)]
    public void Allowance_setback_and_deduction(
        double degrees, double radius, double k, double thickness, double allowance, double setback, double deduction)
    {
        var bend = new Bend(0, degrees * Math.PI / 180, radius, k);

        Assert.Equal(allowance, bend.Allowance(thickness), Tolerance(allowance));
        Assert.Equal(setback, bend.Setback(thickness), Tolerance(setback));
        Assert.Equal(deduction, bend.Deduction(thickness), Tolerance(deduction));

        // Seven digits are printed, the last two of larger figures as noughts.
        static double Tolerance(double printed) => printed < 1 ? LastDigit : 6e-7;
    }

    [Theory]
    [InlineData(180, 0.375, 1.338)]
    [InlineData(60, 0.625, 0.707)]
    public void Soft_steel_of_an_eighth_of_an_inch(double degrees, double radius, double length)
    {
        var bend = new Bend(0, degrees * Math.PI / 180, radius, SoftSteel);

        // Printed to 0.001, one of them cut off instead of rounded.
        Assert.Equal(length, bend.Allowance(0.125), 0.001 + (length * ShortQuarter));
    }

    [Fact]
    public void A_hook_of_two_bends_and_three_and_a_half_inches_of_straight()
    {
        var (hook, elbow) = (new Bend(0, Math.PI, 0.375, SoftSteel), new Bend(0, Math.PI / 3, 0.625, SoftSteel));

        Assert.Equal(5.545, 3.5 + hook.Allowance(0.125) + elbow.Allowance(0.125), 0.001 + (2.045 * ShortQuarter));
    }

    [Theory]
    [InlineData(0.55, 0.26500)]
    [InlineData(0.64, 0.27625)]
    [InlineData(0.71, 0.28500)]
    public void Metal_groups_at_radius_and_thickness_of_an_eighth(double share, double length)
    {
        var bend = new Bend(0, Math.PI / 2, 0.125, share / (Math.PI / 2));

        Assert.Equal(length, bend.Allowance(0.125), length * ShortQuarter);
    }

    [Fact]
    public void An_angle_of_40_by_25_outside_is_61_113539_flat()
    {
        const double flat = 61.113539;
        var bend = new Bend(0, Math.PI / 2, 3, 0.446);
        var leg = 40 - bend.Setback(2);
        var sheet = new FoldedSheet(2, new(1, 0), [bend with { Line = leg + (bend.Allowance(2) / 2) }], 0);

        // Bent towards the viewer: the outside is the far face, and the second leg stands at the outside's 40.
        var (near, far) = (sheet.At(new(0, 0), 2), sheet.At(new(flat, 0), 2));

        Assert.Equal(40, far.X - near.X, 5e-7);
        Assert.Equal(25, far.Z - near.Z, 5e-7);
    }

    [Theory]
    [InlineData("aluminium 6061-T6", 0.125, 2.5 * 0.125)]
    [InlineData("aluminium 5052-H32", 0.0625, 0.0625)]
    [InlineData("aluminium 5052-O", 0.125, 0.0625)]
    [InlineData("aluminium 6061-O", 0.090, 0.094)]
    [InlineData("mild steel", 0.125, 0.188)]
    // ASTM A480: annealed austenitic sheet bends over its thickness, plate over 3/8 in over twice that.
    [InlineData("stainless 304", 0.118, 0.118)]
    [InlineData("stainless 316L", 0.063, 0.063)]
    [InlineData("stainless 304", 0.5, 1)]
    public void Least_inside_radii_stand_in_the_table(string metal, double inches, double radius)
    {
        var least = BendRadii.Least(Materials.Find(metal)!, inches * 25.4);

        Assert.Equal(radius * 25.4, least.Value, 1e-12);
    }

    [Fact]
    public void Half_way_between_two_rows_the_multiple_is_half_way()
    {
        var least = BendRadii.Least(Materials.Find("aluminium 6061-T6")!, 3.0 / 32 * 25.4);

        Assert.Equal(2 * 3.0 / 32 * 25.4, least.Value, 1e-12);
    }

    [Fact]
    public void An_alloy_that_no_table_holds_may_be_bent_to_its_thickness()
    {
        var least = BendRadii.Least(Materials.Find("aluminium 3003-H18")!, 2.5);

        Assert.Equal(2.5, least.Value);
        Assert.Contains("[practice]", least.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void An_alloy_without_a_temper_is_taken_in_its_usual_one()
    {
        var (bare, usual) = (BendRadii.Least(Materials.Find("aluminium 6061")!, 3),
            BendRadii.Least(Materials.Find("aluminium 6061-T6")!, 3));

        Assert.Equal(usual.Value, bare.Value);
        Assert.Contains("T6", bare.Source, StringComparison.Ordinal);
    }
}
