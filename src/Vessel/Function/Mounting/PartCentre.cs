using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Ports;

namespace Vessel.Function;

/// <summary>Where a part's mass acts, all its pieces together: closed forms of the body, less its holes where they are.</summary>
/// <remarks>
/// Gores and polar caps: see <see cref="WallZone"/>.
/// </remarks>
internal static class PartCentre
{
    public static Vector3 Of(Part part, Assembly assembly)
    {
        var design = assembly.Design;
        return part.Centre ?? part.Kind switch
        {
            PartKind.Shell or PartKind.Cone when design.Shell.Courses.FirstOrDefault(course => Names.ShellParts(course, design)
                .Contains(part.Id)) is { } course => Shell(part, course, assembly),
            PartKind.Lid => LessHoles(part, Lid(part, design), assembly, part.Path == design.Top.Path ? PortHost.Top : PortHost.Bottom),
            PartKind.Cone when design.Head(End(part, design)) is ConeHead { Segments: > 1 } cone => Segments(part, cone, assembly),
            PartKind.Head or PartKind.Cone =>
                LessHoles(part, Turned(HeadShape.Of(End(part, design), design)!), assembly, End(part, design)),
            PartKind.Crown => LessHoles(part, Cap(part, design),
                assembly.Sites.Where(site => site.Port.Host == End(part, design) && GorePorts.IsInCap(site.Port, design))),
            PartKind.Gore => Gores(part, assembly),
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

    private static (double Volume, Vector3 Centre) Lid(Part part, VesselDesign design)
    {
        var end = part.Path == design.Top.Path ? PortHost.Top : PortHost.Bottom;
        var (site, head) = (HeadSite.Of(end, design), (FlatHead)design.Head(end));
        return (
            Math.PI / 4 * head.OutsideDiameter * head.OutsideDiameter * head.Wall,
            site.Frame.Origin + (head.Wall / 2 * site.Frame.Z));
    }

    private static PortHost End(Part part, VesselDesign design) =>
        part.Path.StartsWith(design.Top.Path, StringComparison.Ordinal) ? PortHost.Top : PortHost.Bottom;

    private static (double Volume, Vector3 Centre) Cap(Part part, VesselDesign design) =>
        GoreShape.Of(End(part, design), design)! is var shape && shape.Cap is var zone
            ? (zone.Volume, shape.Head.Frame.ToOuter(new(0, 0, zone.Centre))) : default;

    /// <summary>Centre of the sectors of a zone: its mean radius times sin(h) / h for half angle h, towards the middle of each.</summary>
    private static Vector3 Gores(Part part, Assembly assembly)
    {
        var end = End(part, assembly.Design);
        var shape = GoreShape.Of(end, assembly.Design)!;
        var (zone, solid) = (shape.Strips, shape.Strips.Volume / shape.Gores.Count);
        var ring = zone.MeanRadius * Math.Sin(shape.HalfAngle) / shape.HalfAngle;
        var pieces = part.Placements.Select(frame => new Weight(solid, frame.ToOuter(new(ring, 0, zone.Centre))));
        var ports = SheetPiece.Of(end, shape.Gores, assembly.Design).Single(piece => piece.Id == part.Id).Ports;
        return LessHoles(part, (solid * part.Quantity, Weight.Sum(pieces).Centre), assembly.Sites.Where(site => ports.Contains(site.Port)));
    }

    /// <summary>
    /// Centre of the sectors of a thin cone: the mean of the radius, weighed by itself, times sin(h) / h for half angle h.
    /// </summary>
    private static Vector3 Segments(Part part, ConeHead cone, Assembly assembly)
    {
        var end = End(part, assembly.Design);
        var (whole, half) = (ConeShape.Of(end, cone, assembly.Design), cone.Pitch / 2);
        var (narrow, wide) = (whole.Middle.A.U, whole.Middle.B.U);
        var ring = 2.0 / 3 * ((narrow * narrow) + (narrow * wide) + (wide * wide)) / (narrow + wide) * Math.Sin(half) / half;
        var height = Turned(HeadShape.Of(end, assembly.Design)!).Centre.Z;
        var solid = cone.Wall * whole.Middle.Area / cone.Segments;
        var pieces = part.Placements.Select(frame => new Weight(solid, new Vector3(ring * frame.X.X, ring * frame.X.Y, height)));
        var ports = SheetPiece.Of(end, cone, assembly.Design).Single(piece => piece.Id == part.Id).Ports;
        return LessHoles(part, (solid * part.Quantity, Weight.Sum(pieces).Centre), assembly.Sites.Where(site => ports.Contains(site.Port)));
    }

    /// <summary>A dish or cone by rings of equal height, which is right to about a thousandth of its depth.</summary>
    private static (double Volume, Vector3 Centre) Turned(HeadShape shape)
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

    private static Vector3 LessHoles(Part part, (double Volume, Vector3 Centre) body, Assembly assembly, PortHost host) =>
        LessHoles(part, body, assembly.Sites.Where(site => site.Port.Host == host || site.Over == host));

    private static Vector3 LessHoles(Part part, (double Volume, Vector3 Centre) body, IEnumerable<PortSite> drilled)
    {
        var sites = drilled.ToList();
        if (sites.Count == 0)
            return body.Centre;
        var weights = Weight.Sum(sites.Select(site => new Weight(
            site.OpeningRadius * site.OpeningRadius, site.Frame.Origin - (part.Thickness / 2 * site.Frame.Z))));
        return (1 / part.Volume) * ((body.Volume * body.Centre) - ((body.Volume - part.Volume) * weights.Centre));
    }
}
