using System.Text.Json.Nodes;

namespace Vessel.Export.Summary;

/// <summary>The pieces of JSON Schema (2020-12) that a summary needs.</summary>
internal static class JsonSchemas
{
    /// <summary>No other names than these; an optional one may be left out.</summary>
    public static JsonObject Object(string description, IEnumerable<(string Name, JsonObject Schema, bool IsOptional)> fields)
    {
        var properties = new JsonObject();
        var required = new List<JsonNode>();
        foreach (var (name, schema, optional) in fields)
        {
            properties.Add(name, schema);
            if (!optional)
                required.Add(JsonValue.Create(name));
        }

        return new()
        {
            ["description"] = description,
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = new JsonArray([.. required]),
            ["additionalProperties"] = false,
        };
    }

    /// <summary>Any names, each with such a value.</summary>
    public static JsonObject Map(string description, JsonObject values) =>
        new() { ["description"] = description, ["type"] = "object", ["additionalProperties"] = values };

    public static JsonObject List(string description, JsonObject items) =>
        new() { ["description"] = description, ["type"] = "array", ["items"] = items };

    public static JsonObject Any(string description, params JsonObject[] ways) =>
        new() { ["description"] = description, ["anyOf"] = new JsonArray([.. ways]) };

    public static JsonObject Nullable(JsonObject schema)
    {
        schema["type"] = new JsonArray((string)schema["type"]!, "null");
        return schema;
    }

    public static JsonObject Constant(string value, string description) =>
        new() { ["description"] = description, ["const"] = value };

    public static JsonObject Choice(string description, params string[] words) =>
        new() { ["description"] = description, ["enum"] = new JsonArray([.. words.Select(w => JsonValue.Create(w))]) };

    public static JsonObject Text(string description) => Plain("string", description);

    public static JsonObject Number(string description) => Plain("number", description);

    public static JsonObject Count(string description) => Plain("integer", description);

    public static JsonObject Flag(string description) => Plain("boolean", description);

    private static JsonObject Plain(string type, string description) =>
        new() { ["description"] = description, ["type"] = type };
}
