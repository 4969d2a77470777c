using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>The chapter on leak test and suction.</summary>
internal static class LeakFigures
{
    private const double PascalsPerMillibar = 100;

    public static FigureGroup Of(LeakTest test) => new(
        "leak_test",
        "Leak test and suction",
        [.. Figures(test)],
        [],
        [
            "This is a vented vessel, not a pressure vessel, and nothing here rates it for pressure. The figures are of a leak test, not "
                + "of a lasting load.",
            "Below 15 psi (ASME VIII-1 U-1) and below 0.5 bar (directive 2014/68/EU) those rules do not apply; to be outside them says "
                + "nothing about safety, and local codes come first.",
            test.Design.LeakTest.With == TestMedium.Air
                ? "Air stores thousands of times the energy of water: test with water first. 200 to 300 mbar finds every leak [practice]."
                : "Fill it until the last bubble is out before pressure comes on: trapped air stores the energy that water does not.",
            Fold(test),
            "Seams are taken as sound and full; the test is for finding a cold lap or a pinhole.",
        ]);

    private static string Fold(LeakTest test)
    {
        var stress = $"the largest stress in shell and ends at full vacuum is about {FigureText.Of(test.VacuumStress)} MPa.";
        return test.BearsVacuum
            ? $"Full vacuum ({FigureText.Of(Air.Atmosphere / PascalsPerMillibar)} mbar, all the suction that there can be) does not fold "
                + $"the shell; {stress}"
            : $"Suction is never more than full vacuum, {FigureText.Of(Air.Atmosphere / PascalsPerMillibar)} mbar; {stress}";
    }

    private static IEnumerable<Figure> Figures(LeakTest test)
    {
        var (design, shell) = (test.Design, test.Design.Shell);
        var metal = Strengths.Of(shell.Material);
        FigureInput pressure = new("p", "test pressure", design.LeakTest.Pressure / PascalsPerMillibar, "mbar", "leak_test.pressure");
        yield return new(
            "shell-stress", "s", "largest stress in the shell at the test", test.ShellStress, "MPa",
            shell.IsPlain ? "s = K p D / 2t" : "s = K p D / 2t, of a cone K p D / 2t cos(a) on its wide end; the greatest of its parts",
            [pressure, Hole(test, null), new("D", shell.IsPlain ? "mean diameter" : "mean diameter where it is widest",
                test.MeanDiameter, "mm", "shell"), new("t", "wall", shell.Wall, "mm", "shell.wall")],
            $"{ThinWalls.ThinSource}; {ThinWalls.HoleSource}",
            new("D/t above 20, away from ends", test.MeanDiameter > 20 * shell.Wall));
        foreach (var figure in test.Heads.SelectMany(head => End(test, head, pressure)))
            yield return figure;

        yield return new(
            "test-margin", "", "least margin at the test against the yield of metal as welded",
            test.Margins().Min(margin => margin.Bears / margin.Stress), "", "yield / stress, the least of shell and ends",
            [pressure], metal.Source, new("static; margins below 2 leave nothing for flaws", true));
        if (!test.BearsVacuum)
            yield return Collapse(test, metal);
        yield return new(
            "vacuum-stress", "s", "largest stress in shell and ends at full vacuum", test.VacuumStress, "MPa",
            "the largest stress at the test times Pa / p",
            [pressure, new("Pa", "pressure of the air", Air.Atmosphere / PascalsPerMillibar, "mbar", "standard air")],
            "the formulas of shell and ends, which are linear in the pressure",
            new("elastic, shell and ends keep their shape", test.VacuumStress < metal.Yield));
        yield return Energy("energy-air", "energy set free if it bursts full of air",
            StoredEnergy.Air(design.LeakTest.Pressure, test.Volume),
            StoredEnergy.AirIsothermal(design.LeakTest.Pressure, test.Volume),
            "U = P V / 0.4 (1 - (Pa / P)^0.2857); at most P V ln(P / Pa)", test, pressure);
        var water = StoredEnergy.Water(design.LeakTest.Pressure, test.Volume);
        yield return Energy(
            "energy-water", "energy set free if it bursts full of water, without a bubble", water, water, "U = p^2 V / 2K", test, pressure);
    }

    private static IEnumerable<Figure> End(LeakTest test, Head head, FigureInput pressure)
    {
        var (name, hole) = (head.Name, Hole(test, head.End));
        FigureInput wall = new("t", "thickness", head.Thickness, "mm", head.Path);
        if (test.EndDeflection(head) is not { } bends)
        {
            yield return new(
                $"{name}-stress", "s", $"largest stress in the {name} at the test", test.EndStress(head), "MPa", head.StressFormula,
                [pressure, hole, new("D", "mean diameter", test.Rim(head).OutsideDiameter - head.Thickness, "mm", head.Path), wall],
                $"{ThinWalls.DishSource}; {ThinWalls.HoleSource}",
                new("D/t above 20, away from the rim; gores as round as the sphere", test.Rim(head).OutsideDiameter > 21 * head.Thickness));
            yield break;
        }

        var (validity, metal) = (
            new Validity(
                "bends by less than half its thickness, radius above 10 thicknesses; beyond that it bends less than calculated",
                bends.High <= head.Thickness / 2 && test.Free(head) >= 10 * head.Thickness),
            Strengths.Of(head.Material));
        FigureInput radius = new("a", "free radius", test.Free(head), "mm", "shell");
        yield return new(
            $"{name}-stress", "s", $"largest stress in the flat {name} at the test", test.EndStress(head), "MPa", head.StressFormula,
            [pressure, hole, radius, wall, new("nu", "Poisson's ratio", metal.Poisson, "", "a table of metals")],
            $"{ThinWalls.PlateSource}; {ThinWalls.HoleSource}", validity);
        yield return new(
            $"{name}-bends", "w", $"bulge of the flat {name} at the test", bends, "mm",
            "w = p a^4 / 64 D clamped; (5 + nu) / (1 + nu) times that simply supported; D = E t^3 / 12 (1 - nu^2)",
            [pressure, radius, wall, new("E", "elasticity", metal.Elasticity, "MPa", "a table of metals")],
            ThinWalls.PlateSource, validity);
    }

    /// <summary>Where a part of its range is more suction than there can be, full vacuum stands for that.</summary>
    private static Figure Collapse(LeakTest test, Strength metal) => new(
        "collapse", "pc", "suction at which the shell may fold; 1013 mbar is full vacuum",
        test.ShellCollapse.Through(suction => Math.Min(suction, Air.Atmosphere) / PascalsPerMillibar), "mbar",
        "pc = k 2.42 E (t/D)^2.5 / ((1 - nu^2)^0.75 (L/D - 0.45 (t/D)^0.5)), at least a long tube's 2 E / (1 - nu^2) (t/D)^3; k = 0.2, "
            + "0.5, 1",
        [
            new("D", "mean diameter", test.MeanDiameter, "mm", "shell"),
            new("t", "wall", test.Design.Shell.Wall, "mm", "shell.wall"),
            new("L", "length between the ends", test.Design.Shell.Height, "mm", "shell.height"),
            new("E", "elasticity", metal.Elasticity, "MPa", "a table of metals"),
        ],
        ThinWalls.CollapseSource,
        new("elastic: stress at collapse below the yield; ends that stay round", Elastic(test, metal)));

    private static FigureInput Hole(LeakTest test, VesselEnd? end) =>
        new("K", "stress at the edge of a port over that away from it", test.HoleFactor(end), "", "ports");

    private static bool Elastic(LeakTest test, Strength metal) =>
        ThinWalls.Hoop(Math.Min(test.ShellCollapse.High, Air.Atmosphere) * 1e-6, test.MeanDiameter, test.Design.Shell.Wall) < metal.Yield;

    private static Figure Energy(
        string name, string title, double likely, double high, string formula, LeakTest test, FigureInput pressure) => new(
        name, "U", title, new(likely, likely, high), "J", formula,
        [pressure, new("V", "volume to the brim", test.Volume * 1000, "L", "capacity")],
        StoredEnergy.Source, new("whole vessel at once; fragments left out", true));
}
