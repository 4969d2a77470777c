using System.Text.Encodings.Web;
using System.Text.Json.Nodes;
using System.Text.Json;
using Json.Schema;
using Vessel.Design;
using Vessel.Export.Summary;
using Vessel.Reading;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Reading;

/// <summary>The schemas, by a validator of their own standard.</summary>
public sealed class SchemaTests
{
    /// <summary>What of the reader's faults a schema can see.</summary>
    private static readonly HashSet<string> _structural =
    [
        FaultCodes.UnknownKey, FaultCodes.MissingKey, FaultCodes.WrongKind, FaultCodes.OutOfRange, FaultCodes.UnknownChoice,
        FaultCodes.NotBuiltYet, FaultCodes.OnlyOneOf, FaultCodes.KeyDoesNotApply, FaultCodes.TooManyItems,
    ];

    private static readonly JsonSchema _design = Schema(DesignSchema.Write());

    private static readonly JsonSerializerOptions _readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static TheoryData<string> DesignFiles() => Repository.DesignFiles();

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Every_design_passes(string file) => AssertPasses(_design, JsonOfYaml.Of(Repository.Design(file)));

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void The_summary_of_every_design_passes(string file)
    {
        using var folder = new TemporaryFolder();
        folder.Put("a.yaml", Repository.Design(file));
        CommandRun.In(folder.Path, "build", "a.yaml", "--quiet");

        var summary = JsonNode.Parse(File.ReadAllText(folder["out/a/summary.json"]));

        AssertPasses(Schema(SummaryShape.Schema()), summary);
    }

    [Fact]
    public void Schema_and_reader_agree_on_a_thousand_mutated_designs()
    {
        var designs = Repository.DesignFiles().Select(f => JsonOfYaml.Of(Repository.Design(f.Data))!.ToJsonString(_readable)).ToArray();
        var (passed, refused) = (0, 0);
        for (var seed = 0; seed < 1000; seed++)
        {
            var random = new Random(seed);
            var mutant = JsonMutation.Of(JsonNode.Parse(designs[seed % designs.Length])!, random);
            var passes = _design.Evaluate(Element(mutant)).IsValid;
            // JSON is YAML: the reader takes it as it is.
            var faults = DesignReader.Read(mutant.ToJsonString(_readable)).Faults;
            if (!passes && faults.IsEmpty)
                Assert.Fail($"seed {seed}: the schema alone refuses: {Complaints(_design, mutant)}");
            var seen = faults.FirstOrDefault(f => _structural.Contains(f.Code)
                && (f.Code != FaultCodes.OutOfRange || IsLiteral(mutant, f.Path)));
            Assert.False(passes && seen is not null, $"seed {seed}: the schema passes what the reader calls {seen?.Code} at {seen?.Path}");
            (passed, refused) = passes ? (passed + 1, refused) : (passed, refused + 1);
        }

        // Else one of the two claims above would hardly have been tried.
        Assert.InRange(passed, 25, 975);
        Assert.InRange(refused, 25, 975);
    }

    [Fact]
    public void Schema_and_reader_agree_on_five_hundred_mutated_shops()
    {
        var schema = Schema(DesignSchema.WriteShop());
        var whole = JsonOfYaml.Of(Shops.Whole)!.ToJsonString(_readable);
        var (passed, refused) = (0, 0);
        for (var seed = 0; seed < 500; seed++)
        {
            var mutant = JsonMutation.Of(JsonNode.Parse(whole)!, new Random(seed));
            var passes = schema.Evaluate(Element(mutant)).IsValid;
            var faults = ShopReader.Read(mutant.ToJsonString(_readable)).Faults;
            if (!passes && faults.IsEmpty)
                Assert.Fail($"seed {seed}: the schema alone refuses: {Complaints(schema, mutant)}");
            var seen = faults.FirstOrDefault(f => _structural.Contains(f.Code)
                && (f.Code != FaultCodes.OutOfRange || IsLiteral(mutant, f.Path)));
            Assert.False(passes && seen is not null, $"seed {seed}: the schema passes what the reader calls {seen?.Code} at {seen?.Path}");
            (passed, refused) = passes ? (passed + 1, refused) : (passed, refused + 1);
        }

        Assert.InRange(passed, 25, 475);
        Assert.InRange(refused, 25, 475);
    }

    [Theory]
    [InlineData("units: mm", 0.29, false)]
    [InlineData("units: mm", 0.31, true)]
    [InlineData("units: in", 0.011, false)]
    [InlineData("units: in", 0.012, true)]
    public void A_range_goes_by_the_unit_of_the_file(string units, double wall, bool passes)
    {
        var design = JsonOfYaml.Of(DesignTexts.Breather + "\n" + units)!;
        design["shell"]!["wall"] = wall;
        // Everything else in texts with their own unit, so that only the wall counts.
        design["shell"]!["height"] = "180 mm";
        design["top"]!["thickness"] = "3 mm";
        design["ports"] = new JsonArray();

        Assert.Equal(passes, _design.Evaluate(Element(design)).IsValid);
    }

    /// <summary>The reader gives the usual name to the one of its kind alone.</summary>
    [Theory]
    [InlineData("bracket", 1, false, true)]
    [InlineData("bracket", 2, false, false)]
    [InlineData("bracket", 2, true, true)]
    [InlineData("sleeve", 1, false, true)]
    [InlineData("sleeve", 2, false, false)]
    [InlineData("sleeve", 2, true, true)]
    public void Several_of_a_kind_want_a_name_each(string kind, int count, bool named, bool passes)
    {
        var design = JsonOfYaml.Of(Repository.Design("harbour-launch-breather.yaml"))!;
        var holder = kind == "bracket" ? design : design["inside"]!;
        var items = Enumerable.Range(0, count).Select(i =>
        {
            var item = holder[kind]!.DeepClone();
            if (named)
                item["name"] = $"no {i}";
            return item;
        });
        holder[kind] = new JsonArray([.. items]);

        Assert.Equal(passes, _design.Evaluate(Element(design)).IsValid);
        Assert.Equal(passes, !DesignReader.Read(design.ToJsonString(_readable)).Faults.Any(fault => fault.Code == FaultCodes.MissingKey));
    }

    [Fact]
    public void Every_key_is_described()
    {
        var properties = new[] { DesignSchema.Write(), DesignSchema.WriteShop() }
            .SelectMany(s => s["$defs"]!.AsObject()).SelectMany(d => d.Value!["properties"]!.AsObject()).ToList();

        Assert.All(properties, p => Assert.NotEqual("", p.Value!["description"]!.GetValue<string>()));
    }

    [Fact]
    public void The_command_prints_the_same_schema() => Assert.True(JsonNode.DeepEquals(
        DesignSchema.Write(), JsonNode.Parse(CommandRun.Of("schema").Output)));

    [Fact]
    public void The_command_prints_the_schema_of_shops_too() => Assert.True(JsonNode.DeepEquals(
        DesignSchema.WriteShop(), JsonNode.Parse(CommandRun.Of("schema", "shop").Output)));

    [Fact]
    public void A_number_that_is_written_out_of_range_is_a_literal() =>
        Assert.True(IsLiteral(JsonNode.Parse("""{ "ports": [ { "tube": { "wall": 99 } } ] }""")!, "ports[0].tube.wall"));

    private static void AssertPasses(JsonSchema schema, JsonNode? instance)
    {
        var complaints = Complaints(schema, instance);
        Assert.True(complaints.Length == 0, complaints);
    }

    private static JsonSchema Schema(JsonObject schema) => JsonSchema.FromText(schema.ToJsonString());

    private static JsonElement Element(JsonNode? node) => JsonSerializer.SerializeToElement(node);

    private static string Complaints(JsonSchema schema, JsonNode? instance)
    {
        var result = schema.Evaluate(Element(instance), new() { OutputFormat = OutputFormat.List });
        return result.IsValid ? "" : string.Join("; ", (result.Details ?? [])
            .Where(d => d.Errors is not null)
            .SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}")));
    }

    private static bool IsLiteral(JsonNode top, string path)
    {
        var at = path.Replace("[", ".", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal).Split('.')
            .Aggregate((JsonNode?)top, (node, step) => node switch
            {
                JsonObject mapping => mapping[step],
                JsonArray list => list[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)],
                _ => null,
            });
        return at?.GetValueKind() == JsonValueKind.Number;
    }
}
