using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Shells.Cylinders;

/// <summary>A cylinder: rolled, with its holes cut in the flat, or a tube that is drilled.</summary>
internal sealed class Cylinder(ShellCourse spec, VesselDesign vessel, ImmutableArray<PortSite> sites) : RoundCourse(spec, vessel, sites)
{
    protected override IEnumerable<Part> Sheets(Welds welds) => ShellPart.Build(Spec, Vessel, Sites, welds);

    protected override bool AreCut(int sheets, Cuttable fits) =>
        ShellFlat.Blank(Spec with { Seams = Spec.Seams with { Count = sheets } }).Width is var width
        && fits(Loop2.Polygon(new(0, 0), new(width, 0), new(width, Spec.Height), new(0, Spec.Height)), false);
}
