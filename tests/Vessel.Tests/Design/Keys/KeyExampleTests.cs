using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Reading;
using Xunit;

namespace Vessel.Tests.Design;

/// <summary>The line that a remedy shows could stand in a file: read by the table of keys, it has no fault of its own.</summary>
public sealed class KeyExampleTests
{
    private static readonly bool[] _both = [false, true];

    public static TheoryData<string, bool> Keys() =>
        [.. from file in _both from key in (file ? KeyTable.File : ShopKeys.File).Keys
            select new TheoryDataRow<string, bool>(key.Name, file)];

    [Theory]
    [MemberData(nameof(Keys))]
    public void An_example_is_read_without_a_fault(string name, bool isDesign)
    {
        foreach (var units in Enum.GetValues<UserUnits>())
        {
            var file = isDesign ? KeyTable.File : ShopKeys.File;
            foreach (var key in Below(file.Find(name)!, []))
                AssertReads(key, units);
        }
    }

    private static void AssertReads(Key key, UserUnits units)
    {
        // What decides which keys a mapping has, and what a key applies with, stands beside it in a file.
        var beside = key.Switch is { IsBeside: true }
            ? key.Switch.Maps.OrderBy(map => map.Value.Keys.Count(k => k.IsRequired)).First().Value : null;
        var alone = key with { AppliesWhen = null, Switch = beside is null ? key.Switch : null, Map = key.Map ?? beside };
        var text = KeyExample.Line(alone, units) + "\n";
        var (loaded, faults) = (YamlLoader.Load(text), new List<Fault>());
        Assert.Empty(loaded.Faults);

        new Binder(new ValueReader(units, ImmutableDictionary<string, Quantity?>.Empty, faults), faults)
            .Bind(loaded.Top!, new("an example", [alone]));

        Assert.Empty(faults.Where(fault => fault.Code != FaultCodes.MissingMaterial)
            .Select(fault => $"{text} {fault.Code} {fault.Path} {fault.What}"));
    }

    private static IEnumerable<Key> Below(Key key, HashSet<KeyMap> seen)
    {
        yield return key;
        foreach (var map in (key.Switch?.Maps.Values ?? []).Append(key.Map).OfType<KeyMap>().Where(seen.Add))
        {
            foreach (var below in map.Keys.SelectMany(k => Below(k, seen)))
                yield return below;
        }
    }
}
