using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Vessel.Geometry;

namespace Vessel.Function;

/// <summary>A thin cylinder whose ends stay round and are free to turn and to move lengthwise; mm and MPa.</summary>
/// <param name="Radius">Radius of the middle of its wall.</param>
internal sealed record ThinCylinder(double Radius, double Length, double Wall, double Elasticity, double Poisson);

/// <summary>A small rectangle of its surface that is loaded evenly.</summary>
/// <param name="Along">Distance of its middle from the lower end, mm.</param>
/// <param name="Angle">Radians.</param>
/// <param name="HalfAlong">mm.</param>
/// <param name="HalfAngle">Radians.</param>
/// <param name="Loads">N, one for each case, eight at most: X outward, Y round towards increasing angle, Z along the axis.</param>
internal readonly record struct CylinderPatch(
    double Along, double Angle, double HalfAlong, double HalfAngle, ImmutableArray<Vector3> Loads);

/// <summary>Local loads on a thin cylinder by a double Fourier series of Fluegge's equations.</summary>
/// <remarks>
/// Bijlaard's way (Stresses From Local Loadings in Cylindrical Pressure Vessels, Trans. ASME 77, 1955): loads and displacements as series
/// of sin(m pi x / L) and cos(n phi); each pair (m, n) is a system of three equations. He reduced Donnell's form to one of the eighth
/// order; here the three of Fluegge (Stresses in Shells) are solved as they stand, which holds for few waves round the cylinder too. u
/// along the axis, v round it, w outward; one family is even in the angle, the other odd. Loads are spread by a bell curve, so that the
/// series ends. What stands at one angle is summed once for all waves round, and all cases go through the sums side by side.
/// </remarks>
internal sealed class CylinderSeries
{
    /// <summary>Waves beyond this over the spread are left out: the bell is down to 3 % there.</summary>
    private const double Reach = 2.6;

    /// <summary>Pairs at most; where more would be needed the spread is widened, which <see cref="Spread"/> tells.</summary>
    private const int MostPairs = 40_000;

    private readonly ThinCylinder _shell;
    private readonly ImmutableArray<CylinderLoads> _loaded;
    private readonly ImmutableArray<CylinderStresses> _seen;

    /// <summary>Along, round and outward of the even family, then of the odd one.</summary>
    private readonly Vector512<double>[] _loads = new Vector512<double>[6];
    private readonly Vector512<double>[] _moves = new Vector512<double>[6];
    private readonly Vector512<double>[] _give = new Vector512<double>[Vector512<double>.Count];

    private CylinderSeries(
        ThinCylinder shell, ImmutableArray<CylinderPatch> patches, ImmutableArray<(double Along, double Angle)> places, double spread)
    {
        _shell = shell;
        // Pairs inside the ellipse: pi / 4 (Reach L / pi s) (Reach R / s).
        Spread = Math.Max(spread, Reach / 2 * Math.Sqrt(shell.Length * shell.Radius / MostPairs));
        _loaded = [.. patches.GroupBy(patch => (patch.Angle, patch.HalfAngle)).Select(group => new CylinderLoads([.. group]))];
        _seen = [.. places.Index().GroupBy(place => place.Item.Angle).Select(group => new CylinderStresses(
            group.Key, [.. group.Select(place => (place.Item.Along, place.Index))]))];
    }

    /// <summary>Standard deviation of the bell, mm.</summary>
    public double Spread { get; }

    /// <summary>Work of case i's loads on case j's displacements, N mm.</summary>
    public SmallMatrix Give { get; private set; } = new(0, 0);

    /// <summary>Stresses by place, inner and outer face, along, round and shear, case; MPa.</summary>
    public double[] Stresses { get; private set; } = [];

    public static CylinderSeries Of(
        ThinCylinder shell, ImmutableArray<CylinderPatch> patches, ImmutableArray<(double Along, double Angle)> places, double spread)
    {
        var series = new CylinderSeries(shell, patches, places, spread);
        series.Sum();
        series.Keep(patches[0].Loads.Length, places.Length);
        return series;
    }

    private void Sum()
    {
        var (most, radius) = (Reach / Spread, _shell.Radius);
        for (var m = 0; m * Math.PI / _shell.Length <= most; m++)
        {
            var alpha = m * Math.PI / _shell.Length;
            foreach (var line in _loaded)
                line.Start(alpha, Bell(alpha));
            foreach (var line in _seen)
                line.Start();
            var last = radius * Math.Sqrt((most * most) - (alpha * alpha));
            for (var n = 0; n <= last; n++)
            {
                Load(n);
                // All along and all round alike: a stiff body's way along the axis, which nothing holds.
                if (m > 0 || n > 0)
                {
                    Move(alpha * radius, n, m == 0);
                    AddGive();
                    AddStresses(alpha * radius, n);
                }

                foreach (var line in _seen)
                    line.Next();
            }

            foreach (var line in _seen)
                line.End(alpha);
        }
    }

    private void Keep(int cases, int places)
    {
        var give = MemoryMarshal.Cast<Vector512<double>, double>(_give);
        Give = new(cases, cases);
        for (var i = 0; i < cases; i++)
        {
            for (var j = 0; j < cases; j++)
                Give[i, j] = give[(i * Vector512<double>.Count) + j];
        }

        Stresses = new double[places * CylinderStresses.OfPlace * cases];
        foreach (var line in _seen)
            line.Keep(Stresses, cases);
    }

    private double Bell(double wave) => Math.Exp(-wave * wave * Spread * Spread / 2);

    private void Load(int n)
    {
        Array.Clear(_loads);
        var bell = Bell(n / _shell.Radius);
        foreach (var line in _loaded)
            line.AddTo(_loads, bell, n);
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
        // Without waves along the axis there is only the axis' way.
        var factor = isLevel ? scale / uu : scale / determinant;
        for (var i = 0; i < _loads.Length; i += 3)
        {
            var (x, y, z) = (_loads[i], _loads[i + 1], _loads[i + 2]);
            _moves[i] = factor * (isLevel ? x : (a * x) + (b * y) + (c * z));
            _moves[i + 1] = isLevel ? default : factor * ((b * x) + (d * y) + (e * z));
            _moves[i + 2] = isLevel ? default : factor * ((c * x) + (e * y) + (f * z));
        }
    }

    /// <summary>The mean of each product over the surface undoes the density's factor.</summary>
    private void AddGive()
    {
        var loads = MemoryMarshal.Cast<Vector512<double>, double>(_loads);
        for (var i = 0; i < _give.Length; i++)
        {
            var work = loads[i] * _moves[0];
            for (var c = 1; c < _moves.Length; c++)
                work += loads[(c * Vector512<double>.Count) + i] * _moves[c];
            _give[i] += work;
        }
    }

    private void AddStresses(double l, int n)
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
            for (var family = 0; family < 2; family++)
            {
                var (u, v, w) = (_moves[3 * family], _moves[(3 * family) + 1], _moves[(3 * family) + 2]);
                var (along, round) = ((alongU * u) + (alongW * w), (roundV * v) + (roundW * w));
                var (first, second) = (plane * (along + (nu * round)), plane * (round + (nu * along)));
                var third = shear * ((shearU * u) + (shearV * v) + (shearW * w));
                foreach (var line in _seen)
                    line.Add(face, family == 1, first, second, third);
            }
        }
    }
}
