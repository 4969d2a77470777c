using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Stock;

public sealed class MaterialTests
{
    [Theory]
    [InlineData("stainless 304", "stainless 304")]
    [InlineData("Stainless  Steel 316L", "stainless 316L")]
    [InlineData("aluminium 6061-T6", "aluminium 6061-T6")]
    [InlineData("aluminum 5052-h32", "aluminium 5052-H32")]
    [InlineData("mild steel", "mild steel")]
    [InlineData("1.4301", "stainless 304")]
    [InlineData("1.4404", "stainless 316L")]
    [InlineData("S235JR", "steel S235")]
    [InlineData("steel s235", "steel S235")]
    [InlineData("aluminium 5754-H111", "aluminium 5754-H111")]
    public void A_metal_is_found_by_its_name_and_keeps_its_temper(string written, string name) =>
        Assert.Equal(name, Materials.Find(written)?.Name);

    [Theory]
    [InlineData("stainless"), InlineData("aluminium 7075"), InlineData("stainless 304-T6"), InlineData("mild steel 6061")]
    [InlineData("aluminium 6061L"), InlineData("")]
    public void What_is_not_in_the_table_is_not_found(string written) => Assert.Null(Materials.Find(written));

    /// <summary>Densities of EN 573 alloys and S235 as the makers print them, g/cm3: all within 1 % of aluminium's and iron's own.</summary>
    [Fact]
    public void A_metal_has_about_the_density_of_what_it_mostly_is() => Assert.All(
        Materials.All, metal => Assert.InRange(
            metal.Density / (metal.Family == MaterialFamily.Aluminium ? 2.70 : 7.87), 0.98, 1.02));

    [Fact]
    public void A_temper_changes_nothing_but_the_name() =>
        Assert.Equal(Materials.Find("aluminium 6061"), Materials.Find("aluminium 6061-T6")! with { Name = "aluminium 6061" });

    [Fact]
    public void Aluminium_does_not_join_to_steel() => Assert.All(
        from a in Materials.All
        from b in Materials.All
        select (a, b),
        pair => Assert.Equal(
            pair.a.Family == MaterialFamily.Aluminium == (pair.b.Family == MaterialFamily.Aluminium),
            Fillers.Between(pair.a, pair.b) is not null));

    [Fact]
    public void The_rod_does_not_depend_on_which_part_is_named_first() => Assert.All(
        from a in Materials.All
        from b in Materials.All
        select (a, b),
        pair => Assert.Equal(Fillers.Between(pair.a, pair.b), Fillers.Between(pair.b, pair.a)));
}
