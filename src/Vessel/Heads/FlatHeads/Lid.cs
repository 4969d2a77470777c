using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Heads.FlatHeads;

/// <summary>A flat head on its end.</summary>
internal sealed class Lid(VesselEnd end, FlatHead spec, VesselDesign vessel, ImmutableArray<PortSite> sites)
    : Head(end, Names.Of(end), spec)
{
    public override Joint Closing => LidSeam.Of(End, spec, vessel);

    public override IEnumerable<Part> Parts(Welds welds)
    {
        var (part, site) = (LidPart.Build(End, spec, vessel, sites, welds), HeadSite.Of(End, vessel));
        var whole = (
            Math.PI / 4 * spec.OutsideDiameter * spec.OutsideDiameter * spec.Wall,
            site.Frame.Origin + (spec.Wall / 2 * site.Frame.Z));
        yield return part with { Centre = PartCentre.LessHoles(part, whole, sites.Where(port => port.Port.End == End)) };
    }

    public override IEnumerable<SlipFit> Fits => spec.Seat == Seat.Inset
        ?
        [
            new(
                $"{Name} in shell", Joint.Sides(Names.ShellParts(End, vessel), [Name]), 2 * spec.Clearance,
                [.. SlipFits.ShellBore(vessel.Shell.AtEnd(End)), SlipFits.Laser($"{Name}'s diameter", spec.OutsideDiameter, spec.Wall)],
                $"{Path}.clearance"),
        ]
        : [];

    public override IEnumerable<Body> Bodies =>
        [new RingBody(Name, HeadSite.Of(End, vessel).Frame, 0, spec.OutsideDiameter / 2, 0, spec.Wall)];

    public override Profile Outside
    {
        get
        {
            var shell = vessel.Shell.AtEnd(End);
            var (outer, rim) = (shell.OuterRadius, spec.OutsideDiameter / 2);
            if (spec.Seat == Seat.Inset && spec.Recess >= BodyProfiles.Step)
            {
                var deep = vessel.Shell.IsPlain ? shell.InnerRadius
                    : vessel.Shell.CourseOf(End).InnerAt(End == VesselEnd.Top ? vessel.Shell.Height - spec.Recess : spec.Recess);
                return BodyProfiles.Lines(new(0, spec.Recess), new(deep, spec.Recess), new(shell.InnerRadius, 0), new(outer, 0));
            }

            return spec.Seat == Seat.Inset ? BodyProfiles.Lines(new(0, 0), new(outer, 0))
                : Math.Abs(rim - outer) < BodyProfiles.Step
                    ? BodyProfiles.Lines(new(0, -spec.Wall), new(outer, -spec.Wall), new(outer, 0))
                : BodyProfiles.Lines(new(0, -spec.Wall), new(rim, -spec.Wall), new(rim, 0), new(outer, 0));
        }
    }

    public override Profile Inside(double bore, double leastWall)
    {
        var face = spec.Seat == Seat.Overlay ? -spec.Wall : spec.Recess >= BodyProfiles.Step ? spec.Recess : 0;
        var floor = face + Math.Max(spec.Wall, leastWall);
        return BodyProfiles.Lines(new(0, floor), new(bore, floor));
    }

    public override double Stress(double pressure, double hole) =>
        FlatPlate.Stress(pressure, hole, vessel.Shell.AtEnd(End).InnerRadius, spec.Wall, spec.Material);

    public override string StressFormula => FlatPlate.StressFormula;

    public override (double Clamped, double Supported)? Bulge(double pressure) =>
        FlatPlate.Bulge(pressure, vessel.Shell.AtEnd(End).InnerRadius, spec.Wall, spec.Material);

    public override IEnumerable<Measure> Measures => LidRules.Of(End, spec, vessel);
}
