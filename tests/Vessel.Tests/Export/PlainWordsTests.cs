using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Vessel.Design;
using Vessel.Export.Summary;
using Vessel.Findings;
using Vessel.Reading;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export;

/// <summary>Words that fabricators read are those of their trade: what they never say stands in no string of the tool.</summary>
public sealed partial class PlainWordsTests
{
    /// <summary>Pattern and the trade's word.</summary>
    private static readonly ImmutableArray<(string Pattern, string Instead)> _banned =
    [
        (@"\breckon", "calculate"),
        (@"\bmend(s|ed|ing)?\b", "repair"),
        (@"\bgirths?\b", "circumference, or round the shell"),
        (@"\baskew\b", "tilted"),
        (@"\blest\b", "so that ... not"),
        (@"\btold\b", "stated"),
        (@"\bbaser\b", "less noble"),
        (@"\bto a hair\b", "exactly"),
        (@"\bby how much\b", "the noun: growth, shrinkage, gap"),
        (@"\bhow far\b", "the noun: distance, reach"),
        (@"\bwhat it (is called|stands in|fits|holds|hangs on|bears|clamps)\b", "the noun: name, host, capacity, load"),
        (@"\bfrom memory\b", "not checked against the source"),
        (@"\b(gas's way|way of least resistance)\b", "gas path"),
        (@"\bno vessel for pressure\b", "not a pressure vessel"),
        (@"\bto the last bubble\b", "until the last bubble is out"),
        (@"\bPoisson's number\b", "Poisson's ratio"),
        (@"\b(aslant|heed|alike stiff)\b", "tilted; note; equally stiff"),
        (@"\bwhat (is taken|bends it|hangs on|draws in|its long seam)\b", "the noun: limit, bending, shrinkage"),
        (@"Panasonic|YC-\d|(?<!microsoft)\.com\b", "the mark of the document in the table of sources"),
    ];

    /// <summary>Their figures are being worked on; their words follow.</summary>
    private static readonly ImmutableArray<string> _pending = [];

    public static TheoryData<string> Patterns() => [.. _banned.Select(one => one.Pattern)];

    /// <summary>Folder by folder, so that a rare branch is read as well as a usual one.</summary>
    [Theory]
    [MemberData(nameof(Patterns))]
    public void No_string_of_the_tool_holds(string pattern)
    {
        var regex = new Regex(pattern, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
        var instead = _banned.Single(one => one.Pattern == pattern).Instead;

        Assert.All(Strings(), one => Assert.False(regex.IsMatch(one.Text), $"{one.Place}: {one.Text}\n  say: {instead}"));
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void The_readme_does_not_hold(string pattern) =>
        Assert.DoesNotMatch(new Regex(pattern, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant),
            File.ReadAllText(Path.Combine(Repository.Root, "README.md")));

    /// <summary>A label is a noun: capacity, not how much it holds.</summary>
    [Fact]
    public void No_key_title_or_cause_begins_as_a_question() => Assert.All(
        Keys(KeyTable.File, []).Concat(Keys(ShopKeys.File, [])).Select(key => key.Description)
            .Concat(FaultCodes.All.SelectMany(code => new[] { code.Cause, code.Remedy }))
            .Concat(FindingCodes.All.SelectMany(code => new[] { code.Cause, code.Remedy }))
            .Concat(Vessel.Export.Report.ReportSection.All.Select(section => section.Title)),
        label => Assert.DoesNotMatch("^(What|How)\\b", label));

    /// <summary>In a finding's sentence a name that the user gave stands in single quotes: a port may be called "the" or "in".</summary>
    [Fact]
    public void Findings_quote_the_names_that_the_user_gave() => Assert.Empty(
        Directory.EnumerateFiles(Path.Combine(Repository.Root, "src", "Vessel", "Findings"), "*.cs")
            .SelectMany(file => File.ReadLines(file).Index()
                .Select(line => (Place: $"{Path.GetFileName(file)}:{line.Index + 1}", line.Item)))
            .Where(line => BareName().IsMatch(line.Item))
            .Select(line => $"{line.Place}: {line.Item.Trim()}"));

    /// <summary>Schemas of summary.json describe a value by its noun, too.</summary>
    [Fact]
    public void No_description_of_the_summary_begins_as_a_question() => Assert.All(
        Descriptions(SummaryShape.Schema()), description => Assert.DoesNotMatch("^(What|How|Why|Which)\\b", description));

    private static IEnumerable<string> Descriptions(JsonNode? node) => node switch
    {
        JsonObject map => map.SelectMany(pair =>
            pair is { Key: "description", Value: JsonValue text } ? [text.GetValue<string>()] : Descriptions(pair.Value)),
        JsonArray list => list.SelectMany(Descriptions),
        _ => [],
    };

    [Theory]
    [MemberData(nameof(Repository.DesignFiles), MemberType = typeof(Repository))]
    public void No_step_repeats_its_label(string file) => Assert.Empty(
        Plans.Of(file).Steps.Where(step => Repeats(step.Kind.ToString(), step.What)).Select(step => $"{step.Kind} {step.What}"));

    private static bool Repeats(string label, string work)
    {
        var first = Words().Match(work).Value;
        return first.Equals(label, StringComparison.OrdinalIgnoreCase)
            || first.Equals($"re-{label}", StringComparison.OrdinalIgnoreCase)
            || work.StartsWith($"let it {label}", StringComparison.OrdinalIgnoreCase);
    }

    private static IEnumerable<Key> Keys(KeyMap map, HashSet<KeyMap> seen) => !seen.Add(map)
        ? []
        : map.Keys.Concat(map.Keys.SelectMany(key =>
            (key.Switch?.Maps.Values ?? []).Append(key.Map).OfType<KeyMap>().SelectMany(below => Keys(below, seen))));

    /// <summary>Literals of the sources that hold a blank: sentences, labels, heads; comments are for those who read the code.</summary>
    private static IEnumerable<(string Place, string Text)> Strings()
    {
        var source = Path.Combine(Repository.Root, "src");
        foreach (var file in Directory.EnumerateFiles(source, "*.cs", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            if (Path.GetFileName(file) == "Sources.cs"
                || _pending.Any(part => file.Replace('\\', '/').Contains(part, StringComparison.Ordinal)))
                continue;
            if (file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
                continue;
            foreach (var (number, line) in File.ReadLines(file).Index()
                .Where(line => !line.Item.TrimStart().StartsWith("//", StringComparison.Ordinal)))
            {
                foreach (var text in Literal().Matches(line).Select(match => Hole().Replace(match.Value, ""))
                    .Where(text => text.Contains(' ', StringComparison.Ordinal)))
                    yield return ($"{Path.GetRelativePath(source, file)}:{number + 1}", text);
            }
        }
    }

    [GeneratedRegex("\"(?:[^\"\\\\]|\\\\.)*\"")]
    private static partial Regex Literal();

    /// <summary>An interpolation: code, no words.</summary>
    [GeneratedRegex(@"\{[^{}]*\}")]
    private static partial Regex Hole();

    [GeneratedRegex(@"(?<!')\{(?:\w+\.)*(?:[pP]ort|disc|packing|cap|bracket|plate|strap|stage)\.Name\}|\{(?:\w+\.)*(?:[pP]ort|disc|packing|cap|bracket|plate|strap|stage)\.Name\}(?!')")]
    private static partial Regex BareName();

    [GeneratedRegex(@"^[\w-]+")]
    private static partial Regex Words();
}
