using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Parts;

namespace Vessel.Members.Saddles;

/// <summary>
/// The bracket as it is printed: folded as it is, but each ear carried on to the vessel's outside, where its weld closes the gap.
/// </summary>
/// <remarks>
/// Told in its own directions: a across the bends, b along them, and outward. An ear is a rectangle of the plate's thickness in
/// (a, b), swept inward; its corners are numbered round it from (least a, least b), first along a.
/// </remarks>
internal sealed record SaddleForm(SaddleSite Site)
    : PrintForm(Site.Bracket.Path, Site.Bracket.Name, Site.Bracket.Angle)
{
    /// <summary>The turn that one slice of a bend covers at most where distances are asked, radians.</summary>
    private const double Slice = Math.PI / 48;

    private SaddleDesign Bracket => Site.Bracket;

    private double Thickness => Bracket.Thickness;

    /// <summary>Half the length of the bend lines.</summary>
    private double Half => Site.BendLength / 2;

    public override int Handles => Site.BoltPlaces.Length + 1;

    public override double InnerLevel => Site.EarEnd;

    public override (Vector3 Outward, double Level)? BoltedTo => (Site.Way.Z, Site.BackLevel + Thickness);

    /// <summary>The ear of least a, then the other.</summary>
    public override ImmutableArray<Imprint> Feet(Profile outside) =>
        [Ear(outside, -Site.Overall / 2), Ear(outside, (Site.Overall / 2) - Thickness)];

    private Vector3 Along => Site.AtSides ? Site.Way.Y : Site.Way.X;

    /// <summary>Both skins, both rims and the bolt holes' walls, with the edges that the ears share with the vessel.</summary>
    public override (ImmutableArray<Face> Faces, ImmutableArray<ImmutableArray<Edge3>> Feet) Build(Profile outside)
    {
        var (sheet, frame) = (Site.Sheet, Site.Frame);
        var feet = Feet(outside);
        var (lowCorners, lowEdges) = Ring(feet[0]);
        var (highCorners, highEdges) = Ring(feet[1]);
        // Numbers of the corners: outer face, then inner; at b below, then above. The ears mirror each other.
        Edge3 Side(int low, int high, double depth)
        {
            var (start, end) = (lowCorners[low], highCorners[high]);
            Point2 Flat(Vector3 at) => sheet.Locate(frame.ToLocal(at), depth);
            var (from, to) = (Flat(start.At), Flat(end.At));
            return new(t => frame.ToOuter(sheet.At(from + (t * (to - from)), depth)), new(0, 1), []) { Ends = (start, end) };
        }

        var (outerBelow, outerAbove) = (Side(0, 1, 0), Side(3, 2, 0));
        var (innerBelow, innerAbove) = (Side(1, 0, Thickness), Side(2, 3, Thickness));
        var bolts = Site.BoltPlaces.Select(at => Rim.Square(BoltHole.Outline(Bracket.Bolts, at))).Select(rim => (
            Outer: new Edge3(t => frame.ToOuter(sheet.At(rim.Outer(t), 0)), rim.Domain, rim.Breaks),
            Inner: new Edge3(t => frame.ToOuter(sheet.At(rim.Inner(t), Thickness)), rim.Domain, rim.Breaks),
            Image: rim.Outer)).ToList();

        Skin Face(double depth, IEnumerable<Edge3> sides, IEnumerable<Bound> holes) => new(
            new PlacedSurface(new FoldedSurface(sheet, depth), frame),
            [.. sides.Select(edge => new Bound(edge, t => sheet.Locate(frame.ToLocal(edge.At(t)), depth))), .. holes],
            depth == 0);
        return (
            [
                Face(0, [lowEdges[3], highEdges[1], outerBelow, outerAbove], bolts.Select(bolt => new Bound(bolt.Outer, bolt.Image))),
                Face(Thickness, [lowEdges[1], highEdges[3], innerBelow, innerAbove],
                    bolts.Select(bolt => new Bound(bolt.Inner, bolt.Image))),
                Edge(-1, [lowEdges[0], highEdges[0], outerBelow, innerBelow]),
                Edge(1, [lowEdges[2], highEdges[2], outerAbove, innerAbove]),
                .. bolts.Select(bolt => new SideFace(bolt.Outer, bolt.Inner)),
            ],
            [lowEdges, highEdges]);
    }

    /// <inheritdoc/>
    public override ImmutableArray<Hull> Hulls(double reach)
    {
        var (level, far) = (Site.BackLevel, Site.BackLevel + Thickness);
        var (edge, bent, inner) = (Site.Overall / 2, (Site.Overall / 2) - Thickness - Bracket.InsideRadius, Bracket.InsideRadius);
        var hulls = ImmutableArray.CreateBuilder<Hull>();
        hulls.Add(Prism([new(-bent, level), new(bent, level), new(bent, far), new(-bent, far)]));
        foreach (var side in (int[])[-1, 1])
        {
            hulls.Add(Prism([
                new(side * edge, reach), new(side * (edge - Thickness), reach),
                new(side * (edge - Thickness), level - inner), new(side * edge, level - inner)]));
            var centre = new Point2(bent, level - inner);
            var slices = (int)Math.Ceiling(Math.PI / 2 / Slice);
            for (var i = 0; i < slices; i++)
            {
                var (from, to) = (Math.PI / 2 * i / slices, Math.PI / 2 * (i + 1) / slices);
                Point2 At(double radius, double angle) =>
                    centre + Point2.Polar(radius, angle) is var p ? p with { U = side * p.U } : default;
                hulls.Add(Prism([At(inner, from), At(inner + Thickness, from), At(inner + Thickness, to), At(inner, to)]));
            }
        }

        return hulls.ToImmutable();
    }

    /// <summary>What the slices leave of a bend's outside, mm.</summary>
    public override double Sagitta => (Bracket.InsideRadius + Thickness) * (1 - Math.Cos(Slice / 2));

    private Hull Prism(ReadOnlySpan<Point2> section)
    {
        var points = ImmutableArray.CreateBuilder<Vector3>(2 * section.Length);
        foreach (var (a, outward) in section)
        {
            foreach (var b in (double[])[-Half, Half])
                points.Add(Site.Way.ToOuter(new(Site.AtSides ? a : b, Site.AtSides ? b : a, outward)));
        }

        return new(points.ToImmutable());
    }

    private Imprint Ear(Profile outside, double a)
    {
        Point2[] corners = [new(a, -Half), new(a + Thickness, -Half), new(a + Thickness, Half), new(a, Half)];
        return new(
            outside,
            Site.Way,
            LoopPath.Of(Loop2.Polygon([.. corners.Select(p => Site.AtSides ? p : new(p.V, p.U))])));
    }

    /// <summary>The flat rim of the folded sheet at the lower or upper b.</summary>
    private Skin Edge(int side, IEnumerable<Edge3> bounds)
    {
        var normal = side * Along;
        var plane = new Frame3(Site.Way.Origin + (side * Half * Along), Site.Way.Z, normal.Cross(Site.Way.Z), normal);
        return Flat(plane, bounds, true);
    }
}
