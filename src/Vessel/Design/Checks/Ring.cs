using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>A square-edged ring about the vessel's axis: all that stands inside is made up of such; mm.</summary>
/// <param name="Inner">Zero for a full disc.</param>
internal readonly record struct Ring(double Inner, double Outer, double Low, double High)
{
    /// <summary>Less than rounding makes of equal sizes, and far less than can be made.</summary>
    public const double Hair = 1e-6;

    /// <summary>They share more than a surface. False where a size is at fault.</summary>
    public bool Meets(Ring other) => IsBeside(other)
        && Inner < other.Outer - Hair && other.Inner < Outer - Hair;

    /// <summary>Distance from a point to its metal, mm; 0 inside.</summary>
    public double DistanceTo(Vector3 at)
    {
        var r = double.Hypot(at.X, at.Y);
        return double.Hypot(
            Math.Max(0, Math.Max(Inner - r, r - Outer)), Math.Max(0, Math.Max(Low - at.Z, at.Z - High)));
    }

    /// <summary>How far along a line it first enters the metal; null where it does not. The start lies outside.</summary>
    /// <param name="along">Unit.</param>
    public double? FirstMeeting(Vector3 from, Vector3 along)
    {
        double? first = null;
        foreach (var s in Flat(from, along, Low).Concat(Flat(from, along, High)).Concat(Round(from, along, Outer))
            .Concat(Round(from, along, Inner)))
        {
            var at = from + (s * along);
            var r = double.Hypot(at.X, at.Y);
            if (s >= 0 && s < (first ?? double.PositiveInfinity)
                && r > Inner - Hair && r < Outer + Hair && at.Z > Low - Hair && at.Z < High + Hair)
            {
                first = s;
            }
        }

        return first;
    }

    private static IEnumerable<double> Flat(Vector3 from, Vector3 along, double level) =>
        along.Z == 0 ? [] : [(level - from.Z) / along.Z];

    private static IEnumerable<double> Round(Vector3 from, Vector3 along, double radius)
    {
        var (a, b) = ((along.X * along.X) + (along.Y * along.Y), (from.X * along.X) + (from.Y * along.Y));
        var c = (from.X * from.X) + (from.Y * from.Y) - (radius * radius);
        var root = Math.Sqrt((b * b) - (a * c));
        // A line along the axis, or one that misses, has no root.
        return a > 0 && root >= 0 ? [(-b - root) / a, (-b + root) / a] : [];
    }

    /// <summary>Some of both lies at one height.</summary>
    public bool IsBeside(Ring other) => Low < other.High - Hair && other.Low < High - Hair;
}

/// <summary>A part inside the vessel as rings.</summary>
/// <param name="IsRound">Goes all round the axis. Else it is a tube beside the axis, and its ring is what it touches of
/// each circle about the axis: exact against parts that go all round, and only against these.</param>
internal sealed record InsideBody(string Path, string Name, ImmutableArray<Ring> Rings, bool IsRound = true)
{
    public bool Meets(InsideBody other) =>
        (IsRound || other.IsRound) && Rings.Any(a => other.Rings.Any(a.Meets));

    /// <summary>How far from the axis this part reaches at heights that the other has too; zero where there is none.</summary>
    public double OuterBeside(InsideBody other) => Rings
        .Where(a => other.Rings.Any(a.IsBeside))
        .Select(a => a.Outer)
        .DefaultIfEmpty(0)
        .Max();
}
