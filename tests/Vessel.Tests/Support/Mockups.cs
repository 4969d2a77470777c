using Vessel.Design;
using Vessel.Geometry;
using Vessel.Mockups;
using Vessel.Parts;

namespace Vessel.Tests.Support;

/// <summary>What the mock-up of a vessel must enclose, from footprints and formulas, without its profiles and its mesh.</summary>
internal static class MockupVolume
{
    /// <summary>mm3. Every bore must be open into the room, and no wall be thinner than the printed one.</summary>
    public static double Of(Assembly vessel)
    {
        var (design, shell) = (vessel.Design, vessel.Design.Shell);
        return (Math.PI * shell.OuterRadius * shell.OuterRadius * shell.Height)
            - (Math.PI * shell.InnerRadius * shell.InnerRadius * (shell.Height - Floor(design.Bottom) - Floor(design.Top)))
            + Beyond(design.Bottom, shell) + Beyond(design.Top, shell)
            + vessel.Sites.Sum(site => Port(site))
            + (design.Bracket is null ? 0 : vessel.Parts.Single(part => part.Kind == PartKind.Bracket).Volume + EarGaps(design));
    }

    /// <summary>How far the room stays inside the shell's end.</summary>
    private static double Floor(HeadDesign head) => head is FlatHead { Seat: Seat.Inset } flat ? flat.Recess + flat.Wall : 0;

    /// <summary>Metal beyond the shell's end, less a recess inside it.</summary>
    private static double Beyond(HeadDesign head, ShellDesign shell) => head switch
    {
        FlatHead { Seat: Seat.Inset } flat => -Math.PI * shell.InnerRadius * shell.InnerRadius * flat.Recess,
        FlatHead flat => Math.PI * flat.OutsideDiameter * flat.OutsideDiameter / 4 * flat.Wall,
        HemisphereHead { Flange: 0 } dome =>
            2 * Math.PI / 3 * (Math.Pow(shell.OuterRadius, 3) - Math.Pow(shell.OuterRadius - dome.Wall, 3)),
        DishedHead => HeadShape.Of(PortHost.Bottom, head, shell, 0) is { } shape ? shape.Outer.Volume - shape.Inner.Volume : double.NaN,
        // With the weld's face from the shell's edge to the cone's: a ring of trapezes.
        ConeHead => HeadShape.Of(PortHost.Bottom, head, shell, 0) is { } shape
            ? new Profile([.. shape.Outer.Pieces, new LinePiece(shape.Outer.End, new(shell.OuterRadius, 0))]).Volume - shape.Inner.Volume
            : double.NaN,
        _ => throw new ArgumentOutOfRangeException(nameof(head)),
    };

    /// <summary>The tube beyond the outside and its fitting, less the bore down to the inside.</summary>
    private static double Port(PortSite site)
    {
        var port = site.Port;
        var fitting = FittingEnvelope.Of(port);
        var radius = Math.Max(fitting?.Radius ?? 0, port.OuterRadius);
        var end = port.Length + (fitting?.Length ?? 0);
        return Quadrature.Disc(port.OuterRadius, (r, phi) => port.Length - site.Outside.Reach(r, phi))
            + (Math.PI * radius * radius * (end - port.Length))
            - Quadrature.Disc(port.BoreRadius, (r, phi) => end - site.Inside.Reach(r, phi));
    }

    /// <summary>Between square ears and the shell: the integral of what the circle falls away by across the ear.</summary>
    private static double EarGaps(VesselDesign design)
    {
        var site = BracketSite.Of(design.Bracket!, design);
        if (!site.AtSides)
            return 0;
        var (outer, radius) = (design.Bracket!.Width / 2, site.ShellRadius);
        var inner = outer - design.Bracket.Thickness;
        double Circle(double x) => ((x * Math.Sqrt((radius - x) * (radius + x))) + (radius * radius * Math.Asin(x / radius))) / 2;
        return 2 * design.Bracket.PlateHeight * ((design.Bracket.Thickness * site.EarEnd) - (Circle(outer) - Circle(inner)));
    }
}
