using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Inside;

namespace Vessel.Members.DividerPlates;

/// <summary>A divider plate in its shell.</summary>
internal sealed class DividerPlate(DividerPlateDesign spec, VesselDesign vessel) : Divider(spec, vessel)
{
    /// <summary>Places on an edge that is no circle about the axis, each.</summary>
    private const int Places = 64;

    protected override Part Part(double play, Welds welds) =>
        DividerPlatePart.Build(spec with { Clearance = spec.Clearance + play, OutsideDiameter = spec.OutsideDiameter - (2 * play) }, welds);

    /// <summary>All round, but for the notch.</summary>
    public override IEnumerable<Joint> Joints => base.Joints.Select(joint => joint with
    {
        Path = $"{Path}.at.height",
        Runs = spec.Notch > 0 ? Beside(spec.NotchAngle, spec.HalfNotch) : [],
        Words = joint.Words! with { Remedy = "move the divider nearer to the open end" },
    });

    protected override double HoleEdges(Part part) => (Math.PI * spec.Vent) + (spec.Notch * (Math.PI - spec.HalfNotch));

    protected override OpeningShape? Holes(Part part) => spec is { Notch: 0, Vent: 0 } ? null : new PointsEdge(
    [
        .. from place in Enumerable.Range(0, Places + 1)
           let share = (double)place / Places
           from at in new[] { DividerPlatePart.NotchAt(spec, share), DividerPlatePart.VentAt(spec, share) }.OfType<Point2>()
           from height in new[] { spec.Height, spec.Height + spec.Thickness }
           select new Vector3(at.U, at.V, height),
    ]);

    /// <summary>The turn without a piece of it, in order and within one turn, radians.</summary>
    private static ImmutableArray<Interval> Beside(double middle, double half)
    {
        var (from, to) = (Turns.From(middle - half, 0), Turns.From(middle + half, 0));
        return from < to ? [new(0, from), new(to, Turns.Full)] : [new(to, from)];
    }
}
