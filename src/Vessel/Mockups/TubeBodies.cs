using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Mockups;

/// <summary>A port's tube as convex bodies in the vessel's frame, one for each straight piece.</summary>
internal static class TubeBodies
{
    /// <summary>Round a tube, for its distance from the vessel: of 100 mm they leave 0.03 mm of its surface.</summary>
    private const int Lines = 144;

    private const double GoldenShare = 0.6180339887498949;

    /// <param name="radius">Radius that the tube is taken with, mm.</param>
    /// <param name="from">Along the port's axis, mm; below the first mitre.</param>
    public static ImmutableArray<ConvexBody> Of(PortSite site, double radius, double from)
    {
        var legs = site.Legs;
        if (site.Port.Elbow is not { } elbow)
            return [new Bar(legs[0].At(from).Origin, legs[0].End.Origin, radius)];
        var (sin, cos) = Math.SinCos(elbow.Direction);
        Ellipse3 Section(Frame3 at, double slope) => new(
            at.Origin, radius * (at.X + (slope * cos * at.Z)), radius * (at.Y + (slope * sin * at.Z)));
        return
        [
            .. legs.Select((leg, i) => new MitredBar(
                Section(i == 0 ? leg.At(from) : leg.Frame, i == 0 ? 0 : elbow.Slope),
                Section(leg.End, i < elbow.Mitres ? -elbow.Slope : 0))),
        ];
    }

    /// <summary>
    /// From the outside of the vessel to a round bar, mm; negative where it runs in. The distance from a convex body is convex along a
    /// line, so the least of each line is found by golden section; inner corners of an outline, which are not convex, may hide a nearer
    /// place.
    /// </summary>
    public static double FromVessel(Profile outside, Frame3 frame, double radius, double from, double to) =>
        Enumerable.Range(0, Lines).Min(i =>
        {
            double At(double along) => outside.Distance(frame.ToOuter(Footprint.OnLine(radius, Turns.Full * i / Lines, along)));
            var (low, high) = (from, to);
            while (high - low > 1e-3)
            {
                var (a, b) = (high - (GoldenShare * (high - low)), low + (GoldenShare * (high - low)));
                (low, high) = At(a) < At(b) ? (low, b) : (a, high);
            }

            return Math.Min(At((low + high) / 2), Math.Min(At(from), At(to)));
        });

    /// <summary>
    /// Least distance of an elbow's pieces beyond the first mitre, and of the fitting, from the vessel's outside, mm; infinite for a
    /// straight port.
    /// </summary>
    public static double ElbowFromVessel(Profile outside, PortSite site)
    {
        if (site.Port.Elbow is null)
            return double.PositiveInfinity;
        var fitting = FittingEnvelope.Of(site.Port);
        return site.Legs.Skip(1)
            .Select(leg => FromVessel(outside, leg.Frame, site.Port.OuterRadius, 0, leg.Length))
            .Append(fitting is null ? double.PositiveInfinity : FromVessel(outside, site.FreeEnd, fitting.Radius, 0, fitting.Length))
            .Min();
    }
}
