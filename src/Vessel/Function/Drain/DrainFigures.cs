using Vessel.Design;

namespace Vessel.Function;

/// <summary>The chapter on draining.</summary>
internal static class DrainFigures
{
    private const double Laminar = 2300;

    public static FigureGroup Of(Drain drain) => new(
        "drain",
        "Draining",
        [.. Figures(drain)],
        [],
        [.. Words(drain)]);

    private static IEnumerable<Figure> Figures(Drain drain)
    {
        var design = drain.Assembly.Design;
        var flow = design.Flow;
        var liquid = flow.Liquid;
        FigureInput viscosity = new(
            "nu", $"viscosity of the {liquid.Word}", drain.Viscosity * 1e6, "mm2/s",
            flow.OilViscosity is null ? "oil-viscosity" : "flow.oil_viscosity");
        if (flow.OilViscosity is null)
        {
            yield return new(
                "oil-viscosity", "nu", $"viscosity of {liquid.Name}", drain.Viscosity * 1e6, "mm2/s",
                liquid.IsOil ? "log log (nu + 0.7) = a - b log T" : "ln nu = a + b / T between two points of a table",
                [new("T", "temperature", flow.Temperature, "degC", "flow.temperature")], liquid.Source,
                LiquidInput.Holds(flow));
        }

        var (bore, length) = (drain.Site.Port.Bore, drain.Length);
        var speed = OilFlow.Speed((length * 1e-3) + 0.01, bore * 1e-3, length * 1e-3, drain.Viscosity);
        yield return new(
            "time-to-empty", "t", $"time to empty the usable volume through '{drain.Port}'", drain.TimeToEmpty, "min",
            "t = sum of dV / (A v), rho g h = 32 mu v L / D^2 + 1.5 rho v^2 / 2",
            [
                new("V", "usable volume", drain.Assembly.Capacity.Usable / 1e6, "L", "capacity"),
                new("D", "bore", bore, "mm", drain.Port),
                new("L", "its length", length, "mm", drain.Port),
                viscosity,
            ],
            OilFlow.Source,
            new("laminar; a vent open; down to 1 mm above the mouth", OilFlow.Reynolds(speed, bore * 1e-3, drain.Viscosity) < Laminar));
        yield return new(
            "oil-left", "V", $"{liquid.Word} that stays below the mouth of '{drain.Port}'", drain.Left / 1000, "ml",
            "volume below the mouth's lowest point, upright",
            [], "the vessel's own geometry", Validity.Always);
        if (drain.Held is not { } held)
            yield break;
        FigureInput depression = new(
            "dp", "depression of the vessel against the sump", drain.Depression!.Value, "Pa",
            design.DrainBack.Depression is null ? "gas-loss, its upper bound" : "drain_back.depression");
        yield return new(
            "head-held", "h", $"height of {liquid.Word} that the depression holds up in the drain hose", held, "mm", "h = dp / (rho_p g)",
            [depression, LiquidInput.Density(flow)],
            "hydrostatics", new($"{liquid.Word} at rest, hose without bubbles", true));
        if (design.DrainBack.Head is not { } head || drain.Return is not { } back)
            yield break;
        var inHose = OilFlow.Speed((head - held) * 1e-3, drain.Bore * 1e-3, drain.Hose(head) * 1e-3, drain.Viscosity);
        yield return new(
            "return-flow", "q", $"{liquid.Word} that can run back to the sump", back, "L/h",
            "rho g (h - hd) = 32 mu v L / D^2 + 1.5 rho v^2 / 2",
            [
                new("h", "head", head, "mm", "drain_back.head"),
                new("hd", "head held up", held, "mm", "head-held"),
                new("D", "bore", drain.Bore, "mm", "drain_back.bore"),
                new("L", "length of the hose", drain.Hose(head), "mm", "drain_back.length"),
                viscosity,
            ],
            OilFlow.Source,
            new(OilFlow.Range, OilFlow.Reynolds(inHose, drain.Bore * 1e-3, drain.Viscosity) < Laminar));
    }

    private static IEnumerable<string> Words(Drain drain)
    {
        var liquid = drain.Assembly.Design.Flow.Liquid;
        if (liquid.IsOil)
            yield return $"Cold {liquid.Word} is many times thicker: what empties in a minute warm may take an hour in frost.";
        yield return $"Hot {liquid.Word} scalds: let it cool before a plug is opened.";
        if (drain.Assembly.Design.DrainBack.Head is null)
            yield return $"Where the {liquid.Word} is to run back by itself, give drain_back.head: the hose has to end below the "
                + $"{liquid.Word} there or in a trap, "
                + $"else gas comes up it and keeps the {liquid.Word} out of it.";
        else
            yield return $"The hose has to end below the {liquid.Word} it returns to or in a trap, fall all the way, and have no valve "
                + "that the head cannot open.";
    }
}
