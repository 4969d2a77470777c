namespace Vessel.Design;

/// <summary>What the sections of several kinds of internals are read alike for.</summary>
internal static class InsideReading
{
    /// <summary>A pattern of holes.</summary>
    /// <param name="thickness">Thickness of the plate, mm.</param>
    public static HolePatternDesign Holes(Section section, double thickness)
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

    public static string Name(Section section) => section.Text("name") ?? "";

    public static VesselEnd Head(Section section) =>
        section.Text("hangs_from") == "bottom" ? VesselEnd.Bottom : VesselEnd.Top;

    public static Fixing Fixed(Section section) => section.Text("fixed") switch
    {
        "tabs" => Fixing.Tabs,
        "screws" => Fixing.Screws,
        "press" => Fixing.Press,
        "loose" => Fixing.Loose,
        _ => Fixing.Weld,
    };
}
