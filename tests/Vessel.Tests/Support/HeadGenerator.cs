using FsCheck;
using FsCheck.Fluent;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Heads.Cones;
using Vessel.Heads.Dishes;
using Vessel.Heads.FlatHeads;

namespace Vessel.Tests.Support;

/// <summary>Every shape of head, spun, of gores, of segments, with and without a straight flange.</summary>
internal static class HeadGenerator
{
    public static Gen<HeadDesign> Of(ShellDesign shell, string end) =>
        from whole in Whole(shell, end)
        from divided in Divided(shell, whole)
        from spun in Spun(shell, divided)
        select spun;

    private static Gen<double> Flange(ShellDesign shell) =>
        Draw.Sometimes(0.5, Draw.Between(0.02, 0.2).Select(share => share * shell.OutsideDiameter), 0);

    private static Gen<double> Thin(ShellDesign shell) => Draw.Between(0.7, 1.3).Select(share => share * shell.Wall);

    private static Gen<HeadDesign> Whole(ShellDesign shell, string end) =>
        from wall in Draw.Between(0.8 * shell.Wall, 2.5 * shell.Wall)
        from thin in Thin(shell)
        from flange in Flange(shell)
        from head in Gen.OneOf(
            Inset(shell, end, wall),
            Draw.Between(0.99, 1.15).Select(wide => (HeadDesign)Designs.Overlay(end, shell.OutsideDiameter * wide, wall)),
            Gen.Constant<HeadDesign>(Designs.Dome(shell, end) with { Wall = thin, Flange = flange }),
            Gen.Constant<HeadDesign>(new EllipsoidHead(end, Designs.Stainless, thin) { Flange = flange }),
            Torisphere(shell, end, thin, flange),
            Cone(end, thin))
        select head;

    private static Gen<HeadDesign> Inset(ShellDesign shell, string end, double wall) =>
        from recess in Draw.Sometimes(0.5, Draw.Between(0, 3 * shell.Wall), 0)
        from clearance in Draw.Between(0, 0.4)
        select (HeadDesign)Designs.Inset(shell, end, wall, recess, clearance);

    private static Gen<HeadDesign> Torisphere(ShellDesign shell, string end, double wall, double flange) =>
        from sizes in Gen.OneOf(
            Gen.Constant((1.0, 0.1)), Gen.Constant((0.8, 0.154)),
            Draw.Between(0.55, 1.2).Zip(Draw.Between(0.05, 0.3)).Select(two => (two.Item1, two.Item2)))
        let crown = sizes.Item1 * shell.OutsideDiameter
        let knuckle = sizes.Item2 * shell.OutsideDiameter
        select (HeadDesign)new TorisphereHead(end, Designs.Stainless, wall, crown, knuckle, null) { Flange = flange };

    private static Gen<HeadDesign> Cone(string end, double wall) =>
        from halfAngle in Draw.Between(15, 70)
        from seam in Draw.Between(0, Turns.Full)
        from gap in Draw.Between(0, 1)
        select (HeadDesign)new ConeHead(end, Designs.Stainless, wall, halfAngle * Math.PI / 180, seam, gap);

    /// <summary>A dish now and then of gores, a cone of segments.</summary>
    private static Gen<HeadDesign> Divided(ShellDesign shell, HeadDesign head) => head switch
    {
        DishedHead dish => Draw.Sometimes(0.4, Gores(shell, dish).Select(gores => (HeadDesign)(dish with { Gores = gores })), dish),
        ConeHead cone => Draw.Sometimes(0.5, Gen.Choose(2, 5).Select(segments => (HeadDesign)(cone with { Segments = segments })), cone),
        _ => Gen.Constant(head),
    };

    /// <summary>The polar cap is from just wider than so many tips want to nearly as wide as the dish.</summary>
    private static Gen<GoreDesign> Gores(ShellDesign shell, DishedHead head) =>
        from count in Gen.Choose(6, 14)
        let least = 1.05 * count * head.Wall / Math.PI
        let most = 0.9 * (shell.OutsideDiameter - (2 * head.Wall))
        from share in Draw.Between(0.2, 1)
        from seam in Draw.Between(0, Turns.Full)
        select new GoreDesign($"{head.Path}.gores", count, least + (share * (most - least)), seam);

    /// <summary>A plate now and then with a flange, a cone with nose and knuckle.</summary>
    private static Gen<HeadDesign> Spun(ShellDesign shell, HeadDesign head) => head switch
    {
        FlatHead => Draw.Sometimes(0.4, Pan(shell, head), head),
        ConeHead cone => Draw.Sometimes(0.5, Toricone(shell, cone), head),
        _ => Gen.Constant(head),
    };

    private static Gen<HeadDesign> Pan(ShellDesign shell, HeadDesign head) =>
        from wall in Thin(shell)
        from flange in Flange(shell)
        from knuckle in Draw.Between(0.03, 0.5)
        select (HeadDesign)new FlangedFlatHead(head.Path, head.Material, wall, shell.InnerRadius * knuckle) { Flange = flange };

    private static Gen<HeadDesign> Toricone(ShellDesign shell, ConeHead cone) =>
        from wall in Thin(shell)
        from flange in Flange(shell)
        from nose in Draw.Between(0.03, 0.4)
        from knuckle in Draw.Between(0.03, 0.4)
        select (HeadDesign)new ToriconeHead(
            cone.Path, cone.Material, wall, cone.HalfAngle, shell.InnerRadius * nose, shell.InnerRadius * knuckle)
        { Flange = flange };
}
