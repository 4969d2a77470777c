using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>The chapter on mass and mounting.</summary>
internal static class MountFigures
{
    /// <summary>What is welded to the vessel and reckoned here bears a margin of at least one.</summary>
    public const double LeastMargin = 1;

    public static FigureGroup Of(Assembly assembly)
    {
        var mount = assembly.Mount;
        var engine = assembly.Design.Flow.Engine;
        ImmutableArray<string> words = [.. assembly.Members.SelectMany(member => member.MountingWords)];
        return new(
            "mounting",
            "Mass and mounting",
            [
                .. Masses(assembly, Weight.Empty(assembly), mount.Full),
                .. mount.Loads.IsEmpty ? Enumerable.Empty<Figure>() : OfCarriers(mount, assembly),
                BodyGrowth(assembly),
            ],
            mount.Loads.IsEmpty ? [] : [MountVibration.Table(mount, engine)],
            mount.Loads.IsEmpty && words.IsEmpty
                ? ["No bracket: the mounting is not calculated."]
                : [
                    .. words,
                    .. mount.Loads.IsEmpty ? Enumerable.Empty<string>() : Words(mount, engine),
                ]);
    }

    private static IEnumerable<string> Words(Mount mount, EngineDesign? engine)
    {
        if (mount.Loads.Length > 1)
        {
            yield return "The brackets share the load by how stiff they are; the worst value of each range is that of a bracket which "
                + "bears all of it alone, "
                + "as where the bolts of the others are loose.";
        }

        yield return "Stresses are for a force from any side, by elastic statics: welds as equally stiff lines, the shell's wall as a thin "
            + "cylinder, ears "
            + "held as far as the wall holds them, and in the range from hinged to clamped. Notches, undercut, and ports or seams close to "
            + "a weld are left out.";
        foreach (var warning in mount.Loads.Select(load => load.Spring.Warning).OfType<string>().Distinct())
            yield return warning;
        yield return MountVibration.Words(mount, engine);
        yield return "Shaking cracks brackets where one blow does not: hang the vessel from the hull or frame rather than from the engine, "
            + "and look "
            + "at the welds.";
        yield return "A vessel that falls on someone or spills its hot contents hurts: where that can happen a licensed engineer decides, "
            + "not this.";
    }

    private static IEnumerable<Figure> OfCarriers(Mount mount, Assembly assembly)
    {
        var (design, loads) = (assembly.Design, mount.Loads);
        yield return ForceOf(mount, design.Mounting);
        var least = loads.SelectMany(load => load.Margins()).MinBy(margin => margin.Margin.Likely);
        yield return new(
            "mount-margin", "", $"least margin of the mounting, in {Whose(least, loads.Length)}", least.Margin, "",
            "the least of all margins of all brackets",
            [new("stress", "stress there", least.Stress, "MPa", "its own figure"),
                new("bears", "strength there", least.Bears, "MPa", "a table of metals")],
            "the figures below", new("where that figure holds", loads.All(load => load.Spring.Wall.Holds)));
        foreach (var load in loads)
        {
            foreach (var figure in Loads(mount, load, assembly))
                yield return loads.Length == 1 ? figure : Named(figure, load.Carrier.Name);
        }

        yield return new(
            "mount-frequency", "f", "first natural frequency of the full vessel on its mounting", mount.Frequency, "Hz",
            "f = sqrt(1 / (M y)) / (2 pi), y = movement of the centre of mass for 1 N in its softest direction: ears or plate, and the "
            + "shell's "
            + "wall under them",
            [
                new("M", "mass, full", mount.Full.Mass / 1000, "kg", "mass-full"),
                new("E", "elasticity", Strengths.Of(loads[0].Carrier.Material).Elasticity, "MPa", "a table of metals"),
            ],
            $"leaf springs, ears hinged to clamped; {WallUnder.Source}",
            new("support and bolts stand still: a weak support lowers it", loads.All(load => load.Spring.Wall.Holds)));
        yield return MountVibration.Endurance(mount, design);
    }

    /// <summary>Words such as <c>the shell's wall under the bracket's ears</c>, and of which bracket where there are several.</summary>
    internal static string Whose(MountMargin margin, int brackets) =>
        brackets == 1 ? margin.What : $"{margin.What} ({margin.Carrier.Name})";

    /// <summary>The figure of one of several brackets, named for it.</summary>
    private static Figure Named(Figure figure, string bracket) => figure with
    {
        Name = $"{figure.Name}-{Slug.Of(bracket)}",
        Title = $"{bracket}: {figure.Title}",
    };

    private static IEnumerable<Figure> Masses(Assembly assembly, Weight empty, Weight full)
    {
        const string Source = "closed forms of each part's body and holes";
        var validity = new Validity("without fittings, filler metal and hoses; tubes of ports taken square at their foot", true);
        var oil = LiquidInput.Density(assembly.Design.Flow);
        yield return new(
            "mass-empty", "m", "mass, empty", empty.Mass / 1000, "kg", "m = sum of volume x density", [], Source, validity);
        yield return new(
            "mass-full", "M", $"mass, full of {assembly.Design.Flow.Liquid.Word} to the brim", full.Mass / 1000, "kg", "M = m + V rho_p",
            [oil, new("V", "volume to the brim", assembly.Capacity.Brim / 1e6, "L", "capacity")], Source, validity);
        foreach (var (name, title, centre) in new[] { ("empty", "empty", empty.Centre), ("full", "full", full.Centre) })
        {
            yield return new(
                $"centre-{name}", "z", $"centre of mass above the shell's lower edge, {title}", centre.Z, "mm", "z = sum of m z / sum of m",
                [], Source, validity);
            yield return new(
                $"centre-{name}-aside", "r", $"centre of mass off the vessel's axis, {title}", new Vector3(centre.X, centre.Y, 0).Length,
                "mm",
                "r = length of (sum of m x, sum of m y) / sum of m", [], Source, validity);
        }
    }

    private static Figure ForceOf(Mount mount, MountingDesign mounting) => new(
        "mount-force", "F", "force on the mounting from any side", mount.Force, "N", "F = M a g",
        [
            new("M", "mass, full", mount.Full.Mass / 1000, "kg", "mass-full"),
            new(
                "a",
                mounting.IsGiven ? "acceleration"
                    : $"acceleration of duty '{mounting.Duty.Name}', "
                        + $"{mounting.Duty.Where}{(mounting.DutyIsGiven ? "" : ": a default, not measured")}",
                mounting.Acceleration, "g", mounting.IsGiven ? "mounting.acceleration" : "mounting.duty"),
        ],
        mounting.IsGiven ? "Newton; the acceleration is the design's" : $"Newton; {mounting.Duty.Source}",
        Validity.Always);

    private static IEnumerable<Figure> Loads(Mount mount, MountLoad load, Assembly assembly)
    {
        var (design, spring) = (assembly.Design, load.Spring);
        var (metal, shell) = (Strengths.Of(load.Carrier.Material), Strengths.Of(design.Shell.Material));
        FigureInput force = new("F", "force", mount.Force, "N", "mount-force");
        FigureInput count = new("n", "bolts", BoltGroup.CountOf(load.Carrier.Bolts), "", load.Carrier.Bolts.Path);
        var statics = new Validity("elastic, thin plates, any direction; no fatigue, no notches", true);
        yield return Margin(
            "wall-margin", $"margin of {spring.Words.Wall}", load.WallStress, shell.Yield,
            "stress at the wall's faces along the welds, von Mises, of the welds' forces (as for weld-margin) and of the ears' moment at "
            + "the "
            + "shell, summed over waves along and round it",
            [
                force,
                new("R", "radius of the middle of the wall", design.Shell.At(load.Carrier.Height).MidRadius, "mm", "shell"),
                new("t", "wall", design.Shell.Wall, "mm", "shell.wall"),
                new("L", "height of the cylinder that the bracket stands on", design.Shell.CourseAt(load.Carrier.Height).Height, "mm",
                    "shell"),
                new("z", "leg of the weld, over which and half the wall on either side the load spreads", spring.Welds.Leg, "mm", "welds"),
            ],
            $"{WallUnder.Source}; {shell.Source}",
            new(
                "R / t above 10, elastic, no port or seam beside the weld; a bent wall yields at its faces first and folds at half as much "
                    + "again",
                spring.Wall.Holds));
        yield return Margin(
            $"{spring.MemberName}-margin", $"margin of {spring.Words.Bent} in bending, as welded",
            load.MemberStress, metal.Yield, spring.MemberFormula.Formula, [force, .. spring.MemberFormula.Inputs], metal.Source, statics);
        yield return Margin(
            "weld-margin", $"margin of {spring.Words.BentWelds}", load.WeldStress, load.Throat.Value,
            "tau = q / a, q = F / L + (J^-1 M) x r: lines equally stiff, M the moment of F about their centre, J = sum of (r^2 - r r) ds; "
            + "at most with 6 m / a^2, where an ear turns its fillet about the root",
            [force, new("L", "length of the welds", spring.Welds.Length, "mm", "welds"),
                new("a", "throat", spring.Welds.Throat, "mm", "welds")],
            load.Throat.Source, statics);
        yield return new(
            "bolt-tension", "T", "tension of the worst bolt", load.BoltTension, "N",
            "T = pull / n and moments over the rows and columns, for the worst direction", [force, count], "statics", statics);
        yield return new(
            "bolt-shear", "V", "shear of the worst bolt", load.BoltShear, "N",
            "V = shear / n + twist / sum r, for the worst direction", [force, count], "statics", statics);
        yield return new(
            "bolt-margin", "", "margin of the bolts in tension and shear together", load.BoltShare.Through(share => 1 / share), "",
            "1 / sqrt((T / (A Rp))^2 + (V / (0.6 A Rp))^2)",
            [
                new("T", "tension", load.BoltTension, "N", "bolt-tension"),
                new("V", "shear", load.BoltShear, "N", "bolt-shear"),
                new("A", "stress area", BoltStrength.Area(load.Carrier.Bolts.Diameter), "mm2", "ISO 261"),
                new("Rp", "proof stress", BoltStrength.Proof, "MPa", "A2-70"),
            ],
            BoltStrength.Source,
            new("bolts of A2-70 or better, tightened and locked; static", true));
        yield return Growth(load, metal, design);
    }

    private static Figure Growth(MountLoad load, Strength metal, VesselDesign design) => new(
        "mount-growth", "d", "growth between the bolt holes when the vessel warms and its support does not",
        load.Growth(metal.Growth, design.Flow.Temperature - design.Flow.Surroundings), "mm", "d = k (T - Ta) s",
        [
            new("k", "growth", metal.Growth * 1e6, "um/(m K)", "a table of metals"),
            new("T", "temperature", design.Flow.Temperature, "degC", "flow.temperature"),
            new("Ta", "air round it", design.Flow.Surroundings, "degC", "flow.surroundings"),
            new("s", "distance of the bolts", BoltGroup.Spread(load.Carrier.Bolts), "mm", load.Carrier.Bolts.Path),
        ],
        metal.Source,
        new("an upper bound: the support warms too", true));

    private static Figure Margin(
        string name, string title, Amount stress, double bears, string formula, FigureInput[] inputs, string source,
        Validity validity) => new(
        name, "", title, stress.Through(value => bears / value), "", $"bears / stress; {formula}",
        [.. inputs, new("stress", "stress", stress, "MPa", "the formula"), new("bears", "strength", bears, "MPa", "a table of metals")],
        source, validity);

    private static Figure BodyGrowth(Assembly assembly)
    {
        var (design, metal) = (assembly.Design, Strengths.Of(assembly.Design.Shell.Material));
        var kelvins = design.Flow.Temperature - design.Flow.Surroundings;
        return new(
            "body-growth", "d", "growth of the shell in height when it warms", metal.Growth * kelvins * design.Shell.Height, "mm",
            "d = k (T - Ta) h",
            [
                new("k", "growth", metal.Growth * 1e6, "um/(m K)", "a table of metals"),
                new("T", "temperature", design.Flow.Temperature, "degC", "flow.temperature"),
                new("Ta", "air round it", design.Flow.Surroundings, "degC", "flow.surroundings"),
                new("h", "height of the shell", design.Shell.Height, "mm", "shell.height"),
            ],
            metal.Source, new("the whole shell as warm as the gas", true));
    }
}
