using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Members.Brackets;
using Vessel.Planning;

namespace Vessel.Members.Saddles;

/// <summary>A saddle on its shell.</summary>
internal sealed class Saddle(SaddleDesign spec, VesselDesign vessel) : Bracket(spec, vessel), IAssessed
{
    public SaddleSite Site { get; } = SaddleSite.Of(spec, vessel);

    public override IEnumerable<Joint> Joints => SaddleSeam.Of(Site, Vessel);

    public override IEnumerable<Part> Parts(Welds welds) => [SaddlePart.Build(Site, welds)];

    public override IEnumerable<Body> Bodies => Site.Bodies;

    public override IEnumerable<Flange> Flanges =>
        [new(Name, $"an ear of '{Name}'", Site.ShortestEar + (Site.Allowance / 2), Site.Bracket.Thickness, $"{Path}.stand_off")];

    public override PrintForm Print => new SaddleForm(Site);

    public override SetUp SetUp => SetUpTable.OnShell(
        Name, Vessel.Shell, (Site.Bracket.Height, Site.Bracket.Angle), null, Site.Bracket.StandOff,
        "middle of the plate; depth is its stand-off from the shell");

    public override IEnumerable<string> Assumptions =>
        ["Bracket flat: legs and bend allowances with the K given for every bend; ears' ends cut square through the sheet."];

    public IEnumerable<Measure> Measures(Assembly assembly) => SaddleRules.Of(Site, assembly);

    protected override MountSpring Spring(Carrier carrier, WeldGroup welds, WallUnder wall) => new SaddleSpring(Site, carrier, welds, wall);
}
