using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>All welds of a vessel, in the order of their numbers.</summary>
public static class VesselJoints
{
    public static ImmutableArray<Joint> Of(VesselDesign vessel, ImmutableArray<PortSite> sites, WeldNumbers welds) =>
    [
        .. vessel.Shell.Courses.SelectMany(course => LongSeam.Of(course, vessel, welds)),
        .. GirthSeam.Of(vessel, welds),
        .. GoreSeams.Of(PortHost.Top, vessel, welds),
        .. ConeSeam.Of(PortHost.Top, vessel, welds),
        HeadJoint.Of(PortHost.Top, vessel, welds),
        .. GoreSeams.Of(PortHost.Bottom, vessel, welds),
        .. ConeSeam.Of(PortHost.Bottom, vessel, welds),
        HeadJoint.Of(PortHost.Bottom, vessel, welds),
        .. sites.SelectMany(site => MitreSeam.Of(site, welds).Append(PortSeam.Of(site, vessel, welds))),
        .. InsideSeams.Of(vessel, welds),
        .. vessel.Inside.Discs.Where(DiscSeam.IsWelded).Select(disc => DiscSeam.Of(disc, vessel, welds)),
        .. vessel.Brackets.SelectMany(bracket => BracketSeams.Of(bracket, vessel, welds)),
    ];
}
