using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Heads.Dishes;

/// <summary>Fills the records of dished heads; by the same rule as the whole design.</summary>
internal static class DishReading
{
    /// <summary>Radii as multiples of the outside diameter, inside: crown and knuckle.</summary>
    /// <remarks>"Gewölbter Boden", German Wikipedia; DIN 28013's from memory.</remarks>
    private static (double Crown, double Knuckle)? Standard(string? name) => name switch
    {
        "DIN 28011" => (1, 0.1),
        "DIN 28013" => (0.8, 0.154),
        "flanged and dished" => (1, 0.06),
        _ => null,
    };

    /// <summary>A turn of a spinning has so many walls inside unless told otherwise. Common practice, no source.</summary>
    private const double SpunTurn = 3;

    /// <param name="shell">Shell as wide as at the end that the head closes.</param>
    public static DishedHead Hemisphere(Section section, ShellSection shell) =>
        new HemisphereHead(section.Path, section.Metal, section.NumberOr("wall", shell.Course.Wall))
        {
            Flange = section.Number("flange"),
            Gores = Gores(section, shell),
        };

    public static DishedHead Ellipsoid(Section section, ShellSection shell) =>
        new EllipsoidHead(section.Path, section.Metal, section.NumberOr("wall", shell.Course.Wall))
        {
            Flange = section.Number("flange"),
            Gores = Gores(section, shell),
        };

    public static HeadDesign Pan(Section section)
    {
        var wall = section.Number("thickness");
        return new FlangedFlatHead(section.Path, section.Metal, wall, section.NumberOr("knuckle_radius", SpunTurn * wall))
        {
            Flange = section.Number("flange"),
        };
    }

    public static HeadDesign Toricone(Section section, ShellSection shell)
    {
        var wall = section.NumberOr("wall", shell.Course.Wall);
        return new ToriconeHead(
            section.Path, section.Metal, wall, section.Number("angle") / 2, section.NumberOr("nose_radius", SpunTurn * wall),
            section.NumberOr("knuckle_radius", SpunTurn * wall))
        {
            Flange = section.Number("flange"),
        };
    }

    public static DishedHead Torisphere(Section section, ShellSection shell)
    {
        var name = section.Text("standard");
        var (crown, knuckle) = Standard(name) is var (c, k)
            ? (c * shell.OutsideDiameter, k * shell.OutsideDiameter)
            : (section.Number("crown_radius"), section.Number("knuckle_radius"));
        return new TorisphereHead(section.Path, section.Metal, section.NumberOr("wall", shell.Course.Wall), crown, knuckle, name)
        {
            Flange = section.Number("flange"),
            Gores = Gores(section, shell),
        };
    }

    /// <summary>Null when spun.</summary>
    private static GoreDesign? Gores(Section head, ShellSection shell)
    {
        if (head.Text("made_from") != "gores")
            return null;
        var section = head.Child("gores") ?? Section.Absent($"{head.Path}.gores");
        // A count at fault stays out of the other figures' way: NaN has no whole number.
        var count = section.Has("count") ? (int)section.Number("count") : 0;
        return new GoreDesign(
            section.Path,
            count,
            section.NumberOr("cap_diameter", 0.35 * shell.OutsideDiameter),
            Turns.From(section.NumberOr("seam_angle", shell.Seams.Between(count)), 0));
    }
}
