using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Heads.Cones;

/// <summary>A rolled cone on its end: its square edge touches the shell's inside, and the corner opens outward.</summary>
internal sealed class Cone(VesselEnd end, ConeHead spec, VesselDesign vessel, ImmutableArray<PortSite> sites)
    : Head(end, Names.Of(end), spec)
{
    private readonly HeadShape _shape = HeadShape.Of(end, vessel)!;

    public override IEnumerable<Joint> Seams => ConeSeams.Of(End, spec, vessel);

    /// <summary>The root is told in the middle of the weld's face.</summary>
    public override Joint Closing
    {
        get
        {
            var (round, edge) = (new HeadJoint(End, vessel), _shape.Outer.End);
            var (sin, cos) = Math.SinCos(spec.HalfAngle);
            var part = new Way(-sin, round.Up * cos);
            var along = LevelRing.Along(
                (round.Shell.OuterRadius + edge.U) / 2, round.Level - (round.Up * edge.V / 2), round.Host, part, 0,
                round.Host.AirTo(part, round.Up));
            return round.Of(JointKind.Corner, along) with { Vee = round.Wall * round.Wall * Math.Tan(spec.HalfAngle / 2) };
        }
    }

    public override IEnumerable<Part> Parts(Welds welds) => ConeHeadPart.Build(End, spec, vessel, sites, welds);

    public override IEnumerable<Body> Bodies =>
        spec.RimParts(End, vessel).Select(part => new DomeBody(part, _shape.Frame, _shape.Outer, _shape.Inner));

    public override Profile Outside => BodyProfiles.Closed(_shape, vessel.Shell.AtEnd(End).OuterRadius);

    /// <summary>The wall is square to the line; up to the level of the shell's end.</summary>
    public override Profile? Inside(double bore, double leastWall)
    {
        var face = HeadShape.Pointed(_shape.Outer).End;
        var (sin, cos) = Math.SinCos(spec.HalfAngle);
        var wide = face.U - (Math.Max(spec.Wall, leastWall) / cos) - (face.V * sin / cos);
        return wide <= leastWall ? null
            : Math.Abs(wide - bore) < BodyProfiles.Step ? BodyProfiles.Lines(new(0, -bore * cos / sin), new(bore, 0))
            : BodyProfiles.Lines(new(0, -wide * cos / sin), new(wide, 0), new(bore, 0));
    }

    public override double Stress(double pressure, double hole) =>
        hole * ThinWalls.Cone(pressure, vessel.Shell.AtEnd(End).OutsideDiameter - spec.Wall, spec.Wall, spec.HalfAngle);

    public override string StressFormula => "s = K p D / 2t cos(a), a half the angle of the cone";

    public override bool IsStressedAsCylinder => true;

    /// <summary>A cone of several segments is whole before anything is fitted to it.</summary>
    public override IEnumerable<WorkLink> Links(Welds welds)
    {
        string At(WeldRole role, string owner) => WorkTask.Welding(welds.One(role, owner));
        if (spec.Segments == 1)
            yield break;
        foreach (var own in welds.Of(WeldRole.ConeSeam, Path).Select(WorkTask.Welding))
        {
            foreach (var port in vessel.Ports.Where(port => port.End == End))
                yield return new(own, At(WeldRole.PortSeam, port.Path), "the cone is whole before anything is fitted to it");
            yield return new(own, At(WeldRole.HeadSeam, Path), "the cone is whole before it is fitted");
        }
    }

    public override IEnumerable<Assumption> Assumptions =>
        [new(20, "Cone on the middle of the wall, edges cut square; its inside meets the shell's bore, and the V outside is filled.")];

    public override IEnumerable<Measure> RollingMeasures => [ConeRules.Tip(End, spec, vessel)];

    public override IEnumerable<Measure> Measures =>
        vessel.Shell.CourseOf(End).IsRolled ? [ConeRules.Crossing(End, spec, vessel)] : [];

    public override (string Key, int Count)? Divided(Cuttable fits) =>
        spec.Seams.More(count => fits((spec with { Segments = count }).SheetAt(End, vessel).Development.Outline(), true)) is { } count
            ? ($"{Path}.segments", count) : null;
}
