using System.Collections.Immutable;

namespace Vessel.Function;

/// <summary>The gas's way through the vessel, stage by stage.</summary>
/// <param name="Inlet">Name of the port.</param>
/// <param name="Vent">Name of the port.</param>
/// <param name="InletArea">Area of the narrower of the inlet's tube and fitting, mm2.</param>
/// <param name="PastMedia">A way leads past the packing.</param>
public sealed record FlowPath(
    string Inlet, string Vent, double InletArea, bool PastMedia, ImmutableArray<FlowStage> Stages, MovingGas Gas)
{
    /// <summary>Null where no gas gets through, or the order that is given names what is not there.</summary>
    public static FlowPath? Of(Assembly assembly)
    {
        var (cavity, design) = (assembly.Cavity, assembly.Design);
        var route = !design.Flow.Order.IsEmpty ? FlowRoute.ByHand(cavity, design.Flow.Order)
            : FlowEnds.Of(cavity, design) is var (inlet, vent) ? FlowRoute.Find(cavity, inlet, vent)
            : null;
        if (route is null)
            return null;
        var stages = new FlowStages(route, assembly).List();
        return new(
            route.Inlet.Name,
            route.Vent.Name,
            stages.Where(stage => stage.Kind == StageKind.Bore
                && (stage.Path == route.Inlet.Path || stage.Path == $"{route.Inlet.Path}.fitting")).Min(stage => stage.Area),
            Media.IsBypassed(cavity, design, route.Inlet, route.Vent),
            stages,
            MovingGas.Of(design.Flow));
    }

    /// <summary>The first of the narrowest.</summary>
    public FlowStage Smallest => Stages.MinBy(stage => stage.Area)!;

    /// <summary>Pressure loss of each stage, Pa, as the flow ranges.</summary>
    public ImmutableArray<Amount> Losses(Amount flow) =>
    [
        .. Stages.Select((stage, i) =>
        {
            // A hose begins in the wide crankcase; one that is not told goes on at the inlet. Behind the vent the gas is in the open.
            var before = stage.Kind == StageKind.Hose ? double.PositiveInfinity : i == 0 ? stage.Area : Stages[i - 1].Area;
            var after = i == Stages.Length - 1 ? double.PositiveInfinity : Stages[i + 1].Area;
            Amount At(double q) => StageLoss.Of(stage, before, after, q, Gas);
            return new Amount(At(flow.Low).Low, At(flow.Likely).Likely, At(flow.High).High);
        }),
    ];

    /// <summary>Where its loss is counted from, in words: the inlet, or the hose before it.</summary>
    public string From => Stages[0].Kind == StageKind.Hose ? $"the start of the {Stages[0].Name}" : $"'{Inlet}'";

    /// <summary>Loss of pressure from the first stage to the vent, Pa; null where no flow is known.</summary>
    public Amount? Loss => Gas.Flow is { } flow ? Losses(flow).Aggregate(Amount.Exactly(0), (sum, loss) => sum + loss) : null;
}
