using System.Collections.Immutable;
using MathNet.Numerics.RootFinding;

namespace Vessel.Geometry;

/// <summary>
/// The footprint on any body of revolution: the first hit of each line on its profile. A line that misses has no reach (NaN).
/// </summary>
/// <param name="On">Turned about the +Z of the frame in which <paramref name="Axis"/> is given.</param>
/// <param name="Axis">Axis of the port; its Z points out of the body.</param>
public sealed record RevolvedFootprint(Profile On, Frame3 Axis) : Footprint
{
    private const int Samples = 120;

    /// <summary>Cones are met in closed form and have no jumps.</summary>
    public override double Accuracy => On.Pieces is [LinePiece] ? base.Accuracy : 1e-7;

    /// <summary>Whether a line of the port meets the surface, and whether it only grazes it; null when it misses.</summary>
    public LineHit? Hit(double r, double phi)
    {
        var hit = On.FirstHit(Axis.ToOuter(OnLine(r, phi, 0)), -Axis.Z);
        return hit is { } found ? found with { Along = -found.Along } : null;
    }

    /// <summary>Sampled round the port; a line that grazes counts as missing.</summary>
    public override bool Takes(double r) =>
        Enumerable.Range(0, Samples).All(i => Hit(r, Turns.Full * i / Samples) is { Grazes: false });

    public override double Reach(double r, double phi) => Hit(r, phi)?.Along ?? double.NaN;

    public override double ReachSlope(double r, double phi) => Meet(r, phi).Slope;

    public override Vector3 Normal(double r, double phi) => Meet(r, phi).Normal;

    public override Meeting Meet(double r, double phi)
    {
        if (Hit(r, phi) is not { } hit)
            return Meeting.None;
        var normal = new Vector3(hit.Normal.Dot(Axis.X), hit.Normal.Dot(Axis.Y), hit.Normal.Dot(Axis.Z));
        var (sin, cos) = Math.SinCos(phi);
        // Along the path the normal has no share. Where the line grazes the limit from either side is finite or none.
        var slope = Math.Abs(normal.Z) < 1e-12 ? 0 : r * ((normal.X * sin) - (normal.Y * cos)) / normal.Z;
        return new(hit.Along, slope, normal);
    }

    public override double Distance(Vector3 point) => On.Distance(Axis.ToOuter(point));

    public override double GoverningRadius(double inner, double outer, double phi)
    {
        // Positive while the surface still comes up to meet the tube.
        double Rise(double r)
        {
            var normal = Normal(r, phi);
            var (sin, cos) = Math.SinCos(phi);
            return -((normal.X * cos) + (normal.Y * sin));
        }

        return Rise(inner) <= 0 ? inner
            : Rise(outer) >= 0 ? outer
            : Brent.FindRoot(Rise, inner, outer, 1e-13 * outer, 200);
    }

    /// <summary>Number of the profile's piece that a line meets; -1 when it misses.</summary>
    public int Piece(double r, double phi) => Hit(r, phi)?.Piece ?? -1;

    /// <summary>Where the path passes from one piece of the profile to the next: there its slope or curvature jumps.</summary>
    public override ImmutableArray<double> Breaks(double r)
    {
        var breaks = ImmutableArray.CreateBuilder<double>();
        for (var i = 0; i < Samples; i++)
        {
            var (from, to) = (Turns.Full * i / Samples, Turns.Full * (i + 1) / Samples);
            var (before, after) = (Piece(r, from), Piece(r, to));
            if (before == after)
                continue;
            for (var step = 0; step < 50; step++)
            {
                var middle = (from + to) / 2;
                if (Piece(r, middle) == before)
                    from = middle;
                else
                    to = middle;
            }

            if (to > 0 && to < Turns.Full)
                breaks.Add(to);
        }

        return breaks.ToImmutable();
    }
}
