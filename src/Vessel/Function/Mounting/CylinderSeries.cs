using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Function;

/// <summary>A thin cylinder whose ends stay round and are free to turn and to move lengthwise; mm and MPa.</summary>
/// <param name="Radius">Of the middle of its wall.</param>
internal sealed record ThinCylinder(double Radius, double Length, double Wall, double Elasticity, double Poisson);

/// <summary>A small rectangle of its surface that is loaded evenly.</summary>
/// <param name="Along">Its middle from the lower end, mm.</param>
/// <param name="Angle">Radians.</param>
/// <param name="HalfAlong">mm.</param>
/// <param name="HalfAngle">Radians.</param>
/// <param name="Loads">N, one for each case: X outward, Y round towards increasing angle, Z along the axis.</param>
internal readonly record struct CylinderPatch(double Along, double Angle, double HalfAlong, double HalfAngle, ImmutableArray<Vector3> Loads);

/// <summary>Local loads on a thin cylinder by a double Fourier series of Fluegge's equations.</summary>
/// <remarks>
/// Bijlaard's way (Stresses From Local Loadings in Cylindrical Pressure Vessels, Trans. ASME 77, 1955): loads and displacements as series of
/// sin(m pi x / L) and cos(n phi); each pair (m, n) is a system of three equations. He reduced Donnell's form to one of the eighth order;
/// here the three of Fluegge (Stresses in Shells) are solved as they stand, which holds for few waves round the cylinder too. u along the axis,
/// v round it, w outward; one family is even in the angle, the other odd. Loads are spread by a bell curve, so that the series ends.
/// </remarks>
internal sealed class CylinderSeries
{
    /// <summary>Waves beyond this over the spread are left out: the bell is down to 3 % there.</summary>
    private const double Reach = 2.6;

    /// <summary>Pairs at most; where more would be needed the spread is widened, which <see cref="Spread"/> tells.</summary>
    private const int MostPairs = 40_000;

    private readonly ThinCylinder _shell;
    private readonly ImmutableArray<CylinderPatch> _patches;
    private readonly ImmutableArray<(double Along, double Angle)> _places;
    private readonly int _cases;
    private readonly double[] _loads;
    private readonly double[] _moves;

    private CylinderSeries(ThinCylinder shell, ImmutableArray<CylinderPatch> patches, ImmutableArray<(double Along, double Angle)> places, double spread)
    {
        (_shell, _patches, _places, _cases) = (shell, patches, places, patches[0].Loads.Length);
        (_loads, _moves) = (new double[6 * _cases], new double[6 * _cases]);
        // Pairs inside the ellipse: pi / 4 (Reach L / pi s) (Reach R / s).
        Spread = Math.Max(spread, Reach / 2 * Math.Sqrt(shell.Length * shell.Radius / MostPairs));
        Give = new(_cases, _cases);
        Stresses = new double[places.Length * 2 * 3 * _cases];
    }

    /// <summary>Standard deviation of the bell, mm.</summary>
    public double Spread { get; }

    /// <summary>Work of case i's loads on case j's displacements, N mm.</summary>
    public SmallMatrix Give { get; }

    /// <summary>By place, inner and outer face, along, round and shear, case; MPa.</summary>
    public double[] Stresses { get; }

    public static CylinderSeries Of(
        ThinCylinder shell, ImmutableArray<CylinderPatch> patches, ImmutableArray<(double Along, double Angle)> places, double spread)
    {
        var series = new CylinderSeries(shell, patches, places, spread);
        series.Sum();
        return series;
    }

    private void Sum()
    {
        var (most, radius) = (Reach / Spread, _shell.Radius);
        var (loaded, seen) = (new Waves(_patches.Length), new Waves(_places.Length));
        for (var m = 0; m * Math.PI / _shell.Length <= most; m++)
        {
            var alpha = m * Math.PI / _shell.Length;
            for (var i = 0; i < _patches.Length; i++)
                loaded.Start(i, alpha * _patches[i].Along, _patches[i].Angle, Bell(alpha) * Sinc(alpha * _patches[i].HalfAlong));
            for (var i = 0; i < _places.Length; i++)
                seen.Start(i, alpha * _places[i].Along, _places[i].Angle, 1);
            var last = radius * Math.Sqrt((most * most) - (alpha * alpha));
            for (var n = 0; n <= last; n++)
            {
                Load(loaded, n);
                // All along and all round alike: a stiff body's way along the axis, which nothing holds.
                if (m > 0 || n > 0)
                {
                    Move(alpha * radius, n, m == 0);
                    AddGive();
                    AddStresses(seen, alpha * radius, n);
                }

                loaded.Next();
                seen.Next();
            }
        }
    }

    private double Bell(double wave) => Math.Exp(-wave * wave * Spread * Spread / 2);

    private static double Sinc(double x) => Math.Abs(x) < 1e-4 ? 1 - (x * x / 6) : Math.Sin(x) / x;

    /// <summary>Of each case and family: along, round, outward.</summary>
    private void Load(Waves at, int n)
    {
        Array.Clear(_loads);
        var bell = Bell(n / _shell.Radius);
        for (var i = 0; i < _patches.Length; i++)
        {
            var share = bell * Sinc(n * _patches[i].HalfAngle);
            var (even, odd) = (share * at.Cos[i], share * at.Sin[i]);
            var (sin, cos) = (at.SinAlong[i], at.CosAlong[i]);
            for (var j = 0; j < _cases; j++)
            {
                var load = _patches[i].Loads[j];
                _loads[6 * j] += load.Z * cos * even;
                _loads[(6 * j) + 1] += load.Y * sin * odd;
                _loads[(6 * j) + 2] += load.X * sin * even;
                _loads[(6 * j) + 3] += load.Z * cos * odd;
                _loads[(6 * j) + 4] -= load.Y * sin * even;
                _loads[(6 * j) + 5] += load.X * sin * odd;
            }
        }
    }

    /// <summary>Fluegge's three equations for one pair of waves.</summary>
    private void Move(double l, int n, bool isLevel)
    {
        var (nu, k) = (_shell.Poisson, _shell.Wall * _shell.Wall / (12 * _shell.Radius * _shell.Radius));
        var (half, n2, l2) = ((1 - nu) / 2, (double)n * n, l * l);
        var uu = l2 + (half * n2 * (1 + k));
        var uv = -(1 + nu) / 2 * l * n;
        var uw = -(nu * l) - (k * ((l2 * l) - (half * l * n2)));
        var vv = n2 + (half * l2 * (1 + (3 * k)));
        var vw = n + (k * (3 - nu) / 2 * l2 * n);
        var ww = 1 + (k * (((l2 + n2) * (l2 + n2)) - (2 * n2) + 1));
        var (a, b, c) = ((vv * ww) - (vw * vw), (uw * vw) - (uv * ww), (uv * vw) - (uw * vv));
        var (d, e, f) = ((uu * ww) - (uw * uw), (uv * uw) - (uu * vw), (uu * vv) - (uv * uv));
        var determinant = (uu * a) + (uv * b) + (uw * c);
        // Loads to densities of the series, over the membrane's stiffness.
        var scale = (isLevel ? 1.0 : 2) * (n == 0 ? 1 : 2) / (Turns.Full * _shell.Radius * _shell.Length)
            * _shell.Radius * _shell.Radius * (1 - (nu * nu)) / (_shell.Elasticity * _shell.Wall);
        for (var i = 0; i < _loads.Length; i += 3)
        {
            var (x, y, z) = (_loads[i], _loads[i + 1], _loads[i + 2]);
            // Without waves along the axis there is only the axis' way.
            var factor = isLevel ? scale / uu : scale / determinant;
            _moves[i] = factor * (isLevel ? x : (a * x) + (b * y) + (c * z));
            _moves[i + 1] = isLevel ? 0 : factor * ((b * x) + (d * y) + (e * z));
            _moves[i + 2] = isLevel ? 0 : factor * ((c * x) + (e * y) + (f * z));
        }
    }

    /// <summary>The mean of each product over the surface undoes the density's factor.</summary>
    private void AddGive()
    {
        for (var i = 0; i < _cases; i++)
        {
            for (var j = 0; j < _cases; j++)
            {
                var work = 0.0;
                for (var c = 0; c < 6; c++)
                    work += _loads[(6 * i) + c] * _moves[(6 * j) + c];
                Give[i, j] += work;
            }
        }
    }

    private void AddStresses(Waves at, double l, int n)
    {
        var (r, t, nu) = (_shell.Radius, _shell.Wall, _shell.Poisson);
        var plane = _shell.Elasticity / (1 - (nu * nu));
        var shear = _shell.Elasticity / (2 * (1 + nu));
        for (var face = 0; face < 2; face++)
        {
            var z = face == 0 ? -t / 2 : t / 2;
            var (alongU, alongW) = (-l / r, z * l * l / (r * r));
            var (roundV, roundW) = (n / r, (z * n * n / (r * (r + z))) + (1 / (r + z)));
            var (shearU, shearV, shearW) = (-n / (r + z), (r + z) / (r * r) * l, l * n * (z / r) * ((1 / r) + (1 / (r + z))));
            for (var j = 0; j < _cases; j++)
            {
                for (var family = 0; family < 2; family++)
                {
                    var i = (6 * j) + (3 * family);
                    var (u, v, w) = (_moves[i], _moves[i + 1], _moves[i + 2]);
                    var (along, round) = ((alongU * u) + (alongW * w), (roundV * v) + (roundW * w));
                    var (first, second) = (plane * (along + (nu * round)), plane * (round + (nu * along)));
                    var third = shear * ((shearU * u) + (shearV * v) + (shearW * w));
                    for (var place = 0; place < _places.Length; place++)
                    {
                        var (even, odd) = family == 0 ? (at.Cos[place], at.Sin[place]) : (at.Sin[place], -at.Cos[place]);
                        var to = (((place * 2) + face) * 3 * _cases) + j;
                        Stresses[to] += first * at.SinAlong[place] * even;
                        Stresses[to + _cases] += second * at.SinAlong[place] * even;
                        Stresses[to + (2 * _cases)] += third * at.CosAlong[place] * odd;
                    }
                }
            }
        }
    }

    /// <summary>Sines and cosines along and round at several places, from one number of waves round to the next.</summary>
    private sealed class Waves(int count)
    {
        private readonly double[] _stepCos = new double[count];
        private readonly double[] _stepSin = new double[count];

        public double[] SinAlong { get; } = new double[count];

        public double[] CosAlong { get; } = new double[count];

        public double[] Cos { get; } = new double[count];

        public double[] Sin { get; } = new double[count];

        public void Start(int i, double along, double angle, double factor)
        {
            var (sin, cos) = Math.SinCos(along);
            (SinAlong[i], CosAlong[i]) = (factor * sin, factor * cos);
            (_stepSin[i], _stepCos[i]) = Math.SinCos(angle);
            (Cos[i], Sin[i]) = (1, 0);
        }

        public void Next()
        {
            for (var i = 0; i < count; i++)
                (Cos[i], Sin[i]) = ((Cos[i] * _stepCos[i]) - (Sin[i] * _stepSin[i]), (Sin[i] * _stepCos[i]) + (Cos[i] * _stepSin[i]));
        }
    }
}
