using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>The welds of whatever the vessel is bolted up by.</summary>
internal static class BracketSeams
{
    public static ImmutableArray<Joint> Of(BracketDesign bracket, VesselDesign vessel, WeldNumbers welds) => bracket switch
    {
        SaddleBracket saddle => SaddleSeam.Of(saddle, vessel, welds),
        PlateBracket plate => PlateSeam.Of(plate, vessel, welds),
        _ => throw new ArgumentOutOfRangeException(nameof(bracket)),
    };
}
