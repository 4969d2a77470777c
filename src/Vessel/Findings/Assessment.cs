using System.Collections.Immutable;
using Vessel.Planning;

namespace Vessel.Findings;

/// <summary>All that is ill-advised about a vessel, in the order of the rules, then of the file.</summary>
public static class Assessment
{
    /// <summary>With what the day's work shows.</summary>
    public static ImmutableArray<Finding> Of(Plan plan) => [.. Of(plan.Assembly), .. AccessRules.Of(plan), .. FixtureRules.Of(plan)];

    public static ImmutableArray<Finding> Of(Assembly assembly) =>
    [
        .. FitRules.Of(assembly),
        .. SlipRules.Of(assembly),
        .. LigamentRules.Of(assembly),
        .. OutsideRules.Of(assembly),
        .. InsertionRules.Of(assembly),
        .. ShellRules.Of(assembly),
        .. StockRules.Of(assembly),
        .. HeadRules.Of(assembly),
        .. TemperRules.Of(assembly),
        .. GoreRules.Of(assembly),
        .. HoleRules.Of(assembly),
        .. PortRules.Of(assembly),
        .. InsideRules.Of(assembly),
        .. InsideClashRules.Of(assembly),
        .. FlowRules.Of(assembly),
        .. DutyRules.Of(assembly),
        .. SaddleRules.Of(assembly),
        .. PlateRules.Of(assembly),
        .. StrapRules.Of(assembly),
        .. FlangeRules.Of(assembly),
        .. PatternRules.Of(assembly),
        .. DiscRules.Of(assembly),
        .. RoomRules.Of(assembly),
        .. MockupRules.Of(assembly),
    ];
}
