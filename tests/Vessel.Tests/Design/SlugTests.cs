using FsCheck.Xunit;
using Vessel.Design;
using Xunit;

namespace Vessel.Tests.Design;

public sealed class SlugTests
{
    [Theory]
    [InlineData("Inlet", "inlet")]
    [InlineData("oil  return (low)", "oil-return-low")]
    [InlineData("--a--", "a")]
    [InlineData("Größe 2", "gr-e-2")]
    [InlineData("***", "")]
    [InlineData("COM1", "com1-part")]
    [InlineData("nul", "nul-part")]
    [InlineData("console", "console")]
    public void A_name_gives_its_file_name(string name, string slug) => Assert.Equal(slug, Slug.Of(name));

    [Property]
    public void A_slug_is_its_own_slug(string? name)
    {
        var slug = Slug.Of(name ?? "");

        Assert.Equal(slug, Slug.Of(slug));
    }

    [Property]
    public void A_slug_holds_only_what_every_file_system_takes(string? name) =>
        Assert.Matches("^([a-z0-9]+(-[a-z0-9]+)*)?$", Slug.Of(name ?? ""));

    [Fact]
    public void A_long_name_is_cut_and_not_left_with_a_hyphen() =>
        Assert.Equal(new string('a', 59), Slug.Of(new string('a', 59) + " b"));
}
