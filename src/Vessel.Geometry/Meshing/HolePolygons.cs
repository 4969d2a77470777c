namespace Vessel.Geometry;

/// <summary>The holes of a field as equal polygons: corner i of hole h has the index h x Corners + i.</summary>
/// <param name="centers">In the order of the lattice.</param>
/// <param name="starts">Angle of a hole's corner 0, radians; the others follow counter-clockwise.</param>
internal sealed class HolePolygons(Point2[] centers, Func<int, double> starts, double radius, int corners)
{
    /// <summary>Least number of corners, so that a tiny hole is a hole still.</summary>
    private const int LeastCorners = 8;

    public int Holes => centers.Length;

    public int Corners => corners;

    /// <summary>As many corners as the chord asks for, and a multiple of a number.</summary>
    public static int CornersFor(double radius, double chord, int multipleOf)
    {
        var wanted = chord < radius ? Math.Max(LeastCorners, Math.PI / Math.Acos(1 - (chord / radius))) : LeastCorners;
        return multipleOf * (int)Math.Ceiling((wanted / multipleOf) - 1e-9);
    }

    public int Index(int hole, int corner) => (hole * corners) + (corner % corners);

    public Point2 At(int index)
    {
        var hole = index / corners;
        return centers[hole] + Point2.Polar(radius, starts(hole) + (Turns.Full * (index % corners) / corners));
    }
}
