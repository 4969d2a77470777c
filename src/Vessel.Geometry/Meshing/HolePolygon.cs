namespace Vessel.Geometry;

/// <summary>
/// A round hole as a regular polygon of its own area, whose corners stand out of the circle by about as much as its sides lie within:
/// so it takes fewer of them than one whose corners lie on the circle, and the metal's volume is right. Where that would narrow the web
/// too much the corners do lie on it.
/// </summary>
/// <param name="Radius">Radius of its corners, mm.</param>
internal readonly record struct HolePolygon(int Corners, double Radius)
{
    /// <summary>Least number of corners, so that a tiny hole is a hole still.</summary>
    private const int LeastCorners = 8;

    /// <summary>What corners may take of the web: pieces between holes are laid out an eighth of it clear of them.</summary>
    private const double ShareOfWeb = 0.1;

    /// <summary>Count of corners: as many as the chord asks for, and a multiple of a number.</summary>
    /// <param name="chord">Greatest distance between circle and polygon, mm.</param>
    /// <param name="web">Least metal beside the hole, mm.</param>
    public static HolePolygon Of(double radius, double chord, double web, int multipleOf)
    {
        for (var corners = multipleOf * ((LeastCorners + multipleOf - 1) / multipleOf); ; corners += multipleOf)
        {
            var turn = Turns.Full / corners;
            var alike = radius * Math.Sqrt(turn / Math.Sin(turn));
            var polygon = new HolePolygon(corners, alike - radius <= ShareOfWeb * web ? alike : radius);
            if (polygon.Radius - radius <= chord && radius - (polygon.Radius * Math.Cos(turn / 2)) <= chord)
                return polygon;
        }
    }
}
