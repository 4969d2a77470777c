using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>
/// A port's tube or bung: a straight tube with a square free end, its other end plain or coped. Its frame is the port's.
/// </summary>
internal static class PortPart
{
    public static Part Build(PortSite site, WeldNumbers welds)
    {
        var port = site.Port;
        var end = TubeEnd.Of(site);
        var (outer, inner) = (new CylinderSurface(port.OuterRadius), new CylinderSurface(port.BoreRadius));
        var solid = ThickSolid.Of(outer, inner, true, [Cope(site, end, outer, inner), Rim.SquareEnd(outer, inner, port.Length)]);
        var flat = TubeWrap.Of(site, end, welds);
        var length = CurveMeasures.Bounds(flat.Cut.Outer).Height;
        return new(
            Slug.Of(port.Name),
            port.Name,
            port.Thread is null ? PartKind.Branch : PartKind.Bung,
            port.Material,
            port.Wall,
            port.Thread is null
                ? StockPieces.Tube(port.OutsideDiameter, port.Wall, length, port.Material)
                : StockPieces.Bar(port.OutsideDiameter, length, port.Material),
            [site.Frame],
            solid,
            Volume(site, end),
            flat,
            port.Thread is { } thread
                ? [new(1, $"thread of {port.Name}", default, null, thread.TapDrill, null, thread, HoleMethod.DrillAndTap, null)]
                : [],
            port.Path);
    }

    private static Rim Cope(PortSite site, TubeEnd end, CylinderSurface outer, CylinderSurface inner)
    {
        Vector3 Through(double phi, double w)
        {
            var r = outer.Radius + (w * (inner.Radius - outer.Radius));
            return site.Outside.At(r, phi);
        }

        return new(
            Interval.Turn,
            end.Breaks,
            phi => outer.ChartOf(new(phi, end.Outer(phi))),
            phi => inner.ChartOf(new(phi, end.Inner(phi))),
            1,
            end.Ground ? Through : null);
    }

    private static double Volume(PortSite site, TubeEnd end)
    {
        var port = site.Port;
        if (end.Ground)
            return Quadrature.Ring(port.BoreRadius, port.OuterRadius, (r, phi) => port.Length - site.Outside.Reach(r, phi), site.Outside.Accuracy);
        var section = ((port.OuterRadius * port.OuterRadius) - (port.BoreRadius * port.BoreRadius)) / 2;
        return section * Quadrature.Periodic(phi => port.Length - end.Outer(phi), Interval.Turn, end.Breaks, site.Outside.Accuracy);
    }
}
