using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Function;

/// <summary>On a plate that stands on the shell: bent about its thin side, its bolts square to it.</summary>
/// <remarks>
/// Bolted flat to something stiff, the plate is a leaf from its bolts to the shell, and the vessel a stiff body on the leaf's end:
/// at the bolts M = F e with e from there to the centre of mass, at the narrowest width. A force of 1 at the distance c beyond a
/// leaf of length l moves by (l^3 / 3 + l^2 c + l c^2) / (E I).
/// </remarks>
internal sealed record PlateLoad(PlateSite Site, Weight Full, double Acceleration, double WeldLength, double Throat)
    : BracketLoad(Full, Acceleration, WeldLength, Throat)
{
    public static PlateLoad Of(PlateBracket bracket, Assembly assembly, Weight full)
    {
        var weld = assembly.Welds.First(w => w.Joint.Path == WeldNumbers.OfBracket(bracket)[0]);
        return new(PlateSite.Of(bracket, assembly.Design), full, assembly.Design.Mounting.Acceleration, weld.Length, weld.Joint.Throat);
    }

    public PlateBracket Bracket => Site.Bracket;

    public override BracketDesign Design => Bracket;

    public override (string Member, string Welds) Words => ("its plate", "the welds of its two sides");

    /// <summary>Arm: X along the coped edge, Y towards the vessel, Z square to the plate, from its middle.</summary>
    public override BoltGroup Group => new(
        Bracket.Bolts, Site.Way.ToLocal(Full.Centre) - new Vector3(0, -BoltLevel, 0), new(Width, Bracket.Depth), Force);

    public override double WeldsApart => Bracket.Thickness;

    public override double WeldReach => (Site.Way.ToLocal(Full.Centre) + new Vector3(0, Site.Cope.Level(0), 0)).Length;

    /// <summary>The narrowest width between bolts and shell, less no hole: at the bolts the plate lies on what it is bolted to, mm.</summary>
    public double Width => Math.Min(Bracket.Width, Bracket.Width + (Bracket.BoltsAt / Bracket.Depth * (Bracket.FreeWidth - Bracket.Width)));

    /// <summary>From the bolt nearest to the shell to the shell, mm; the leaf that is bent.</summary>
    public double Length => Math.Max(0, Bracket.BoltsAt - (Bracket.Bolts.Up / 2));

    private double BoltLevel => Site.Cope.Level(0) + Bracket.BoltsAt;

    public override Amount MemberStress => Force * Reach / (Width * Bracket.Thickness * Bracket.Thickness / 6);

    /// <summary>From the bolts to the centre of mass, mm.</summary>
    private double Reach => Arm.Length;

    /// <summary>Hz: as a leaf that bears the vessel on its end; the shell that gives is not in it.</summary>
    public double Frequency(double elasticity)
    {
        var inertia = Width * Math.Pow(Bracket.Thickness, 3) / 12;
        var (l, c) = (Length, WeldReach);
        var give = ((l * l * l / 3) + (l * l * c) + (l * c * c)) / (elasticity * inertia);
        // N/mm is 1000 N/m.
        return Math.Sqrt(1000 / give / (Full.Mass * 1e-3)) / Turns.Full;
    }

    public override Figure MemberMargin(FigureInput force, StrengthOfMember metal, Validity statics) => MountFigures.Margin(
        "plate-margin", "margin of the plate in bending, as welded", MemberStress, metal.Yield,
        "sigma = F e / (b t^2 / 6)",
        [
            force,
            new("e", "from the bolts to the centre of mass", Reach, "mm", "bolts.from_shell"),
            new("b", "narrowest width", Width, "mm", $"{Bracket.Path}.width"),
            new("t", "thickness", Bracket.Thickness, "mm", $"{Bracket.Path}.thickness"),
        ],
        metal.Source, statics);

    public override Figure FrequencyFigure(double elasticity) => new(
        "mount-frequency", "f", "first natural frequency of the full vessel on its plate", Frequency(elasticity), "Hz",
        "f = sqrt(E I / (M (l^3 / 3 + l^2 c + l c^2))) / (2 pi), I = b t^3 / 12",
        [
            new("E", "elasticity", elasticity, "MPa", "a table of metals"),
            new("l", "from shell to the nearest bolts", Length, "mm", "bolts.from_shell"),
            new("c", "from the coped edge to the centre of mass", WeldReach, "mm", "the full vessel"),
            MassInput,
        ],
        "a leaf spring with a stiff body on its end: derived here",
        new("stiff shell, bolted flat to something stiff, held by this plate alone: a thin shell lowers it, a second bracket raises it", true));
}
