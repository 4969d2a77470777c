using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>The chapter on what holds the liquid back.</summary>
internal static class SeparationFigures
{
    public static FigureGroup Of(Separation separation, VesselDesign design) => new(
        "separation",
        $"Separation of {design.Flow.Liquid.Word}",
        [.. Figures(separation, design)],
        separation.Rises.IsEmpty ? [Caught(separation)] : [Caught(separation), Rises(separation)],
        [.. Words(separation, design.Flow.Liquid)])
    {
        Curves = [Curve(separation)],
    };

    /// <summary>Between the sizes of the table, ten points a decade.</summary>
    private static FigureCurve Curve(Separation separation)
    {
        var (first, last) = (Separation.Sizes[0], Separation.Sizes[^1]);
        var steps = (int)Math.Ceiling(10 * Math.Log10(last / first));
        return new(
            "caught-curve",
            "share of the drops that reach metal, fibre or liquid, by their size",
            new("size_um", "size of the drops", "um"),
            new("reach_percent", "reach it", "%"),
            100,
            [
                .. from i in Enumerable.Range(0, steps + 1)
                   let size = first * Math.Pow(last / first, (double)i / steps)
                   select (size, 100 * separation.Caught(size)),
            ]);
    }

    private static IEnumerable<Figure> Figures(Separation separation, VesselDesign design)
    {
        var (path, flow) = (separation.Path, separation.Path.Gas.Flow!.Value);
        var oil = LiquidInput.Density(design.Flow);
        var q = FlowFigures.FlowInput(flow);
        if (separation.Slowest is { } slowest)
        {
            var carried = separation.Carried(slowest);
            yield return new(
                "carried-up", "d", $"largest drop that the gas carries up where it rises slowest, '{slowest.Name}'", carried, "um",
                "v(d) = Q / A, with v from 4 g d (rho_p - rho) / 3 = C_D rho v^2, C_D = 24 / Re (1 + 0.15 Re^0.687); at most at twice that "
                    + "speed",
                [q, new("A", "open area there", slowest.Area, "mm2", "stages"), oil],
                Droplet.Source,
                new(Droplet.Range, carried.Low >= 1 && carried.High <= 1000));
        }

        if (separation.JetCut is { } jet && flow.Low > 0)
        {
            var bore = separation.Jet!.Value.Bore;
            var reynolds = flow.Likely / (Math.PI / 4 * bore) * path.Gas.Density / path.Gas.Viscosity;
            yield return new(
                "jet-cut", "d50", $"drop of which half strikes the part before '{path.Inlet}'", jet, "um",
                "d50 = 0.49 sqrt(9 mu D / (rho_p v C)), v = Q / (pi D^2 / 4), C for slip; low: with the bore of a narrower fitting",
                [
                    q,
                    new("D", "diameter of the jet", new Amount(Math.Min(bore, separation.NarrowBore), bore, bore).Through(d => d * 1e3),
                        "mm", path.Inlet),
                    oil,
                ],
                Impaction.JetSource,
                new(Impaction.JetRange, separation.JetHolds && reynolds is >= 500 and <= 3000));
        }

        if (separation.SwirlCut is { } swirl)
        {
            yield return new(
                "swirl-cut", "d50", $"drop of which the swirl from '{path.Inlet}' can throw out half, at best",
                new Amount(swirl, 2 * swirl, 5 * swirl), "um",
                "d50 = sqrt(9 mu D / (2 pi N v (rho_p - rho) C)), N = 3 turns; likely and high: 2 and 5 times that",
                [q, oil],
                "Lapple 1951 for cyclones (not checked against the source), used as a bound: a can with an offset inlet is no cyclone",
                new("cyclones of the standard shape; no published correlation covers a plain can", false));
        }

        yield return new(
            "edges-cut", "d50", "drop of which all turns and openings together can throw out half, at best", Half(separation.AtEdges), "um",
            "1 - prod(1 - E) = 0.5; turn: E = pi s / g; opening: E = 1 - (1 - (2 s + d) / D)^2, at most the closed share; s = rho_p d^2 v "
                + "/ (18 mu)",
            [q, oil],
            Impaction.EdgeSource,
            new(Impaction.EdgeRange, true));
        if (!separation.Pads.IsEmpty)
        {
            foreach (var figure in Packed(separation, flow, oil))
                yield return figure;
        }

        foreach (var figure in Cooling(path, flow, design))
            yield return figure;
    }

    private static IEnumerable<Figure> Packed(Separation separation, Amount flow, FigureInput oil)
    {
        var gas = separation.Path.Gas;
        var pads = separation.Pads;
        double Reynolds(FlowStage pad) =>
            Separation.PadSpeed(pad, flow.Likely) * pad.Packing!.FibreDiameter!.Value * 1e-3 * gas.Density / gas.Viscosity;
        yield return new(
            "half-caught", "d50", $"drop of which {string.Join(" and ", pads.Select(pad => pad.Packing!.Name).Distinct())} catches half",
            Half(separation), "um",
            "1 - exp(-(2/3) 4 a L E / (pi (1 - a) D)) = 0.5, E(d) of one fibre by the way of drops round it; high without the 2/3",
            [.. pads.SelectMany((pad, i) => Inputs(pad, pads.Length == 1 ? string.Empty : FigureText.Of(i + 1), flow)), oil],
            PadCatch.Source,
            new(PadCatch.Range, pads.All(pad => Reynolds(pad) < 1)));
        var fastest = pads.MinBy(pad => pad.Area)!;
        var speed = flow.Through(f => Separation.PadSpeed(fastest, f));
        var greatest = SoudersBrown.Speed(SoudersBrown.Constant, separation.OilDensity, gas.Density);
        var load = 100 / greatest * speed;
        yield return new(
            "pad-load", "s", $"speed of the gas in '{fastest.Packing!.Name}' as a share of that at which pads let liquid through", load,
            "%",
            "s = v / (0.107 sqrt((rho_p - rho) / rho))",
            [new("v", "speed of the gas in it", speed, "m/s", "stages"), oil],
            SoudersBrown.Source,
            new("knitted mesh pads 100 to 200 mm deep; they work best from 30 to 100 %, far below it impaction is weak",
                load.Likely is >= 30 and <= 100));
    }

    private static IEnumerable<FigureInput> Inputs(FlowStage pad, string number, Amount flow)
    {
        var packing = pad.Packing!;
        yield return new($"v{number}", "speed of the gas in it", flow.Through(f => Separation.PadSpeed(pad, f)), "m/s", "stages");
        yield return new($"a{number}", "share of fibre", StageLoss.FibreShare(packing)!.Value, "", $"{packing.Path}.density");
        yield return new($"D{number}", "fibre diameter", packing.FibreDiameter!.Value, "mm", $"{packing.Path}.fibre_diameter");
        yield return new($"L{number}", "depth", pad.Length, "mm", "stages");
    }

    private static IEnumerable<Figure> Cooling(FlowPath path, Amount flow, VesselDesign design)
    {
        if (flow.Low <= 0)
            yield break;
        var (wall, given) = (Condensation.Wall(design), design.Flow);
        var leaves = Condensation.LeavesAt(path, design);
        FigureInput[] inputs =
        [
            FlowFigures.FlowInput(flow),
            new("T", "temperature of the gas", given.Temperature, "degC", "flow.temperature"),
            new("Ta", "temperature of the air round it", given.Surroundings, "degC", "flow.surroundings"),
            new("A", "outside of shell and heads", wall, "m2", "the vessel's own geometry"),
            new("U", "heat transfer", Condensation.Transfer, "W/(m2 K)", "[practice]"),
        ];
        var validity = new Validity("still air round the vessel, no lagging; bounds, not a forecast", true);
        yield return new(
            "gas-leaves-at", "To", "temperature of the gas at the vent", leaves, "degC",
            "To = Ta + (T - Ta) exp(-U A / (rho Q cp))", [.. inputs], Condensation.Source, validity);
        if (Condensation.WaterLeft(path, design) is not { } water)
            yield break;
        yield return new(
            "water-left", "W", "water that may fall out in the vessel", water, "g/h",
            "W = (min(x p, es(T)) - es(To)) Q / (461.5 (T + 273.15)), none below zero; x = 0, 0.05, 0.13",
            [.. inputs, new("x", "share of vapour in the gas", Condensation.Vapour, "", "[practice]")],
            Condensation.Source,
            validity);
    }

    /// <summary>um: where each bound of what the packings catch passes a half; the bound that catches most comes first.</summary>
    private static Amount Half(Separation separation)
    {
        double At(Func<Amount, double> bound) => Half(size => bound(separation.ByPads(size)));
        return new(At(share => share.High), At(share => share.Likely), At(share => share.Low));
    }

    /// <summary>um: where a share that rises with the size passes a half; by halves of the logarithm of 0.01 um to 1 cm.</summary>
    private static double Half(Func<double, double> share)
    {
        var (low, high) = (-2.0, 4.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = share(Math.Pow(10, middle)) < 0.5 ? (middle, high) : (low, middle);
        }

        return Math.Pow(10, high);
    }

    private static FigureTable Caught(Separation separation) => new(
        "caught",
        "Share of the drops that reach metal, fibre or liquid, by their size",
        "size",
        [
            new("fall_mm_s", "speed of fall in still gas", "mm/s"),
            new("reach_low_percent", "reach it, low", "%"),
            new("reach_percent", "reach it, likely", "%"),
            new("reach_high_percent", "reach it, at most", "%"),
        ],
        [
            .. from size in Separation.Sizes
               let share = separation.Caught(size)
               select new FigureRow(
                   string.Create(CultureInfo.InvariantCulture, $"{size} um"),
                   [
                       Droplet.Fall(size * 1e-6, separation.OilDensity, separation.Path.Gas) * 1000,
                       100 * share.Low, 100 * share.Likely, 100 * share.High,
                   ]),
        ]);

    private static FigureTable Rises(Separation separation) => new(
        "rises",
        "Stages that take the gas upward",
        "stage",
        [
            new("speed_m_s", "speed", "m/s"),
            new("carried_low_um", "largest drop carried, at least", "um"),
            new("carried_um", "largest drop carried, likely", "um"),
            new("carried_high_um", "largest drop carried, at most", "um"),
        ],
        [
            .. from stage in separation.Rises
               let carried = separation.Carried(stage)
               select new FigureRow(
                   stage.Name,
                   [stage.Velocity(separation.Path.Gas.Flow!.Value.Likely), carried.Low, carried.Likely, carried.High]),
        ]);

    private static IEnumerable<string> Words(Separation separation, Liquid liquid)
    {
        yield return "A drop that reaches metal, fibre or liquid is not caught yet: fast gas tears it off again, a flooded bed lets it "
            + "through, and gas slips by "
            + "at a bed's edge. No figure here counts that, so no share of any size is certain to stay, not even where 100 % stands.";
        if (liquid.IsEngineOil)
            yield return "The mist of blow-by is mostly 0.1 to 10 um (trade bulletin TSB 05-1, 2005, diesel engines). Gravity in a can of "
                + "this size "
                + "does not catch it: it holds back splashes and drops that are already large. The slowest rise sets that cut; faster "
                + "stages only tear oil off again.";
        if (separation.Path.Stages.All(stage => stage.Kind != StageKind.Packing))
            yield return "No packing stands in the gas path: next to nothing here catches mist below 10 um.";
        else if (separation.Pads.IsEmpty)
            yield return "The share that the packing catches is not known: give it a metal wool and its fibre_diameter.";
        else
            yield return "What wool catches of fine mist spans a wide range: between creeping and fast flow round a fibre no published law "
                + "covers wool. "
                + "Finer fibres, a deeper and evenly stuffed bed help most; gaps at its edge undo it.";
        yield return "No published correlation covers the turn under a rim, screens in series, or the swirl in a plain can: they stand in "
            + "'at most' alone, as bounds. Drops below 0.5 um are caught by diffusion too and are left out.";
        yield return $"Sizes are no shares of mass: how much of the {liquid.Word} comes in which size is not known here, so no total is "
            + "given. Weigh what "
            + "it catches, and what a filter behind it catches.";
        if (separation.Path.PastMedia)
            yield return "Gas can go past the packing: what goes that way is not caught by it.";
    }
}
