using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// Parts the metal of rings of holes into a band for each ring, between two regular polygons round the origin. The cells
/// of a band, one for each hole, are alike and filled once for all; strips between neighbouring bands are laced. What
/// lies outside the first band and inside the last is filled between its outlines.
/// </summary>
/// <remarks>
/// The polygons halve and quarter the web: a strip takes its middle half. Their sides sag inward by an eighth of the web
/// at most, so that they stay out of the holes, and lacing by angle cannot cross them: a line from one to the next
/// vertex of the other by angle stays on its side.
/// </remarks>
internal sealed class RingZones
{
    /// <summary>Rings of fewer holes have cells too wedge-like to be worth it; they lie in one zone with the middle.</summary>
    private const int LeastInBand = 12;

    /// <summary>Where the web is so narrow that a hole's share of a polygon would need more sides, there is no band.</summary>
    private const int MostSides = 32;

    private readonly double _holeRadius;
    private readonly double _web;
    private readonly ImmutableArray<HoleRing> _rings;
    private readonly int[] _firstHole;

    public RingZones(RingLattice2 field, double chord)
    {
        (_holeRadius, _web) = (field.HoleRadius, field.Web);
        _rings = field.Rings();
        _firstHole = new int[_rings.Length];
        var angles = new double[field.Count];
        var hole = 0;
        for (var r = 0; r < _rings.Length; r++)
        {
            _firstHole[r] = hole;
            for (var i = 0; i < _rings[r].Count; i++)
                angles[hole++] = _rings[r].AngleOf(i);
        }

        Holes = new(
            field.Centers().ToArray(), h => angles[h], HolePolygon.Of(field.HoleRadius, chord, field.Web, 1));
        Bands = _rings.TakeWhile(ring => ring.Count >= LeastInBand && Sides(ring) <= MostSides).Count();
    }

    public HolePolygons Holes { get; }

    /// <summary>Vertices of the polygons, on one face.</summary>
    public int ExtraPoints => _rings.Take(Bands).Sum(ring => 2 * ring.Count * Sides(ring));

    /// <summary>How many rings, from the outermost, have a band of their own.</summary>
    private int Bands { get; }

    public void Fill(PerforatedMesher plate)
    {
        var outline = plate.Rims[0];
        RingPolygon? above = null;
        for (var r = 0; r < Bands; r++)
        {
            var (outer, inner) = (PolygonOf(r, 1, plate), PolygonOf(r, -1, plate));
            if (above is { } before)
                Lace(before, outer, plate);
            else
                plate.Fill([.. outline, .. outer.AllSides()]);
            FillCells(r, outer, inner, plate);
            (above, outline) = (inner, [.. inner.AllSides()]);
        }

        var core =
            from hole in Enumerable.Range(0, Holes.Holes).Skip(Bands < _rings.Length ? _firstHole[Bands] : Holes.Holes)
            from corner in Enumerable.Range(0, Holes.Corners)
            select (Holes.Index(hole, corner), Holes.Index(hole, corner + 1));
        plate.Fill([.. outline, .. core, .. plate.Rims.Skip(1).SelectMany(rim => rim)]);
    }

    /// <summary>Sides of a polygon for each hole, so that they sag by an eighth of the web at most.</summary>
    private int Sides(HoleRing ring)
    {
        var widest = ring.Radius + _holeRadius + (_web / 4);
        return (int)Math.Ceiling(Math.PI / (ring.Count * Math.Acos(1 - (_web / 8 / widest))));
    }

    private RingPolygon PolygonOf(int r, int side, PerforatedMesher plate)
    {
        var ring = _rings[r];
        var radius = ring.Radius + (side * (_holeRadius + (_web / 4)));
        var polygon = new RingPolygon(ring.Count * Sides(ring), -Math.PI / ring.Count, plate.NextCorner);
        for (var i = 0; i < polygon.Count; i++)
            plate.AddPoint(Point2.Polar(radius, polygon.AngleOf(i)));
        return polygon;
    }

    /// <summary>One cell is filled, round the ring's first hole, and copied to the others.</summary>
    private void FillCells(int r, RingPolygon outer, RingPolygon inner, PerforatedMesher plate)
    {
        var (first, perCell) = (_firstHole[r], outer.Count / _rings[r].Count);
        int Corner(int hole, int node) => node < Holes.Corners
            ? Holes.Index(first + hole, node)
            : node - Holes.Corners <= perCell
                ? outer.Corner((hole * perCell) + node - Holes.Corners)
                : inner.Corner((hole * perCell) + node - Holes.Corners - perCell - 1);

        var nodes = Enumerable.Range(0, Holes.Corners + (2 * (perCell + 1))).ToList();
        var points = nodes.ConvertAll(node => plate.PointAt(Corner(0, node)));
        var rim = Enumerable.Range(Holes.Corners, perCell + 1)
            .Concat(Enumerable.Range(Holes.Corners + perCell + 1, perCell + 1).Reverse())
            .ToList();
        var sides = Enumerable.Range(0, Holes.Corners).Select(i => (i, (i + 1) % Holes.Corners))
            .Concat(Enumerable.Range(0, rim.Count).Select(i => (rim[i], rim[(i + 1) % rim.Count])))
            .ToList();
        var cell = PlaneFill.Between(points, sides).ToList();
        for (var hole = 0; hole < _rings[r].Count; hole++)
        {
            foreach (var t in cell)
                plate.AddTriangle(Corner(hole, t.A), Corner(hole, t.B), Corner(hole, t.C));
        }
    }

    /// <summary>Fills the strip between two polygons, going round both by angle.</summary>
    private static void Lace(RingPolygon outer, RingPolygon inner, PerforatedMesher plate)
    {
        // From the inner vertex that is the first at or before the outer one of index 0.
        var start = (int)Math.Floor((outer.AngleOf(0) - inner.AngleOf(0)) / Turns.Full * inner.Count);
        var (i, k) = (0, start);
        while (i < outer.Count || k < start + inner.Count)
        {
            if (k == start + inner.Count || (i < outer.Count && outer.AngleOf(i + 1) <= inner.AngleOf(k + 1)))
                plate.AddTriangle(outer.Corner(i), outer.Corner(++i), inner.Corner(k));
            else
                plate.AddTriangle(inner.Corner(k + 1), inner.Corner(k++), outer.Corner(i));
        }
    }

    /// <summary>A regular polygon round the origin.</summary>
    /// <param name="Start">Angle of its vertex 0.</param>
    /// <param name="FirstCorner">Corner of vertex 0.</param>
    private readonly record struct RingPolygon(int Count, double Start, int FirstCorner)
    {
        public double AngleOf(int vertex) => Start + (Turns.Full * vertex / Count);

        public int Corner(int vertex) => FirstCorner + (((vertex % Count) + Count) % Count);

        public IEnumerable<(int From, int To)> AllSides()
        {
            for (var i = 0; i < Count; i++)
                yield return (Corner(i), Corner(i + 1));
        }
    }
}
