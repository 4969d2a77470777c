using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>What a rule book asks a catch can to hold.</summary>
/// <param name="Name">Name by which the file calls it.</param>
/// <param name="Steps">For engines up to so many litres, the volume in litres; ascending.</param>
public sealed record CatchRule(string Name, ImmutableArray<(double UpTo, double Volume)> Steps, string Source)
{
    /// <summary>L.</summary>
    public double Volume(double displacement) => Steps.First(step => displacement <= step.UpTo).Volume;
}

/// <summary>Rule books as data. They change by the year and the class: the event's own book decides.</summary>
public static class CatchRules
{
    public static ImmutableArray<CatchRule> All { get; } =
    [
        new(
            "fia appendix j",
            [(2.0, 2), (double.PositiveInfinity, 3)],
            "FIA Appendix J group A and Appendix K, 2016, by a secondary summary: 2 L up to 2000 cm3, 3 L above, level to be seen"),
    ];

    public static CatchRule? Find(string name) => All.FirstOrDefault(rule => rule.Name == name);
}
