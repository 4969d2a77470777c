using System.Collections.Immutable;
using System.Runtime.Intrinsics;
using Vessel.Geometry;

namespace Vessel.Function;

/// <summary>The patches of a <see cref="CylinderSeries"/> that stand one above the other, each as wide as the others.</summary>
internal sealed class CylinderLoads
{
    private readonly ImmutableArray<CylinderPatch> _patches;
    private readonly ImmutableArray<(Vector512<double> Outward, Vector512<double> Round, Vector512<double> Along)> _forces;
    private WavesRound _waves;

    /// <summary>For one wave along the axis.</summary>
    private Vector512<double> _along;
    private Vector512<double> _round;
    private Vector512<double> _outward;

    public CylinderLoads(ImmutableArray<CylinderPatch> patches)
    {
        _patches = patches;
        _forces = [.. patches.Select(patch => (
            Cases(patch, load => load.X), Cases(patch, load => load.Y), Cases(patch, load => load.Z)))];
        _waves = new(patches[0].Angle);
    }

    public void Start(double alpha, double bell)
    {
        (_along, _round, _outward) = (default, default, default);
        for (var i = 0; i < _patches.Length; i++)
        {
            var patch = _patches[i];
            var (sin, cos) = Math.SinCos(alpha * patch.Along);
            var share = bell * Sinc(alpha * patch.HalfAlong);
            _along += share * cos * _forces[i].Along;
            _round += share * sin * _forces[i].Round;
            _outward += share * sin * _forces[i].Outward;
        }

        _waves.Start();
    }

    /// <summary>Adds its part to each family's loads along, round and outward, and goes on to the next number of waves round.</summary>
    public void AddTo(Vector512<double>[] loads, double bell, int n)
    {
        var share = bell * Sinc(n * _patches[0].HalfAngle);
        var (even, odd) = (share * _waves.Cos, share * _waves.Sin);
        loads[0] += even * _along;
        loads[1] += odd * _round;
        loads[2] += even * _outward;
        loads[3] += odd * _along;
        loads[4] -= even * _round;
        loads[5] += odd * _outward;
        _waves.Next();
    }

    private static double Sinc(double x) => Math.Abs(x) < 1e-4 ? 1 - (x * x / 6) : Math.Sin(x) / x;

    private static Vector512<double> Cases(CylinderPatch patch, Func<Vector3, double> part)
    {
        Span<double> of = stackalloc double[Vector512<double>.Count];
        for (var i = 0; i < patch.Loads.Length; i++)
            of[i] = part(patch.Loads[i]);
        return Vector512.Create<double>(of);
    }
}
