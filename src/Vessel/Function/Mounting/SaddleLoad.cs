using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Function;

/// <summary>On a saddle: ears bent about their thin side, the plate against what it is bolted to.</summary>
/// <remarks>
/// The force half on each ear; built in at plate and shell they bend as a frame, M = F L / 4, at worst as cantilevers,
/// M = F L / 2.
/// </remarks>
internal sealed record SaddleLoad(SaddleSite Site, Weight Full, double Acceleration, double WeldLength, double Throat)
    : BracketLoad(Full, Acceleration, WeldLength, Throat)
{
    public static SaddleLoad Of(SaddleBracket bracket, Assembly assembly, Weight full)
    {
        var weld = assembly.Welds.First(w => w.Joint.Path == WeldNumbers.OfBracket(bracket)[0]);
        return new(SaddleSite.Of(bracket, assembly.Design), full, assembly.Design.Mounting.Acceleration, weld.Length, weld.Joint.Throat);
    }

    public SaddleBracket Bracket => Site.Bracket;

    public override BracketDesign Design => Bracket;

    public override (string Member, string Welds) Words => ("its ears", "the welds of its ears");

    /// <summary>Arm: X along the girth, Y up, Z out of the vessel, from the plate's outer face.</summary>
    public override BoltGroup Group => new(
        Bracket.Bolts,
        Site.Way.ToLocal(Full.Centre) - new Vector3(0, 0, Site.BackLevel + Bracket.Thickness),
        new(Bracket.Width, Bracket.PlateHeight),
        Force);

    public override double WeldsApart => Site.Overall;

    public override double WeldReach => (Site.Way.ToLocal(Full.Centre) - new Vector3(0, 0, Site.ShellRadius)).Length;

    /// <summary>From the shell to the plate, mm: at most, where the ear's end follows the shell.</summary>
    public double EarLength => Site.BackLevel - Site.EarEnd;

    /// <summary>As a frame, and at most as cantilevers.</summary>
    public override Amount MemberStress
    {
        get
        {
            var modulus = Site.BendLength * Bracket.Thickness * Bracket.Thickness / 6;
            var frame = Force * EarLength / 4 / modulus;
            return new(frame, frame, 2 * frame);
        }
    }

    /// <summary>Hz: ears as two leaves, built in at both ends (high), at one (low); the shell that gives is not in it.</summary>
    public Amount Frequency(double elasticity)
    {
        var inertia = Site.BendLength * Math.Pow(Bracket.Thickness, 3) / 12;
        // N/mm is 1000 N/m.
        double Hertz(double ends) => Math.Sqrt(
            1000 * 2 * ends * elasticity * inertia / Math.Pow(EarLength, 3) / (Full.Mass * 1e-3)) / Turns.Full;
        return new(Hertz(3), Hertz(6), Hertz(12));
    }

    public override Figure MemberMargin(FigureInput force, StrengthOfMember metal, Validity statics) => MountFigures.Margin(
        "ear-margin", "margin of the ears in bending, as welded", MemberStress, metal.Yield,
        "sigma = F l / 4 / (b t^2 / 6) as a frame; twice that as cantilevers",
        [
            force,
            new("l", "from shell to plate", EarLength, "mm", $"{Bracket.Path}.stand_off"),
            new("b", "width of an ear", Site.BendLength, "mm", Bracket.Path),
            new("t", "thickness", Bracket.Thickness, "mm", $"{Bracket.Path}.thickness"),
        ],
        metal.Source, statics);

    public override Figure FrequencyFigure(double elasticity) => new(
        "mount-frequency", "f", "first natural frequency of the full vessel on its ears", Frequency(elasticity), "Hz",
        "f = sqrt(2 c E I / (l^3 M)) / (2 pi), I = b t^3 / 12; c = 3, 6, 12: held at one end, between, at both",
        [
            new("E", "elasticity", elasticity, "MPa", "a table of metals"),
            new("l", "from shell to plate", EarLength, "mm", $"{Bracket.Path}.stand_off"),
            MassInput,
        ],
        "two leaf springs; the range by how they are held: derived here",
        new("stiff shell, stiff wall: a thin shell or a weak wall lowers it; an engine shakes at its speed and its multiples", true));
}
