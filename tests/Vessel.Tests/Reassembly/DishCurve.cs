using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Heads.Dishes;

namespace Vessel.Tests.Reassembly;

/// <summary>
/// The outline of a dished head and its flange from the shell's end to the pole, a distance out from its inner face, by formulas that
/// stand here: distance from the axis, and height above the shell's end, the pole below.
/// </summary>
internal sealed class DishCurve(DishedHead head, double inner, double outward)
{
    private const int Chords = 4000;

    private const int Coarse = 80;

    /// <summary>Of the shell that the head closes.</summary>
    public static DishCurve Of(ShellSection shell, DishedHead head, double outward) =>
        new(head, (shell.OutsideDiameter / 2) - head.Wall, outward);

    /// <summary>By the number of a chord's end, evenly in the angle of the normal from the level.</summary>
    public Point2 At(int i)
    {
        var angle = Angle(i);
        var at = head switch
        {
            TorisphereHead torisphere => Torisphere(torisphere, angle),
            EllipsoidHead => Ellipsoid(angle),
            FlangedFlatHead pan => i == Chords ? new(0, -pan.Knuckle) : Turn(pan.Knuckle, angle),
            ToriconeHead cone => angle < cone.HalfAngle ? Turn(cone.Knuckle, angle) : Nose(cone, angle),
            _ => inner * Normal(angle),
        };
        return at + (outward * Normal(angle)) - new Point2(0, head.Flange);
    }

    /// <summary>From the flange's end to the pole.</summary>
    public static IEnumerable<int> Ends => Enumerable.Range(0, Chords + 1);

    /// <summary>
    /// What chords, or the tangents at their ends, are off by at the most: each turns by a; an arc of radius r and length s falls short by
    /// s a^2 / 24, and a point by r a^2 / 8, of the widest r.
    /// </summary>
    public double Error => Math.Max(4 * (inner + outward), head is TorisphereHead { Crown: var crown } ? crown + outward : 0)
        * Math.Pow(Math.PI / 2 / Chords, 2);

    private ImmutableArray<(Point2 At, Point2 Normal)> Tangents =>
        field.IsDefault ? field = [.. Ends.Select(i => (At(i), Normal(Angle(i))))] : field;

    /// <summary>
    /// Of a place from dish and shell together, positive outside: they are one convex body, and the furthest of its tangents tells. Near
    /// the body that rises and falls once along the curve, so a coarse search finds the neighbourhood of the furthest.
    /// </summary>
    public double Off(Point2 place)
    {
        double From(int i) => (place - Tangents[i].At).Dot(Tangents[i].Normal);
        var best = Enumerable.Range(0, (Chords / Coarse) + 1).Select(i => i * Coarse).MaxBy(From);
        var (from, to) = (Math.Max(0, best - Coarse), Math.Min(Chords, best + Coarse));
        return Enumerable.Range(from, to - from + 1).Max(From);
    }

    private static double Angle(int i) => Math.PI / 2 * i / Chords;

    private static Point2 Normal(double angle) => new(Math.Cos(angle), -Math.Sin(angle));

    private Point2 Torisphere(TorisphereHead dish, double angle)
    {
        var across = inner - dish.Knuckle;
        var apart = dish.Crown - dish.Knuckle;
        var rise = Math.Sqrt((apart * apart) - (across * across));
        return Math.Tan(angle) < rise / across
            ? new(across + (dish.Knuckle * Math.Cos(angle)), -dish.Knuckle * Math.Sin(angle))
            : new(dish.Crown * Math.Cos(angle), rise - (dish.Crown * Math.Sin(angle)));
    }

    /// <summary>Round a knuckle into the shell's bore.</summary>
    private Point2 Turn(double knuckle, double angle) => new(inner - knuckle + (knuckle * Math.Cos(angle)), -knuckle * Math.Sin(angle));

    /// <summary>The cone's line touches both circles: their centres lie as far apart along its normal as their radii differ.</summary>
    private Point2 Nose(ToriconeHead cone, double angle)
    {
        var (sin, cos) = Math.SinCos(cone.HalfAngle);
        var centre = (cone.Nose - cone.Knuckle - ((inner - cone.Knuckle) * cos)) / sin;
        return new(cone.Nose * Math.Cos(angle), centre - (cone.Nose * Math.Sin(angle)));
    }

    /// <summary>Half as deep as wide: the normal leans by the angle where tan t = tan(angle) / 2.</summary>
    private Point2 Ellipsoid(double angle)
    {
        var t = Math.Atan2(Math.Sin(angle) / 2, Math.Cos(angle));
        return new(inner * Math.Cos(t), -inner / 2 * Math.Sin(t));
    }
}
