using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;

namespace Vessel.Heads.Dishes;

/// <summary>Equal strips from rim to a polar cap, rolled along the meridian and welded to each other.</summary>
/// <param name="Count">Number of gores, at least 6.</param>
/// <param name="CapDiameter">Chord of the polar cap, across the middle of the wall, mm: a gore's tip can be neither
/// cut nor welded.</param>
/// <param name="SeamAngle">Angle of the first seam, radians in [0, 2 pi).</param>
public sealed record GoreDesign(string Path, int Count, double CapDiameter, double SeamAngle)
{
    public SheetSeams Seams => new(SeamAngle, Count);

    /// <summary>Gores of the dish; those that nothing stands in come first.</summary>
    internal ImmutableArray<SheetPiece> Pieces(VesselEnd end, VesselDesign vessel) => SheetPiece.Divided(
        GoreOf(Names.Of(end)),
        GoreOf(Names.Of(end)),
        Count,
        vessel.Ports.Where(port => port.End == end && !GorePorts.IsInCap(port, vessel)).ToLookup(port => Seams.SheetAt(port.Place.Angle)),
        []);

    /// <summary>What a gore of the top or bottom is called.</summary>
    public static string GoreOf(string end) => $"{end} gore";

    /// <summary>What the polar cap of the top or bottom is called.</summary>
    public static string CapOf(string end) => $"{end} cap";
}
