using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Fills the heads' records; by the same rule as the whole design.</summary>
internal static class HeadBuilder
{
    /// <summary>Radii as multiples of the outside diameter, inside: crown and knuckle.</summary>
    /// <remarks>"Gewölbter Boden", German Wikipedia; DIN 28013's from memory.</remarks>
    public static (double Crown, double Knuckle)? Standard(string? name) => name switch
    {
        "DIN 28011" => (1, 0.1),
        "DIN 28013" => (0.8, 0.154),
        "flanged and dished" => (1, 0.06),
        _ => null,
    };

    /// <summary>A turn of a spinning has so many walls inside unless told otherwise. Common practice, no source.</summary>
    private const double SpunTurn = 3;

    /// <param name="whole">The shell, of which the head sees the end that it closes.</param>
    public static HeadDesign Build(Section section, ShellDesign whole, PortHost end) =>
        Build(section, whole, end, whole.AtEnd(end));

    /// <param name="shell">The shell at that end.</param>
    private static HeadDesign Build(Section section, ShellDesign whole, PortHost end, ShellSection shell) => section.Text("shape") switch
    {
        "hemisphere" => new HemisphereHead(section.Path, section.Metal, Wall(section, shell))
        {
            Flange = section.Number("flange"),
            Gores = Gores(section, shell),
        },
        "ellipsoid" => new EllipsoidHead(section.Path, section.Metal, Wall(section, shell))
        {
            Flange = section.Number("flange"),
            Gores = Gores(section, shell),
        },
        "torisphere" => Torisphere(section, shell),
        "cone" => section.Text("made_from") == "spinning" ? Toricone(section, shell) : Cone(section, shell),
        _ when section.Text("seat") == "flanged" => Pan(section),
        _ => Flat(section, whole, end),
    };

    private static double Wall(Section section, ShellSection shell) => section.NumberOr("wall", shell.Course.Wall);

    private static PanHead Pan(Section section)
    {
        var wall = section.Number("thickness");
        return new(section.Path, section.Metal, wall, section.NumberOr("knuckle_radius", SpunTurn * wall))
        {
            Flange = section.Number("flange"),
        };
    }

    private static ToriconeHead Toricone(Section section, ShellSection shell)
    {
        var wall = Wall(section, shell);
        return new(
            section.Path, section.Metal, wall, section.Number("angle") / 2, section.NumberOr("nose_radius", SpunTurn * wall),
            section.NumberOr("knuckle_radius", SpunTurn * wall))
        {
            Flange = section.Number("flange"),
        };
    }

    private static ConeHead Cone(Section section, ShellSection shell)
    {
        // A number at fault stays out of the other figures' way: NaN has no whole number.
        var segments = section.Has("segments") ? (int)section.Number("segments") : 1;
        // One seam lies opposite the shell's one; more of either as far apart as may be.
        var usual = shell.Seams.Between(segments);
        return new(
            section.Path, section.Metal, Wall(section, shell), section.Number("angle") / 2,
            Turns.From(section.NumberOr("seam_angle", usual), 0), section.NumberOr("root_gap", Bevel.UsualGap(Wall(section, shell))))
        {
            Segments = segments,
        };
    }

    private static TorisphereHead Torisphere(Section section, ShellSection shell)
    {
        var name = section.Text("standard");
        var (crown, knuckle) = Standard(name) is var (c, k)
            ? (c * shell.OutsideDiameter, k * shell.OutsideDiameter)
            : (section.Number("crown_radius"), section.Number("knuckle_radius"));
        return new(section.Path, section.Metal, Wall(section, shell), crown, knuckle, name)
        {
            Flange = section.Number("flange"),
            Gores = Gores(section, shell),
        };
    }

    private static FlatHead Flat(Section section, ShellDesign shell, PortHost end)
    {
        // Flush is an overlay whose edge is in line with the shell's outside.
        var seat = section.Text("seat") is "overlay" or "flush" ? Seat.Overlay : Seat.Inset;
        var clearance = section.Number("clearance");
        var (thickness, recess) = (section.Number("thickness"), seat == Seat.Inset ? section.Number("recess") : 0);
        var outside = seat == Seat.Inset ? (2 * Bore(shell, end, recess + thickness)) - (2 * clearance)
            : section.Given.Contains("outside_diameter") ? section.Number("outside_diameter")
            : shell.AtEnd(end).OutsideDiameter;
        return new FlatHead(section.Path, section.Metal, thickness, seat, recess, seat == Seat.Inset ? clearance : 0, outside);
    }

    /// <summary>The narrowest radius that a plate passes or stands in, down to its inner face, mm.</summary>
    private static double Bore(ShellDesign shell, PortHost end, double depth) => shell.IsPlain ? shell.InnerRadius
        : double.IsNaN(depth) ? double.NaN
        : end == PortHost.Top ? shell.LeastInner(shell.Height - depth, shell.Height)
        : shell.LeastInner(0, depth);

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
