using System.Collections.Immutable;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>
/// A mapping of the file after its keys were read: millimetres, radians, defaults filled in. A value that was at fault
/// is not there; as a number it is NaN, which breaks no limit, so that no fault is reported for another's sake.
/// </summary>
internal sealed record Section(
    string Path, Material? Material, ImmutableDictionary<string, object> Values, ImmutableHashSet<string> Given)
{
    /// <summary>Stands in for a mapping that is missing or at fault.</summary>
    public static Section Absent(string path) =>
        new(path, null, ImmutableDictionary<string, object>.Empty, ImmutableHashSet<string>.Empty);

    /// <summary>Metal of the section; any stands in for one at fault, since a design with a fault is not built.</summary>
    public Material Metal => Material ?? Materials.All[0];

    public double Number(string key) => Values.TryGetValue(key, out var value) ? (double)value : double.NaN;

    public string? Text(string key) => Values.GetValueOrDefault(key) as string;

    public ThreadSize? Thread(string key) => Values.GetValueOrDefault(key) as ThreadSize;

    public Section? Child(string key) => Values.GetValueOrDefault(key) as Section;

    public ImmutableArray<Section> Items(string key) =>
        Values.GetValueOrDefault(key) is ImmutableArray<Section> items ? items : [];

    /// <summary>The key was given or has a default, and is not at fault.</summary>
    public bool Has(string key) => Values.ContainsKey(key);

    public ImmutableArray<string> Texts(string key) =>
        Values.GetValueOrDefault(key) is ImmutableArray<string> texts ? texts : [];

    /// <summary>The number if the user gave it, else <paramref name="other"/>; NaN where it is at fault.</summary>
    public double NumberOr(string key, double other) => Given.Contains(key) ? Number(key) : other;

    /// <summary>The key was given, and is at fault.</summary>
    public bool IsAtFault(string key) => Given.Contains(key) && !Has(key);
}
