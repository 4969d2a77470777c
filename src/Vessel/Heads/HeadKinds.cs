using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Heads.Cones;
using Vessel.Heads.Dishes;
using Vessel.Heads.FlatHeads;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Heads;

/// <summary>The kinds of head that there are: the one place outside their folders that names them.</summary>
internal static class HeadKinds
{
    /// <summary>Kinds in the order in which the file's shapes are listed. The first stands for one whose shape is at fault.</summary>
    public static ImmutableArray<HeadKind> All { get; } =
    [
        new LidKind(DishReading.Pan),
        new DishKind("hemisphere", DishKeys.Hemisphere, DishReading.Hemisphere),
        new DishKind("ellipsoid", DishKeys.Ellipsoid, DishReading.Ellipsoid),
        new DishKind("torisphere", DishKeys.Torisphere, DishReading.Torisphere),
        new ConeKind(DishReading.Toricone),
    ];

    /// <summary>The keys of a head by its shape.</summary>
    public static ImmutableDictionary<string, KeyMap> Keys { get; } = ByShape(new("shape", KeyKind.Choice, "Shape of this end")
    {
        IsRequired = true,
        Choices = [.. All.Select(kind => kind.Shape)],
    });

    public static HeadDesign Read(Section section, ShellDesign shell, VesselEnd end) => (Of(section) ?? All[0]).Read(section, shell, end);

    /// <summary>The kind that a section asks for; null where that is at fault.</summary>
    public static HeadKind? Of(Section section) => All.FirstOrDefault(kind => kind.Shape == section.Text("shape"));

    /// <summary>The head at an end, built.</summary>
    public static Head Build(VesselEnd end, VesselDesign design, ImmutableArray<PortSite> sites) =>
        ((HeadSpec)design.Head(end)).Build(end, design, sites);

    private static ImmutableDictionary<string, KeyMap> ByShape(Key shape) =>
        All.ToImmutableDictionary(kind => kind.Shape, kind => kind.Keys with { Keys = [shape, .. kind.Keys.Keys] });
}
