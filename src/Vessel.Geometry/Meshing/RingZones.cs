using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// Parts the metal of rings of holes along the rings: a line from hole to hole round each ring leaves zones that are filled
/// one after the other, so that no more than two rings are triangulated at a time.
/// </summary>
internal sealed class RingZones
{
    /// <summary>On a ring of fewer holes the line would turn too sharply at each; such rings lie in one zone with the middle.</summary>
    private const int LeastOnLine = 12;

    private readonly ImmutableArray<HoleRing> _rings;
    private readonly int[] _firstHole;

    public RingZones(RingLattice2 field, double chord)
    {
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

        // Corner 0 faces the next hole of the ring and the corner across from it the one before.
        Holes = new(
            field.Centers().ToArray(),
            h => angles[h] + (Math.PI / 2),
            field.HoleRadius,
            HolePolygons.CornersFor(field.HoleRadius, chord, 2));
    }

    public HolePolygons Holes { get; }

    public void Fill(PerforatedMesher plate)
    {
        var half = Holes.Corners / 2;
        var outline = plate.Rims[0];
        var ring = 0;
        for (; ring < _rings.Length && _rings[ring].Count >= LeastOnLine; ring++)
        {
            plate.Fill(outline.Concat(Line(ring)).Concat(Sides(ring, half, Holes.Corners)).ToList());
            outline = Line(ring).Concat(Sides(ring, 0, half)).ToList();
        }

        var core = Enumerable.Range(ring, _rings.Length - ring).SelectMany(r => Sides(r, 0, Holes.Corners));
        plate.Fill(outline.Concat(core).Concat(plate.Rims.Skip(1).SelectMany(rim => rim)).ToList());
    }

    /// <summary>From each hole of a ring to the next.</summary>
    private IEnumerable<(int From, int To)> Line(int ring)
    {
        var (first, count) = (_firstHole[ring], _rings[ring].Count);
        return Enumerable.Range(0, count).Select(i => (
            Holes.Index(first + i, 0), Holes.Index(first + ((i + 1) % count), Holes.Corners / 2)));
    }

    private IEnumerable<(int From, int To)> Sides(int ring, int low, int high) =>
        from i in Enumerable.Range(_firstHole[ring], _rings[ring].Count)
        from corner in Enumerable.Range(low, high - low)
        select (Holes.Index(i, corner), Holes.Index(i, corner + 1));
}
