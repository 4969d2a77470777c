using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Shells.Cones;

/// <summary>A cone between level edges, rolled; its ports are drilled when it is round.</summary>
internal sealed class Cone(ShellCourse spec, VesselDesign vessel, ImmutableArray<PortSite> sites) : RoundCourse(spec, vessel, sites)
{
    protected override IEnumerable<Part> Sheets(Welds welds) => ConePart.Build(Spec, Vessel, Sites, welds);

    protected override bool AreCut(int sheets, Cuttable fits) =>
        fits(ConeShape.Of(Spec with { Seams = Spec.Seams with { Count = sheets } }).Development.Outline(), true);
}
