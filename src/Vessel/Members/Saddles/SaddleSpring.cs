using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Parts;

namespace Vessel.Members.Saddles;

/// <summary>Spring of a saddle: ears bent about their thin side, the plate against what it is bolted to.</summary>
/// <remarks>
/// The force half on each ear, which bends as a leaf of length l that is clamped at the plate and held by the wall at the shell: with k the
/// moment on each mm that turns the wall by a radian, p = k l / (E t^3 / 12) and h = p / (1 + p), the moment is F l / 4 (2 - h) at the
/// plate and F l / 4 h at the shell, and the ears give l^3 (1 / 3 - h / 4) / 2 E I. h is 0 at a hinge and 1 at a clamp. A moment about the
/// line between the ears is a pull in one and a push in the other. Derived.
/// </remarks>
internal sealed record SaddleSpring(SaddleSite Site, Carrier Carrier, WeldGroup Welds, WallUnder Wall) : MountSpring(Carrier, Welds, Wall)
{
    public SaddleDesign Bracket => Site.Bracket;

    public override (string Member, string Welds, string Wall, string Bent, string BentWelds) Words => (
        "the bracket's ears", "the welds of the bracket's ears", "the shell's wall under the bracket's ears",
        "the ears", "the ears' welds");

    public override string MemberName => "ear";

    public override string Warning =>
        "An ear has a fillet on one side only, and bends it about its root: one blow turns that into a hinge and no more, steady shaking "
            + "opens it from the root.";

    /// <summary>Length from the shell to the plate, mm: at most, where the ear's end follows the shell.</summary>
    public double EarLength => Site.BackLevel - Site.EarEnd;

    public override (string Formula, FigureInput[] Inputs) MemberFormula => (
        "sigma = (F l / 4) (2 - h) / (b t^2 / 6), F / 2 b t and M / D b t, their pull, added; h = p / (1 + p), p = k l / (E t^3 / 12), 0 "
            + "at a hinge, 1 at a clamp",
        [
            new("h", "hold of the wall on the ears' ends", new(0, Hold(EndHold.Elastic), 1), "", "the formula"),
            new("l", "from shell to plate", EarLength, "mm", $"{Bracket.Path}.stand_off"),
            new("b", "width of an ear", Site.BendLength, "mm", Bracket.Path),
            new("t", "thickness", Bracket.Thickness, "mm", $"{Bracket.Path}.thickness"),
        ]);

    public override BoltGroup Bolts(Wrench load) => new(
        Bracket.Bolts,
        new(Bracket.Width, Bracket.PlateHeight),
        load.At(Welds.Centre, Site.Way.ToOuter(new(0, 0, Site.BackLevel + Bracket.Thickness))).In(Site.Way));

    public override double MemberStress(Wrench load, EndHold hold)
    {
        var here = load.In(Site.Way);
        var tilt = Site.AtSides ? here.My : here.Mx;
        var (area, modulus) = (Site.BendLength * Bracket.Thickness, Site.BendLength * Bracket.Thickness * Bracket.Thickness / 6);
        return Wrench.Worst(
            EarLength / 4 * (2 - Hold(hold)) / modulus * Sway(load), 1 / (2 * area) * here.Fz, 1 / (Site.Overall * area) * tilt);
    }

    public override Vector3 Bent(Wrench load, EndHold hold) => EarLength / 4 * Hold(hold) / Site.BendLength * Sway(load);

    /// <summary>Along, across and in pull an ear is stiff.</summary>
    public override SmallMatrix Bends(EndHold hold)
    {
        var inertia = Site.BendLength * Math.Pow(Bracket.Thickness, 3) / 12;
        var bends = new SmallMatrix(6, 6);
        var thin = (Site.AtSides ? Site.Way.X : Site.Way.Y, Vector3.Zero);
        Add(bends, Math.Pow(EarLength, 3) * ((1.0 / 3) - (Hold(hold) / 4)) / (2 * Elasticity * inertia), thin, thin);
        return bends;
    }

    private Vector3 Sway(Wrench load) => load.In(Site.Way) is var here && Site.AtSides ? here.Fx : here.Fy;

    private double Hold(EndHold hold)
    {
        var share = Wall.Turns * EarLength / (Elasticity * Math.Pow(Bracket.Thickness, 3) / 12);
        return hold switch
        {
            EndHold.Hinged => 0,
            EndHold.Clamped => 1,
            _ => share / (1 + share),
        };
    }
}
