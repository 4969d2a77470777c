using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// A sheet with parallel bends: flat strips joined by cylinders. Exact at every depth: planes square to the sheet stay
/// square to it, and the neutral line of each bend keeps its length.
/// </summary>
/// <remarks>
/// Space is the flat's x and y with z towards the viewer; the strip that is held still keeps its place, its viewed
/// face in z = 0. Bends need not stop at a half turn, but a sheet that runs through itself is not noticed.
/// </remarks>
public sealed record FoldedSheet
{
    private readonly ImmutableArray<Piece> _pieces;

    /// <param name="thickness">mm.</param>
    /// <param name="across">Unit direction on the flat, square to the bend lines.</param>
    /// <param name="bends">Bends in the order in which they lie along <paramref name="across"/>; zones must not overlap.</param>
    /// <param name="still">Number of the strip that is held still: 0 lies before the first bend.</param>
    public FoldedSheet(double thickness, Point2 across, ImmutableArray<Bend> bends, int still)
    {
        (Thickness, Across, Bends) = (thickness, across, bends);
        _pieces = Walk(thickness, bends, still);
    }

    public double Thickness { get; }

    public Point2 Across { get; }

    public ImmutableArray<Bend> Bends { get; }

    /// <summary>Where strips and cylinders meet, along <see cref="Across"/>; ascending.</summary>
    public IEnumerable<double> Creases => Bends.SelectMany(bend =>
    {
        var zone = bend.Zone(Thickness);
        return new[] { zone.Start, zone.End };
    });

    /// <summary>A point of the flat, so far below the viewed face, in space.</summary>
    public Vector3 At(Point2 flat, double depth) =>
        ToSpace(PieceAt(flat.Dot(Across)).At(flat.Dot(Across), depth), flat.Dot(Across.Turned));

    /// <summary>Unit normal of the viewed face there.</summary>
    public Vector3 Normal(Point2 flat) => ToSpace(Point2.Polar(1, PieceAt(flat.Dot(Across)).HeadingAt(flat.Dot(Across))).Turned, 0);

    /// <summary>The inverse of <see cref="At"/>: the flat point whose image at that depth lies nearest.</summary>
    public Point2 Locate(Vector3 place, double depth)
    {
        var inPlane = new Point2(place.X, place.Y);
        var section = new Point2(inPlane.Dot(Across), place.Z);
        var along = _pieces
            .Select(piece => piece.Nearest(section))
            .MinBy(s => (PieceAt(s).At(s, depth) - section).Length);
        return (along * Across) + (inPlane.Dot(Across.Turned) * Across.Turned);
    }

    private static ImmutableArray<Piece> Walk(double thickness, ImmutableArray<Bend> bends, int still)
    {
        var pieces = ImmutableArray.CreateBuilder<Piece>((2 * bends.Length) + 1);
        var first = bends.IsEmpty ? 0 : bends[0].Zone(thickness).Start;
        var piece = new Piece(new(double.NegativeInfinity, first), first, new(first, 0), 0, 0, 0);
        for (var i = 0; i < bends.Length; i++)
        {
            var (bend, zone) = (bends[i], bends[i].Zone(thickness));
            // The viewed face lies inside a bend towards the viewer and outside one away from him.
            var radius = bend.Angle > 0 ? bend.InsideRadius : bend.InsideRadius + thickness;
            // Two bends may run into each other: rounding leaves no strip of less than nothing between them.
            var next = i + 1 < bends.Length ? Math.Max(zone.End, bends[i + 1].Zone(thickness).Start) : double.PositiveInfinity;
            pieces.Add(piece);
            pieces.Add(piece = piece.Followed(zone, radius, bend.Angle));
            piece = piece.Followed(new(zone.End, next), 0, 0);
        }

        pieces.Add(piece with { Range = new(piece.Range.Start, double.PositiveInfinity) });
        var held = pieces[2 * still];
        return [.. pieces.Select(p => p.Settled(held))];
    }

    private Piece PieceAt(double along)
    {
        var i = 0;
        while (along > _pieces[i].Range.End)
            i++;
        return _pieces[i];
    }

    private Vector3 ToSpace(Point2 section, double beside)
    {
        var inPlane = (section.U * Across) + (beside * Across.Turned);
        return new(inPlane.U, inPlane.V, section.V);
    }

    /// <summary>A strip or a cylinder in the section across the bends (u across, v towards the viewer).</summary>
    /// <param name="Range">Range of the flat, along the direction across.</param>
    /// <param name="From">Where <paramref name="Foot"/> and <paramref name="Heading"/> are taken.</param>
    /// <param name="Foot">Place on the viewed face.</param>
    /// <param name="Heading">Heading of the viewed face, radians.</param>
    /// <param name="Radius">Radius of the viewed face, where bent.</param>
    /// <param name="Angle">Turned in all; zero for a strip.</param>
    private readonly record struct Piece(Interval Range, double From, Point2 Foot, double Heading, double Radius, double Angle)
    {
        private Point2 Center => Foot + ((Math.Sign(Angle) * Radius) * Point2.Polar(1, Heading).Turned);

        public double HeadingAt(double along) => Angle == 0 ? Heading : Heading + (Angle * ((along - From) / Range.Length));

        public Point2 At(double along, double depth)
        {
            var way = Point2.Polar(1, HeadingAt(along));
            return Angle == 0
                ? Foot + ((along - From) * way) - (depth * way.Turned)
                : Center - (((Math.Sign(Angle) * Radius) + depth) * way.Turned);
        }

        public double Nearest(Point2 section)
        {
            if (Angle == 0)
            {
                var way = Point2.Polar(1, Heading);
                return Math.Clamp(From + (section - Foot).Dot(way), Range.Start, Range.End);
            }

            // From the centre the viewed face's normal points towards the metal's viewed side: outward when bent away.
            var outward = -Math.Sign(Angle) * (section - Center);
            var turned = Turns.Signed(outward.Angle - (Math.PI / 2) - Heading - (Angle / 2)) + (Angle / 2);
            return From + (Range.Length * Math.Clamp(turned / Angle, 0, 1));
        }

        public Piece Followed(Interval range, double radius, double angle) =>
            new(range, range.Start, At(range.Start, 0), HeadingAt(range.Start), radius, angle);

        /// <summary>Moved with all others so that the strip <paramref name="held"/> lies as it lay in the flat.</summary>
        public Piece Settled(Piece held)
        {
            var (arm, back) = (Foot - held.Foot, Point2.Polar(1, -held.Heading));
            return this with
            {
                Foot = new Point2(held.From, 0) + (arm.U * back) + (arm.V * back.Turned),
                Heading = Heading - held.Heading,
            };
        }
    }
}
