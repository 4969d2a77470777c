using Vessel.Stock;

namespace Vessel.Design;

/// <summary>The figures of a shop as they are shown: those in use, and the table of defaults.</summary>
public static class ShopFigures
{
    public const string Given = "the shop's own";

    /// <summary>Every key that has a default, with it and its source.</summary>
    public static StockTable Defaults { get; } = new("shop", ["key", "default", "what", "source"],
    [
        .. Keys(ShopKeys.File, "").Where(k => k.Key.Source is not null)
            .Select(k => (System.Collections.Immutable.ImmutableArray<object?>)[k.Path, k.Key.Default, k.Key.Description, k.Key.Source]),
    ]);

    internal static IEnumerable<ShopFigure> Of(Section file, KeyMap map, UserUnits units)
    {
        foreach (var key in map.Keys)
        {
            var path = file.Path.Length == 0 ? key.Name : $"{file.Path}.{key.Name}";
            if (file.Child(key.Name) is { } child)
            {
                foreach (var figure in Of(child, key.Map!, units))
                    yield return figure;
            }
            else if (key.Source is { } source && file.Has(key.Name))
            {
                yield return new(path, Shown(file, key, units), file.Given.Contains(key.Name) ? Given : source);
            }
        }
    }

    private static string Shown(Section section, Key key, UserUnits units) => key.Kind.IsNumber()
        ? new UnitFormat(units).Number(key.Kind, section.Number(key.Name))
        : section.Text(key.Name)!;

    private static IEnumerable<(string Path, Key Key)> Keys(KeyMap map, string path) => map.Keys.SelectMany(key =>
        Keys(key.Map ?? new("", []), $"{path}{key.Name}.").Prepend((path + key.Name, key)));
}
