using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Vessel.Design;
using Vessel.Reading;

namespace Vessel.Tests.Hard;

/// <summary>
/// A design that another fabricator might have written: sizes somewhat larger or smaller, another choice of a key, a key left out, a
/// print or fixtures asked for. What comes out is well formed, and a good part of it can be built.
/// </summary>
internal static partial class StructureMutation
{
    private static readonly double[] _factors = [0.5, 0.8, 0.9, 0.97, 1.03, 1.1, 1.25, 2];

    private static readonly string[] _blocks =
    [
        "mockup: { scale: 0.5, drain_holes: [{ diameter: 10 }] }",
        "mockup: { inside: open, wall: 2.4, bed: [120, 120, 150] }",
        "mockup: { inside: solid, internals: beside, stand: true, names: raised }",
        "mockup: { scale: 0.25, names: sunk, bed: [90, 90, 90] }",
        "fixtures: printed",
        "leak_test: { pressure: 200 mbar }",
    ];

    /// <summary>The choices of every key that has some, by its name; those of keys of one name together.</summary>
    private static readonly ImmutableDictionary<string, ImmutableArray<string>> _choices = All(KeyTable.File, [])
        .Where(key => !key.Choices.IsEmpty)
        .GroupBy(key => key.Name, StringComparer.Ordinal)
        .ToImmutableDictionary(keys => keys.Key, keys => keys.SelectMany(key => key.Choices).Distinct().ToImmutableArray(),
            StringComparer.Ordinal);

    public static string Of(string text, Random random)
    {
        for (var i = random.Next(1, 5); i > 0; i--)
        {
            text = random.Next(8) switch
            {
                <= 4 => Replaced(text, Number(), random, match => (double.Parse(match.Value, CultureInfo.InvariantCulture)
                    * _factors[random.Next(_factors.Length)]).ToString("0.###", CultureInfo.InvariantCulture)),
                5 => Replaced(text, Choice(), random, match => _choices.TryGetValue(match.Groups["key"].Value, out var choices)
                    ? $"{match.Groups["key"].Value}: {choices[random.Next(choices.Length)]}" : match.Value),
                6 => Replaced(text, Inner(), random, _ => ""),
                _ => Added(text, _blocks[random.Next(_blocks.Length)]),
            };
        }

        return text;
    }

    private static string Added(string text, string block)
    {
        var key = block[..(block.IndexOf(':', StringComparison.Ordinal) + 1)];
        return text.Split('\n').Any(line => line.StartsWith(key, StringComparison.Ordinal)) ? text : $"{text.TrimEnd()}\n{block}\n";
    }

    private static string Replaced(string text, Regex what, Random random, Func<Match, string> by)
    {
        var found = what.Matches(text);
        if (found.Count == 0)
            return text;
        var match = found[random.Next(found.Count)];
        return text[..match.Index] + by(match) + text[(match.Index + match.Length)..];
    }

    private static IEnumerable<Key> All(KeyMap map, HashSet<KeyMap> seen) => !seen.Add(map) ? [] : map.Keys.SelectMany(key =>
        new[] { key.Map }.Concat(key.Switch?.Maps.Values ?? []).OfType<KeyMap>().SelectMany(inner => All(inner, seen)).Prepend(key));

    [GeneratedRegex(@"(?<=[:,\[] *)[0-9]+(\.[0-9]+)?(?=[ ,}\]\n])")]
    private static partial Regex Number();

    [GeneratedRegex(@"(?<key>[a-z_]+): (?<word>[a-z_]+)(?=[ ,}\n])")]
    private static partial Regex Choice();

    [GeneratedRegex(@"(?<=[{,] ?)[a-z_]+: [^,{}\[\]\n]+, ")]
    private static partial Regex Inner();
}
