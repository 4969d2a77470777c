using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Reading;

/// <summary>
/// JSON Schema (2020-12) of design and shop files, written from the table of keys. It says what can be said of a file's shape;
/// expressions, names, gauges, and whether the parts fit each other, only the reader knows.
/// </summary>
public static class DesignSchema
{
    // The characters that no number, unit, name or expression holds.
    private const string Quantity = "^[^!\"#$%&',:;<=>?@\\[\\]\\\\^`{|}~]+$";

    private const string SizeName = "^[A-Za-z_\\u0080-\\uffff][A-Za-z0-9_\\u0080-\\uffff]*$";

    private const string SettingPath = "^[^.\\[\\]]+(\\.[^.\\[\\]]+|\\[[0-9]{1,4}\\])*$";

    public static JsonObject Write() => Write(KeyTable.File, "A vessel",
        "One welded vessel: shell, heads, ports. Bare lengths are in 'units'; a text may carry its own unit.");

    /// <summary>JSON Schema of the shop file.</summary>
    public static JsonObject WriteShop() => Write(ShopKeys.File, "A shop",
        "Rates, stock and prices of one shop. Bare lengths are in 'units'; a text may carry its own unit.");

    private static JsonObject Write(KeyMap file, string title, string description)
    {
        var maps = new Definitions();
        var (mm, inch) = (maps.Reference(file, UserUnits.Millimetres), maps.Reference(file, UserUnits.Inches));
        return new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = title,
            ["description"] = description,
            ["type"] = "object",
            ["if"] = new JsonObject
            {
                ["properties"] = new JsonObject { ["units"] = new JsonObject { ["const"] = "in" } },
                ["required"] = List(["units"]),
            },
            ["then"] = inch,
            ["else"] = mm,
            ["$defs"] = maps.All(),
        };
    }

    /// <summary>The schema of a mapping.</summary>
    private static JsonObject Of(KeyMap map, UserUnits units, Definitions maps)
    {
        var schema = new JsonObject { ["type"] = "object", ["title"] = map.Name };
        var properties = new JsonObject();
        foreach (var key in map.Keys)
            properties.Add(key.Name, Of(key, units, maps));
        schema.Add("properties", properties);
        schema.Add("additionalProperties", false);
        if (map.Keys.Where(k => k.IsRequired && k.AppliesWhen is null).Select(k => k.Name).ToList() is { Count: > 0 } required)
            schema.Add("required", List(required));
        var rules = new JsonArray([.. Rules(map, units, maps)]);
        if (rules.Count > 0)
            schema.Add("allOf", rules);
        return schema;
    }

    private static IEnumerable<JsonNode> Rules(KeyMap map, UserUnits units, Definitions maps)
    {
        foreach (var group in map.AtMostOneOf)
            yield return new JsonObject { ["not"] = Given([.. group]) };
        foreach (var group in map.OneOf)
            yield return new JsonObject { ["oneOf"] = new JsonArray([.. group.Select(k => Given([k]))]) };
        foreach (var key in map.Keys.Where(k => k.AppliesWhen is not null))
        {
            yield return new JsonObject { ["if"] = Given([key.Name]), ["then"] = Holds(map, key.AppliesWhen!) };
            if (key.IsRequired)
                yield return new JsonObject { ["if"] = Holds(map, key.AppliesWhen!), ["then"] = Given([key.Name]) };
        }

        foreach (var key in map.Keys.Where(k => k.Switch is { IsBeside: true }))
        {
            var by = map.Find(key.Switch!.By)!;
            foreach (var choice in by.Choices)
            {
                yield return new JsonObject
                {
                    ["if"] = Holds(map, new(by.Name, choice)),
                    ["then"] = Property(key.Name, maps.Reference(key.Switch.Maps[choice], units)),
                };
            }
        }
    }

    /// <summary>True of a mapping in which the condition holds, be it by a default.</summary>
    private static JsonObject Holds(KeyMap map, KeyCondition condition)
    {
        if (condition.Value is not { } value)
            return Given([condition.Key]);
        var key = map.Find(condition.Key)!;
        var ways = new List<JsonObject> { Chosen(key.Name, value) };
        // The first of these keys that is given decides.
        for (var i = 0; i < key.DefaultWhen.Length; i++)
        {
            if (key.DefaultWhen[i].Value == value)
                ways.Add(Absent([key.Name, .. key.DefaultWhen[..i].Select(d => d.Given)], Given([key.DefaultWhen[i].Given])));
        }

        if (key.Default == value)
            ways.Add(Absent([key.Name, .. key.DefaultWhen.Select(d => d.Given)], []));
        return ways is [var only] ? only : new JsonObject { ["anyOf"] = new JsonArray([.. ways]) };
    }

    private static JsonObject Chosen(string key, string value)
    {
        var chosen = Given([key]);
        chosen.Add("properties", new JsonObject { [key] = new JsonObject { ["const"] = value } });
        return chosen;
    }

    private static JsonObject Absent(ImmutableArray<string> keys, JsonObject and)
    {
        and.Add("not", new JsonObject { ["anyOf"] = new JsonArray([.. keys.Select(k => Given([k]))]) });
        return and;
    }

    private static JsonObject Given(IEnumerable<string> keys) => new() { ["required"] = List(keys) };

    private static JsonObject Property(string key, JsonObject schema) =>
        new() { ["properties"] = new JsonObject { [key] = schema } };

    private static JsonObject Of(Key key, UserUnits units, Definitions maps)
    {
        var schema = key.Kind switch
        {
            // YAML takes a bare 3 or true for a number or truth value; as a name it is text all the same.
            KeyKind.Text => new JsonObject { ["type"] = List(["string", "number", "boolean"]), ["maxLength"] = key.Longest },
            KeyKind.Choice when key.Choices == CommonKeys.TruthValues => new JsonObject { ["type"] = "boolean" },
            KeyKind.Choice => new JsonObject { ["enum"] = List(key.Choices) },
            KeyKind.Material => Open(Materials.All.Select(m => m.Name)),
            KeyKind.Thread => Open(Threads.All.Select(t => t.Name)),
            KeyKind.Mapping when key.Map is { } map => maps.Reference(map, units),
            KeyKind.Mapping when key.Switch is { IsBeside: false } by => Switched(by, units, maps),
            KeyKind.Mapping => new JsonObject { ["type"] = "object" },
            KeyKind.List => Listed(key, maps.Reference(key.Map!, units)),
            KeyKind.OneOrList => new JsonObject
            {
                ["anyOf"] = new JsonArray(Item(key, units, maps), NamedWhereSeveral(key, Listed(key, Item(key, units, maps)))),
            },
            KeyKind.Texts => Listed(key, new JsonObject { ["type"] = List(["string", "number", "boolean"]) }),
            KeyKind.Sizes => Named(SizeName, Value(null)),
            KeyKind.Variants => Variants(),
            _ when key.Kind.IsNumber() => Value((key, units)),
            _ => throw new InvalidOperationException($"no schema for {key.Kind}"),
        };
        schema.Add("description", Described(key, units));
        if (key.Default is { } standard)
            schema.Add("default", key.Choices == CommonKeys.TruthValues ? standard == "true" : standard);
        return schema;
    }

    private static JsonObject Item(Key key, UserUnits units, Definitions maps) =>
        key.Switch is { } by ? Switched(by, units, maps) : maps.Reference(key.Map!, units);

    private static JsonObject Listed(Key key, JsonObject item) => new()
    {
        ["type"] = "array",
        ["items"] = item,
        ["minItems"] = (int)(key.Items?.Low ?? 0),
        ["maxItems"] = (int)Math.Min(key.Items?.High ?? Limits.ListItems, Limits.ListItems),
    };

    /// <summary>The usual name serves only the one of its kind.</summary>
    private static JsonObject NamedWhereSeveral(Key key, JsonObject list)
    {
        if ((key.Map ?? key.Switch!.Maps.Values.First()).Find("name") is null)
            return list;
        list.Add("if", new JsonObject { ["minItems"] = 2 });
        list.Add("then", new JsonObject { ["items"] = Given(["name"]) });
        return list;
    }

    private static JsonObject Variants()
    {
        var variants = Named("^", Named(SettingPath, new JsonObject { ["type"] = List(["string", "number", "boolean"]) }));
        variants.Add("maxProperties", Limits.Variants);
        return variants;
    }

    private static JsonObject Named(string names, JsonObject values) => new()
    {
        ["type"] = "object",
        ["propertyNames"] = new JsonObject { ["pattern"] = names },
        ["additionalProperties"] = values,
    };

    /// <summary>Words of a table, in whatever case and spacing.</summary>
    private static JsonObject Open(IEnumerable<string> words) => new()
    {
        ["anyOf"] = new JsonArray(new JsonObject { ["enum"] = List(words) }, new JsonObject { ["type"] = "string" }),
    };

    private static JsonObject Switched(KeySwitch by, UserUnits units, Definitions maps)
    {
        var key = by.Maps.Values.First().Find(by.By)!;
        var rules = key.Choices.Select(choice => new JsonObject
        {
            ["if"] = Holds(by.Maps[choice], new(by.By, choice)),
            ["then"] = maps.Reference(by.Maps[choice], units),
        });
        var schema = new JsonObject
        {
            ["type"] = "object",
            ["properties"] = new JsonObject { [by.By] = new JsonObject { ["enum"] = List(key.Choices) } },
            ["allOf"] = new JsonArray([.. rules]),
        };
        if (key.Default is null)
            schema.Add("required", List([by.By]));
        return schema;
    }

    /// <summary>A bare number inside the key's range, or a text with a unit or expression.</summary>
    private static JsonObject Value((Key Key, UserUnits Units)? of)
    {
        var number = new JsonObject { ["type"] = of?.Key.Kind == KeyKind.Count ? "integer" : "number" };
        if (of is { Key.Range: { } range } given)
        {
            number.Add("minimum", Bare(given.Key.Kind, range.Low, given.Units));
            number.Add("maximum", Bare(given.Key.Kind, range.High, given.Units));
        }

        return new JsonObject
        {
            ["anyOf"] = new JsonArray(number, new JsonObject { ["type"] = "string", ["pattern"] = Quantity }),
        };
    }

    private static string Described(Key key, UserUnits units)
    {
        var rule = key.DefaultRule
            ?? (key.DefaultWhen.IsEmpty ? key.Default
                : string.Join(", ", key.DefaultWhen.Select(d => $"{d.Value} for a {d.Given}")));
        var text = new List<string> { key.Description };
        if (key.Range is { } range)
        {
            var shown = new UnitFormat(units);
            var factor = key.Kind.ShownUnit(UserUnits.Millimetres);
            text.Add($"from {At(range.Low)} to {At(range.High)}");

            string At(double value) => shown.Number(key.Kind, ((value * factor.Factor) + factor.Shift) / key.Kind.ModelFactor());
        }

        if (rule is not null)
            text.Add($"unless given: {rule}");
        if (key.Source is { } source)
            text.Add($"source: {source}");
        return string.Join("; ", text);
    }

    /// <summary>A limit of the table as a bare number of the file.</summary>
    private static double Bare(KeyKind kind, double limit, UserUnits units)
    {
        var (table, file) = (kind.ShownUnit(UserUnits.Millimetres), kind.ShownUnit(units));
        return table == file ? limit : ((limit * table.Factor) + table.Shift - file.Shift) / file.Factor;
    }

    private static JsonArray List(IEnumerable<string> words) => new([.. words.Select(w => JsonValue.Create(w))]);

    /// <summary>The schemas of mappings by name, each once.</summary>
    private sealed class Definitions
    {
        private readonly Dictionary<(KeyMap Map, UserUnits Units), string> _names = [];

        private readonly SortedDictionary<string, JsonObject> _schemas = new(StringComparer.Ordinal);

        public JsonObject Reference(KeyMap map, UserUnits units)
        {
            if (!_names.TryGetValue((map, units), out var name))
            {
                var plain = Slug.Of(map.Name) + (units == UserUnits.Inches ? "-in" : "");
                name = plain;
                for (var i = 2; _names.ContainsValue(name); i++)
                    name = $"{plain}-{i}";
                // Named before it is written, as it may hold itself.
                _names.Add((map, units), name);
                _schemas.Add(name, Of(map, units, this));
            }

            return new JsonObject { ["$ref"] = $"#/$defs/{name}" };
        }

        public JsonObject All() => new([.. _schemas.Select(s => KeyValuePair.Create<string, JsonNode?>(s.Key, s.Value))]);
    }
}
