using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Vessel.Tests.Support;

/// <summary>YAML as an editor's schema check sees it: by the core schema of YAML 1.2.</summary>
internal static partial class JsonOfYaml
{
    public static JsonNode? Of(string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        return Of(stream.Documents[0].RootNode);
    }

    private static JsonNode? Of(YamlNode node) => node switch
    {
        YamlMappingNode mapping => new JsonObject(mapping.Children.Select(
            child => KeyValuePair.Create(((YamlScalarNode)child.Key).Value!, Of(child.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Of)]),
        YamlScalarNode { Style: ScalarStyle.Plain, Value: var plain } => Plain(plain!),
        var other => JsonValue.Create(((YamlScalarNode)other).Value),
    };

    private static JsonValue? Plain(string text) => text switch
    {
        "" or "~" or "null" or "Null" or "NULL" => null,
        "true" or "True" or "TRUE" => JsonValue.Create(true),
        "false" or "False" or "FALSE" => JsonValue.Create(false),
        _ when Number().IsMatch(text) => JsonValue.Create(double.Parse(text, CultureInfo.InvariantCulture)),
        _ => JsonValue.Create(text),
    };

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$")]
    private static partial Regex Number();
}
