using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>
/// A cone rolled from sheet. Its edges are cut square in the flat, the narrow one for the port at its pole; other ports are
/// drilled along their axes after rolling. Its frame is the head's own.
/// </summary>
internal static class ConePart
{
    public static Part Build(PortHost end, ConeHead head, VesselDesign vessel, ImmutableArray<PortSite> sites, WeldNumbers welds)
    {
        var name = Names.Of(end);
        var cone = ConeShape.Of(end, head, vessel);
        var own = sites.Where(site => site.Port.Host == end).ToImmutableArray();
        var drilled = own.Where(site => site.Port.Place.Radius > 0).ToImmutableArray();
        var flat = ConeFlat.Of(end, cone, own, welds);
        var (low, high) = CurveMeasures.Bounds(flat.Cut.Outer);
        var whole = cone.Middle.Area * head.Wall;
        return new(
            name,
            name,
            PartKind.Cone,
            head.Material,
            head.Wall,
            StockPieces.Rectangle(high.U - low.U, high.V - low.V, head.Wall, head.Material),
            [cone.Frame],
            Solid(cone, drilled),
            whole - drilled.Sum(DrilledDome.DrilledOut),
            flat,
            [.. drilled.Select((site, i) => site.HoleInHost(i + 1, site.On(cone.Frame), null))],
            head.Path);
    }

    private static Solid Solid(ConeShape cone, ImmutableArray<PortSite> drilled)
    {
        var (outer, inner) = (new ConeSurface(cone.Outer), new ConeSurface(cone.Inner));
        Rim Edge(double along) => new(Interval.Turn, [], t => outer.ChartOf(t, along), t => inner.ChartOf(t, along), 1);
        Rim Hole(PortSite site)
        {
            var at = cone.Frame.ToLocal(site.Frame.Origin);
            var around = Math.Atan2(at.Y, at.X);
            Vector3 Local(Footprint on, double phi) => cone.Frame.ToLocal(site.Frame.ToOuter(on.At(site.OpeningRadius, phi)));
            return new(
                Interval.Turn, [], phi => outer.ChartOf(Local(site.Outside, phi), around), phi => inner.ChartOf(Local(site.Inside, phi), around));
        }

        return ThickSolid.Of(outer, inner, true, [Edge(0), Edge(cone.Length), .. drilled.Select(Hole)]);
    }
}
