using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Members.Straps;

/// <summary>
/// Two half bands of sheet that are drawn together round the shell by bolts through their ears; held by friction, not welded. The back
/// one is bolted to what carries the vessel.
/// </summary>
/// <param name="Height">Height of its middle, mm in the vessel's frame.</param>
/// <param name="Angle">Round the vessel of the back half's middle, radians; the gaps are a quarter turn on either side.</param>
/// <param name="Thickness">Thickness of the sheet, mm.</param>
/// <param name="Width">Along the vessel's axis, mm.</param>
/// <param name="Gap">Between the ears of both halves before the bolts are drawn up, mm.</param>
/// <param name="Liner">Thickness of what lies between shell and strap, mm; zero for nothing.</param>
/// <param name="Ear">Straight length of an ear beyond its bend, mm.</param>
/// <param name="InsideRadius">Inside radius of the ears' bends, mm.</param>
/// <param name="K">Place of the bends' neutral line as a share of the thickness from the inside.</param>
/// <param name="Bolts">Bolts in the middle of each ear's straight length; slots run along the strip.</param>
public sealed record StrapDesign(
    string Path,
    string Name,
    Material Material,
    double Height,
    double Angle,
    double Thickness,
    double Width,
    double Gap,
    double Liner,
    double Ear,
    double InsideRadius,
    double K,
    BoltsDesign Bolts,
    StrapFeet Feet) : MemberSpec(Path, Name)
{
    /// <summary>What the half is called that carries the vessel.</summary>
    public static string BackOf(string name) => $"{name} back";

    /// <summary>What the other half is called.</summary>
    public static string FrontOf(string name) => $"{name} front";

    /// <summary>Height of the lower edge of the band on the shell, mm.</summary>
    public double Low => Height - (Width / 2);

    public double High => Height + (Width / 2);
}

/// <summary>Beyond the ears of a strap's back half: what it is bolted up by.</summary>
/// <param name="Length">Straight length of each foot, mm.</param>
/// <param name="StandOff">Distance from the shell's outside, at its nearest, to the face that the feet are bolted to, mm: legs are bent
/// back to
/// it. Null where the feet carry the ears straight on.</param>
/// <param name="Bolts">Bolts in the middle of each foot's straight length; slots run along the strip.</param>
public sealed record StrapFeet(string Path, double Length, double? StandOff, BoltsDesign Bolts);
