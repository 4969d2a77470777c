using System.Globalization;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>The butt welds of a half sphere of gores: one up each meridian, one round the polar cap; on the outside.</summary>
internal static class GoreSeams
{
    /// <summary>None for any other head.</summary>
    public static IEnumerable<Joint> Of(PortHost end, VesselDesign vessel, WeldNumbers welds)
    {
        if (vessel.Head(end) is not HemisphereHead { Gores: { } gores } head)
            yield break;
        var shape = GoreShape.Of(end, head, gores, vessel);
        var site = HeadSite.Of(end, vessel);
        var (gore, cap) = (Slug.Of(Names.Gore(end)), Slug.Of(Names.PolarCap(end)));
        for (var i = 0; i < gores.Count; i++)
        {
            var angle = shape.Direction(i);
            yield return Butt(
                WeldNumbers.GoreSeam(gores, i),
                string.Create(CultureInfo.InvariantCulture, $"{Names.Gore(end)} to {Names.Gore(end)}, seam {i + 1}"),
                [gore, gore],
                new(0, shape.OuterRadius * shape.CapLatitude),
                s => UpMeridian(site, angle, s / site.Radius));
        }

        yield return Butt(
            WeldNumbers.CapSeam(gores),
            $"{Names.PolarCap(end)} to {Names.Gore(end)}",
            [gore, cap],
            Interval.Turn,
            t => RoundPole(site, t, shape.CapLatitude));

        Joint Butt(string path, string name, string[] between, Interval domain, Func<double, Station> along) => new(
            welds[path], name, [.. between], JointKind.Butt, domain, [], along, head.Wall, head.Wall, path);
    }

    /// <summary>The path is measured by its length, so the tangent is a unit.</summary>
    private static Station UpMeridian(HeadSite site, double angle, double latitude)
    {
        var (outward, sideways) = Ways(angle);
        var (sin, cos) = Math.SinCos(latitude);
        return new(
            site.Frame.Origin + (site.Radius * ((cos * outward) + (sin * site.Frame.Z))),
            (-sin * outward) + (cos * site.Frame.Z),
            -sideways,
            sideways,
            Math.PI,
            0,
            0);
    }

    private static Station RoundPole(HeadSite site, double angle, double latitude)
    {
        var (outward, sideways) = Ways(angle);
        var (sin, cos) = Math.SinCos(latitude);
        var toPole = (-sin * outward) + (cos * site.Frame.Z);
        return new(
            site.Frame.Origin + (site.Radius * ((cos * outward) + (sin * site.Frame.Z))),
            site.Radius * cos * sideways,
            -toPole,
            toPole,
            Math.PI,
            0,
            0);
    }

    private static (Vector3 Outward, Vector3 Sideways) Ways(double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return (new(cos, sin, 0), new(-sin, cos, 0));
    }
}
