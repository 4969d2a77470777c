using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>The welds of whatever the vessel is bolted up by.</summary>
internal static class BracketSeams
{
    /// <summary>Of a weld, to find the sheets below it: none is narrower than a wall.</summary>
    private const int Samples = 48;

    public static ImmutableArray<Joint> Of(BracketDesign bracket, VesselDesign vessel) => bracket switch
    {
        SaddleBracket saddle => SaddleSeam.Of(saddle, vessel),
        PlateBracket plate => PlateSeam.Of(plate, vessel),
        _ => throw new ArgumentOutOfRangeException(nameof(bracket)),
    };

    /// <summary>What a weld of a bracket joins: the sheets of the shell that it runs over, and the bracket.</summary>
    public static ImmutableArray<string> Between(BracketDesign bracket, VesselDesign vessel, Interval domain, Func<double, Station> along) => Joint.Sides(
        Names.ShellParts(Enumerable.Range(0, Samples + 1).Select(i => along(domain.At((double)i / Samples)).Root), bracket.Height, vessel),
        [Slug.Of(bracket.Name)]);
}
