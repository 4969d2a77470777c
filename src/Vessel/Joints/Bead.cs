using Vessel.Geometry;

namespace Vessel.Joints;

/// <summary>The section of a weld at one station: legs, area, and how far its centroid lies from the root line.</summary>
/// <param name="Leg">mm, equal on both sides; zero for a weld between edges in line.</param>
/// <param name="Area">mm2, flat-faced.</param>
/// <param name="Centroid">Centroid from the root, square to the path, mm.</param>
public readonly record struct Bead(double Leg, double Area, Vector3 Centroid)
{
    /// <summary>Cap and root of a butt: width and height as shares of the wall. Common practice, no source; the example
    /// 6 x 1 and 4 x 0.8 on 3.2 mm is met by them.</summary>
    private const double CapWidth = 1.875;
    private const double CapHeight = 0.3125;
    private const double RootWidth = 1.25;
    private const double RootHeight = 0.25;

    /// <summary>Mean width of a butt's section from cap to root, mm.</summary>
    public static double MeanWidth(double wall) => (CapWidth + RootWidth) / 2 * wall;

    public static Bead Of(Joint joint, Station at) =>
        joint.Kind == JointKind.Fillet ? Fillet(joint.Throat, at) : Edge(joint, at);

    /// <summary>
    /// Constant throat a: leg a / cos(psi/2), area a^2 tan(psi/2). Past the greatest fillet angle the legs stay what they
    /// are there and the area, leg^2 sin(psi) / 2, runs out as the surfaces come into line. Derived here.
    /// </summary>
    private static Bead Fillet(double throat, Station at)
    {
        var leg = throat / Math.Cos(Math.Min(at.Dihedral, FilletThroat.GreatestAngle) / 2);
        return new(leg, leg * leg * Math.Sin(at.Dihedral) / 2, (leg / 3) * (at.AlongHost + at.AlongPart));
    }

    /// <summary>
    /// Butt: the wider of the drawn and the held gap times wall, the bevel of a thick one, and two thirds of width times height for cap
    /// and, where melted through, root. The metal lies on the root line as near as it matters.
    /// </summary>
    private static Bead Edge(Joint joint, Station at)
    {
        var square = joint.Wall * joint.Wall;
        var cap = 2.0 / 3 * CapWidth * CapHeight * square;
        var root = joint.Kind == JointKind.Butt ? 2.0 / 3 * RootWidth * RootHeight * square : 0;
        var bevel = joint.Vee > 0 ? joint.Vee : EdgePreparation.Area(joint.Kind, joint.Wall);
        return new(0, (joint.Throat * Math.Max(at.GapNormal, joint.HeldOpen)) + bevel + cap + root, Vector3.Zero);
    }
}
