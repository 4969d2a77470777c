using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Cli;

/// <summary>What DEVELOPERS.md promises.</summary>
public sealed class DevelopersTests
{
    /// <summary>After a new code: <c>dotnet run --project src/Vessel.Cli -- explain --page</c>, put in place of the old page.</summary>
    [Fact]
    public void Its_page_of_codes_is_what_the_tool_prints()
    {
        using var folder = new TemporaryFolder();
        var page = CommandRun.In(folder.Path, "explain", "--page").Output.ReplaceLineEndings("\n").Trim();

        Assert.Contains(
            page, File.ReadAllText(Path.Combine(Repository.Root, "DEVELOPERS.md")).ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }
}
