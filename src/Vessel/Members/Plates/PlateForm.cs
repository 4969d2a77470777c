using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Parts;

namespace Vessel.Members.Plates;

/// <summary>A plate that stands on the vessel, its coped edge carried on to the outside all through its thickness.</summary>
/// <remarks>
/// The foot is a rectangle of the plate's width and thickness, swept inward; its corners are numbered round it from the back's
/// left one, first along the edge. The rim follows the plate's own sides and free edge.
/// </remarks>
internal sealed record PlateForm(PlateSite Site)
    : PrintForm(Site.Bracket.Path, Site.Bracket.Name, Site.Bracket.Angle + Math.Asin(Site.Bracket.Offset / Site.ShellRadius))
{
    /// <summary>The turn that one chord of a rounded corner covers where distances are asked, radians.</summary>
    private const double Slice = Math.PI / 48;

    private PlateDesign Bracket => Site.Bracket;

    public override int Handles => Site.BoltPlaces.Length;

    public override double InnerLevel =>
        Math.Min(Site.Cope.Level(-Bracket.Width / 2), Site.Cope.Level(Bracket.Width / 2));

    public override (Vector3 Outward, double Level)? BoltedTo => null;

    public override ImmutableArray<Imprint> Feet(Profile outside)
    {
        var (way, half, thick) = (Site.Way, Bracket.Width / 2, Bracket.Thickness / 2);
        // The axis of an imprint points out of the vessel: the same plane, seen from outside.
        var axis = new Frame3(way.Origin, way.X, way.Z, -way.Y);
        return [new(outside, axis, LoopPath.Of(Loop2.Polygon(new(-half, -thick), new(half, -thick), new(half, thick), new(-half, thick))))];
    }

    public override double Sagitta => Bracket.Corner * (1 - Math.Cos(Slice / 2));

    public override (ImmutableArray<Face> Faces, ImmutableArray<ImmutableArray<Edge3>> Feet) Build(Profile outside)
    {
        var (frame, thickness) = (Site.Frame, Bracket.Thickness);
        var (corners, foot) = Ring(Feet(outside)[0]);
        Vector3 At(Point2 flat, double depth) => frame.ToOuter(new(flat.U, flat.V, depth));

        // From the foot's right end round the free edge to its left end, as the outline runs backwards.
        var pieces = Rim();
        var back = Chain(pieces, 0, corners[1], corners[0]);
        var face = Chain(pieces, thickness, corners[2], corners[3]);
        var cross = Enumerable.Range(0, pieces.Count + 1).Select(i => i == 0 ? foot[1]
            : i == pieces.Count ? foot[3]
            : Straight(back[i].Ends!.Value.Start, face[i].Ends!.Value.Start)).ToList();
        var bolts = Site.BoltPlaces.Select(at => Geometry.Rim.Square(BoltHole.Outline(Bracket.Bolts, at))).Select(rim => (
            Back: new Edge3(t => At(rim.Inner(t), 0), rim.Domain, rim.Breaks),
            Face: new Edge3(t => At(rim.Outer(t), thickness), rim.Domain, rim.Breaks))).ToList();

        return (
            [
                Flat(frame, [foot[0], .. back, .. bolts.Select(bolt => bolt.Back)], false),
                Flat(frame with { Origin = At(default, thickness) }, [foot[2], .. face, .. bolts.Select(bolt => bolt.Face)], true),
                .. pieces.Select((piece, i) => Side(piece, [back[i], face[i], cross[i], cross[i + 1]])),
                .. bolts.Select(bolt => new SideFace(bolt.Face, bolt.Back)),
            ],
            [foot]);

        ImmutableArray<Edge3> Chain(List<Curve2> along, double depth, Corner3 from, Corner3 to)
        {
            Corner3[] ends = [from, .. along.Skip(1).Select(piece => new Corner3(At(piece.Start, depth))), to];
            return
            [
                .. along.Select((piece, i) => piece is Line2
                    ? Straight(ends[i], ends[i + 1])
                    : new Edge3(t => At(piece.At(t), depth), piece.Domain, []) { Ends = (ends[i], ends[i + 1]) }),
            ];
        }
    }

    public override ImmutableArray<Hull> Hulls(double reach)
    {
        var (frame, cope) = (Site.Frame, Site.Cope);
        List<Point2> section =
        [
            .. Rim().SelectMany(piece => Enumerable.Range(0, piece is Arc2 arc ? (int)Math.Ceiling(Math.Abs(arc.Sweep) / Slice) + 1 : 1)
                .Select(i => piece.At(piece is Arc2 arc ? i / Math.Ceiling(Math.Abs(arc.Sweep) / Slice) : 0))),
        ];
        // Down to where the foot goes, straight inward from the coped edge's ends.
        foreach (var side in (int[])[-1, 1])
            section.Add(Site.OnFlat(side * Bracket.Width / 2, Math.Min(reach, cope.Level(side * Bracket.Width / 2))));
        return
        [
            new([.. from depth in (double[])[0, Bracket.Thickness] from p in section select frame.ToOuter(new(p.U, p.V, depth))]),
        ];
    }

    private static Edge3 Straight(Corner3 from, Corner3 to) =>
        new(t => from.At + (t * (to.At - from.At)), new(0, 1), []) { Ends = (from, to) };

    /// <summary>Sides and free edge from the right end of the coped edge to its left one.</summary>
    private List<Curve2> Rim()
    {
        // The outline runs the other way, from the free edge's left end; what meets the shell follows the free edge and one side.
        var edges = Site.Outline.Edges;
        var free = Bracket.Corner == 0 ? [edges[1], edges[0], edges[^1]] : new[] { edges[3], edges[2], edges[1], edges[0], edges[^1] };
        return [.. free.Select(Reversed)];
    }

    private static Curve2 Reversed(Curve2 curve) => curve switch
    {
        Line2 line => new Line2(line.B, line.A),
        Arc2 arc => arc with { From = arc.From + arc.Sweep, Sweep = -arc.Sweep },
        _ => throw new ArgumentOutOfRangeException(nameof(curve)),
    };

    /// <summary>A piece of the rim: a flat strip, or a part of a cylinder.</summary>
    private Skin Side(Curve2 piece, ImmutableArray<Edge3> bounds)
    {
        var frame = Site.Frame;
        if (piece is not Arc2 arc)
        {
            var way = Reversed(piece).Slope(0) is var slope ? (1 / slope.Length) * slope : default;
            // Counter-clockwise the metal lies on the left, so that the right is outside.
            var (along, outward) = (frame.Turn(new(way.U, way.V, 0)), frame.Turn(new(way.V, -way.U, 0)));
            return Flat(new(frame.ToOuter(new(piece.Start.U, piece.Start.V, 0)), along, frame.Z, outward), bounds, true);
        }

        // The cylinder's chart begins in the middle of the arc.
        var middle = Point2.Polar(1, arc.From + (arc.Sweep / 2));
        var x = frame.Turn(new(middle.U, middle.V, 0));
        var axes = new Frame3(frame.ToOuter(new(arc.Center.U, arc.Center.V, 0)), x, frame.Z.Cross(x), frame.Z);
        Point2 Image(Vector3 at) => axes.ToLocal(at) is var local ? new(arc.Radius * Math.Atan2(local.Y, local.X), local.Z) : default;
        return new(
            new PlacedSurface(new CylinderSurface(arc.Radius), axes),
            [.. bounds.Select(edge => new Bound(edge, t => Image(edge.At(t))))],
            true);
    }
}
