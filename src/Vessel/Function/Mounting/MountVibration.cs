using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>What shakes the mounted vessel, against its first natural frequency, and what its welds stand of it.</summary>
internal static class MountVibration
{
    /// <summary>Idle over rated speed. Common practice, no source.</summary>
    private const double Idle = 0.2;

    /// <summary>Orders of the engine's turns: half for four strokes, the others as cylinders fire.</summary>
    private static readonly ImmutableArray<double> _orders = [0.5, 1, 1.5, 2, 3, 4, 6];

    public static FigureTable Table(Mount mount, EngineDesign? engine) => new(
        "vibration", $"sources of vibration ({ShakeTest.Source}; engine orders from idle, taken as a fifth of the rated speed)", "by",
        [
            new("from_hz", "from", "Hz"), new("to_hz", "to", "Hz"), new("amplitude_g", "amplitude", "g"),
            new("meets_rpm", "meets the natural frequency at", "rpm"),
        ],
        [.. Sources(engine).Select(source => new FigureRow(
            source.Name, [source.From, source.To, source.Amplitude, source.Order is { } order ? Met(mount, order, engine!) : null]))]);

    /// <summary>Which of them meet the natural frequency, in a sentence.</summary>
    public static string Words(Mount mount, EngineDesign? engine)
    {
        var frequency = mount.Frequency;
        var met = Sources(engine).Where(source => source.From <= frequency.High && source.To >= frequency.Low).Select(source => source.Name)
            .ToList();
        var rings = $"The full vessel's first natural frequency on its mounting is {FigureText.Of(frequency, "Hz")}";
        return met.Count == 0
            ? $"{rings}: clear of {string.Join(", ", Sources(engine).Select(source => source.Name))}."
            : $"{rings}: within reach of {string.Join(", ", met)}. Shaken there the vessel swings five to ten times as far as its support "
                + "[practice]. A stiffer bracket lifts the frequency, a nearer centre of mass too.";
    }

    /// <summary>Amplitude at the vessel, in multiples of gravity: the least of toe and root of all brackets.</summary>
    public static Figure Endurance(Mount mount, VesselDesign design)
    {
        var acceleration = design.Mounting.Acceleration;
        // A range is twice an amplitude.
        double Borne(double fat, double stress) => WeldFatigue.Limit * fat / (2 * stress / acceleration);
        var metal = WeldFatigue.Of(design.Shell.Material.Family);
        double Least(double toe, Func<MountLoad, double> wall) => mount.Loads.Min(load =>
            Math.Min(Borne(toe, wall(load)), Borne(metal.Root, load.WeldBending)));
        return new(
            "fatigue-acceleration", "a", "amplitude of steady shaking that the welds of the mounting stand for ten million cycles",
            new(
                Least(metal.ToeLow, load => load.WallStress.High),
                Least(metal.ToeLow, load => load.WallStress.Likely),
                Least(metal.ToeHigh, load => load.WallStress.Low)),
            "g", "a = 0.585 FAT / (2 s / a0), the less of the shell's face at the toe and the throat, with its bending, at its root; 0.585 "
                + "= (2 / 10)^(1/3)",
            [
                new("FAT", "class at the toe", new(metal.ToeLow, metal.ToeLow, metal.ToeHigh), "MPa", "IIW"),
                new("FATw", "class of the throat, bent", metal.Root, "MPa", "IIW"),
                new("a0", "acceleration that s is for", acceleration, "g", "mounting.acceleration"),
                new(
                    "s", "greatest stress in the shell's wall", mount.Loads.Select(load => load.WallStress).MaxBy(stress => stress.Likely),
                    "MPa",
                    "wall-margin"),
                new("sw", "greatest stress on a throat, bent", mount.Loads.Max(load => load.WeldBending), "MPa",
                    "weld-margin with its bending"),
            ],
            WeldFatigue.Source,
            new("sound welds, undressed, dry; nineteen of twenty bear more; salt water about halves it", true));
    }

    private static double? Met(Mount mount, double order, EngineDesign engine) =>
        60 * mount.Frequency.Likely / order is var speed && speed >= Idle * engine.Speed && speed <= engine.Speed ? speed : null;

    private static IEnumerable<(string Name, double From, double To, double? Amplitude, double? Order)> Sources(EngineDesign? engine)
    {
        foreach (var test in engine is null ? [ShakeTest.General] : new[] { ShakeTest.General, ShakeTest.OnEngine })
            yield return (test.Name, test.From, test.To, test.Amplitude, null);
        if (engine is null)
            yield break;
        foreach (var order in _orders)
            yield return ($"engine order {FigureText.Of(order)}", order * Idle * engine.Speed / 60, order * engine.Speed / 60, null, order);
    }
}
