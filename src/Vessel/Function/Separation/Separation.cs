using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Function;

/// <summary>What holds oil back on the gas's way, and how much of which size.</summary>
/// <param name="rises">Stages that take the gas upward, in its order.</param>
/// <param name="pads">Packings whose metal and fibre are known.</param>
/// <param name="jet">Diameter and distance of the inlet's jet before what it strikes, m; null where nothing stands near.</param>
/// <param name="swirls">The inlet stands so far off the axis that the gas turns along the wall.</param>
internal sealed class Separation(
    FlowPath path, double oilDensity, ImmutableArray<FlowStage> rises, ImmutableArray<FlowStage> pads, (double Bore, double Away)? jet,
    bool swirls)
{
    public FlowPath Path { get; } = path;

    public double OilDensity { get; } = oilDensity;

    public ImmutableArray<FlowStage> Rises { get; } = rises;

    public ImmutableArray<FlowStage> Pads { get; } = pads;

    public (double Bore, double Away)? Jet { get; } = jet;

    public bool Swirls { get; } = swirls;

    /// <summary>Offset of the inlet over the shell's inner radius from which on the gas swirls. Common practice, no source.</summary>
    private const double LeastOffset = 0.3;

    /// <summary>A jet further from its wall than so many diameters is no impactor.</summary>
    private const double FurthestWall = 5;

    /// <summary>What is carried up though it should fall, at most: the middle of a laminar stream is twice as fast.</summary>
    private const double Peak = 2;

    /// <summary>Turns that the gas may make along the wall before it goes down. Common practice, no source.</summary>
    private const double MostTurns = 3;

    private readonly Lazy<ImmutableArray<PadCatch>> _pads = new(() =>
    [
        .. from pad in pads
           select new PadCatch(
               StageLoss.FibreShare(pad.Packing!)!.Value,
               pad.Packing!.FibreDiameter!.Value * 1e-3,
               pad.Length * 1e-3,
               path.Gas.Flow!.Value.Through(flow => PadSpeed(pad, flow)),
               oilDensity,
               path.Gas),
    ]);

    public static ImmutableArray<double> Sizes { get; } = [0.5, 1, 2, 5, 10, 20, 50, 100, 200];

    private Amount Flow => Path.Gas.Flow!.Value;

    /// <summary>Null without a way or a flow, or for oil lighter than gas.</summary>
    public static Separation? Of(FlowPath? path, VesselDesign design)
    {
        if (path?.Gas.Flow is null || !(design.Flow.OilDensity > 2 * path.Gas.Density))
            return null;
        var inlet = design.Ports.First(port => port.Name == path.Inlet);
        var front = path.Stages.FirstOrDefault(stage => stage.Kind == StageKind.Turn && stage.Name == $"in front of {path.Inlet}");
        return new(
            path,
            design.Flow.OilDensity,
            [.. path.Stages.Where(stage => stage.Rise > 0 && stage.Kind is StageKind.Passage or StageKind.Packing)],
            [.. path.Stages.Where(stage => stage.Packing is { } packing && StageLoss.FibreShare(packing) is not null)],
            front is null ? null : (inlet.Bore * 1e-3, front.Area / (Math.PI * inlet.Bore) * 1e-3),
            inlet.Host == PortHost.Shell && Math.Abs(inlet.Place.Offset) >= LeastOffset * design.Shell.InnerAt(inlet.Place.Height));
    }

    /// <summary>Where the gas rises slowest; null where it never does.</summary>
    public FlowStage? Slowest => Rises.MaxBy(stage => stage.Area);

    /// <summary>um: the largest drop that rises with the gas in a stage.</summary>
    public Amount Carried(FlowStage stage)
    {
        double At(double speed) => Droplet.Carried(speed, OilDensity, Path.Gas) * 1e6;
        return new(At(stage.Velocity(Flow.Low)), At(stage.Velocity(Flow.Likely)), At(Peak * stage.Velocity(Flow.High)));
    }

    /// <summary>
    /// um: half of that size in the inlet's jet strikes what stands before it, if it fills the mouth's bore; low if it still has the bore
    /// of a narrower fitting. Its speed is always that in the bore it is reckoned for.
    /// </summary>
    public Amount? JetCut
    {
        get
        {
            if (Jet is not { } jet || Flow.Low <= 0)
                return null;
            double At(double flow, double bore) =>
                Impaction.JetCut(bore, flow / (Math.PI / 4 * bore * bore), OilDensity, Path.Gas) * 1e6;
            return new(At(Flow.High, Math.Min(jet.Bore, NarrowBore)), At(Flow.Likely, jet.Bore), At(Flow.Low, jet.Bore));
        }
    }

    /// <summary>Bore of the narrower of the inlet's tube and fitting, m.</summary>
    public double NarrowBore => 2 * Math.Sqrt(Path.InletArea / Math.PI) * 1e-3;

    /// <summary>What the jet strikes is near and square enough for the figures of impactors.</summary>
    public bool JetHolds => !Swirls && Jet is { } jet && jet.Away <= FurthestWall * jet.Bore;

    /// <summary>um: at best, of the swirl along the wall.</summary>
    public double? SwirlCut => Swirls && Flow.High > 0
        ? Impaction.SwirlCut(NarrowBore, MostTurns, InletSpeed(Flow.High), OilDensity, Path.Gas) * 1e6
        : null;

    /// <summary>m/s in a packing.</summary>
    public static double PadSpeed(FlowStage pad, double flow) => pad.Velocity(flow) / (1 - StageLoss.FibreShare(pad.Packing!)!.Value);

    /// <summary>Share of the drops of a size that all packings together catch.</summary>
    /// <param name="size">um.</param>
    public Amount ByPads(double size)
    {
        var (low, likely, high) = (1.0, 1.0, 1.0);
        foreach (var share in _pads.Value.Select(pad => pad.Share(size * 1e-6)))
            (low, likely, high) = (low * (1 - share.Low), likely * (1 - share.Likely), high * (1 - share.High));
        return new(1 - low, 1 - likely, 1 - high);
    }

    /// <summary>
    /// Share of the drops of a size that turns and openings can throw out, at most: <see cref="Impaction.TurnAtMost"/> where the gas
    /// turns round an edge, <see cref="Impaction.OpeningAtMost"/> at holes, windows and screens. No correlation says how much they do.
    /// </summary>
    /// <param name="size">um.</param>
    public double AtEdges(double size)
    {
        var left = 1.0;
        for (var i = 0; i < Path.Stages.Length; i++)
        {
            var stage = Path.Stages[i];
            var stop = Impaction.StoppingDistance(size * 1e-6, stage.Velocity(Flow.High), OilDensity, Path.Gas);
            var width = stage.HydraulicDiameter * 1e-3;
            left *= stage.Kind switch
            {
                StageKind.Turn => 1 - Impaction.TurnAtMost(stop, width / 2),
                StageKind.Opening when i > 0 =>
                    1 - Impaction.OpeningAtMost(stop, size * 1e-6, width, stage.Area / Math.Max(stage.Area, Path.Stages[i - 1].Area)),
                _ => 1,
            };
        }

        return 1 - left;
    }

    /// <summary>
    /// Share of the drops of a size that reaches metal, fibre or liquid; what is torn off again is not in it. Low: what falls against twice
    /// the mean speed, the middle of a laminar stream, the jet well above its cut, and the packing in creeping flow. Likely: what falls
    /// against the mean, the jet's cut where it holds, the packing. High: what an uneven stream lets fall, the jet, the swirl at its best,
    /// turns and openings at their best, the packing in potential flow.
    /// </summary>
    public Amount Caught(double size)
    {
        var (fall, pads) = (Droplet.Fall(size * 1e-6, OilDensity, Path.Gas), ByPads(size));
        var rise = Slowest is { } slowest ? Flow.Through(slowest.Velocity) : (Amount?)null;
        var jet = JetCut;
        var fallen = rise is not { } up ? new Amount(0, 0, 0)
            : new(fall >= Peak * up.High ? 1 : 0, fall >= up.Likely ? 1 : 0, up.Low > 0 ? Math.Min(1, fall / up.Low) : 1);
        var struck = new Amount(
            JetHolds && size > 1.5 * jet!.Value.High ? 1 : 0,
            JetHolds && size > jet!.Value.Likely ? 1 : 0,
            jet is { } cut && size > 0.7 * cut.Low ? 1 : SwirlCut is { } swirl && size > swirl ? 1 : 0);
        return new(
            Either(fallen.Low, struck.Low, pads.Low),
            Either(fallen.Likely, struck.Likely, pads.Likely),
            Either(fallen.High, Either(struck.High, AtEdges(size), 0), pads.High));
    }

    private double InletSpeed(double flow) => flow / (Path.InletArea * 1e-6);

    private static double Either(double a, double b, double c) => 1 - ((1 - a) * (1 - b) * (1 - c));
}
