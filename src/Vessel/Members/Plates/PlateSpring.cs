using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Members.Plates;

/// <summary>Spring of a plate that stands on the shell: bent about its thin side, its bolts square to it.</summary>
/// <remarks>
/// Bolted flat to something stiff, the plate is a leaf from its nearest bolts to the shell. On its end a force square to it moves it by
/// l^3 / 3 E I and turns it by l^2 / 2 E I, a moment by l^2 / 2 E I and l / E I; twisted it turns by l / G J, J = b t^3 / 3.
/// </remarks>
internal sealed record PlateSpring(PlateSite Site, Carrier Carrier, WeldGroup Welds, WallUnder Wall) : MountSpring(Carrier, Welds, Wall)
{
    public PlateDesign Bracket => Site.Bracket;

    public override (string Member, string Welds, string Wall, string Bent, string BentWelds) Words => (
        "the bracket's plate", "the welds of the bracket's two sides", "the shell's wall under the bracket's plate",
        "the plate", "the plate's welds");

    public override string MemberName => "plate";

    /// <summary>
    /// The narrowest width between bolts and shell, less no hole: at the bolts the plate lies on what it is bolted to, mm.
    /// </summary>
    public double Width => Math.Min(Bracket.Width, Bracket.Width + (Bracket.BoltsAt / Bracket.Depth * (Bracket.FreeWidth - Bracket.Width)));

    /// <summary>Length from the bolt nearest to the shell to the shell, mm; the leaf that is bent.</summary>
    public double Length => Math.Max(0, Bracket.BoltsAt - (Bracket.Bolts.Up / 2));

    public override (string Formula, FigureInput[] Inputs) MemberFormula => (
        "sigma = Mx / (b t^2 / 6) + Mz / (t b^2 / 6) + Fy / b t, tau = 3 My / b t^2; sqrt(sigma^2 + 3 tau^2), the more of at the bolts and "
            + "at the shell",
        [
            new("b", "narrowest width", Width, "mm", $"{Bracket.Path}.width"),
            new("t", "thickness", Bracket.Thickness, "mm", $"{Bracket.Path}.thickness"),
            new("l", "from shell to the nearest bolts", Length, "mm", "bolts.from_shell"),
        ]);

    public override BoltGroup Bolts(Wrench load) => new(
        Bracket.Bolts,
        new(Width, Bracket.Depth),
        load.At(Welds.Centre, Site.Way.ToOuter(new(0, -Site.Cope.Level(0) - Bracket.BoltsAt, 0))).In(Site.Way));

    public override double MemberStress(Wrench load, EndHold hold)
    {
        var t = Bracket.Thickness;
        return new[] { 0, Length }.Max(outward =>
        {
            var here = load.At(Welds.Centre, Site.Way.ToOuter(new(0, -Site.Cope.Level(0) - outward, 0))).In(Site.Way);
            var stress = Wrench.Worst(6 / (Width * t * t) * here.Mx, 6 / (t * Width * Width) * here.Mz, 1 / (Width * t) * here.Fy);
            var shear = 3 / (Width * t * t) * here.My.Length;
            return Math.Sqrt((stress * stress) + (3 * shear * shear));
        });
    }

    /// <summary>Fillets on both sides bear a moment as a couple.</summary>
    public override Vector3 Bent(Wrench load, EndHold hold) => Vector3.Zero;

    public override SmallMatrix Bends(EndHold hold)
    {
        var (l, way, metal) = (Length, Site.Way, Strengths.Of(Bracket.Material));
        var bending = metal.Elasticity * Width * Math.Pow(Bracket.Thickness, 3) / 12;
        var twisting = metal.Elasticity / (2 * (1 + metal.Poisson)) * Width * Math.Pow(Bracket.Thickness, 3) / 3;
        var bends = new SmallMatrix(6, 6);
        // From the bolts to the shell a leaf runs along Y; a slope towards Z is a turn about Y x Z.
        var (push, turn, twist) = ((way.Z, Vector3.Zero), (Vector3.Zero, way.Y.Cross(way.Z)), (Vector3.Zero, way.Y));
        Add(bends, l * l * l / (3 * bending), push, push);
        Add(bends, l * l / (2 * bending), push, turn);
        Add(bends, l * l / (2 * bending), turn, push);
        Add(bends, l / bending, turn, turn);
        Add(bends, l / twisting, twist, twist);
        return bends;
    }
}
