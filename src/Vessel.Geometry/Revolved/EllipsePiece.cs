using System.Collections.Immutable;
using MathNet.Numerics.Integration;

namespace Vessel.Geometry;

/// <summary>
/// Part of an ellipse about the axis, flattened along it, or of a curve parallel to one on its outside: turned, both faces of a
/// dished wall. By the eccentric angle t it is (a cos t, b sin t) + beyond x normal, round a centre on the axis.
/// </summary>
/// <remarks>
/// With w = sqrt(b^2 cos^2 t + a^2 sin^2 t) the normal is (b cos t, a sin t) / w, the speed w + beyond a b / w^2. With x = sin t and
/// k^2 = a^2 - b^2 all terms of the area are powers of w times dx, so that it is closed; the length of an ellipse is not. Derived
/// here.
/// </remarks>
public sealed record EllipsePiece : ProfilePiece
{
    private const int Panels = 32;

    private const int Points = 12;

    private readonly double[] _lengths;

    /// <param name="height">Height of the centre.</param>
    /// <param name="a">Half axis across; greater than b.</param>
    /// <param name="b">Half axis along.</param>
    /// <param name="beyond">Distance of the curve from the ellipse, outward; not negative.</param>
    /// <param name="angles">Eccentric, from start to end; within -pi/2 to pi/2.</param>
    public EllipsePiece(double height, double a, double b, double beyond, Interval angles)
    {
        if (!(b > 0 && a > b && beyond >= 0))
            throw new ArgumentException("an ellipse must be flattened along the axis, and its parallel lie outside");
        (Height, A, B, Beyond, Angles) = (height, a, b, beyond, angles);
        _lengths = new double[Panels + 1];
        for (var i = 0; i < Panels; i++)
            _lengths[i + 1] = _lengths[i] + Measure(angles.At((double)i / Panels), angles.At((i + 1.0) / Panels));
    }

    public double Height { get; }

    public double A { get; }

    public double B { get; }

    public double Beyond { get; }

    public Interval Angles { get; }

    public override double Length => _lengths[Panels];

    public override double Area => Turns.Full * (AreaTo(Angles.End) - AreaTo(Angles.Start));

    public override double Volume => Beyond == 0
        ? Math.PI * A * A * B * (Cubic(Math.Sin(Angles.End)) - Cubic(Math.Sin(Angles.Start)))
        : Math.PI * Enumerable.Range(0, Panels).Sum(i => GaussLegendreRule.Integrate(
            Swept, Angles.At((double)i / Panels), Angles.At((i + 1.0) / Panels), Points));

    private double Flattening => Math.Sqrt((A - B) * (A + B));

    public override Point2 At(double along) => OnCurve(AngleAt(along));

    public override Point2 Normal(double along) => NormalAt(AngleAt(along));

    /// <summary>Spread with radii of curvature a w / b across and w^3 / a b along, w ds / r = dt / cos t: a sphere's.</summary>
    internal override Interval Spread => new(SphereSpread(Angles.Start), SphereSpread(Angles.End));

    internal override (Point2 At, Point2 Normal) AtSpread(double spread) =>
        SphereAngle(spread) is var t ? (OnCurve(t), NormalAt(t)) : default;

    public override double RadiusAt(double height) => OnCurve(AngleAtHeight(height)).U;

    public override double VolumeBelow(double height)
    {
        var end = Math.Clamp(AngleAtHeight(height), Angles.Start, Angles.End);
        return end > Angles.Start ? new EllipsePiece(Height, A, B, Beyond, new(Angles.Start, end)).Volume : 0;
    }

    public override EllipsePiece Offset(double distance) => new(Height, A, B, Beyond + distance, Angles);

    public override EllipsePiece Part(Interval along) =>
        new(Height, A, B, Beyond, new(AngleAt(along.Start), AngleAt(along.End)));

    public override EllipsePiece Moved(double up) => new(Height + up, A, B, Beyond, Angles);

    public override EllipsePiece Flipped() => new(-Height, A, B, Beyond, new(-Angles.End, -Angles.Start));

    public override ProfileFoot Project(Point2 point)
    {
        var t = NearestAngle(point);
        var (at, normal) = (OnCurve(t), NormalAt(t));
        return new(LengthTo(t), at, normal, (point - at).Dot(normal))
        {
            Spread = SphereSpread(t),
        };
    }

    /// <summary>Crossings with the ellipsoid itself in closed form, as with a ball when a and b are scaled to one.</summary>
    private protected override ImmutableArray<double> Crossings(Vector3 point, Vector3 direction)
    {
        if (Beyond > 0)
            return Entry(point, direction, Height, A + Beyond, Body) is { } along ? [along] : [];
        var scaled = new Vector3(direction.X / A, direction.Y / A, direction.Z / B);
        var length = scaled.Length;
        return
        [
            .. RoundRoots(new(point.X / A, point.Y / A, (point.Z - Height) / B), scaled.Unit(), 1).Select(root => root / length),
        ];
    }

    private (double Distance, Point2 Gradient) Body(Point2 point)
    {
        var t = NearestAngle(point);
        var normal = NormalAt(t);
        return ((point - OnCurve(t)).Dot(normal), normal);
    }

    private double Weight(double t)
    {
        var (sin, cos) = Math.SinCos(t);
        return double.Hypot(B * cos, A * sin);
    }

    private Point2 NormalAt(double t)
    {
        var (sin, cos) = Math.SinCos(t);
        return new Point2(B * cos, A * sin).Unit();
    }

    private Point2 OnCurve(double t)
    {
        var (sin, cos) = Math.SinCos(t);
        return new Point2(A * cos, Height + (B * sin)) + (Beyond * NormalAt(t));
    }

    private double Speed(double t) => Weight(t) is var w ? w + (Beyond * A * B / (w * w)) : 0;

    private double Measure(double from, double to) => GaussLegendreRule.Integrate(Speed, from, to, Points);

    private double LengthTo(double t)
    {
        // Beyond the ends the measure is only told from what lies within.
        var share = Panels * (t - Angles.Start) / Angles.Length;
        var i = Math.Clamp((int)Math.Floor(share), 0, Panels - 1);
        return _lengths[i] + Measure(Angles.At((double)i / Panels), t);
    }

    /// <summary>Closed on the ellipse itself; on a parallel by halving, since its height rises with the angle.</summary>
    private double AngleAtHeight(double height)
    {
        if (Beyond == 0)
            return Math.Asin(Math.Clamp((height - Height) / B, -1, 1));
        var (low, high) = (Angles.Start, Angles.End);
        for (var middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2)
            (low, high) = OnCurve(middle).V < height ? (middle, high) : (low, middle);
        return low;
    }

    private double AngleAt(double along)
    {
        if (along <= 0)
            return Angles.Start;
        if (along >= Length)
            return Angles.End;
        var i = Math.Clamp(Math.Abs(Array.BinarySearch(_lengths, along) is var found && found < 0 ? ~found : found) - 1, 0, Panels - 1);
        var (from, to) = (Angles.At((double)i / Panels), Angles.At((i + 1.0) / Panels));
        var t = from + ((to - from) * (along - _lengths[i]) / (_lengths[i + 1] - _lengths[i]));
        // Newton's method; a panel is nearly even, so that three steps reach the last digit.
        for (var step = 0; step < 3; step++)
            t -= (_lengths[i] + Measure(from, t) - along) / Speed(t);
        return t;
    }

    /// <summary>
    /// Eccentric angle of the point of the ellipse nearest to (r, z): with u the root of (a r / (u + a^2))^2 +
    /// (b z / (u + b^2))^2 = 1 beyond -b^2, where the left side falls and is convex, so that Newton's method runs up to it
    /// and never past it.
    /// </summary>
    private double NearestAngle(Point2 point)
    {
        var (r, z) = (point.U, Math.Abs(point.V - Height));
        var sign = point.V < Height ? -1 : 1;
        if (B * z == 0)
        {
            // Inside and near the centre the nearest point lies off the line across.
            var cosine = Math.Min(1, A * r / (Flattening * Flattening));
            return sign * Math.Acos(cosine);
        }

        var u = Math.Max((B * z) - (B * B), (A * r) - (A * A));
        for (var i = 0; i < 100; i++)
        {
            var (x, y) = (A * r / (u + (A * A)), B * z / (u + (B * B)));
            var over = (x * x) + (y * y) - 1;
            var fall = 2 * ((x * x / (u + (A * A))) + (y * y / (u + (B * B))));
            var step = over / fall;
            u += step;
            if (Math.Abs(step) <= 1e-16 * A * A)
                break;
        }

        return sign * Math.Atan2(B * z / (u + (B * B)), A * r / (u + (A * A)));
    }

    /// <summary>The integral of r times the speed.</summary>
    private double AreaTo(double t)
    {
        var (x, w, k) = (Math.Sin(t), Weight(t), Flattening);
        var ellipsoid = A / 2 * ((x * w) + (B * B / k * Math.Asinh(k * x / B)));
        var turned = (A * A / k * Math.Atan(k * x / B)) + (B * x);
        return ellipsoid + (Beyond * turned) + (Beyond * Beyond * A * x / w);
    }

    private static double Cubic(double x) => x - (x * x * x / 3);

    /// <summary>r^2 dz/dt.</summary>
    private double Swept(double t)
    {
        var r = OnCurve(t).U;
        // The tangent is the normal turned.
        return r * r * Speed(t) * NormalAt(t).U;
    }
}
