using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Vessel.Design;
using Vessel.Export;
using Vessel.Export.Report;
using Vessel.Export.Report.Sections;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Planning;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export.Report;

/// <summary>The page as a whole: nothing is missing, nothing leads nowhere, nothing gets in.</summary>
public sealed class ReportPageTests
{
    /// <summary>Coarse: the page's order does not depend on facets.</summary>
    private static readonly BuildOptions _options = new(new(Tolerance: 0.2), false, new(1, Math.PI / 6), "test", "00");

    private static readonly ImmutableArray<Lazy<Build>> _builds =
        [.. Repository.Designs.Select(path => new Lazy<Build>(() => Compiler.Compile(Read(File.ReadAllText(path)), _options)))];

    private static readonly ImmutableArray<Lazy<PageProbe>> _pages =
        [.. _builds.Select(build => new Lazy<PageProbe>(() => PageProbe.Of(build.Value)))];

    public static TheoryData<int> Designs { get; } = [.. Enumerable.Range(0, _builds.Length)];

    [Theory]
    [MemberData(nameof(Designs))]
    public void Every_part_weld_finding_and_file_is_there_by_its_name(int design)
    {
        var (build, page) = (_builds[design].Value, _pages[design].Value);
        var ids = page.Values("id").ToHashSet();
        var rows = page.All("tr").Select(row => row.Value).ToList();

        Assert.All(build.Parts, built =>
        {
            Assert.Contains($"part-{built.Part.Id}", ids);
            Assert.Contains(page.All("h3"), head => head.Value == built.Part.Name);
            Assert.Equal(built.Part.Flat is not null, ids.Contains($"flat-{built.Part.Id}-title"));
        });
        Assert.All(build.Welds, weld =>
        {
            Assert.Contains($"weld-{weld.Figures.Joint.Number}", ids);
            Assert.Contains(rows, row => row.StartsWith(weld.Figures.Joint.Number + weld.Figures.Joint.Name, StringComparison.Ordinal));
        });
        Assert.All(build.Findings, finding => Assert.Contains(finding.Message, page.Shown, StringComparison.Ordinal));
        Assert.All(Cautions.Of(build.Assembly), caution => Assert.Contains(caution, page.Shown, StringComparison.Ordinal));
        Assert.All(Assumptions.Of(build.Assembly), word => Assert.Contains(word, page.Shown, StringComparison.Ordinal));
        var links = page.All("a").Select(a => Uri.UnescapeDataString(a.Attribute("href")!.Value)).ToHashSet();
        Assert.All(
            VesselFiles.Of(build).Select(file => file.Path).Where(path => path != ReportPage.FileName).Append("manifest.json"),
            path => Assert.Contains(path, links));
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void Every_hole_and_piece_of_stock_has_its_row(int design)
    {
        var (build, page) = (_builds[design].Value, _pages[design].Value);
        int Rows(string table) => page.All("div")
            .Single(div => div.Attribute("aria-labelledby")?.Value == $"{table}-caption").Descendants("tbody").Single().Elements().Count();

        Assert.All(
            build.Parts.Where(built => !built.Part.Holes.IsEmpty),
            built => Assert.Equal(built.Part.Holes.Length, Rows($"holes-{built.Part.Id}")));
        Assert.Equal(build.Parts.Length, Rows("stock"));
        Assert.Equal(build.Welds.Length, Rows("weld-table"));
        Assert.Equal(build.Welds.Length, Rows("procedure-table"));
        Assert.Equal(SetUpTable.Of(build.Assembly).Length, Rows("set-up-table"));
        Assert.Equal(build.Plan.Timing.Items.Select(item => item.Operation).Distinct().Count(), Rows("time-table"));
        Assert.Equal(build.Plan.Steps.Select(step => step.Kind + " " + step.What),
            page.All("ol").Single(list => list.Attribute("class")?.Value == "steps")
                .Elements("li").Select(item => item.Element("label")!.Value.Trim()));
        Assert.Equal(FindingCodes.All.Length, Rows("check-table"));
        Assert.Equal(build.Margins.Length, Rows("margin-table"));
        Assert.All(FunctionFigures.Of(build.Assembly), group =>
        {
            Assert.Equal(group.Figures.Length, Rows($"figures-{group.Name}"));
            Assert.All(group.Tables, table => Assert.Equal(table.Rows.Length, Rows($"table-{table.Name}")));
            Assert.All(group.Figures, figure => Assert.Contains(figure.Formula, page.Shown, StringComparison.Ordinal));
            Assert.All(group.Figures, figure => Assert.Contains(figure.Source, page.Shown, StringComparison.Ordinal));
        });
        Assert.Equal(CapacitySection.Rows(build.Assembly.Capacity).Length, Rows("level-table"));
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void Anchors_are_unique_and_every_reference_leads_somewhere(int design)
    {
        var (build, page) = (_builds[design].Value, _pages[design].Value);
        var ids = page.Values("id").ToList();
        var files = VesselFiles.Of(build).Select(file => file.Path).Append("manifest.json").ToHashSet();

        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(
            page.Values("aria-labelledby").Concat(page.Values("aria-describedby")).SelectMany(value => value.Split(' ')),
            id => Assert.Contains(id, ids));
        Assert.All(page.Values("for"), id => Assert.Contains(id, ids));
        Assert.All(page.All("a").Select(a => a.Attribute("href")!.Value), link =>
        {
            if (link.StartsWith('#'))
                Assert.Contains(link[1..], ids);
            else
                Assert.Contains(Uri.UnescapeDataString(link), files);
        });
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void Heads_are_in_order_tables_have_captions_and_pictures_names(int design)
    {
        var page = _pages[design].Value;
        var levels = page.Root.Descendants()
            .Where(tag => tag.Name.LocalName is ['h', >= '1' and <= '6'])
            .Select(tag => tag.Name.LocalName[1] - '0')
            .ToList();

        Assert.Equal(1, levels.Count(level => level == 1));
        Assert.Equal(1, levels[0]);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.InRange(pair.Second, 2, pair.First + 1));
        Assert.All(page.All("table"), table =>
        {
            Assert.NotEmpty(table.Elements("caption").Single().Value);
            Assert.All(table.Descendants("th"), head => Assert.NotNull(head.Attribute("scope")));
            Assert.Single(table.Descendants("tr").Select(row => row.Elements().Count()).Distinct());
        });
        Assert.All(page.All("svg"), picture => Assert.NotEmpty(picture.Elements("title").Single().Value));
        Assert.All(page.All("img"), picture => Assert.NotEmpty(picture.Attribute("alt")!.Value));
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void Nothing_is_fetched_and_no_other_script_may_run(int design)
    {
        var page = _pages[design].Value;
        var policy = page.All("meta").Single(tag => tag.Attribute("http-equiv") is not null).Attribute("content")!.Value;
        static string Sum(string text) => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}'";
        var run = page.Scripts.Where((_, i) => page.All("script").ElementAt(i).Attribute("type") is null);

        Assert.DoesNotMatch("https?://", page.Text);
        Assert.StartsWith("default-src 'none'; img-src data:; ", policy, StringComparison.Ordinal);
        Assert.Contains($"script-src {Sum(Assert.Single(run))};", policy, StringComparison.Ordinal);
        Assert.Contains($"style-src {Sum(Assert.Single(page.Styles))};", policy, StringComparison.Ordinal);
        Assert.All(page.Values("src").Concat(page.All("image").Select(image => image.Attribute("href")!.Value)),
            source => Assert.StartsWith("data:image/png;base64,", source, StringComparison.Ordinal));
        Assert.DoesNotContain(
            page.Root.DescendantsAndSelf().SelectMany(tag => tag.Attributes()),
            a => a.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || a.Name == "style");
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void A_joint_whose_edges_stand_off_unevenly_has_its_gap_drawn_and_told(int design)
    {
        var (build, page) = (_builds[design].Value, _pages[design].Value);
        var uneven = build.Welds.Select(weld => weld.Figures)
            .Where(weld => weld.GapNormal - weld.Stations.Min(station => station.At.GapNormal) > 0.005).ToList();

        var drawn = page.All("svg")
            .Where(svg => svg.Attribute("aria-labelledby")!.Value.StartsWith("gap-", StringComparison.Ordinal)).ToList();

        Assert.Equal(uneven.Select(weld => $"gap-{weld.Joint.Number}-title gap-{weld.Joint.Number}-desc"),
            drawn.Select(svg => svg.Attribute("aria-labelledby")!.Value));
        foreach (var (weld, svg) in uneven.Zip(drawn))
        {
            // Every 5 degrees, and the first again.
            var curve = svg.Elements().Single(mark => mark.Attribute("class")?.Value == "curve").Attribute("d")!.Value;
            Assert.Equal(weld.Stations.Length + 1, curve.Split('L').Length);
            Assert.Contains("no more than", svg.Elements().Single(mark => mark.Name.LocalName == "desc").Value, StringComparison.Ordinal);
            Assert.Equal(1, svg.Elements().Count(mark => mark.Attribute("class")?.Value == "hidden"));
            Assert.Equal(1, svg.Elements().Count(mark => mark.Attribute("class")?.Value == "bend"));
        }
    }

    [Fact]
    public void Words_of_the_user_stay_words()
    {
        const string evil = "</title><script>alert('1')</script><img src=x onerror=\"alert(2)\">&amp;\u0001]]>";
        var design = Tests.Support.Designs.Sound with { Name = evil, Revision = evil };
        var finding =
            new Measure("gap-too-wide", Severity.Error, [evil], () => evil, [new(evil, 1, null, evil)], null) { AcceptedBecause = evil };
        var options = _options with { ToolVersion = evil, DesignHash = evil, Settings = new DesignSettings(evil, [evil]) };

        var page = PageProbe.Of(Build.Of(Compiler.Assemble(design), [finding], options));

        Assert.Equal(evil.Replace('\u0001', '\uFFFD'), page.All("h1").Single().Value);
        Assert.DoesNotContain(page.All("img"), image => image.Attribute("src")?.Value == "x");
        Assert.DoesNotContain("<script>alert", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(page.Scripts, script => script.Contains("alert(", StringComparison.Ordinal));
    }

    [Fact]
    public void Files_are_named_by_addresses_that_no_browser_takes_for_a_scheme() =>
        Assert.Equal("javascript%3Aalert%281%29/%C3%BC%20%22.dxf", Html.Address("javascript:alert(1)/ü \".dxf"));

    [Theory]
    [InlineData(Severity.Error, false, "Do not cut yet: 1 error")]
    [InlineData(Severity.Warning, false, "look first: 1 warning")]
    [InlineData(Severity.Note, false, "as it is; 1 note")]
    [InlineData(Severity.Warning, true, "nothing was found")]
    public void The_verdict_follows_the_gravest_finding_that_is_open(Severity severity, bool accepted, string words)
    {
        var finding = new Measure("lip-in-bore", severity, [], () => "because", [], null)
        {
            AcceptedBecause = accepted ? "so it is" : null,
        };

        var page = PageProbe.Of(Build.Of(Compiler.Assemble(Tests.Support.Designs.Sound), [finding], _options));

        Assert.Contains(words, page.All("header").Single().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_build_gives_the_same_page_whatever_the_culture()
    {
        var build = _builds[0].Value;
        var before = CultureInfo.CurrentCulture;
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NegativeSign = "~";
        try
        {
            CultureInfo.CurrentCulture = culture;
            Assert.Equal(_pages[0].Value.Text, PageProbe.Of(build).Text);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData(10, 10)]
    [InlineData(150, 150)]
    [InlineData(151, 77)]
    [InlineData(10_000, 150)]
    public void A_very_long_gauge_table_is_thinned_but_keeps_its_ends(int levels, int rows)
    {
        var capacity = _builds[0].Value.Assembly.Capacity with
        {
            Levels = [.. Enumerable.Range(0, levels).Select(i => ((double)i, (double)i))],
        };

        var shown = CapacitySection.Rows(capacity);

        // Every second of 151 from the first on is 76, which ends with the last; of 10,000 every 67th is 150, and the last.
        Assert.InRange(shown.Length, rows - 1, rows + 1);
        Assert.Equal((capacity.Levels[0], capacity.Levels[^1]), (shown[0], shown[^1]));
    }

    [Fact]
    public void An_inch_design_is_told_in_inches()
    {
        var design = Tests.Support.Designs.Sound with { Units = UserUnits.Inches };

        var page = PageProbe.Of(Build.Of(Compiler.Assemble(design), [], _options));

        // The shell is 180 mm high: 7.09 in.
        Assert.Contains(page.All("svg").First(svg => svg.Value.StartsWith("Flat of shell", StringComparison.Ordinal)).Elements("text"),
            text => text.Value == "7.09");
    }

    private static VesselDesign Read(string text) => Compiler.Read(text).Value ?? throw new ArgumentException("the design has faults");
}
