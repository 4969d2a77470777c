using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Reading;

/// <summary>Reader that makes a checked design from the text of a vessel file.</summary>
public static class DesignReader
{
    public static Outcome<VesselDesign> Read(string yamlText) => Read(yamlText, DesignSettings.None);

    /// <summary>
    /// The design, or every fault of the file and the settings, sorted by place; each fault has its place. Never
    /// throws for what stands in the file.
    /// </summary>
    public static Outcome<VesselDesign> Read(string yamlText, DesignSettings settings)
    {
        var shop = settings.Shop is { } text ? ShopReader.Read(text) : Shop.Usual;
        var loaded = YamlLoader.Load(yamlText);
        if (loaded.Top is not { } written)
            return FaultList.Sorted(loaded.Faults.Concat(shop.Faults));

        var faults = loaded.Faults.ToList();
        var variants = Variants.Read(written, faults);
        var chosen = Variants.Chosen(variants, settings.Variant, faults);
        var asked = settings.With.Select((setting, i) => Setting.Parse(setting, i + 1)).ToList();
        faults.AddRange(asked.Select(setting => TextCheck.Of(setting.Value)).OfType<Fault>());
        var top = (chosen?.Settings ?? []).Concat(asked)
            .Aggregate(written, (tree, setting) => SettingTree.Put(tree, setting, faults));

        var places = Places.Of(top);
        var file = Bind(top, faults);
        var units = file.Text("units") == "in" ? UserUnits.Inches : UserUnits.Millimetres;
        var design = DesignBuilder.Build(file, units, places, shop.Value ?? Shop.Usual) with
        {
            Accepted =
            [
                .. file.Items("accept").Select(a => new AcceptedCode(a.Path, a.Text("code") ?? "", a.Text("reason") ?? "")),
            ],
        };
        faults.AddRange(NameCheck.Find(file));
        faults.AddRange(MetalCheck.Find(file));
        faults.AddRange(ReferenceCheck.Find(file, design));
        faults.AddRange(AcceptCheck.Find(file));
        faults.AddRange(OwnLiquidCheck.Find(file));
        faults.AddRange(DesignCheck.Find(design));
        var placed = FaultList.Placed(faults, places)
            .Concat(variants.Where(v => v != chosen).SelectMany(v => FaultsInside(v, written)))
            .Concat(shop.Faults)
            .ToImmutableArray();
        return placed.IsEmpty ? design : FaultList.Sorted(placed);
    }

    private static Section Bind(YamlMapping top, List<Fault> faults)
    {
        var units = Word(top, "units") == "in" ? UserUnits.Inches : UserUnits.Millimetres;
        var family = Word(top, "material") is { } metal ? Materials.Find(metal)?.Family : null;
        var sizes = top.Find("dimensions")?.Value is YamlMapping named
            ? NamedSizes.Read(named, units, family, faults)
            : ImmutableDictionary<string, Quantity?>.Empty;
        return new Binder(new ValueReader(units, sizes, faults), faults).Bind(top, KeyTable.File);
    }

    /// <summary>
    /// A variant that is not asked for must still be readable, lest its mistakes wait for the day it is; whether it
    /// can be built is not looked at.
    /// </summary>
    private static IEnumerable<Fault> FaultsInside(Variant variant, YamlMapping written)
    {
        var faults = new List<Fault>();
        var top = variant.Settings.Aggregate(written, (tree, setting) => SettingTree.Put(tree, setting, faults));
        Bind(top, faults);
        return FaultList.Placed(faults, Places.Of(top)).Where(f => variant.At.Holds(f.At!.Value));
    }

    private static string? Word(YamlMapping top, string key) => (top.Find(key)?.Value as YamlScalar)?.Text;
}
