namespace Vessel.Function;

/// <summary>Which share of the drops that come at one fibre strikes it, by following them.</summary>
/// <remarks>
/// A drop takes up the gas's speed u in the time S: dv/dt = (u(x) - v) / S, with S = 2 St in fibre radii and speeds of the gas (St on the
/// fibre's diameter). Over a step u is a parabola in time through its values at the step's ends and middle, for which v and x are known in
/// closed form, so that a small S asks for no small steps; three rounds settle the parabola. A drop that comes within its own radius of the
/// fibre sticks. The height from which drops just strike is halved in logarithms. Against steps half as long the result moves by less than
/// 0.05 % for drops from a twentieth of the fibre upward, 0.3 % at a hundredth, 10 % at a five-hundredth, where next to nothing is caught.
/// </remarks>
internal static class FibreCatch
{
    /// <summary>Length of a step over the distance to the fibre.</summary>
    private const double Step = 0.1;

    /// <summary>Added to that distance, so that steps beside the fibre do not vanish: fibre radii.</summary>
    private const double Beside = 0.25;

    private const int Halvings = 16;

    private const int Rounds = 3;

    /// <summary>Beyond this many steps in the time S the drop flies nearly straight; the closed form would lose its digits.</summary>
    private const double Slow = 1000;

    private const int MostSteps = 5000;

    /// <summary>Width of the gas that is swept clean over the fibre's diameter; at most 1 + reach.</summary>
    /// <param name="reach">Diameter of the drop over the fibre's.</param>
    /// <param name="stokes">Stokes number on the fibre's diameter.</param>
    public static double Share(in FibreField field, double reach, double stokes)
    {
        // Inertia carries drops past a fibre too: the least that is struck lies below interception, but by less than that.
        var (low, high) = (Math.Log(0.3 * field.Interception(reach)), Math.Log(1 + reach));
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            if (Strikes(field, Math.Exp(middle), 1 + reach, 2 * stokes))
                low = middle;
            else
                high = middle;
        }

        return Math.Exp((low + high) / 2);
    }

    private static bool Strikes(in FibreField field, double height, double contact, double time)
    {
        var (x, y) = field.Start(height);
        var u = field.Velocity(x, y);
        var v = u;
        for (var i = 0; i < MostSteps; i++)
        {
            var speed = Math.Max(double.Hypot(v.X, v.Y), double.Hypot(u.X, u.Y));
            var h = Step * (double.Hypot(x, y) - contact + Beside) / speed;
            var (middle, end, way) = Along(field, (x, y), u, v, h, time);
            if (IsNear(x, y, middle, end, contact * contact))
                return true;
            if ((end.X * way.X) + (end.Y * way.Y) > 0)
                return false;
            ((x, y), v, u) = (end, way, field.Velocity(end.X, end.Y));
        }

        return false;
    }

    /// <summary>Where the drop is in the middle and at the end of a step, and its speed there.</summary>
    private static ((double X, double Y) Middle, (double X, double Y) End, (double X, double Y) Way) Along(
        in FibreField field, (double X, double Y) at, (double X, double Y) u, (double X, double Y) v, double h, double time)
    {
        var s = time / h;
        var half = Math.Exp(-0.5 / s);
        var whole = half * half;
        var mx = Moved(at.X, u.X, 0, 0, v.X, s, h, 0.5, half);
        var my = Moved(at.Y, u.Y, 0, 0, v.Y, s, h, 0.5, half);
        var ex = Moved(at.X, u.X, 0, 0, v.X, s, h, 1, whole);
        var ey = Moved(at.Y, u.Y, 0, 0, v.Y, s, h, 1, whole);
        for (var round = 0; round < Rounds; round++)
        {
            var (a, w) = (field.Velocity(mx.At, my.At), field.Velocity(ex.At, ey.At));
            var (bx, cx) = ((-3 * u.X) + (4 * a.X) - w.X, (2 * u.X) - (4 * a.X) + (2 * w.X));
            var (by, cy) = ((-3 * u.Y) + (4 * a.Y) - w.Y, (2 * u.Y) - (4 * a.Y) + (2 * w.Y));
            mx = Moved(at.X, u.X, bx, cx, v.X, s, h, 0.5, half);
            my = Moved(at.Y, u.Y, by, cy, v.Y, s, h, 0.5, half);
            ex = Moved(at.X, u.X, bx, cx, v.X, s, h, 1, whole);
            ey = Moved(at.Y, u.Y, by, cy, v.Y, s, h, 1, whole);
        }

        return ((mx.At, my.At), (ex.At, ey.At), (ex.Speed, ey.Speed));
    }

    /// <summary>
    /// One coordinate after the part t of a step in which the gas's speed is u + b t + c t^2; s is the drop's time over the step's.
    /// </summary>
    private static (double At, double Speed) Moved(
        double at, double u, double b, double c, double v, double s, double h, double t, double decay)
    {
        var blown = t * (u + (t * ((b / 2) + (t * c / 3))));
        if (s > Slow)
        {
            var sped = v + ((blown - (t * v)) / s);
            return (at + (h * t * (v + sped) / 2), sped);
        }

        double Settled(double when) => u + (when * (b + (when * c))) - (s * (b + (2 * c * when))) + (2 * c * s * s);
        var speed = Settled(t) + ((v - Settled(0)) * decay);
        return (at + (h * (blown - (s * (speed - v)))), speed);
    }

    /// <summary>Whether a parabola through the squares of the distance at the step's start, middle and end comes down to contact.</summary>
    private static bool IsNear(double x, double y, (double X, double Y) middle, (double X, double Y) end, double contact)
    {
        var (f, g, k) = ((x * x) + (y * y), (middle.X * middle.X) + (middle.Y * middle.Y), (end.X * end.X) + (end.Y * end.Y));
        if (Math.Min(g, k) <= contact)
            return true;
        var (b, c) = ((-3 * f) + (4 * g) - k, (2 * f) - (4 * g) + (2 * k));
        return c > 0 && b < 0 && -b < 2 * c && f - (b * b / (4 * c)) <= contact;
    }
}
