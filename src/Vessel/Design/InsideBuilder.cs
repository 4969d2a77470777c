using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Fills the records of what stands inside from the section <c>inside</c>; by the same rule as the whole design.</summary>
internal static class InsideBuilder
{
    public static InsideDesign Build(Section inside, ShellDesign shell, ImmutableArray<PortDesign> ports)
    {
        var sleeves = inside.Items("sleeve");
        var discs = inside.Items("discs");
        return new InsideDesign(
            [.. inside.Items("cap").Select(c => Cap(c, ports))],
            [.. sleeves.Select(Sleeve)],
            [.. discs.Select(d => Disc(d, sleeves, shell))],
            [.. inside.Items("packing").Select(p => Packing(p, discs))]);
    }

    private static CapDesign Cap(Section section, ImmutableArray<PortDesign> ports)
    {
        var wall = section.Number("wall");
        var opens = section.Text("opens") == "down" ? CapOpening.Down : CapOpening.Up;
        var head = Head(section);
        var outlet = opens == CapOpening.Down && !section.IsAtFault("outlet")
            ? InsideNames.Outlet(section.Text("outlet"), head, ports)
            : null;
        var windows = WindowsBuilder.Build(section);
        return new CapDesign(
            section.Path,
            Name(section),
            section.Metal,
            section.Number("outside_diameter"),
            wall,
            // Where plate and skirt lie is not known while the way it opens is at fault.
            section.Has("opens") ? section.Number("skirt") : double.NaN,
            opens,
            head,
            Fixed(section),
            opens == CapOpening.Up ? 0 : section.NumberOr("drop", (outlet?.InsideLength ?? double.NaN) - wall),
            opens == CapOpening.Up ? null : outlet?.Name ?? section.Text("outlet"),
            opens == CapOpening.Up ? 0 : section.Number("clearance"),
            opens == CapOpening.Down ? 0 : section.Has("opens") ? section.Number("drain_hole") : double.NaN,
            section.Text("made_from") == "sheet" ? StockForm.Sheet : StockForm.Tube,
            Turns.From(section.NumberOr("seam_angle", WindowRows.FreeAngle(windows, section.Number("outside_diameter") / 2)), 0),
            windows,
            section.Child("pattern") is { } pattern ? Holes(pattern, wall) : null);
    }

    private static SleeveDesign Sleeve(Section section)
    {
        var tube = section.Child("tube") ?? Section.Absent($"{section.Path}.tube");
        return new SleeveDesign(
            section.Path,
            Name(section),
            section.Metal,
            tube.Number("outside_diameter"),
            tube.Number("wall"),
            section.Number("length"),
            Head(section),
            Fixed(section),
            WindowsBuilder.Build(section));
    }

    private static DiscDesign Disc(Section section, ImmutableArray<Section> sleeves, ShellDesign shell)
    {
        var thickness = section.Number("thickness");
        var clearance = section.Number("clearance");
        var (isKnown, sleeve) = InsideNames.HostOf(section, sleeves);
        var height = (section.Child("at") ?? Section.Absent(section.Path)).Number("height");
        var radius = !isKnown ? double.NaN : sleeve is null ? shell.InnerAt(height) : Sleeve(sleeve).InnerRadius;
        return new DiscDesign(
            section.Path,
            Name(section),
            section.Metal,
            sleeve is null ? null : Name(sleeve),
            height,
            thickness,
            clearance,
            Fixed(section),
            section.Number("bore"),
            2 * (radius - clearance),
            Holes(section, thickness));
    }

    private static PackingDesign Packing(Section section, ImmutableArray<Section> discs)
    {
        var names = section.Texts("between").Select(n => InsideNames.Find(discs, n)?.Text("name") ?? n).ToList();
        var material = section.Text("material") ?? "";
        return new PackingDesign(
            section.Path,
            Name(section),
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

    private static HolePatternDesign Holes(Section section, double thickness)
    {
        var hole = section.Number("hole_diameter");
        return new HolePatternDesign(
            section.Path,
            hole,
            section.Number("pitch"),
            section.Text("pattern") switch
            {
                "staggered_45" => HolePattern.Staggered45,
                "square" => HolePattern.Square,
                "rings" => HolePattern.Rings,
                _ => HolePattern.Staggered60,
            },
            section.NumberOr("margin", Math.Max(thickness, hole / 2)));
    }

    private static string Name(Section section) => section.Text("name") ?? "";

    private static PortHost Head(Section section) =>
        section.Text("hangs_from") == "bottom" ? PortHost.Bottom : PortHost.Top;

    private static Fixing Fixed(Section section) => section.Text("fixed") switch
    {
        "tabs" => Fixing.Tabs,
        "screws" => Fixing.Screws,
        "press" => Fixing.Press,
        "loose" => Fixing.Loose,
        _ => Fixing.Weld,
    };
}
