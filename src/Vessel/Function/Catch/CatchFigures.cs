using Vessel.Design;

namespace Vessel.Function;

/// <summary>The chapter on what the vessel holds in use.</summary>
internal static class CatchFigures
{
    private static readonly Amount _gramsPerHour = new(2, 8, 15);

    public static FigureGroup Of(Assembly assembly, FlowPath? path)
    {
        var needs = Catch.Of(assembly);
        return new(
            "catch",
            "Oil that it holds",
            [.. Figures(assembly, path, needs)],
            [],
            [.. Words(assembly, needs)]);
    }

    private static IEnumerable<Figure> Figures(Assembly assembly, FlowPath? path, Catch needs)
    {
        var (capacity, design) = (assembly.Capacity, assembly.Design);
        yield return new(
            "brim", "V", "room inside, less all that stands in it", capacity.Brim / 1e6, "L", "inside of shell and heads, less the metal of the parts inside", [],
            "the vessel's own geometry", Validity.Always);
        yield return new(
            "fillable", "V", "fillable volume, upright", capacity.Fillable / 1e6, "L", "room by room, up to the level from which on its air cannot leave",
            [new("V", "room inside", capacity.Brim / 1e6, "L", "brim")], "the vessel's own geometry", new("filled slowly, every room's oil at one level", true));
        yield return new(
            "trapped", "V", "oil that stays in cups when all else has run back", TrappedOil.Of(assembly.Cavity) / 1e3, "ml",
            "volume below the lowest opening of each room inside another", [],
            "the vessel's own geometry", new("upright; a film on the walls stays too", true));
        yield return new(
            "usable", "V", "volume up to the first spill or seal, upright", capacity.Usable / 1e6, "L", "volume below that level", [],
            "the vessel's own geometry", Validity.Always);
        yield return new(
            "usable-leaning", "V", "the least of it upright and leaning", capacity.Worst.Usable / 1e6, "L",
            "volume below a leaning plane at the first spill or seal",
            [new("lean", "greatest lean", Geometry.Turns.ToDegrees(design.Capacity.GreatestLean), "deg", "capacity.greatest_lean")],
            "the vessel's own geometry", new("oil at rest; waves spill sooner", true));
        if (design.Capacity.BetweenDrains > 0)
        {
            var hours = design.Capacity.BetweenDrains;
            yield return new(
                "oil-gathered", "V", "oil that may gather between two drains", hours / 870 * _gramsPerHour, "L", "V = c t / 870 g/L",
                [new("t", "running time", hours, "hours", "capacity.between_drains"), new("c", "oil carried", _gramsPerHour, "g/h", "a table")],
                OilCarry.Source, new("heavy-duty diesels in sound order; water comes on top in cold weather", true));
        }

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

    /// <summary>What the gas's own pressure does to oil at a sleeve's rim.</summary>
    private static IEnumerable<Figure> Pushed(FlowPath? path, VesselDesign design)
    {
        var rim = path?.Stages.ToList().FindIndex(stage => stage.Name.StartsWith("rim of ", StringComparison.Ordinal)) ?? -1;
        if (path is null || rim < 0)
            yield break;
        var weight = design.Flow.OilDensity * Air.Gravity * 1e-3;
        yield return new(
            "blow-through", "h", $"oil above the rim that the gas can push aside before its pressure passes what is taken", design.Flow.MostLoss / weight, "mm",
            "h = dp / (rho_p g)",
            [
                new("dp", "greatest loss that is taken", design.Flow.MostLoss, "Pa", "flow.most_loss"),
                new("rho_p", "density of the oil", design.Flow.OilDensity, "kg/m3", "flow.oil_density"),
            ],
            "hydrostatics", new("oil at rest: gas that bubbles through throws oil up into the media", true));
        if (path.Gas.Flow is not { } flow)
            yield break;
        var losses = path.Losses(flow);
        var step = losses.Take(rim + 1).Where((_, i) => path.Stages[i].Kind is not (StageKind.Bore or StageKind.Bend)).Aggregate(Amount.Exactly(0), (sum, loss) => sum + loss);
        yield return new(
            "level-step", "h", "oil level inside the sleeve above that outside", 1 / weight * step, "mm", "h = dp / (rho_p g)",
            [
                new("dp", "loss from before the inlet to inside the rim", step, "Pa", "stages"),
                new("rho_p", "density of the oil", design.Flow.OilDensity, "kg/m3", "flow.oil_density"),
            ],
            "hydrostatics", new("oil below the rim by several of that", true));
    }

    private static IEnumerable<string> Words(Assembly assembly, Catch needs)
    {
        if (!assembly.Capacity.Events.IsEmpty)
        {
            yield return string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"Never above {assembly.Capacity.Events[0].Height:0} mm over the shell's lower edge: there {assembly.Capacity.LimitedBy}.");
        }

        if (needs.Needed is null)
            yield return "Give capacity.between_drains, or capacity.rule with engine, and its capacity is judged against its need.";
        if (needs is { Rule: not null, ByRule: null })
            yield return "A rule by displacement needs engine.displacement.";
    }
}
