using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Ports;

namespace Vessel.Function;

/// <summary>Where a part's mass acts, all its pieces together: closed forms of the body, less its holes where they are.</summary>
internal static class PartCentre
{
    public static Vector3 Of(Part part, Assembly assembly)
    {
        var design = assembly.Design;
        return part.Centre ?? part.Kind switch
        {
            PartKind.Shell or PartKind.Cone when design.Shell.Courses.FirstOrDefault(course => Names.ShellParts(course, design)
                .Contains(part.Id)) is { } course => Shell(part, course, assembly),
            PartKind.Branch or PartKind.Bung or PartKind.Elbow =>
                OfTube(part, assembly.Sites.SelectMany(site => PortPieces.Of(site)).First(piece => piece.Id == part.Id).Shape.Centre),
            _ => part.Placements[0].Origin,
        };
    }

    private static Vector3 Shell(Part part, ShellCourse course, Assembly assembly)
    {
        // Of the solids that its two lines enclose: the outer one with its moment less the inner one's.
        var (solid, hollow) = (Turned(course.Outer), Turned(course.Inner));
        var (seams, volume) = (course.Seams, solid.Volume - hollow.Volume);
        // A sheet between angles -h and h: the integral of r^2 over its section, times 2 sin(h), over its volume.
        var ring = 2 * Math.Sin(seams.Pitch / 2) * (Squared(course.Outer) - Squared(course.Inner)) * seams.Count / volume;
        var way = SheetPiece.Of(course, assembly.Design).Single(piece => piece.Id == part.Id).Numbers
            .Select(number => seams.Sheet(number).At(0.5))
            .Aggregate(Vector3.Zero, (sum, angle) => sum + new Vector3(Math.Cos(angle), Math.Sin(angle), 0));
        return LessHoles(
            part,
            (volume * part.Quantity / seams.Count,
                ((seams.Count == 1 ? 0 : ring / part.Quantity) * way) + new Vector3(0, 0, (solid.Moment - hollow.Moment) / volume)),
            assembly.Sites.Where(site => site.Port.Host == PortHost.Shell && Names.PortPart(site.Port, assembly.Design) == part.Id));
    }

    /// <summary>
    /// Volume and moment of a frustum from radius p to q over h: pi h (p^2 + pq + q^2) / 3, its centre h (p^2 + 2pq + 3q^2) / 4 (p^2 + pq +
    /// q^2) up.
    /// </summary>
    private static (double Volume, double Moment) Turned(LinePiece line)
    {
        var (p, q, h) = (line.A.U, line.B.U, line.B.V - line.A.V);
        var volume = Math.PI / 3 * h * ((p * p) + (p * q) + (q * q));
        return (volume, (volume * line.A.V) + (Math.PI / 12 * h * h * ((p * p) + (2 * p * q) + (3 * q * q))));
    }

    /// <summary>The integral of r^2 over what lies between a line and the axis.</summary>
    private static double Squared(LinePiece line)
    {
        var (p, q) = (line.A.U, line.B.U);
        return (line.B.V - line.A.V) / 12 * ((p * p * p) + (p * p * q) + (p * q * q) + (q * q * q));
    }

    /// <summary>A dish or cone by rings of equal height, which is right to about a thousandth of its depth.</summary>
    public static (double Volume, Vector3 Centre) Turned(HeadShape shape)
    {
        const int Rings = 200;
        var (low, high) = (shape.Outer.Start.V, Math.Max(shape.Outer.End.V, shape.Inner.End.V));
        var (sum, moment) = (0.0, 0.0);
        for (var i = 0; i < Rings; i++)
        {
            var z = low + ((high - low) * (i + 0.5) / Rings);
            var (outer, inner) = (shape.Outer.RadiusAt(z), shape.Inner.RadiusAt(z));
            var ring = Math.Max(0, (outer * outer) - (inner * inner));
            (sum, moment) = (sum + ring, moment + (ring * z));
        }

        // A cone's faces end at two heights, so that the volumes that they enclose do not tell its metal.
        return (Math.PI * (high - low) / Rings * sum, shape.Frame.ToOuter(new(0, 0, moment / sum)));
    }

    private static Vector3 OfTube(Part part, Vector3 centre) =>
        1.0 / part.Quantity * part.Placements.Aggregate(Vector3.Zero, (sum, frame) => sum + frame.ToOuter(centre));

    /// <summary>Centre of a body that is drilled.</summary>
    public static Vector3 LessHoles(Part part, (double Volume, Vector3 Centre) body, IEnumerable<PortSite> drilled)
    {
        var sites = drilled.ToList();
        if (sites.Count == 0)
            return body.Centre;
        var weights = Weight.Sum(sites.Select(site => new Weight(
            site.OpeningRadius * site.OpeningRadius, site.Frame.Origin - (part.Thickness / 2 * site.Frame.Z))));
        return (1 / part.Volume) * ((body.Volume * body.Centre) - ((body.Volume - part.Volume) * weights.Centre));
    }
}
