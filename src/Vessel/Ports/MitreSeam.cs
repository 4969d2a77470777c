using System.Globalization;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Ports;

/// <summary>The butt welds round an elbow's mitres, each along the ellipse in which its plane cuts the tube's outside.</summary>
internal static class MitreSeam
{
    /// <summary>Seams from the host outward; none for a port without an elbow.</summary>
    public static IEnumerable<Joint> Of(PortSite site)
    {
        if (site.Port.Elbow is not { } elbow)
            return [];
        var (legs, ids) = (site.Legs, PortPieces.Ids(site.Port));
        return Enumerable.Range(0, elbow.Mitres).Select(i => new Joint(
            string.Create(CultureInfo.InvariantCulture, $"mitre {i + 1} of {site.Port.Name}"),
            [ids[i], ids[i + 1]],
            JointKind.Butt,
            Interval.Turn,
            [],
            phi => At(site.Port, elbow, legs[i], legs[i + 1], phi),
            site.Port.Wall,
            site.Port.Wall,
            string.Create(CultureInfo.InvariantCulture, $"{elbow.Path}.pieces[{i}]"))
        {
            Role = WeldRole.MitreSeam,
            Owner = site.Port.Path,
            HeldOpen = Bevel.UsualGap(site.Port.Wall),
        });
    }

    /// <param name="phi">Round the tube, as in the port's frame: both pieces have their lines at equal angles.</param>
    private static Station At(PortDesign port, ElbowDesign elbow, TubeLeg before, TubeLeg after, double phi)
    {
        var (radius, frame) = (port.OuterRadius, before.Frame);
        var (inward, round) = (Math.Cos(phi - elbow.Direction), Math.Sin(phi - elbow.Direction));
        var root = frame.ToOuter(Footprint.OnLine(radius, phi, before.Length - (elbow.Slope * radius * inward)));
        var slope = frame.Turn(new(-radius * Math.Sin(phi), radius * Math.Cos(phi), elbow.Slope * radius * round));
        Vector3 Outward(Frame3 of) => of.Turn(new(Math.Cos(phi), Math.Sin(phi), 0));
        // On the inside of the bend the surfaces close up, on the outside they fall away from each other.
        var bend = Math.Acos(Math.Clamp(Outward(before.Frame).Dot(Outward(after.Frame)), -1, 1));
        var gap = elbow.Cut == MitreCut.Square && inward < 0 ? -2 * port.Wall * inward : 0;
        return new(
            root,
            slope,
            (-frame.Z).Across(slope.Unit()).Unit(),
            after.Frame.Z.Across(slope.Unit()).Unit(),
            Math.PI - Math.CopySign(bend, inward),
            gap * Math.Sin(elbow.Slant),
            gap * elbow.Slope);
    }
}
