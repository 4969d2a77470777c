using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Cones;
using Vessel.Heads.Dishes;
using Vessel.Heads.FlatHeads;
using Vessel.Members.Brackets;
using Vessel.Members.Plates;
using Vessel.Members.Saddles;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Tests.Support;

/// <summary>What the mock-up of a vessel must enclose, from footprints and formulas, without its profiles and its mesh.</summary>
internal static class MockupVolume
{
    /// <summary>mm3. Every bore must be open into the room, and no wall be thinner than the printed one.</summary>
    public static double Of(Assembly vessel)
    {
        var (design, sites) = Printed(vessel);
        var shell = design.Shell;
        return Shell(shell, Floor(design.Bottom), shell.Height - Floor(design.Top))
            + Beyond(design.Bottom, shell.AtEnd(VesselEnd.Bottom)) + Beyond(design.Top, shell.AtEnd(VesselEnd.Top))
            + sites.Sum(site => Port(site))
            + vessel.Parts.Where(part => part.Word == "bracket").Sum(part => part.Volume)
            + design.All<BracketDesign>().Sum(bracket => Gaps(bracket, design.Shell.OuterAt(bracket.Height)));
    }

    /// <summary>Where a bore stands over a head's seam all walls are printed as thick as the thicker of the two there.</summary>
    private static (VesselDesign Design, IEnumerable<PortSite> Sites) Printed(Assembly vessel)
    {
        var design = vessel.Design;
        var least = vessel.Sites.Select(site => site.Over).OfType<VesselEnd>()
            .Select(end => Math.Max(design.Head(end).Wall, design.Shell.Wall)).DefaultIfEmpty(0).Max();
        HeadDesign Thick(HeadDesign head) => head with { Wall = Math.Max(head.Wall, least) };
        if (least == 0)
            return (design, vessel.Sites);
        var thick = design with
        {
            Shell = design.Shell with { Wall = Math.Max(design.Shell.Wall, least) },
            Top = Thick(design.Top),
            Bottom = Thick(design.Bottom),
        };
        return (thick, thick.Ports.Select(port => PortSites.Of(thick).Of(port)));
    }

    /// <summary>
    /// What marks add, or take: a field of a cone or cylinder is a stack of layers, each as large as the field drawn out by its radius
    /// over that of the chart, which is even along a line; of a plane they are all alike. mm3.
    /// </summary>
    public static double Of(IEnumerable<PrintMark> marks) => marks.Sum(mark => mark.Outlines.Sum(outline =>
    {
        var (piece, rise) = (mark.Chart.Ground.Piece, mark.Rise);
        var (area, centre) = (0.0, new Point2(0, 0));
        for (var i = 1; i + 1 < outline.Length; i++)
        {
            var triangle = (outline[i] - outline[0]).Cross(outline[i + 1] - outline[0]) / 2;
            (area, centre) = (area + triangle, centre + (triangle / 3 * (outline[0] + outline[i] + outline[i + 1])));
        }

        if (mark.Chart.Ground.IsFlat)
            return area * rise;
        var middle = piece.At((centre.V / area) - mark.Chart.Ground.Start).U;
        return area / mark.Chart.Radius * ((middle * rise) + (piece.Normal(0).U * rise * rise / 2));
    }));

    /// <summary>
    /// The outside less the room between two heights, ring by ring: of courses with flat lids on cylinders. Where two courses meet the
    /// printed wall is no thinner than the metal's square to either, so the room ends at the nearer of both: which is the least
    /// radius that any course's inner line, drawn on past its ends, leaves where the shell narrows, the greatest where it widens.
    /// </summary>
    private static double Shell(ShellDesign shell, double low, double high)
    {
        if (shell.IsPlain)
            return Math.PI * ((shell.OuterRadius * shell.OuterRadius * shell.Height)
                - (shell.InnerRadius * shell.InnerRadius * (high - low)));
        double Line(ShellCourse course, double z, double less) =>
            course.Low + ((course.High - course.Low) / course.Height * (z - course.Start)) - less;
        double Inner(ShellCourse course, double z) =>
            Line(course, z, course.Wall * double.Hypot(course.Height, course.High - course.Low) / course.Height);
        double Room(double z)
        {
            if (shell.Courses is [var only])
                return Inner(only, z);
            var (below, cone, above) = (Inner(shell.Courses[0], z), Inner(shell.Courses[1], z), Inner(shell.Courses[2], z));
            return below > above ? Math.Max(above, Math.Min(below, cone)) : Math.Min(above, Math.Max(below, cone));
        }

        return Turned(z => Line(shell.CourseAt(z), z, 0), 0, shell.Height) - Turned(Room, low, high);
    }

    /// <summary>By rings of equal height: exact to about 1e-9 of it where the radius has corners.</summary>
    private static double Turned(Func<double, double> radius, double low, double high)
    {
        const int Rings = 50_000;
        return Math.PI * (high - low) / Rings * Enumerable.Range(0, Rings)
            .Sum(i => Math.Pow(radius(low + ((high - low) * (i + 0.5) / Rings)), 2));
    }

    /// <summary>How far the room stays inside the shell's end.</summary>
    private static double Floor(HeadDesign head) => head is FlatHead { Seat: Seat.Inset } flat ? flat.Recess + flat.Wall : 0;

    /// <summary>Metal beyond the shell's end, less a recess inside it.</summary>
    private static double Beyond(HeadDesign head, ShellSection shell) => head switch
    {
        FlatHead { Seat: Seat.Inset } flat => -Math.PI * shell.InnerRadius * shell.InnerRadius * flat.Recess,
        FlatHead flat => Math.PI * flat.OutsideDiameter * flat.OutsideDiameter / 4 * flat.Wall,
        HemisphereHead { Flange: 0 } dome =>
            2 * Math.PI / 3 * (Math.Pow(shell.OuterRadius, 3) - Math.Pow(shell.OuterRadius - dome.Wall, 3)),
        DishedHead => HeadShape.Of(VesselEnd.Bottom, head, shell, 0) is { } shape ? shape.Outer.Volume - shape.Inner.Volume : double.NaN,
        // With the weld's face from the shell's edge to the cone's: a ring of trapezes.
        ConeHead => HeadShape.Of(VesselEnd.Bottom, head, shell, 0) is { } shape
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
        // A mitre's plane takes from one side of the axis what it gives on the other.
        var run = port.Length + (port.Elbow is { } bend
            ? (2 * (bend.Pieces - 1) * bend.Radius * Math.Tan(bend.Angle / 2 / (bend.Pieces - 1))) + bend.EndLength
            : 0);
        var end = run + (fitting?.Length ?? 0);
        return Quadrature.Disc(port.OuterRadius, (r, phi) => run - site.Outside.Reach(r, phi))
            + (Math.PI * radius * radius * (end - run))
            - Quadrature.Disc(port.BoreRadius, (r, phi) => end - site.Inside.Reach(r, phi));
    }

    /// <summary>Between square ears or edges and the shell: the integral of what the circle falls away by.</summary>
    private static double Gaps(BracketDesign bracket, double radius)
    {
        double Circle(double x) => ((x * Math.Sqrt((radius - x) * (radius + x))) + (radius * radius * Math.Asin(x / radius))) / 2;
        if (bracket is PlateDesign plate)
        {
            // Of the strip of the shell under the thickness at u: the mean of the circle over it, below its highest place.
            var (sin, cos) = (Math.Abs(Math.Sin(plate.Roll)), Math.Cos(plate.Roll));
            var half = plate.Thickness / 2 * sin;
            if (half == 0)
                return 0;
            return Enumerable.Range(0, 20_000).Select(i => plate.Width * (((i + 0.5) / 20_000) - 0.5)).Sum(u =>
            {
                var aside = plate.Offset + (u * cos);
                var (low, high) = (aside - half, aside + half);
                var nearest = low < 0 && high > 0 ? 0 : Math.Min(Math.Abs(low), Math.Abs(high));
                return (Math.Sqrt((radius * radius) - (nearest * nearest)) * 2 * half) - (Circle(high) - Circle(low));
            }) * plate.Width / 20_000 / sin;
        }

        var saddle = (SaddleDesign)bracket;
        if (saddle.Ears == SaddleEars.Ends)
            return 0;
        var outer = saddle.Width / 2;
        var inner = outer - saddle.Thickness;
        var end = Math.Sqrt((radius - inner) * (radius + inner));
        return 2 * saddle.PlateHeight * ((saddle.Thickness * end) - (Circle(outer) - Circle(inner)));
    }
}
