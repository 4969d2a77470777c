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
        var (empty, full) = (Weight.Empty(assembly), Weight.Full(assembly));
        var brackets = assembly.Design.Brackets;
        return new(
            "mounting",
            "Mass and mounting",
            [
                .. Masses(assembly, empty, full)
                    .Concat(brackets.SelectMany(bracket => Loads(BracketLoad.Of(bracket, assembly, full), assembly)
                        .Select(figure => brackets.Length == 1 ? figure : Named(figure, bracket.Name))))
                    .Append(BodyGrowth(assembly)),
            ],
            [],
            brackets.IsEmpty && assembly.Design.Straps.IsEmpty
                ? ["No bracket: what the vessel is held by is not reckoned."]
                : [
                    .. assembly.Design.Straps.Select(strap =>
                        $"{strap.Name} holds by friction, which hangs on how far its bolts are drawn up, on oil and on the liner: neither that nor its band, ears, feet "
                        + "and bolts are reckoned here. Try it with more than it will meet, or let something under the vessel bear its weight."),
                    .. brackets.IsEmpty ? Array.Empty<string>() : [
                    "Every stress is an upper bound for a force from any side, by elementary statics; notches, fatigue and the thin shell that "
                    + "gives under an ear are not in it. Shaking cracks brackets where one blow does not: keep the margins well above 1 on an engine, "
                    + "hang the vessel from the hull or frame rather than from the engine, and look at the welds.",
                    "A vessel that falls on someone or opens a hose of hot oil hurts: where that can happen a licensed engineer decides, not this.",
                    ],
                ]);
    }

    /// <summary>Of one of several brackets.</summary>
    private static Figure Named(Figure figure, string bracket) => figure with
    {
        Name = $"{figure.Name}-{Slug.Of(bracket)}",
        Title = $"{bracket}: {figure.Title}",
    };

    /// <summary>Margins of every bracket by what they are of.</summary>
    public static IEnumerable<MountMargin> Margins(Assembly assembly)
    {
        var full = Weight.Full(assembly);
        foreach (var bracket in assembly.Design.Brackets)
        {
            var load = BracketLoad.Of(bracket, assembly, full);
            var (metal, weld) = (Strengths.Of(bracket.Material), WeldBears(bracket, assembly).Value);
            yield return new(bracket, load.Words.Welds, weld / load.WeldStress, load.WeldStress, weld);
            yield return new(bracket, load.Words.Member, metal.Yield / load.MemberStress.Likely, load.MemberStress.Likely, metal.Yield);
            yield return new(bracket, "its bolts", 1 / load.BoltShare, load.BoltShare * BoltStrength.Proof, BoltStrength.Proof);
        }
    }

    /// <summary>The joint's own allowable load as a stress on its throat, MPa.</summary>
    private static Datum WeldBears(BracketDesign bracket, Assembly assembly)
    {
        var joint = assembly.Welds.First(weld => weld.Joint.Path == WeldNumbers.OfBracket(bracket)[0]).Joint;
        var load = assembly.MetalsOf(joint).StrengthOf(joint).Shear;
        return new(load.Value / joint.Throat, load.Source);
    }

    private static IEnumerable<Figure> Masses(Assembly assembly, Weight empty, Weight full)
    {
        const string Source = "closed forms of each part's body and holes";
        var validity = new Validity("without fittings, filler metal and hoses; tubes of ports taken square at their foot", true);
        var oil = new FigureInput("rho_p", "density of the oil", assembly.Design.Flow.OilDensity, "kg/m3", "flow.oil_density");
        yield return new(
            "mass-empty", "m", "mass, empty", empty.Mass / 1000, "kg", "m = sum of volume x density", [], Source, validity);
        yield return new(
            "mass-full", "M", "mass, full of oil to the brim", full.Mass / 1000, "kg", "M = m + V rho_p",
            [oil, new("V", "volume to the brim", assembly.Capacity.Brim / 1e6, "L", "capacity")], Source, validity);
        foreach (var (name, title, centre) in new[] { ("empty", "empty", empty.Centre), ("full", "full", full.Centre) })
        {
            yield return new(
                $"centre-{name}", "z", $"centre of mass above the shell's lower edge, {title}", centre.Z, "mm", "z = sum of m z / sum of m", [], Source, validity);
            yield return new(
                $"centre-{name}-aside", "r", $"centre of mass off the vessel's axis, {title}", new Vector3(centre.X, centre.Y, 0).Length, "mm",
                "r = length of (sum of m x, sum of m y) / sum of m", [], Source, validity);
        }
    }

    private static IEnumerable<Figure> Loads(BracketLoad load, Assembly assembly)
    {
        var design = assembly.Design;
        var (metal, weld) = (Strengths.Of(load.Design.Material), WeldBears(load.Design, assembly));
        FigureInput force = new("F", "force", load.Force, "N", "mount-force");
        var statics = new Validity("elastic, thin plates, any direction; no fatigue, no notches", true);
        yield return new(
            "mount-force", "F", "force on the bracket from any side", load.Force, "N", "F = M a g",
            [
                new("M", "mass, full", load.Full.Mass / 1000, "kg", "mass-full"),
                new("a", design.Mounting.IsGiven ? "acceleration" : "acceleration: a default, not measured", load.Acceleration, "g", "mounting.acceleration"),
            ],
            design.Mounting.IsGiven ? "Newton; the acceleration is the design's" : "Newton; 5 g in any direction is a default: common practice, no source",
            Validity.Always);
        yield return Margin(
            "weld-margin", load is SaddleLoad ? "margin of the ears' welds" : "margin of the plate's welds", load.WeldStress, weld.Value,
            "tau = F (1 / (2 L a) + e / W), W = the less of L D a and L^2 a / 3",
            [
                force,
                new("L", "length of each weld", load.WeldLength, "mm", "welds"),
                new("a", "throat", load.Throat, "mm", "welds"),
                new("D", "distance of the welds", load.WeldsApart, "mm", load.Design.Path),
            ],
            weld.Source, statics);
        yield return load.MemberMargin(force, new(metal.Yield, metal.Source), statics);
        yield return new(
            "bolt-tension", "T", "tension of the worst bolt", load.BoltTension, "N",
            "T = F times the length of (1/n + y/u + x/c, e/u, e/c): pull, and moments over the rows and columns",
            [force, new("n", "bolts", load.BoltCount, "", load.Design.Bolts.Path)], "statics", statics);
        yield return new(
            "bolt-shear", "V", "shear of the worst bolt", load.BoltShear, "N", "V = F (1 / n + s r / sum r^2)",
            [force, new("n", "bolts", load.BoltCount, "", load.Design.Bolts.Path)], "statics", statics);
        yield return new(
            "bolt-margin", "", "margin of the bolts in tension and shear together", 1 / load.BoltShare, "",
            "1 / sqrt((T / (A Rp))^2 + (V / (0.6 A Rp))^2)",
            [
                new("T", "tension", load.BoltTension, "N", "bolt-tension"),
                new("V", "shear", load.BoltShear, "N", "bolt-shear"),
                new("A", "stress area", BoltStrength.Area(load.Design.Bolts.Diameter), "mm2", "ISO 261"),
                new("Rp", "proof stress", BoltStrength.Proof, "MPa", "A2-70"),
            ],
            BoltStrength.Source,
            new("bolts of A2-70 or better, tightened and locked; static", true));
        yield return load.FrequencyFigure(metal.Elasticity);
        yield return new(
            "mount-growth", "d", "by how much the bolts' holes move apart when it warms and what it hangs on does not",
            load.Growth(metal.Growth, design.Flow.Temperature - design.Flow.Surroundings), "mm", "d = k (T - Ta) s",
            [
                new("k", "growth", metal.Growth * 1e6, "um/(m K)", "a table of metals"),
                new("T", "temperature", design.Flow.Temperature, "degC", "flow.temperature"),
                new("Ta", "air round it", design.Flow.Surroundings, "degC", "flow.surroundings"),
                new("s", "distance of the bolts", load.Group.Spread, "mm", load.Design.Bolts.Path),
            ],
            metal.Source,
            new("an upper bound: what it hangs on warms too", true));
    }

    internal static Figure Margin(
        string name, string title, Amount stress, double bears, string formula, FigureInput[] inputs, string source, Validity validity) => new(
        name, "", title, stress.Through(value => bears / value), "", $"bears / stress; {formula}",
        [.. inputs, new("stress", "stress", stress, "MPa", "the formula"), new("bears", "what it bears", bears, "MPa", "a table of metals")],
        source, validity);

    private static Figure BodyGrowth(Assembly assembly)
    {
        var (design, metal) = (assembly.Design, Strengths.Of(assembly.Design.Shell.Material));
        var kelvins = design.Flow.Temperature - design.Flow.Surroundings;
        return new(
            "body-growth", "d", "by how much the shell grows in height when it warms", metal.Growth * kelvins * design.Shell.Height, "mm", "d = k (T - Ta) h",
            [
                new("k", "growth", metal.Growth * 1e6, "um/(m K)", "a table of metals"),
                new("T", "temperature", design.Flow.Temperature, "degC", "flow.temperature"),
                new("Ta", "air round it", design.Flow.Surroundings, "degC", "flow.surroundings"),
                new("h", "height of the shell", design.Shell.Height, "mm", "shell.height"),
            ],
            metal.Source, new("the whole shell as warm as the gas", true));
    }
}

/// <summary>What a piece of a mounting bears, over what it is loaded with.</summary>
/// <param name="Stress">MPa.</param>
/// <param name="Bears">MPa.</param>
internal readonly record struct MountMargin(BracketDesign Bracket, string What, double Margin, double Stress, double Bears);
