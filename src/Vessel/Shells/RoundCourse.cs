using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Shells;

/// <summary>A course that is round: rolled of sheets, or a tube.</summary>
/// <param name="sites">Sites of all ports of the vessel.</param>
internal abstract class RoundCourse(ShellCourse spec, VesselDesign vessel, ImmutableArray<PortSite> sites) : Course(spec)
{
    protected VesselDesign Vessel { get; } = vessel;

    /// <summary>Sites of the ports that stand in it.</summary>
    protected ImmutableArray<PortSite> Sites { get; } =
        [.. sites.Where(site => site.Port.Host == PortHost.Shell && vessel.Shell.CourseAt(site.Port.Place.Height) == spec)];

    public override IEnumerable<Joint> Joints => LongSeam.Of(Spec, Vessel);

    public override Joint? Girth => GirthSeam.Below(Spec, Vessel);

    public override IEnumerable<Part> Parts(Welds welds) => Sheets(welds).Select(part => part with { Centre = CentreOf(part) });

    /// <summary>Sheets of the course, or its tube.</summary>
    protected abstract IEnumerable<Part> Sheets(Welds welds);

    /// <summary>Whether so many equal sheets are each cut from one sheet of the shop.</summary>
    protected abstract bool AreCut(int sheets, Cuttable fits);

    public override bool Holds(Part part) => SheetPiece.Of(Spec, Vessel).Any(piece => piece.Id == part.Id);

    public override (string Key, int Count)? Divided(Cuttable fits) =>
        Spec.Seams.More(count => AreCut(count, fits)) is { } count ? (Spec.SheetsPath, count) : null;

    private Vector3 CentreOf(Part part)
    {
        // Of the solids that its two lines enclose: the outer one with its moment less the inner one's.
        var (solid, hollow) = (Turned(Spec.Outer), Turned(Spec.Inner));
        var (seams, volume) = (Spec.Seams, solid.Volume - hollow.Volume);
        // A sheet between angles -h and h: the integral of r^2 over its section, times 2 sin(h), over its volume.
        var ring = 2 * Math.Sin(seams.Pitch / 2) * (Squared(Spec.Outer) - Squared(Spec.Inner)) * seams.Count / volume;
        var way = SheetPiece.Of(Spec, Vessel).Single(piece => piece.Id == part.Id).Numbers
            .Select(number => seams.Sheet(number).At(0.5))
            .Aggregate(Vector3.Zero, (sum, angle) => sum + new Vector3(Math.Cos(angle), Math.Sin(angle), 0));
        return PartCentre.LessHoles(
            part,
            (volume * part.Quantity / seams.Count,
                ((seams.Count == 1 ? 0 : ring / part.Quantity) * way) + new Vector3(0, 0, (solid.Moment - hollow.Moment) / volume)),
            Sites.Where(site => Names.PortPart(site.Port, Vessel) == part.Id));
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
}
