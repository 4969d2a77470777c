using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Heads;
using Vessel.Model;
using Vessel.Planning;
using Vessel.Shells;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Planning;

/// <summary>An end that is shut without a weld.</summary>
public sealed class OpenedEndTests
{
    private static readonly VesselDesign _design = Designs.Sound;

    private static WorkOrder Order(VesselEnd opened)
    {
        var sites = _design.Ports.Select(PortSites.Of(_design).Of).ToImmutableArray();
        Head Closed(VesselEnd end) => end == opened ? new ScrewedHead(end, _design) : HeadKinds.Build(end, _design, sites);
        var chamber = new Chamber(Courses.Build(_design, sites), Closed(VesselEnd.Top), Closed(VesselEnd.Bottom));
        return WorkOrder.Of(_design, sites, chamber.Heads, [], [], new([.. chamber.Joints]));
    }

    [Fact]
    public void The_last_end_is_fitted_after_cleaning_and_before_the_leak_test()
    {
        var order = Order(VesselEnd.Top).Tasks.Select(task => task.Id).ToList();

        var (clean, fit, test) = (order.IndexOf("clean"), order.IndexOf("fit top"), order.IndexOf("leak test"));
        Assert.True(clean >= 0 && clean < fit && fit < test, string.Join(", ", order));
    }

    [Fact]
    public void The_other_end_is_fitted_before_the_vessel_is_closed_and_no_weld_is_told_of_it()
    {
        var order = Order(VesselEnd.Bottom);

        var welds = order.Tasks.Where(task => task.Weld is { Role: WeldRole.HeadSeam }).ToList();
        Assert.Equal(_design.Top.Path, Assert.Single(welds).Weld!.Owner);
        Assert.True(order.Tasks.IndexOf(welds[0]) > order.Tasks.ToList().FindIndex(task => task.Id == "fit bottom"));
    }

    private sealed class ScrewedHead(VesselEnd end, VesselDesign vessel) : Head(end, end.ToString(), vessel.Head(end))
    {
        public override Joint? Closing => null;

        public override IEnumerable<WorkTask> Tasks =>
            [new(WorkTask.Fitting(Path), WorkKind.Fit, "screw it on", End == VesselEnd.Top ? WorkRank.Close : WorkRank.FirstHead, [])];

        public override Profile Outside => throw new NotSupportedException();

        public override string StressFormula => throw new NotSupportedException();

        public override Profile? Inside(double bore, double leastWall) => throw new NotSupportedException();

        public override double Stress(double pressure, double hole) => throw new NotSupportedException();

        public override IEnumerable<Part> Parts(Welds welds) => [];
    }
}
