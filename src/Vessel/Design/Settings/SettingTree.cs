using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Vessel.Design;

/// <summary>Puts settings into the tree of a file. Mappings on the way that are missing are made.</summary>
internal static partial class SettingTree
{
    /// <summary>The tree with the setting in it; as it was, with a fault added, when the path leads nowhere.</summary>
    public static YamlMapping Put(YamlMapping top, Setting setting, List<Fault> faults)
    {
        if (!Written().IsMatch(setting.Path))
        {
            faults.Add(Lost(setting, $"'{setting.Path}' is not the path of a value.",
                "Write keys with points between them, as 'shell.height' or 'ports[0].tube.wall'."));
            return top;
        }

        var steps = Step().Matches(setting.Path).Select(m => m.Value).ToArray();
        return InMapping(top, steps, setting, faults) ?? top;
    }

    /// <summary>Null after a fault.</summary>
    private static YamlMapping? InMapping(YamlMapping mapping, ReadOnlySpan<string> steps, Setting setting, List<Fault> faults)
    {
        var key = steps[0];
        var old = mapping.Find(key);
        var inside = old?.Value ?? new YamlMapping([], setting.PathAt);
        YamlNode? value = steps.Length == 1 ? setting.Value : Inside(inside, steps[1..], setting, faults);
        if (value is null)
            return null;
        var entry = old is null || steps.Length == 1
            ? new YamlEntry(key, setting.PathAt, value)
            : old with { Value = value };
        return mapping with { Entries = old is null ? mapping.Entries.Add(entry) : mapping.Entries.Replace(old, entry) };
    }

    private static YamlList? InList(YamlList list, ReadOnlySpan<string> steps, Setting setting, List<Fault> faults)
    {
        if (Item(list, steps[0], setting, faults) is not { } index)
            return null;
        YamlNode? item = steps.Length == 1 ? setting.Value : Inside(list.Items[index], steps[1..], setting, faults);
        return item is null ? null : list with { Items = list.Items.SetItem(index, item) };
    }

    private static YamlNode? Inside(YamlNode node, ReadOnlySpan<string> steps, Setting setting, List<Fault> faults)
    {
        switch (node)
        {
            case YamlMapping mapping when steps[0][0] != '[':
                return InMapping(mapping, steps, setting, faults);
            case YamlList list:
                return InList(list, steps, setting, faults);
            default:
                faults.Add(node is YamlMapping
                    ? Lost(setting, $"'{steps[0]}' in '{setting.Path}' follows a value that is not a list.", "Name a key instead.")
                    : Lost(setting, $"'{setting.Path}' leads into a single value.", $"End the path before '{steps[0]}'."));
                return null;
        }
    }

    /// <summary>Place in the list by number from 0, or by the item's name; the slug of the name will do.</summary>
    private static int? Item(YamlList list, string step, Setting setting, List<Fault> faults)
    {
        if (step[0] == '[')
        {
            var index = int.Parse(step.AsSpan(1, step.Length - 2), NumberStyles.None, CultureInfo.InvariantCulture);
            if (index < list.Items.Length)
                return index;
            faults.Add(Lost(setting, $"There is no item {step} in the list; it has {list.Items.Length}, counted from [0].",
                "Use the number or the name of an item that is there."));
            return null;
        }

        var names = list.Items.Select(i => ((i as YamlMapping)?.Find("name")?.Value as YamlScalar)?.Text ?? "").ToImmutableArray();
        var found = names.IndexOf(step) is >= 0 and var exact ? exact : names.Select(Slug.Of).ToImmutableArray().IndexOf(step);
        if (found >= 0)
            return found;
        faults.Add(Lost(setting, $"No item of the list is named '{step}'.",
            Suggestion.Hint(step, names) ?? "Use the name of an item, or its number as [0]."));
        return null;
    }

    private static Fault Lost(Setting setting, string what, string remedy) =>
        new(FaultCodes.UnknownPlace, setting.Path, what, null, null, remedy, setting.PathAt);

    [GeneratedRegex(@"^[^.\[\]]+(\.[^.\[\]]+|\[[0-9]{1,4}\])*$")]
    private static partial Regex Written();

    [GeneratedRegex(@"\[[0-9]+\]|[^.\[\]]+")]
    private static partial Regex Step();
}
