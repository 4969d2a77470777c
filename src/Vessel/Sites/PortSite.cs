using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Sites;

/// <summary>Where a port stands: its axis in the vessel and its footprints on the two faces of its host.</summary>
/// <param name="Frame">Origin where the axis meets the host's outside, Z along the axis to the free end. X is the
/// side that faces down the shell (on a head: away from the vessel's axis), Y follows by the right hand.</param>
/// <param name="Outside">Footprint on the host's outer face.</param>
/// <param name="Inside">Footprint on the host's inner face.</param>
/// <param name="HostWall">Wall of the host, the thinner one of two, mm.</param>
public sealed record PortSite(PortDesign Port, Frame3 Frame, Footprint Outside, Footprint Inside, double HostWall)
{
    private const int Samples = 120;

    private const int Lines = 720;

    /// <summary>What the port meets in the shell, as if its course had no ends; null in a head.</summary>
    internal ShellFooting? OnShell { get; init; }

    /// <summary>The head over whose seam a port in the shell stands as well; null for others. See <see cref="SeamStraddle"/>.</summary>
    public VesselEnd? Over { get; internal init; }

    /// <summary>
    /// Distance from the axis at which lengths along it count from where a face lies, mm: at a cone's tip, which is cut off, the head's
    /// <see cref="HeadShape.Tip"/>; else zero.
    /// </summary>
    public double AxisRadius { get; internal init; }

    /// <summary>Where the axis meets the host's inside, mm along it.</summary>
    public double InsideAxis => Inside.Reach(AxisRadius, 0);

    /// <summary>Set-in: where the tube's square inner end lies along the axis, mm (negative).</summary>
    public double InnerEnd => InsideAxis - Port.InsideLength;

    /// <summary>Straight stretches of its axis from where it meets the host's outside to the free end.</summary>
    public ImmutableArray<TubeLeg> Legs => TubeLeg.Of(Port, Frame);

    /// <summary>Frame at the free end, Z outward.</summary>
    public Frame3 FreeEnd => Legs[^1].End;

    /// <summary>Along the axis from the host's outside to the free end, round the bend; mm.</summary>
    public double Run => Legs.Sum(leg => leg.Length);

    /// <summary>Radius of the cylinder that the host is opened for.</summary>
    public double OpeningRadius => Port.HoleRadius;

    private bool IsCoaxial => OnShell is null && Port.Place.Radius == 0;

    /// <summary>Whether its axis is not the vessel's, nor parallel to it.</summary>
    public bool Leans => OnShell is not null || (Port.Place is { SquareToSurface: true, Radius: > 0 } && Outside is not PlaneFootprint);

    /// <summary>
    /// The inside length with which a square end is level with the inner face where that lies deepest round the tube, and inside it
    /// everywhere else; mm. Not a number where a line of the tube misses that face.
    /// </summary>
    /// <remarks>
    /// A length that is made: met to about 1e-5 of the tube's radius, a small share of any wall, by lines round the tube; at a pole all are
    /// alike.
    /// </remarks>
    public double ToComeThrough => !Inside.Takes(Port.OuterRadius) ? double.NaN
        : InsideAxis - Enumerable.Range(0, IsCoaxial || Inside is PlaneFootprint ? 1 : Lines)
            .Min(i => Inside.Reach(Port.OuterRadius, Turns.Full * i / Lines));

    /// <summary>
    /// The inside length with which the middle of the inner end stands at a height; mm, below zero where the axis leads away from it, not a
    /// number where the axis is level.
    /// </summary>
    public double ToHeight(double height) => Inward is var inward && Math.Abs(inward.Z.Z) > 1e-9
        ? (height - inward.Origin.Z) / inward.Z.Z : double.NaN;

    /// <summary>
    /// From a square inner end to the lowest place, along the tube, of the curve in which its outside goes through the host's inner face;
    /// mm. Zero for a tube that does not pass in or ends flush.
    /// </summary>
    public double FreeLength => Port.Joint == PortJoint.SetOn || Port.IsFlush ? 0 : Port.InsideLength - ToComeThrough;

    /// <summary>
    /// How far the square inner end stays outside its host at the worst place, where nothing would close the hole beside it; mm along the
    /// tube, below zero for an end that lies in the wall or inside. Not a number where a line of the tube misses the host.
    /// </summary>
    public double LeftOutside => Outside.Takes(Port.OuterRadius) ? InnerEnd - Outside.Reaches(Port.OuterRadius).Start : double.NaN;

    /// <summary>Z inward along the tube's axis, from where that passes the inside of its host.</summary>
    internal Frame3 Inward => new(Frame.ToOuter(new(0, 0, InsideAxis)), Frame.X, -Frame.Y, -Frame.Z);

    /// <summary>What reaches in from a head along the vessel's axis or beside it; null for other ports.</summary>
    internal InsideBody? UprightBody
    {
        get
        {
            if (Leans || Port.Joint != PortJoint.SetIn || !(Port.InsideLength > 0))
                return null;
            var (from, to) = (Level(InsideAxis), Level(InnerEnd));
            var (low, high, aside) = (Math.Min(from, to), Math.Max(from, to), Port.Place.Radius);
            return aside > 0
                ? new(Port.Path, Port.Name, [new Ring(Math.Max(0, aside - Port.OuterRadius), aside + Port.OuterRadius, low, high)], false)
                : new(Port.Path, Port.Name, [new Ring(Port.BoreRadius, Port.OuterRadius, low, high)]);
        }
    }

    /// <summary>Height of a place on the axis, mm in the vessel's frame.</summary>
    private double Level(double along) => Frame.Origin.Z + (along * Frame.Z.Z);

    /// <summary>Where the axis meets the host's outside, seen along the Z of a frame: its X and Y there.</summary>
    public Point2 On(Frame3 frame)
    {
        var local = frame.ToLocal(Frame.Origin);
        return new(local.X, local.Y);
    }

    /// <summary>Where lines round the port meet a face, in the vessel's frame.</summary>
    internal IEnumerable<Vector3> Round(Footprint face, double radius, int samples = Samples) =>
        Enumerable.Range(0, samples).Select(i => Frame.ToOuter(face.At(radius, Turns.Full * i / samples)));
}
