using Vessel.Design;
using Vessel.Function;
using Vessel.Parts;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>What breaks, folds, runs over or stays full when the vessel does its duty.</summary>
internal static class DutyRules
{
    private const double PascalsPerMillibar = 100;

    public static IEnumerable<Measure> Of(Assembly assembly) =>
        Overloaded(assembly).Concat(Test(LeakTest.Of(assembly))).Concat(Catches(assembly)).Concat(Drains(assembly));

    private static IEnumerable<Measure> Overloaded(Assembly assembly) =>
        from margin in assembly.Mount.Loads.SelectMany(load => load.Margins())
        where margin.Margin.IsFinite
        let design = assembly.Design
        select new Measure(
            FindingCodes.MountOverloaded,
            Severity.Warning,
            [Slug.Of(margin.Carrier.Name)],
            () => $"full of {design.Flow.Liquid.Word} and under {FigureText.Of(design.Mounting.Acceleration)} g from any "
            + $"side{Basis(design.Mounting)}, the stress in "
            + $"{MountFigures.Whose(margin, assembly.Mount.Loads.Length)} is {FigureText.Of(margin.Stress.Likely)} MPa; it may be "
            + $"{FigureText.Of(margin.Bears)}: "
            + "bring the plate nearer, make it thicker, wider or higher, take a thicker shell, more or thicker bolts, or a second bracket.",
            [new("margin", margin.Margin.Likely, AtLeast(MountFigures.LeastMargin), string.Empty)],
            design.PlaceOf(margin.Carrier.Path),
            $"strength over stress in {MountFigures.Whose(margin, assembly.Mount.Loads.Length)}");

    private static string Basis(MountingDesign mounting) => mounting.IsGiven ? string.Empty
        : mounting.DutyIsGiven ? $" (duty '{mounting.Duty.Name}')" : $" (duty '{mounting.Duty.Name}', a default: state the duty, as in "
            + "'mounting: { duty: fixed }')";

    private static IEnumerable<Measure> Test(LeakTest test)
    {
        var (design, given) = (test.Design, test.Design.LeakTest);
        yield return new(
                FindingCodes.TestPressureHigh,
                Severity.Warning,
                [],
                () => $"a test at {FigureText.Of(given.Pressure / PascalsPerMillibar)} mbar passes the 500 mbar of directive 2014/68/EU"
                + (given.Pressure > LeakTest.Code ? " and the 15 psi (1034 mbar) of ASME VIII-1" : string.Empty)
                + ": this is not a pressure vessel; 200 to 300 mbar finds every leak [practice].",
                [new("test pressure", given.Pressure / PascalsPerMillibar, AtMost(LeakTest.Directive / PascalsPerMillibar), "mbar")],
                design.PlaceOf($"{given.Path}.pressure"),
                "pressure of the leak test");
        foreach (var (what, path, stress, bears) in test.Margins())
        {
            yield return new(
                FindingCodes.TestOverstress,
                Severity.Warning,
                [],
                () => $"at the test the {what} is stressed to as much as {FigureText.Of(stress)} MPa where metal next to a weld yields at "
                + $"{FigureText.Of(bears)}: "
                + "test at less, or take thicker metal or a dome.",
                [new("stress", stress, AtMost(bears), "MPa")],
                design.PlaceOf(path),
                $"stress in the {what} at the leak test");
        }

        var collapse = test.ShellCollapse;
        yield return new(
                FindingCodes.MayCollapse,
                Severity.Warning,
                [],
                () => $"a suction of {FigureText.Of(given.Suction / PascalsPerMillibar)} mbar may fold the shell: one that is not quite "
                + "round bears "
                + $"{Borne(collapse.Low)} at worst, {Borne(collapse.Likely)} likely; thicken it, or stiffen it by a ring.",
                [new("suction", given.Suction / PascalsPerMillibar, AtMost(collapse.Low / PascalsPerMillibar), "mbar")],
                design.PlaceOf(design.Shell.Path),
                "suction in use");
    }

    /// <summary>No suction is more than full vacuum.</summary>
    private static string Borne(double suction) =>
        suction < Air.Atmosphere ? $"{FigureText.Of(suction / PascalsPerMillibar)} mbar" : "full vacuum";

    /// <summary>
    /// A warning where what likely gathers, or what a rule book asks for, does not go in; a note where only the upper bound does not.
    /// </summary>
    private static IEnumerable<Measure> Catches(Assembly assembly)
    {
        var usable = assembly.Capacity.Usable / 1e6;
        var needs = Catch.Of(assembly, assembly.Flow);
        if (needs.ByRule is { } rule)
        {
            yield return Holding(assembly, Severity.Warning, "usable content, for the rule book", AtLeast(rule), () =>
                $"it holds {FigureText.Of(usable)} L to the first spill or seal where "
                + $"{needs.Rule!.Name} asks for {FigureText.Of(rule)} L: make it higher or wider, or shorten the parts that hang inside.");
        }

        if (needs.Gathered is { } gathered)
        {
            yield return Holding(
                assembly, Severity.Note, "usable content, between two drains", AtLeast(gathered.High, gathered.Likely),
                () => $"in {FigureText.Of(needs.Hours)} hours {Parts(needs)} may gather, but it holds only {FigureText.Of(usable)} L to "
                + "the first spill or seal: drain it "
                + $"every {Whole(needs.Lasts(usable)!.Value.Low)} hours until it shows how fast it fills, or make it larger.");
        }
    }

    private static Measure Holding(Assembly assembly, Severity severity, string of, Allowed needed, Func<string> words) => new(
        FindingCodes.CatchTooSmall, severity, [], words, [new("usable", assembly.Capacity.Usable / 1e6, needed, "L")],
            assembly.Design.PlaceOf("capacity"), of);

    private static string Parts(Catch needs)
    {
        string Range(Amount rate, string what) => (needs.Hours * rate) is var volume
            ? $"{FigureText.Of(volume.Low)} to {FigureText.Of(volume.High)} L of {what} (likely {FigureText.Of(volume.Likely)})"
            : string.Empty;
        return string.Join(
            " and ",
            new[] { needs.Oil is { } oil ? Range(oil, "oil") : null, needs.Water is { } water ? Range(water, "water") : null }
                .OfType<string>());
    }

    /// <summary>Hours rounded down, so that what is said is safe.</summary>
    private static string Whole(double hours) => hours < 1 ? FigureText.Of(hours) : FigureText.Of(Math.Floor(hours));

    private static IEnumerable<Measure> Drains(Assembly assembly)
    {
        if (assembly.Design.DrainBack.Head is not { } head || Drain.Of(assembly, assembly.Flow) is not { Held: { } held }
            || !double.IsFinite(held))
        {
            yield break;
        }

        yield return new(
            FindingCodes.OilHeldUp,
            Severity.Warning,
            [],
            () => $"the vessel's depression holds up {FigureText.Of(held)} mm of {assembly.Design.Flow.Liquid.Word} in the drain hose, "
            + $"which has {FigureText.Of(head)} mm: it stays in the "
            + "vessel while the engine runs; hang it higher, or lower its loss.",
            [new("head held up", held, AtMost(head), "mm")],
            assembly.Design.PlaceOf("drain_back"),
            "head held up in the drain hose");
    }
}
