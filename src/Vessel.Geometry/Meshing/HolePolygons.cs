namespace Vessel.Geometry;

/// <summary>The holes of a field as equal polygons: corner i of hole h has the index h x Corners + i.</summary>
/// <param name="centers">Centres in the order of the lattice.</param>
/// <param name="starts">Angle of a hole's corner 0, radians; the others follow counter-clockwise.</param>
internal sealed class HolePolygons(Point2[] centers, Func<int, double> starts, HolePolygon polygon)
{
    public int Holes => centers.Length;

    public int Corners => polygon.Corners;

    public int Index(int hole, int corner) => (hole * Corners) + (corner % Corners);

    public Point2 At(int index)
    {
        var hole = index / Corners;
        return centers[hole] + Point2.Polar(polygon.Radius, starts(hole) + (Turns.Full * (index % Corners) / Corners));
    }
}
