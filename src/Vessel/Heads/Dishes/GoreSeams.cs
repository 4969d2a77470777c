using System.Globalization;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Heads.Dishes;

/// <summary>The butt welds of a head of gores: one up each meridian, one round the polar cap; on the outside.</summary>
internal static class GoreSeams
{
    private const string Whole = "root through all along; the circumference at the rim and a template over the dome";

    public static IEnumerable<Joint> Of(VesselEnd end, GoreShape shape, VesselDesign vessel)
    {
        var (head, gores) = (shape.Design, shape.Gores);
        var strip = shape.Strips.Outer;
        var site = HeadSite.Of(end, vessel);
        var (ids, cap) = (SheetPiece.Ids(gores.Pieces(end, vessel)), Slug.Of(GoreDesign.CapOf(Names.Of(end))));
        var gore = GoreDesign.GoreOf(Names.Of(end));
        for (var i = 0; i < gores.Count; i++)
        {
            var angle = shape.Direction(i);
            yield return Butt(
                WeldRole.GoreSeam,
                string.Create(CultureInfo.InvariantCulture, $"{gores.Path}.seam_angle[{i}]"),
                string.Create(CultureInfo.InvariantCulture, $"{gore} to {gore}, seam {i + 1}"),
                [ids[(i + gores.Count - 1) % gores.Count], ids[i]],
                new(0, strip.Length),
                s => UpMeridian(site, angle, strip, s)) with
            {
                Words = new("all gores against each other on a ring of the rim's size; ")
                {
                    Heed = "seams in turn on opposite sides, each from the rim to the pole; check the rim's circumference after every "
                        + "second",
                    Check = Whole,
                },
            };
        }

        yield return Butt(
            WeldRole.CrownSeam,
            $"{gores.Path}.cap_diameter",
            $"{GoreDesign.CapOf(Names.Of(end))} to {gore}",
            [.. Joint.Sides([.. ids.Distinct()], [cap])],
            Interval.Turn,
            t => RoundPole(site, t, strip)) with
        {
            Words = new(string.Empty) { Heed = "in quarters, opposite ones after each other", Check = Whole },
        };

        Joint Butt(WeldRole role, string path, string name, string[] between, Interval domain, Func<double, Station> along) => new(
            name, [.. between], JointKind.Butt, domain, [], along, head.Wall, head.Wall, path)
        {
            Role = role,
            Owner = head.Path,
        };
    }

    /// <summary>The path is measured by its length, so the tangent is a unit.</summary>
    private static Station UpMeridian(HeadSite site, double angle, Profile strip, double fromRim)
    {
        var (outward, sideways) = Ways(angle);
        var along = strip.Length - fromRim;
        return new(
            At(site, outward, strip.At(along)),
            ToPole(site, outward, strip.Normal(along)),
            -sideways,
            sideways,
            Math.PI,
            0,
            0);
    }

    private static Station RoundPole(HeadSite site, double angle, Profile strip)
    {
        var (outward, sideways) = Ways(angle);
        var toPole = ToPole(site, outward, strip.Normal(0));
        return new(
            At(site, outward, strip.Start),
            strip.Start.U * sideways,
            -toPole,
            toPole,
            Math.PI,
            0,
            0);
    }

    /// <summary>A place of the head's own half plane in the vessel; the site's Z is out of it.</summary>
    private static Vector3 At(HeadSite site, Vector3 outward, Point2 place) =>
        site.Frame.Origin + (place.U * outward) - (place.V * site.Frame.Z);

    /// <summary>Along the surface, square to its normal.</summary>
    private static Vector3 ToPole(HeadSite site, Vector3 outward, Point2 normal) =>
        (normal.V * outward) + (normal.U * site.Frame.Z);

    private static (Vector3 Outward, Vector3 Sideways) Ways(double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return (new(cos, sin, 0), new(-sin, cos, 0));
    }
}
