using Vessel.Design;

namespace Vessel.Parts;

/// <summary>What the vessel is bolted up by, of whatever kind.</summary>
internal static class BracketPart
{
    public static Part Build(BracketDesign bracket, VesselDesign vessel, Welds welds) => bracket switch
    {
        SaddleBracket saddle => SaddlePart.Build(saddle, vessel, welds),
        PlateBracket plate => PlatePart.Build(plate, vessel, welds),
        _ => throw new ArgumentOutOfRangeException(nameof(bracket)),
    };
}
