using System.Text;
using System.Text.RegularExpressions;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Cli;

/// <summary>What the README tells a new user to type is typed.</summary>
public sealed partial class ReadmeTests
{
    private const string Start = "dotnet run --project src/Vessel.Cli -- ";

    public static TheoryData<string> Commands()
    {
        var readme = File.ReadAllText(Path.Combine(Repository.Root, "README.md")).ReplaceLineEndings("\n");
        return
        [
            .. Blocks().Matches(readme)
                .SelectMany(block => block.Groups["lines"].Value.Replace("\\\n", " ", StringComparison.Ordinal).Split('\n'))
                .Select(line => line.Trim())
                .Where(line => line.StartsWith(Start, StringComparison.Ordinal))
                .Select(line => line[Start.Length..])
                .Distinct(),
        ];
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_command_of_the_readme_does_what_it_says(string line)
    {
        using var folder = new TemporaryFolder();
        foreach (var file in Directory.GetFiles(Path.Combine(Repository.Root, "designs"), "*.yaml"))
            folder.Put($"designs/{Path.GetFileName(file)}", File.ReadAllText(file));

        var run = CommandRun.In(folder.Path, [.. Words(line)]);

        Assert.True(run.Code == 0, run.Error);
        Assert.NotEqual("", run.Output);
    }

    [Fact]
    public void The_readme_has_commands_to_type() => Assert.NotEmpty(Commands());

    /// <summary>As a shell splits it: blanks part words, either kind of quotes keeps them together.</summary>
    private static IEnumerable<string> Words(string line) => Word().Matches(WithoutComment(line))
        .Select(word => Pieces().Matches(word.Value)
            .Aggregate(new StringBuilder(),
                (text, piece) => text.Append(piece.Value is ['\'' or '"', ..] ? piece.Value[1..^1] : piece.Value))
            .ToString());

    private static string WithoutComment(string line) => line.Split(" # ")[0];

    [GeneratedRegex(@"```sh\n(?<lines>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Blocks();

    [GeneratedRegex("""('[^']*'|"[^"]*"|[^\s'"])+""")]
    private static partial Regex Word();

    [GeneratedRegex("""'[^']*'|"[^"]*"|[^'"]+""")]
    private static partial Regex Pieces();
}
