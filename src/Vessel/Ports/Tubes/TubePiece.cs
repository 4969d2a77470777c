using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>A straight piece of round tube along +Z between two ends.</summary>
/// <param name="Accuracy">What integrals over it may aim for; see <see cref="Footprint.Accuracy"/>.</param>
internal sealed record TubePiece(double OuterRadius, double BoreRadius, TubeEnd Lower, TubeEnd Upper, double Accuracy)
{
    /// <summary>Gauss points over the wall, from -1 to 1: exact to the fifth power of r.</summary>
    private static readonly (double At, double Weight)[] _wall =
        [(-Math.Sqrt(0.6), 5.0 / 9), (0, 8.0 / 9), (Math.Sqrt(0.6), 5.0 / 9)];

    /// <summary>Rows of windows in its wall, in the piece's frame.</summary>
    public ImmutableArray<WindowRow> Rows { get; init; } = [];

    /// <summary>Angle of the left edge of the wrap round its outside.</summary>
    public double WrapStart => WindowRows.Start([.. Rows.Select(row => row.Design)], OuterRadius, OuterRadius - BoreRadius);

    public TubeWindows Windows => new(Rows, OuterRadius, OuterRadius - BoreRadius, OuterRadius);

    /// <summary>mm3.</summary>
    public double Volume
    {
        get
        {
            // Heights are counted from well below the lower end: a relative error of heights that change sign is met nowhere.
            var floor = Enumerable.Range(0, 16).Min(i => Lower.Outer(Turns.Full * i / 16)) - OuterRadius;
            return Under(Upper, floor) - Under(Lower, floor) - Windows.Removed(Windows.Outlines(Wrapped, OuterRadius), OuterRadius);
        }
    }

    /// <summary>Where its mass acts.</summary>
    /// <remarks>
    /// Sums over 720 places round it and three through the wall: for smooth ends right to rounding; a corner in an end, as of tubes of
    /// equal diameters, costs some 1e-6 of its size.
    /// </remarks>
    public Vector3 Centre
    {
        get
        {
            const int Around = 720;
            var (middle, half) = ((OuterRadius + BoreRadius) / 2, (OuterRadius - BoreRadius) / 2);
            var (volume, moment) = (0.0, Vector3.Zero);
            foreach (var (end, sign) in new[] { (Upper, 1), (Lower, -1) })
            {
                for (var i = 0; i < Around; i++)
                {
                    var phi = Turns.Full * i / Around;
                    foreach (var (at, weight) in _wall)
                    {
                        var r = middle + (at * half);
                        var z = end.Through?.Invoke(r, phi) ?? Between(end, phi, at);
                        var column = sign * weight * r * z;
                        (volume, moment) = (volume + column, moment + (column * new Vector3(r * Math.Cos(phi), r * Math.Sin(phi), z / 2)));
                    }
                }
            }

            // Both as sums over r dr and mean of phi, a turn's share of the volume.
            var share = half * Turns.Full / Around;
            (volume, moment) = (share * volume, share * moment);
            foreach (var (taken, at) in Windows.Taken())
                (volume, moment) = (volume - taken, moment - (taken * at));
            return 1 / volume * moment;
        }
    }

    private WrappedDevelopment Wrapped => new(OuterRadius, WrapStart, 0);

    /// <summary>Angle by which the wrap laps over itself, radians.</summary>
    public double WrapLap => WindowRows.Lap([.. Rows.Select(row => row.Design)], OuterRadius, OuterRadius - BoreRadius, WrapStart);

    public Solid Solid()
    {
        var (outer, inner) = (new CylinderSurface(OuterRadius), new CylinderSurface(BoreRadius));
        return ThickSolid.Of(
            outer, inner, true, [RimOf(Lower), RimOf(Upper), .. Windows.Rims(Wrapped, Windows.Outlines(Wrapped, OuterRadius))]);

        Rim RimOf(TubeEnd end) => new(
            Interval.Turn,
            end.Breaks,
            phi => outer.ChartOf(new(phi, end.Outer(phi))),
            phi => inner.ChartOf(new(phi, end.Inner(phi))),
            1,
            end.Through is not { } through ? null : (phi, w) =>
            {
                var r = outer.Radius + (w * (inner.Radius - outer.Radius));
                return Footprint.OnLine(r, phi, through(r, phi));
            });
    }

    /// <summary>Reach of an end that runs straight through the wall, from the bore at -1 to the outside at 1, mm.</summary>
    private static double Between(TubeEnd end, double phi, double at) =>
        end.Inner(phi) + ((1 + at) / 2 * (end.Outer(phi) - end.Inner(phi)));

    /// <summary>Volume from a level up to an end, mm3.</summary>
    private double Under(TubeEnd end, double floor)
    {
        if (end.Through is { } through)
            return Quadrature.Ring(BoreRadius, OuterRadius, (r, phi) => through(r, phi) - floor, Accuracy);
        var (middle, half) = ((OuterRadius + BoreRadius) / 2, (OuterRadius - BoreRadius) / 2);
        return Quadrature.Periodic(
            phi =>
            {
                var sum = 0.0;
                foreach (var (at, weight) in _wall)
                    sum += weight * (middle + (at * half)) * (Between(end, phi, at) - floor);
                return half * sum;
            },
            Interval.Turn,
            end.Breaks,
            Accuracy);
    }
}
