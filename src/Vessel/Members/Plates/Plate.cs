using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Planning;

namespace Vessel.Members.Plates;

/// <summary>A plate that stands on its shell.</summary>
internal sealed class Plate(PlateDesign spec, VesselDesign vessel) : Bracket(spec, vessel), IAssessed
{
    public PlateSite Site { get; } = PlateSite.Of(spec, vessel);

    public override IEnumerable<Joint> Joints => PlateSeam.Of(Site, Vessel);

    public override IEnumerable<Part> Parts(Welds welds) => [PlatePart.Build(Site, welds)];

    /// <summary>Bodies from the lowest place of its coped edge outward, as wide as its wider edge.</summary>
    public override IEnumerable<Body> Bodies
    {
        get
        {
            var (half, thick) = (Site.Across / 2, Site.Bracket.Thickness / 2);
            yield return new BoxBody(
                Slug.Of(Name), Site.Way, new(-half, -Site.Cope.FreeLevel, -thick), new(half, Site.Deepest - Site.Cope.FreeLevel, thick));
        }
    }

    public override PrintForm Print => new PlateForm(Site);

    public override SetUp SetUp
    {
        get
        {
            var plate = Site.Bracket;
            return SetUpTable.OnShell(
                Name,
                Vessel.Shell,
                (plate.Height, Vessel.Shell.ClockAt(plate.Height, plate.Angle, plate.Offset)),
                plate.Offset == 0 ? null : plate.Offset,
                plate.Depth,
                FormattableString.Invariant(
                    $"middle of the coped edge; rolled {Turns.ToDegrees(plate.Roll):0.##} deg from level; parallel to the line at {Turns.ToDegrees(plate.Angle):0.##} deg; depth is its reach from the shell"));
        }
    }

    public IEnumerable<Measure> Measures(Assembly assembly) => PlateRules.Of(Site, assembly);

    protected override MountSpring Spring(Carrier carrier, WeldGroup welds, WallUnder wall) => new PlateSpring(Site, carrier, welds, wall);
}
