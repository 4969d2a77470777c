using Vessel.Design;

namespace Vessel.Function;

/// <summary>The chapter on what the vessel holds in use.</summary>
internal static class CatchFigures
{
    public static FigureGroup Of(Assembly assembly, FlowPath? path)
    {
        var needs = Catch.Of(assembly, path);
        return new(
            "catch",
            $"{assembly.Design.Flow.Liquid.Capital} that it holds",
            [.. Figures(assembly, path, needs)],
            [],
            [.. Words(assembly, needs)]);
    }

    private static IEnumerable<Figure> Figures(Assembly assembly, FlowPath? path, Catch needs)
    {
        var (capacity, design) = (assembly.Capacity, assembly.Design);
        if (LiquidInput.DensityFigure(design.Flow) is { } density)
            yield return density;
        yield return new(
            "brim", "V", "room inside, less the parts inside", capacity.Brim / 1e6, "L",
            "inside of shell and heads, less the metal of the parts inside", [],
            "the vessel's own geometry", Validity.Always);
        yield return new(
            "fillable", "V", "fillable volume, upright", capacity.Fillable / 1e6, "L",
            "room by room, up to the level from which on its air cannot leave",
            [new("V", "room inside", capacity.Brim / 1e6, "L", "brim")], "the vessel's own geometry",
            new("filled slowly, every room at one level", true));
        yield return new(
            "trapped", "V", $"{design.Flow.Liquid.Word} that stays in cups when all else has run back",
            TrappedOil.Of(assembly.Attitude) / 1e3, "ml",
            "volume below the lowest opening of each room inside another", [],
            "the vessel's own geometry", new("upright; a film on the walls stays too", true));
        yield return new(
            "usable", "V", "volume up to the first spill or seal, upright", capacity.Usable / 1e6, "L", "volume below that level", [],
            "the vessel's own geometry", Validity.Always);
        yield return new(
            "usable-leaning", "V", "the least of it upright and leaning", capacity.Worst.Usable / 1e6, "L",
            "volume below a leaning plane at the first spill or seal",
            [new("lean", "greatest lean", Geometry.Turns.ToDegrees(design.Capacity.GreatestLean), "deg", "capacity.greatest_lean")],
            "the vessel's own geometry", new("at rest; waves spill sooner", true));
        foreach (var figure in Gathers(needs, design, capacity))
            yield return figure;
        if (needs is { ByRule: { } volume, Rule: { } rule })
        {
            yield return new(
                "catch-by-rule", "V", $"volume that {rule.Name} asks for", volume, "L", "a table",
                [new("V", "displacement", design.Flow.Engine!.Displacement, "L", "engine.displacement")],
                rule.Source, new("rule books change: the event's own decides", true));
        }

        foreach (var figure in Pushed(path, design))
            yield return figure;
    }

    /// <summary>What gathers between two drains, and how long it may run.</summary>
    private static IEnumerable<Figure> Gathers(Catch needs, VesselDesign design, Capacity capacity)
    {
        var hours = new FigureInput("t", "running time", needs.Hours, "hours", "capacity.between_drains");
        if (needs is { Hours: > 0, Oil: { } oil })
        {
            yield return new(
                "oil-gathered", "V", "oil that may gather between two drains", needs.Hours * oil, "L", "V = c t / rho_p",
                [hours, new("c", "oil carried", OilCarry.Rate, "g/h", "a table"), LiquidInput.Density(design.Flow)],
                OilCarry.Source, new("heavy-duty diesels in sound order; smaller engines carry less, worn ones more", true));
        }

        if (needs is { Hours: > 0, Water: { } water })
        {
            yield return new(
                "water-gathered", "V", "water that may gather between two drains", needs.Hours * water, "L", "V = W t / 1000 g/L",
                [hours, new("W", "water that may fall out", 1e3 * water, "g/h", "water-left")],
                Condensation.Source, new("a bound at the upper end: still air round a bare vessel, all of it kept", true));
        }

        if (needs.Lasts(capacity.Usable / 1e6) is { } lasts)
        {
            yield return new(
                "drain-within", "t", "running time until the usable volume is full", lasts, "hours", "t = V / (oil and water an hour)",
                [
                    new("V", "usable volume", capacity.Usable / 1e6, "L", "usable"),
                    new("q", "oil and water that gather", needs.Rate!.Value, "L/h",
                        needs.Water is null ? "oil-gathered" : "oil-gathered, water-left"),
                ],
                OilCarry.Source, new("where its inputs hold; drain by the low end until it has been measured", true));
        }
    }

    /// <summary>What the gas's own pressure does to the liquid at a sleeve's rim.</summary>
    private static IEnumerable<Figure> Pushed(FlowPath? path, VesselDesign design)
    {
        var rim = path?.Stages.ToList().FindIndex(stage => stage.Name.StartsWith("rim of ", StringComparison.Ordinal)) ?? -1;
        if (path is null || rim < 0)
            yield break;
        var weight = design.Flow.OilDensity * Air.Gravity * 1e-3;
        yield return new(
            "blow-through", "h", $"{design.Flow.Liquid.Word} above the rim that the gas can push aside within the allowed loss",
            design.Flow.MostLoss / weight, "mm",
            "h = dp / (rho_p g)",
            [
                new("dp", "greatest loss allowed", design.Flow.MostLoss, "Pa", "flow.most_loss"),
                LiquidInput.Density(design.Flow),
            ],
            "hydrostatics", new("at rest: gas that bubbles through throws liquid up into the media", true));
        if (path.Gas.Flow is not { } flow)
            yield break;
        var losses = path.Losses(flow);
        var step = losses.Take(rim + 1).Where((_, i) => path.Stages[i].Kind is not (StageKind.Hose or StageKind.Bore or StageKind.Bend))
            .Aggregate(Amount.Exactly(0), (sum, loss) => sum + loss);
        yield return new(
            "level-step", "h", $"{design.Flow.Liquid.Word} level inside the sleeve above that outside", 1 / weight * step, "mm",
            "h = dp / (rho_p g)",
            [
                new("dp", "loss from before the inlet to inside the rim", step, "Pa", "stages"),
                LiquidInput.Density(design.Flow),
            ],
            "hydrostatics", new("the level below the rim by several of that", true));
    }

    private static IEnumerable<string> Words(Assembly assembly, Catch needs)
    {
        if (!assembly.Capacity.Events.IsEmpty)
        {
            yield return string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"Never above {assembly.Capacity.Events[0].Height:0} mm over the shell's lower edge: there {assembly.Capacity.LimitedBy}.");
        }

        if (needs is { Hours: 0, ByRule: null })
            yield return "Give capacity.between_drains, or capacity.rule with engine, and its capacity is judged against its need.";
        if (needs is { Hours: > 0, Oil: null })
            yield return $"How much {assembly.Design.Flow.Liquid.Word} gathers is not known here: only water from the gas is counted "
                + "between drains.";
        if (needs is { Rule: not null, ByRule: null })
            yield return "A rule by displacement needs engine.displacement.";
    }
}
