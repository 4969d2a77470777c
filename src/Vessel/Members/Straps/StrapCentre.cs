using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Members.Straps;

/// <summary>Where the mass of half a strap acts: on the middle line of its half, by its straight lengths and turned sections.</summary>
internal static class StrapCentre
{
    public static Vector3 Of(StrapSite site)
    {
        var (volume, moment) = (0.0, 0.0);
        foreach (var (piece, level) in Pieces(site))
            (volume, moment) = (volume + piece, moment + (piece * level));
        return site.Way.ToOuter(new(0, 0, moment / volume));
    }

    /// <summary>Volumes, mm3, and how far outward from the vessel's axis each acts, mm.</summary>
    internal static IEnumerable<(double Volume, double Level)> Pieces(StrapSite site)
    {
        var (strap, t) = (site.Strap, site.Strap.Thickness);
        var (near, far) = (strap.InsideRadius, strap.InsideRadius + t);
        var section = strap.Width * t;
        yield return Turned(site.InnerRadius, site.OuterRadius, site.HalfBand, 0, 1);
        yield return Turned(near, far, site.HalfBand, site.BendLevel, -1);
        if (site.Rise is { } rise)
        {
            yield return (2 * strap.Ear * section, site.EarLevel - (t / 2));
            yield return Turned(near, far, Math.PI / 2, site.EarLevel + near, -1);
            yield return (2 * site.Leg * section, site.EarLevel + near + (site.Leg / 2));
            yield return Turned(near, far, Math.PI / 2, site.EarLevel + rise - far, 1);
            yield return (2 * strap.Feet.Length * section, site.EarLevel + rise - (t / 2));
        }
        else
        {
            yield return (2 * site.LastStraight * section, site.EarLevel - (t / 2));
        }

        yield return (-site.EarBolts.Length * BoltHole.Area(strap.Bolts) * t, site.EarLevel - (t / 2));
        yield return (-site.FootBolts.Length * BoltHole.Area(strap.Feet.Bolts) * t, site.EarLevel + (site.Rise ?? 0) - (t / 2));

        // Two sectors of a ring, each from the line outward (or inward: side -1) to one of its sides.
        (double, double) Turned(double inner, double outer, double turn, double centre, int side) => (
            turn * ((outer * outer) - (inner * inner)) * strap.Width,
            centre + (side * 2.0 / 3 * (Cube(outer) - Cube(inner)) / ((outer * outer) - (inner * inner)) * Math.Sin(turn) / turn));
    }

    private static double Cube(double x) => x * x * x;
}
