using MathNet.Numerics.Integration;

namespace Vessel.Geometry;

/// <summary>
/// The metal between two faces of revolution, cut straight from one to the other at both ends of their profiles; either may begin
/// on the axis. mm.
/// </summary>
/// <remarks>By Green's theorem round the section: the volume is pi times the integral of r^2 dz, its moment that of r^2 z dz.</remarks>
public sealed record WallZone(Profile Outer, Profile Inner)
{
    /// <summary>Enough for a piece that turns through a quarter turn to be told to the last digits.</summary>
    private const int Points = 64;

    /// <summary>Closed form but for parallels of ellipses, mm3.</summary>
    public double Volume => Outer.Volume + Rim.Volume - Inner.Volume - Foot.Volume;

    /// <summary>Height of the centre of its mass.</summary>
    public double Centre => (Moment(Outer) + Moment(Rim) - Moment(Inner) - Moment(Foot)) / Volume;

    /// <summary>Mean distance of its metal from the axis: twice pi a third of the integral of r^3 dz, over the volume.</summary>
    public double MeanRadius => (Third(Outer) + Third(Rim) - Third(Inner) - Third(Foot)) / Volume;

    private Profile Rim => new(new LinePiece(Outer.End, Inner.End));

    private Profile Foot => new(new LinePiece(Outer.Start, Inner.Start));

    private static double Moment(Profile profile) => Over(profile, (r, z) => Math.PI * r * r * z);

    private static double Third(Profile profile) => Over(profile, (r, _) => Turns.Full / 3 * r * r * r);

    /// <summary>The integral of a function of (r, z) over dz.</summary>
    private static double Over(Profile profile, Func<double, double, double> of) => profile.Pieces.Sum(piece => GaussLegendreRule.Integrate(
        along =>
        {
            var (r, z) = piece.At(along);
            return of(r, z) * piece.Normal(along).U;
        },
        0,
        piece.Length,
        Points));
}
