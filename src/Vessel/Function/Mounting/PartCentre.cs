using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Function;

/// <summary>Where a part's mass acts, all its pieces together: closed forms of the body, less its holes where they are.</summary>
internal static class PartCentre
{
    /// <summary>A part that does not tell its centre is taken to act at its own origin.</summary>
    public static Vector3 Of(Part part) => part.Centre ?? part.Placements[0].Origin;

    /// <summary>A dish or cone by rings of equal height, which is right to about a thousandth of its depth.</summary>
    public static (double Volume, Vector3 Centre) Turned(HeadShape shape)
    {
        const int Rings = 200;
        var (low, high) = (shape.Outer.Start.V, Math.Max(shape.Outer.End.V, shape.Inner.End.V));
        var (sum, moment) = (0.0, 0.0);
        for (var i = 0; i < Rings; i++)
        {
            var z = low + ((high - low) * (i + 0.5) / Rings);
            var (outer, inner) = (shape.Outer.RadiusAt(z), shape.Inner.RadiusAt(z));
            var ring = Math.Max(0, (outer * outer) - (inner * inner));
            (sum, moment) = (sum + ring, moment + (ring * z));
        }

        // A cone's faces end at two heights, so that the volumes that they enclose do not tell its metal.
        return (Math.PI * (high - low) / Rings * sum, shape.Frame.ToOuter(new(0, 0, moment / sum)));
    }

    /// <summary>Centre of a body that is drilled.</summary>
    public static Vector3 LessHoles(Part part, (double Volume, Vector3 Centre) body, IEnumerable<PortSite> drilled)
    {
        var sites = drilled.ToList();
        if (sites.Count == 0)
            return body.Centre;
        var weights = Weight.Sum(sites.Select(site => new Weight(
            site.OpeningRadius * site.OpeningRadius, site.Frame.Origin - (part.Thickness / 2 * site.Frame.Z))));
        return (1 / part.Volume) * ((body.Volume * body.Centre) - ((body.Volume - part.Volume) * weights.Centre));
    }
}
