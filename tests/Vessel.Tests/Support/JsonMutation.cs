using System.Text.Json.Nodes;

namespace Vessel.Tests.Support;

/// <summary>A tree with one to three things wrong that a schema may see: keys, kinds, choices, numbers.</summary>
internal static class JsonMutation
{
    private static readonly string[] _words =
        ["set_on", "set_in", "sheet", "tube", "flat", "hemisphere", "cone", "overlay", "shell", "top", "in", "mm", "4 in", "body", "16 ga",
            "M14x1.5", "12,5", ""];

    private static readonly string[] _keys =
        ["tilt", "radius", "cut", "recess", "tube", "bung", "seam_angle", "inside_diameter", "wall"];

    private static readonly double[] _numbers = [0, -1, 0.1, 0.29, 3, 26, 45, 201, 361, 1501, 10_001, 1e9, -1e9];

    public static JsonNode Of(JsonNode tree, Random random)
    {
        for (var i = random.Next(1, 4); i > 0; i--)
        {
            var nodes = Below(tree).Where(n => n.Parent is JsonObject).ToList();
            Change(nodes[random.Next(nodes.Count)], random);
        }

        return tree;
    }

    private static void Change(JsonNode node, Random random)
    {
        var (owner, key) = (node.Parent!.AsObject(), node.GetPropertyName());
        switch (random.Next(9))
        {
            case 0:
                owner.Remove(key);
                break;
            case 1:
                owner.Remove(key);
                owner[key + "x"] = node;
                break;
            case 2:
                owner[key] = new JsonArray();
                break;
            case 3:
                owner[key] = new JsonObject();
                break;
            case 4:
                owner[key] = random.Next(2) == 0;
                break;
            case 5:
                owner[key] = _words[random.Next(_words.Length)];
                break;
            case 6:
                // A key of elsewhere.
                owner[_keys[random.Next(_keys.Length)]] =
                    _numbers[random.Next(_numbers.Length)];
                break;
            case 7:
                owner[key] = null;
                break;
            default:
                owner[key] = _numbers[random.Next(_numbers.Length)];
                break;
        }
    }

    private static IEnumerable<JsonNode> Below(JsonNode node) => (node switch
    {
        JsonObject mapping => mapping.Select(m => m.Value),
        JsonArray list => list,
        _ => Enumerable.Empty<JsonNode?>(),
    }).OfType<JsonNode>().SelectMany(n => Below(n).Prepend(n));
}
