using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Stock;

public sealed class DuctilityTests
{
    [Fact]
    public void Every_metal_that_may_be_named_has_an_elongation_with_its_source() =>
        Assert.All(Materials.All, material => Assert.NotEmpty(Ductility.Elongation(material)!.Source));

    /// <summary>Kutz, Handbook of Materials Selection, chapter 4, table 5.</summary>
    [Theory]
    [InlineData("aluminium 3003-O", 0.30)]
    [InlineData("aluminium 3003-H14", 0.08)]
    [InlineData("aluminium 3003-H18", 0.04)]
    public void Elongation_of_3003_by_temper(string name, double elongation) =>
        Assert.Equal(elongation, Ductility.Elongation(Materials.Find(name)!)!.Value);

    [Fact]
    public void Aluminium_without_a_temper_counts_as_annealed() =>
        Assert.Equal(Ductility.Elongation(Materials.Find("aluminium 5052-O")!), Ductility.Elongation(Materials.Find("aluminium 5052")!));

    [Fact]
    public void Low_carbon_stainless_stretches_as_its_parent() =>
        Assert.Equal(Ductility.Elongation(Materials.Find("stainless 316")!), Ductility.Elongation(Materials.Find("stainless 316L")!));

    [Fact]
    public void A_temper_outside_the_table_has_no_figure() => Assert.Null(Ductility.Elongation(Materials.Find("aluminium 6061-T9")!));
}
