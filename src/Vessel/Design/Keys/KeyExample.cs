using System.Globalization;

namespace Vessel.Design;

/// <summary>A line that could stand in the file, for the remedy of a key that is missing or holds what it cannot.</summary>
internal static class KeyExample
{
    /// <summary>The key with a value, mappings in braces: <c>gores: { count: 8 }</c>.</summary>
    public static string Line(Key key, UserUnits units) => Line(key, units, null, 1);

    /// <param name="beside">The keys beside it, of which one may decide what it holds.</param>
    /// <param name="item">Which one of a list it is for, from 1 on: their numbers differ.</param>
    private static string Line(Key key, UserUnits units, KeyMap? beside, int item) => $"{key.Name}: {Value(key, units, beside, item)}";

    private static string Value(Key key, UserUnits units, KeyMap? beside, int item) => key.Kind switch
    {
        KeyKind.Text => key.Name == "name" ? "inlet" : "a name",
        KeyKind.Choice => key.Choices[0],
        KeyKind.Material => "stainless 304",
        KeyKind.Thread => "M14x1.5",
        KeyKind.Mapping or KeyKind.OneOrList => Mapping(key, units, beside, item),
        KeyKind.List => $"[ {string.Join(", ", Enumerable.Range(1, (int)Math.Max(1, key.Items?.Low ?? 1)).Select(i => Mapping(key, units, beside, i)))} ]",
        KeyKind.Texts => "[one, other]",
        KeyKind.Sizes => "{ body: 120 mm }",
        KeyKind.Variants => "{ tall: { shell.height: 220 mm } }",
        _ => Number(key, units, item),
    };

    private static string Mapping(Key key, UserUnits units, KeyMap? beside, int item)
    {
        var (map, chosen) = Shown(key, beside);
        var lines = Needed(map, key.Switch?.By).Select(k => Line(k, units, map, item)).ToList();
        if (chosen is not null)
            lines.Insert(0, chosen);
        if (lines.Count == 0)
            lines.Add(Line(map.Keys.First(k => k.AppliesWhen is null), units, map, item));
        return $"{{ {string.Join(", ", lines)} }}";
    }

    /// <summary>The keys of a mapping, and the line in it that decides on them.</summary>
    private static (KeyMap Map, string? Chosen) Shown(Key key, KeyMap? beside)
    {
        if (key.Switch is not { } by)
            return (key.Map!, null);
        if (by.IsBeside && beside?.Find(by.By) is { } decides)
            return (by.Maps[decides.Choices[0]], null);
        // The shape that asks for least is the shortest to show.
        var (choice, keys) = by.Maps.OrderBy(pair => pair.Value.Keys.Count(k => k.IsRequired))
            .ThenBy(pair => pair.Key, StringComparer.Ordinal).First();
        return (keys, by.IsBeside ? null : $"{by.By}: {choice}");
    }

    /// <summary>Required ones, one of each group, and those that these ask for.</summary>
    private static List<Key> Needed(KeyMap map, string? decides)
    {
        var needed = map.Keys.Where(k => k.IsRequired && k.AppliesWhen is null && k.Name != decides)
            .Concat(map.OneOf.Select(group => map.Find(group[0])!))
            .ToList();
        needed.AddRange(map.Keys.Where(k => k.IsRequired && !needed.Contains(k) && k.AppliesWhen is { } condition
            && Holds(map.Find(condition.Key)!, condition.Value)));
        return needed;

        bool Holds(Key key, string? value) => value is null
            ? needed.Contains(key)
            : (needed.Contains(key) ? key.Choices[0] : key.Default) == value;
    }

    /// <summary>The default, else ten of the unit, more for each further item, or the nearest to it that is allowed.</summary>
    private static string Number(Key key, UserUnits units, int item)
    {
        if (key.Default is { } usual)
            return usual;
        var usually = 10.0 * item;
        var value = key.Range is { } range ? Math.Clamp(usually, range.Low, range.High) : usually;
        var unit = key.Kind.ShownUnit(UserUnits.Millimetres);
        if (key.Kind == KeyKind.Length && units == UserUnits.Inches)
        {
            // Up to a sixty-fourth, as they are told; a key with so little room is shown in mm, which any file may hold.
            var inches = Math.Ceiling(value / Unit.Inch.Factor * 64) / 64;
            if (key.Range is not { } room || inches * Unit.Inch.Factor <= room.High)
                return string.Create(CultureInfo.InvariantCulture, $"{inches:0.######} {Unit.Inch.Name}");
        }

        return string.Create(CultureInfo.InvariantCulture, $"{value:0.###} {unit.Name}").TrimEnd();
    }
}
