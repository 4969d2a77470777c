using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Vessel.Function;

/// <summary>Stresses of a <see cref="CylinderSeries"/> at the places that stand one above the other.</summary>
/// <param name="places">Height from the lower end, and number.</param>
internal sealed class CylinderStresses(double angle, ImmutableArray<(double Along, int Number)> places)
{
    /// <summary>Along, round and shear at the inner and outer face.</summary>
    public const int OfPlace = 6;

    /// <summary>For one wave along the axis.</summary>
    private readonly Vector512<double>[] _waves = new Vector512<double>[OfPlace];
    private readonly Vector512<double>[] _sums = new Vector512<double>[OfPlace * places.Length];
    private WavesRound _round = new(angle);

    public void Start()
    {
        Array.Clear(_waves);
        _round.Start();
    }

    public void Add(int face, bool isOdd, Vector512<double> along, Vector512<double> round, Vector512<double> shear)
    {
        var (even, odd) = isOdd ? (_round.Sin, -_round.Cos) : (_round.Cos, _round.Sin);
        _waves[3 * face] += even * along;
        _waves[(3 * face) + 1] += even * round;
        _waves[(3 * face) + 2] += odd * shear;
    }

    public void Next() => _round.Next();

    public void End(double alpha)
    {
        for (var i = 0; i < places.Length; i++)
        {
            var (sin, cos) = Math.SinCos(alpha * places[i].Along);
            for (var j = 0; j < OfPlace; j++)
                _sums[(OfPlace * i) + j] += (j % 3 == 2 ? cos : sin) * _waves[j];
        }
    }

    public void Keep(double[] stresses, int cases)
    {
        var sums = MemoryMarshal.Cast<Vector512<double>, double>(_sums);
        for (var i = 0; i < _sums.Length; i++)
        {
            var to = ((places[i / OfPlace].Number * OfPlace) + (i % OfPlace)) * cases;
            sums.Slice(i * Vector512<double>.Count, cases).CopyTo(stresses.AsSpan(to));
        }
    }
}

/// <summary>Cosine and sine of an angle's multiples, one after the other.</summary>
internal struct WavesRound(double angle)
{
    private readonly double _stepCos = Math.Cos(angle);
    private readonly double _stepSin = Math.Sin(angle);

    public double Cos { get; private set; }

    public double Sin { get; private set; }

    public void Start() => (Cos, Sin) = (1, 0);

    public void Next() => (Cos, Sin) = ((Cos * _stepCos) - (Sin * _stepSin), (Sin * _stepCos) + (Cos * _stepSin));
}
