using System.Collections.Immutable;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>From the text of a vessel file to a checked design.</summary>
public static class DesignReader
{
    /// <summary>
    /// The design, or every fault of the file, sorted by place; each fault has its place. Never throws for what stands
    /// in the file.
    /// </summary>
    public static Outcome<VesselDesign> Read(string yamlText)
    {
        var loaded = YamlLoader.Load(yamlText);
        if (loaded.Top is not { } top)
            return Sorted(loaded.Faults, ImmutableDictionary<string, Span>.Empty);

        var faults = loaded.Faults.ToList();
        var places = Places.Of(top);
        var units = Word(top, "units") == "in" ? UserUnits.Inches : UserUnits.Millimetres;
        var family = Word(top, "material") is { } metal ? Materials.Find(metal)?.Family : null;
        var sizes = top.Find("dimensions")?.Value is YamlMapping named
            ? NamedSizes.Read(named, units, family, faults)
            : ImmutableDictionary<string, Quantity?>.Empty;
        var file = new Binder(new ValueReader(units, sizes, faults), faults).Bind(top);
        var design = DesignBuilder.Build(file, units, places);
        faults.AddRange(NameCheck.Find(file));
        faults.AddRange(MetalCheck.Find(file));
        faults.AddRange(DesignCheck.Find(design));
        return faults.Count == 0 ? design : Sorted(faults, places);
    }

    private static string? Word(YamlMapping top, string key) => (top.Find(key)?.Value as YamlScalar)?.Text;

    private static ImmutableArray<Fault> Sorted(IEnumerable<Fault> faults, ImmutableDictionary<string, Span> places) =>
    [
        .. faults
            .Select(f => f.At is null ? f with { At = places.Nearest(f.Path) } : f)
            .OrderBy(f => (f.At!.Value.Line, f.At.Value.Column))
            .ThenBy(f => f.Code, StringComparer.Ordinal),
    ];
}
