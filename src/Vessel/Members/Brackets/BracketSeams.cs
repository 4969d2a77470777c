using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Members.Brackets;

/// <summary>What the welds of all brackets share.</summary>
internal static class BracketSeams
{
    /// <summary>Places looked at along a weld to find the sheets below it: none is narrower than a wall.</summary>
    private const int Samples = 48;

    /// <summary>Where it is set before it is tacked: by its tabs, or else as said.</summary>
    public static string FitUp(BracketDesign bracket, string other) =>
        bracket.Tabs is null ? other : $"the tabs of {bracket.Name} in their slots; weld over them: a slot left open leaks; ";

    /// <summary>What a weld of a bracket joins: the sheets of the shell that it runs over, and the bracket.</summary>
    public static ImmutableArray<string> Between(
        BracketDesign bracket, VesselDesign vessel, Interval domain, Func<double, Station> along) => Joint.Sides(
        Names.ShellParts(Enumerable.Range(0, Samples + 1).Select(i => along(domain.At((double)i / Samples)).Root), bracket.Height, vessel),
        [Slug.Of(bracket.Name)]);
}
