using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Members.Packings;

/// <summary>Fills the records from their sections; see <see cref="MemberKind.Read"/>.</summary>
internal static class PackingBuilder
{
    public static PackingDesign Build(Section section, ImmutableArray<Section> discs)
    {
        var names = section.Texts("between").Select(n => InsideNames.Find(discs, n)?.Text("name") ?? n).ToList();
        var material = section.Text("material") ?? "";
        return new PackingDesign(
            section.Path,
            InsideReading.Name(section),
            material,
            Family(material),
            names.ElementAtOrDefault(0),
            names.ElementAtOrDefault(1),
            section.Number("density"),
            section.Has("fibre_diameter") ? section.Number("fibre_diameter") : null);
    }

    /// <summary>Stainless before steel: the one word holds the other's metal.</summary>
    private static MaterialFamily? Family(string material)
    {
        return Says("stainless") ? MaterialFamily.Stainless
            : Says("alumin") ? MaterialFamily.Aluminium
            : Says("steel") ? MaterialFamily.MildSteel
            : null;

        bool Says(string word) => material.Contains(word, StringComparison.OrdinalIgnoreCase);
    }
}
