using System.Collections.Immutable;
using System.Globalization;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Reads mappings by the table of keys; reports every key and value that is not as the table has it.</summary>
internal sealed class Binder(ValueReader values, List<Fault> faults)
{
    /// <summary>The file's own mapping.</summary>
    public Section Bind(YamlMapping top, KeyMap file) => Bind(top, file, "", null);

    /// <param name="material">What holds where the mapping names no material.</param>
    private Section Bind(YamlMapping mapping, KeyMap map, string path, Inherited? material)
    {
        var isBuilt = IsBuilt(mapping, map, path);
        ReportUnknown(mapping, map, path);
        var own = MaterialOf(mapping, map, path, material);
        var section = new Section(path, own?.Material, ImmutableDictionary<string, object>.Empty,
            [.. mapping.Entries.Select(e => e.Key)]);
        // Choices and defaults first: which other keys apply depends on them.
        foreach (var key in map.Keys.OrderBy(k => k.Kind == KeyKind.Choice ? 0 : 1))
        {
            if (ValueOf(key, mapping, map, section, own) is { } value)
                section = section with { Values = section.Values.Add(key.Name, value) };
        }

        foreach (var group in map.OneOf)
            CheckGroup(group, map, section, 1);
        foreach (var group in map.AtMostOneOf)
            CheckGroup(group, map, section, 0);
        // What such a mapping lacks is not missing: it asks for something else.
        if (!isBuilt)
            faults.RemoveAll(fault => fault.Code == FaultCodes.MissingKey && fault.Path == path);
        return section;
    }

    private object? ValueOf(Key key, YamlMapping mapping, KeyMap map, Section section, Inherited? material)
    {
        var applies = Applies(key, section);
        if (mapping.Find(key.Name) is not { } entry)
        {
            if (key.IsRequired && applies == true)
            {
                Report(FaultCodes.MissingKey, section.Path, $"'{key.Name}' is missing in {map.Name}.",
                    $"Add '{key.Name}' ({Lowered(key.Description)}), as '{Example(key)}'.");
            }

            return applies != false && key.Map is { MayBeEmpty: true } own
                ? Bind(new YamlMapping([], default), own, Join(section.Path, key.Name), material)
                : Default(key, section);
        }

        var path = Join(section.Path, key.Name);
        if (applies == false)
        {
            var condition = key.AppliesWhen!;
            var need = condition.Value is null ? $"'{condition.Key}'" : $"'{condition.Key}: {condition.Value}'";
            Report(FaultCodes.KeyDoesNotApply, path, $"'{key.Name}' means something only with {need}.",
                $"Delete '{key.Name}', or use {need}.", at: entry.KeyAt);
            return Default(key, section);
        }

        if (entry.Value is YamlScalar { IsNothing: true })
        {
            Report(FaultCodes.MissingValue, path, $"'{key.Name}' has no value.",
                "Write a value after the colon, or delete the key.", at: entry.KeyAt);
            return null;
        }

        return key.Kind switch
        {
            KeyKind.Mapping => Child(key, entry, path, section, material),
            KeyKind.List => Items(key, entry, path, section, material),
            KeyKind.OneOrList => entry.Value is YamlMapping one
                ? MapOf(key, path, one, section) is { } own ? ImmutableArray.Create(Bind(one, own, path, material)) : null
                : Items(key, entry, path, section, material),
            KeyKind.Texts => Texts(key, entry, path),
            KeyKind.Sizes => entry.Value is YamlMapping ? null : WrongKind(entry.Value, path, "names with values", key),
            KeyKind.Variants => entry.Value is YamlMapping ? null : WrongKind(entry.Value, path, "names with settings", key),
            _ => entry.Value is YamlScalar scalar
                ? Single(key, scalar, path, material, section)
                : WrongKind(entry.Value, path, "a single value", key),
        };
    }

    /// <summary>Null where the key that decides is itself at fault.</summary>
    private static bool? Applies(Key key, Section section) => key.AppliesWhen switch
    {
        null => true,
        { Value: null } condition => section.Given.Contains(condition.Key),
        var condition => section.Text(condition.Key) is { } chosen ? chosen == condition.Value : null,
    };

    private object? Default(Key key, Section section)
    {
        var text = key.DefaultWhen.FirstOrDefault(d => section.Given.Contains(d.Given))?.Value ?? key.Default;
        if (text is null || !key.Kind.IsNumber())
            return text;
        return values.Read(new YamlScalar(text, false, null, default), section.Path, default) is { } quantity
            ? Model(key.Kind, quantity)
            : throw new InvalidOperationException($"the default of '{key.Name}' cannot be read");
    }

    private object? Single(Key key, YamlScalar scalar, string path, Inherited? material, Section section) => key.Kind switch
    {
        KeyKind.Text => Text(key, scalar, path),
        KeyKind.Choice => Choice(key, scalar, path),
        KeyKind.Material => material?.Material,
        KeyKind.Thread => Thread(scalar, path),
        _ => Number(key, scalar, path, new(material?.Material?.Family, IsTubeWall(key, section))),
    };

    private string? Text(Key key, YamlScalar scalar, string path)
    {
        if (scalar.Text.Length <= key.Longest)
            return scalar.Text;
        faults.Add(TextCheck.TooLong(scalar.Text, key.Longest, path, scalar.At));
        return null;
    }

    private string? Choice(Key key, YamlScalar scalar, string path)
    {
        if (key.Choices.Contains(scalar.Text))
            return scalar.Text;
        var choices = string.Join(", ", key.Choices);
        if (key.NotBuiltYet.Contains(scalar.Text))
        {
            Report(FaultCodes.NotBuiltYet, path, $"'{key.Name}: {scalar.Text}' is not supported.",
                $"Use one of: {choices}.", scalar.Text, choices);
        }
        else if (Unsupported.Says("", scalar.Text) is { } says)
        {
            Report(FaultCodes.NotBuiltYet, path, says, $"Use one of: {choices}.", scalar.Text, choices);
        }
        else
        {
            Report(FaultCodes.UnknownChoice, path, $"'{scalar.Text}' is not a choice of '{key.Name}'.",
                $"{Suggestion.Hint(scalar.Text, key.Choices)} Use one of: {choices}.".TrimStart(), scalar.Text, choices);
        }

        return null;
    }

    private ThreadSize? Thread(YamlScalar scalar, string path)
    {
        if (Threads.Find(scalar.Text) is { } thread)
            return thread;
        Report(FaultCodes.UnknownThread, path, $"'{scalar.Text}' is no known thread.",
            $"{Suggestion.Hint(scalar.Text, Threads.All.Select(t => t.Name))} Write it as {Threads.Kinds}; the command 'stock threads' lists them all."
                .TrimStart(),
            scalar.Text);
        return null;
    }

    /// <summary>Whether a gauge given for the key is that of a tube's wall.</summary>
    private static bool IsTubeWall(Key key, Section section) =>
        key.TubeWhen is { } when && (when.Value is null || section.Text(when.Key) == when.Value);

    private double? Number(Key key, YamlScalar scalar, string path, GaugedStock gauged)
    {
        if (values.Read(scalar, path, gauged) is not { } quantity)
            return null;
        if (!quantity.IsBare && quantity.Dimension != key.Kind.Dimension())
        {
            Report(FaultCodes.WrongDimension, path,
                $"'{key.Name}' is {key.Kind.Dimension()}, and the value is {quantity.Dimension}.",
                $"Write {key.Kind.Dimension()}, as '{Example(key)}'.", scalar.Text);
            return null;
        }

        var value = Model(key.Kind, quantity);
        if (key.Kind == KeyKind.Count && value != Math.Round(value))
        {
            Report(FaultCodes.NotAWholeNumber, path, $"'{key.Name}' is a number of things, and the value is not whole.",
                $"Write a whole number, as '{key.Name}: {Math.Round(value).ToString(CultureInfo.InvariantCulture)}'.",
                new UnitFormat(values.Units).Number(key.Kind, value), "a whole number");
            return null;
        }

        if (key.Range is not { } range)
            return value;
        var (low, high) = (Limit(range.Low), Limit(range.High));
        if (value >= low && value <= high)
            return value;
        var shown = new UnitFormat(values.Units);
        var limit = value < low ? $"at least {shown.Number(key.Kind, low)}" : $"at most {shown.Number(key.Kind, high)}";
        Report(FaultCodes.OutOfRange, path, $"'{key.Name}' must be {limit}.", $"Use a value of {limit}.",
            shown.Number(key.Kind, value), limit);
        return null;

        double Limit(double shownAs) =>
            Held(key.Kind.ShownUnit(UserUnits.Millimetres), shownAs) / key.Kind.ModelFactor();
    }

    /// <summary>Value in the units of the model; a bare number is in the unit that the key and the file give it.</summary>
    private double Model(KeyKind kind, Quantity quantity)
    {
        var held = quantity.IsBare ? Held(kind.ShownUnit(values.Units), quantity.Value) : quantity.Value;
        return held / kind.ModelFactor();
    }

    private static double Held(Unit unit, double value) => (value * unit.Factor) + unit.Shift;

    private object? Child(Key key, YamlEntry entry, string path, Section section, Inherited? material)
    {
        if (entry.Value is not YamlMapping child)
            return WrongKind(entry.Value, path, "a mapping of keys", key);
        return MapOf(key, path, child, section) is { } map ? Bind(child, map, path, material) : null;
    }

    /// <summary>The keys that a mapping under this key may have; null where what decides is at fault.</summary>
    private KeyMap? MapOf(Key key, string path, YamlMapping holder, Section section) =>
        key.Switch is { } by ? Switched(by, path, holder, section) : key.Map;

    private KeyMap? Switched(KeySwitch by, string path, YamlMapping holder, Section section)
    {
        if (by.IsBeside)
            return section.Text(by.By) is { } chosen ? by.Maps.GetValueOrDefault(chosen) : null;
        // The choice stands in the mapping whose keys it decides, so it is read ahead of them.
        var key = by.Maps.Values.First().Find(by.By)!;
        if (holder.Find(by.By) is not { } entry)
        {
            if (key.Default is { } usual)
                return by.Maps[usual];
            Report(FaultCodes.MissingKey, path, $"'{by.By}' is missing.",
                $"Add '{by.By}', one of {string.Join(", ", key.Choices)}, as '{Example(key)}'.");
            return null;
        }

        var choice = entry.Value is YamlScalar scalar
            ? Choice(key, scalar, Join(path, by.By))
            : WrongKind(entry.Value, Join(path, by.By), "a single value", key) as string;
        return choice is null ? null : by.Maps[choice];
    }

    private bool IsTooLong(Key key, YamlList list, string path)
    {
        if (list.Items.Length <= Limits.ListItems)
            return false;
        Report(FaultCodes.TooManyItems, path, $"'{key.Name}' holds more items than a vessel can have.",
            "Keep one vessel in one file.", $"{list.Items.Length}", $"{Limits.ListItems}");
        return true;
    }

    private object? Items(Key key, YamlEntry entry, string path, Section section, Inherited? material)
    {
        if (entry.Value is not YamlList list)
        {
            return WrongKind(entry.Value, path, key.Kind == KeyKind.OneOrList
                ? "a mapping of keys, or a list of such"
                : "a list", key);
        }

        if (IsTooLong(key, list, path) || !CountIsRight(key, list, path))
            return null;
        var items = ImmutableArray.CreateBuilder<Section>();
        for (var i = 0; i < list.Items.Length; i++)
        {
            var itemPath = string.Create(CultureInfo.InvariantCulture, $"{path}[{i}]");
            if (list.Items[i] is not YamlMapping item)
                WrongKind(list.Items[i], itemPath, "a mapping of keys", key);
            else if (MapOf(key, itemPath, item, section) is { } map)
                items.Add(Bind(item, map, itemPath, material));
        }

        return items.ToImmutable();
    }

    private object? Texts(Key key, YamlEntry entry, string path)
    {
        if (entry.Value is not YamlList list)
            return WrongKind(entry.Value, path, "a list of names", key);
        if (IsTooLong(key, list, path) || !CountIsRight(key, list, path))
            return null;
        if (list.Items.FirstOrDefault(i => i is not YamlScalar { Text.Length: > 0 }) is { } odd)
            return WrongKind(odd, path, "a list of names", key);
        var texts = list.Items.Select(i => Text(key, (YamlScalar)i, path)).ToImmutableArray();
        return texts.Contains(null) ? null : texts;
    }

    private bool CountIsRight(Key key, YamlList list, string path)
    {
        if (key.Items is not { } range || (list.Items.Length >= range.Low && list.Items.Length <= range.High))
            return true;
        var shown = new UnitFormat(values.Units);
        var limit = list.Items.Length < range.Low
            ? $"at least {shown.Number(KeyKind.Count, range.Low)}"
            : $"at most {shown.Number(KeyKind.Count, range.High)}";
        Report(FaultCodes.OutOfRange, path, $"'{key.Name}' takes {limit} items.", $"Give it {limit} items.",
            shown.Number(KeyKind.Count, list.Items.Length), limit);
        return false;
    }

    private Inherited? MaterialOf(YamlMapping mapping, KeyMap map, string path, Inherited? inherited)
    {
        // A packing's material is a text: it is bought by that name, and nothing inherits it.
        if (map.Find("material") is not { Kind: KeyKind.Material })
            return inherited;
        if (mapping.Find("material") is not { Value: YamlScalar { Text.Length: > 0 } scalar })
        {
            if (inherited is null && path.Length > 0 && mapping.Find("material") is null)
            {
                Report(FaultCodes.MissingMaterial, path, $"The material of {map.Name} is missing.",
                    "Add 'material' here or at the top of the file.");
            }

            // A material at fault is reported once, where it stands.
            return inherited ?? (mapping.Find("material") is null ? null : new Inherited(null));
        }

        var material = Materials.Find(scalar.Text);
        if (material is null)
        {
            Report(FaultCodes.UnknownMaterial, Join(path, "material"), $"'{scalar.Text}' is not a metal of the table.",
                $"Use one of: {string.Join(", ", Materials.All.Select(m => m.Name))}.", scalar.Text);
        }

        return new Inherited(material);
    }

    private bool IsBuilt(YamlMapping mapping, KeyMap map, string path)
    {
        if (map.NotBuiltYet is not var (keys, what) || mapping.Entries.FirstOrDefault(e => keys.Contains(e.Key)) is not { } entry)
            return true;
        Report(FaultCodes.NotBuiltYet, Join(path, entry.Key), $"'{entry.Key}' asks for {what}, which is not supported.",
            $"Use a round one: {string.Join(" and ", map.Keys.Where(k => k.IsRequired).Select(k => $"'{k.Name}'"))}.", entry.Key,
            at: entry.KeyAt);
        return false;
    }

    private void ReportUnknown(YamlMapping mapping, KeyMap map, string path)
    {
        var told = map.NotBuiltYet?.Keys ?? [];
        foreach (var entry in mapping.Entries.Where(e => map.Find(e.Key) is null && !told.Contains(e.Key)))
        {
            if (Unsupported.Says(entry.Key, (entry.Value as YamlScalar)?.Text) is { } says)
            {
                Report(FaultCodes.NotBuiltYet, Join(path, entry.Key), says, $"Delete '{entry.Key}'.", entry.Key, at: entry.KeyAt);
                continue;
            }

            var isNumber = double.TryParse(entry.Key, NumberStyles.None, CultureInfo.InvariantCulture, out _);
            var remedy = isNumber
                ? "Write a point, not a comma, in a number; between braces a comma begins the next key."
                : Suggestion.Hint(entry.Key, map.Keys.Select(k => k.Name))
                    ?? $"Keys here are {string.Join(", ", map.Keys.Select(k => k.Name))}.";
            Report(FaultCodes.UnknownKey, Join(path, entry.Key), $"There is no key '{entry.Key}' in {map.Name}.", remedy,
                entry.Key, at: entry.KeyAt);
        }
    }

    private void CheckGroup(ImmutableArray<string> group, KeyMap map, Section section, int least)
    {
        var given = group.Where(section.Given.Contains).ToList();
        if (given.Count == 1 || given.Count == least)
            return;
        var both = string.Join(" and ", group.Select(k => $"'{k}'"));
        Report(FaultCodes.OnlyOneOf, given.Count == 0 ? section.Path : Join(section.Path, given[1]),
            $"Of {both} {map.Name} takes {(least > 0 ? "exactly" : "only")} one.", given.Count == 0 ? "Add one of them." : "Delete one of them.");
    }

    private object? WrongKind(YamlNode node, string path, string wanted, Key key)
    {
        Report(FaultCodes.WrongKind, path, $"'{key.Name}' takes {wanted}.", $"Write {wanted}, as '{Example(key)}'.", at: node.At);
        return null;
    }

    private void Report(
        string code, string path, string what, string remedy, string? given = null, string? limit = null, Span? at = null) =>
        faults.Add(new Fault(code, path, what, given, limit, remedy, at));

    private string Example(Key key) => KeyExample.Line(key, values.Units);

    private static string Lowered(string text) => char.ToLowerInvariant(text[0]) + text[1..];

    private static string Join(string path, string key) => path.Length == 0 ? key : $"{path}.{key}";

    /// <summary>What a part is made of unless it says otherwise; a null material is one that was at fault.</summary>
    private sealed record Inherited(Material? Material);
}
