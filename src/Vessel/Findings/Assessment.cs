using System.Collections.Immutable;
using Vessel.Function;
using Vessel.Planning;

namespace Vessel.Findings;

/// <summary>What the rules look at, in the order of the rules, then of the file.</summary>
public static class Assessment
{
    /// <summary>All that is ill-advised about a vessel and the work on it.</summary>
    public static ImmutableArray<Measure> Of(Plan plan) => Findings(Measures(plan));

    /// <summary>All that is ill-advised about a vessel.</summary>
    public static ImmutableArray<Measure> Of(Assembly assembly) => Findings(Measures(assembly));

    /// <summary>Those of the measures that do not hold.</summary>
    public static ImmutableArray<Measure> Findings(IEnumerable<Measure> measures) => [.. measures.Where(measure => !measure.Holds)];

    /// <summary>The measures of a vessel and of the work on it, whether or not they hold.</summary>
    public static IEnumerable<Measure> Measures(Plan plan) =>
        [.. Measures(plan.Assembly), .. AccessRules.Of(plan), .. FixtureRules.Of(plan)];

    /// <summary>The measures of a vessel, whether or not they hold.</summary>
    public static IEnumerable<Measure> Measures(Assembly assembly) =>
    [
        .. FitRules.Of(assembly),
        .. SlipRules.Of(assembly),
        .. LigamentRules.Of(assembly),
        .. OutsideRules.Of(assembly),
        .. InsertionRules.Of(assembly),
        .. ShellRules.Of(assembly),
        .. StockRules.Of(assembly),
        .. assembly.Chamber.Heads.SelectMany(head => head.Measures),
        .. assembly.Chamber.Heads.SelectMany(head => head.FormingMeasures),
        .. HoleRules.Of(assembly),
        .. VentRules.Of(assembly),
        .. PurposeRules.Of(assembly),
        .. LiquidRules.Of(assembly),
        .. InsideRules.Of(assembly),
        .. InsideClashRules.Of(assembly),
        .. FlowRules.Of(assembly),
        .. DutyRules.Of(assembly),
        .. assembly.Members.OfType<IAssessed>().SelectMany(member => member.Measures(assembly)),
        .. FlangeRules.Of(assembly),
        .. PatternRules.Of(assembly),
        .. RoomRules.Of(assembly),
        .. MockupRules.Of(assembly),
    ];
}
