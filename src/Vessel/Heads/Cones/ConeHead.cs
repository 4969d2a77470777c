using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Heads.Cones;

/// <summary>
/// A cone rolled from sheet with its seam along a straight line; inside it meets the shell's bore. The port at its pole closes
/// its tip.
/// </summary>
/// <param name="HalfAngle">Between axis and line, radians.</param>
/// <param name="SeamAngle">Angle of the first seam, radians in [0, 2 pi).</param>
/// <param name="RootGap">Left open along each seam before welding, mm.</param>
public sealed record ConeHead(
    string Path, Material Material, double Wall, double HalfAngle, double SeamAngle, double RootGap)
    : HeadSpec(Path, Material, Wall)
{
    /// <summary>Equal sheets that it is put together from, each with two seams, from <see cref="SeamAngle"/> on.</summary>
    public int Segments { get; init; } = 1;

    public SheetSeams Seams => new(SeamAngle, Segments);

    /// <summary>What a segment of the top or bottom is called.</summary>
    public static string SegmentOf(string end) => $"{end} segment";

    /// <summary>Angle from one seam to the next.</summary>
    public double Pitch => Seams.Pitch;

    public override bool IsClosedByPort => true;

    /// <summary>A tip is cut square to the sheet.</summary>
    public override double TipEdge => Wall * Math.Cos(HalfAngle);

    /// <summary>What it is rolled from.</summary>
    public ConeSheet Sheet => new(Material, Wall, HalfAngle, Seams, RootGap);

    /// <summary>
    /// Its sheet at an end. The narrow edge lets the port at the pole pass with its clearance, where the inner face is narrowest; or, under
    /// one that is set on, it is the bore outside.
    /// </summary>
    public ConeShape SheetAt(VesselEnd end, VesselDesign vessel)
    {
        var shape = HeadShape.Of(end, vessel)!;
        var port = vessel.Ports.First(port => HeadShape.IsAtPole(port, end));
        var (sin, cos) = Math.SinCos(HalfAngle);
        var (outer, inner) = (shape.Outer.End, shape.Inner.End);
        var length = port.Joint == PortJoint.SetOn
            ? (outer.U - port.BoreRadius) / sin
            : (inner.U - port.OuterRadius - port.Clearance) / sin;
        var down = length * new Point2(sin, cos);
        return new(Sheet, shape.Frame, new(outer - down, outer), new(inner - down, inner)) { Rolls = vessel.Shop.Rolls };
    }

    /// <summary>Sheets of the cone; those that nothing is drilled in come first.</summary>
    internal ImmutableArray<SheetPiece> Pieces(VesselEnd end, VesselDesign vessel) => SheetPiece.Divided(
        Names.Of(end),
        SegmentOf(Names.Of(end)),
        Segments,
        vessel.Ports.Where(port => port.End == end && port.Place.Radius > 0).ToLookup(port => Seams.SheetAt(port.Place.Angle)),
        []);

    public override ImmutableArray<string> RimParts(VesselEnd end, VesselDesign vessel) =>
        [.. Pieces(end, vessel).Select(piece => piece.Id)];

    public override string PartOf(PortDesign port, VesselDesign vessel)
    {
        var pieces = Pieces(port.End!.Value, vessel);
        return port.Place.Radius > 0 ? pieces.First(piece => piece.Ports.Contains(port)).Id : pieces[0].Id;
    }

    internal override IEnumerable<Fault> Faults(VesselEnd end, VesselDesign design) => ConeCheck.Find(new(design.Units), design, end, this);

    internal override Head Build(VesselEnd end, VesselDesign vessel, ImmutableArray<PortSite> sites) => new Cone(end, this, vessel, sites);

    /// <summary>Lines a wall apart, cut square at the wide end.</summary>
    public override HeadShape? Shape(ShellSection rim, Frame3 frame, double tip)
    {
        var (radius, (sin, cos)) = (rim.InnerRadius, Math.SinCos(HalfAngle));
        tip = tip < HeadShape.Least ? 0 : tip;
        if (!(sin > 0 && cos > 0 && radius > 0 && tip >= 0 && tip < radius))
            return null;
        Profile Face(Point2 edge)
        {
            var level = edge.V - ((edge.U - tip) * cos / sin);
            var line = new LinePiece(new(tip, level), edge);
            return tip > 0 ? new(new LinePiece(new(0, level), line.A), line) : new(line);
        }

        return new(Face(new(radius + (Wall * cos), -Wall * sin)), Face(new(radius, 0)), Wall, frame, tip);
    }
}
