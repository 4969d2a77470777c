using System.Collections.Immutable;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>What a port stands in.</summary>
public enum PortHost
{
    Shell,
    Top,
    Bottom,
}

/// <summary>The tube stands on the host, or passes through a hole in it.</summary>
public enum PortJoint
{
    SetOn,
    SetIn,
}

/// <summary>
/// How the end of a set-on tube is cut: square through its wall (saw, laser), ground so that both faces meet the
/// host, or with a hole saw of the host's own diameter.
/// </summary>
public enum EndCut
{
    Square,
    Ground,
    HoleSaw,
}

/// <summary>
/// Where a port's axis meets the host's outside. On a shell: height, angle, offset and tilt; on a head: radius and
/// angle. Angles in radians; what does not apply is zero.
/// </summary>
/// <param name="Offset">Signed, sideways from the shell's axis, towards increasing angle.</param>
/// <param name="Tilt">Above the horizontal, outward.</param>
public sealed record PortPlace(double Height, double Angle, double Offset, double Tilt, double Radius)
{
    /// <summary>True for a port on a head whose axis stands square to the surface, not upright.</summary>
    public bool SquareToSurface { get; init; }
}

/// <summary>A tube, or a bung with a thread, on a shell or head.</summary>
/// <param name="Length">Along the axis from where it meets the host's outside to the free end, or to where its elbow begins.</param>
/// <param name="InsideLength">Set-in: along the axis from where it meets the host's inside to the inner end.</param>
/// <param name="Clearance">Set-in: least between tube and hole, square to the tube.</param>
/// <param name="OutsideDiameter">Outside diameter of the tube or bung.</param>
/// <param name="Bore">Inside diameter: of the tube, or of the bung's thread (its tap drill).</param>
/// <param name="Thread">A bung's thread; null for a tube.</param>
/// <param name="Fitting">What is bought for the free end of a tube; null when nothing is.</param>
public sealed record PortDesign(
    string Path,
    string Name,
    PortHost Host,
    PortPlace Place,
    Material Material,
    double OutsideDiameter,
    double Bore,
    double Length,
    double InsideLength,
    double Clearance,
    PortJoint Joint,
    EndCut Cut,
    ThreadSize? Thread,
    ThreadSize? Fitting)
{
    /// <summary>Set-in: height of the middle of its inner end, from which its length inside follows; null where that is given.</summary>
    public double? InnerHeight { get; init; }

    /// <summary>Set-in: its inner end follows the inside of its host; else it is square.</summary>
    public bool IsFlush { get; init; }

    /// <summary>What it is there for; null where the file does not say.</summary>
    public PortPurpose? Purpose { get; init; }

    /// <summary>Whether air passes it in use; where nothing is said a tube is open, and a bung has its plug in.</summary>
    public bool IsOpenToAir => Purpose?.IsOpenToAir() ?? Thread is null;

    /// <summary>A bend before its free end; null for a straight one.</summary>
    public ElbowDesign? Elbow { get; init; }

    /// <summary>
    /// In the length of its tube that stands free inside, row by row; each is <see cref="WindowsDesign.Up"/> from the inner end.
    /// </summary>
    public ImmutableArray<WindowsDesign> Windows { get; init; } = [];

    /// <summary>The end whose head it stands in; null on the shell.</summary>
    public VesselEnd? End => Host switch
    {
        PortHost.Top => VesselEnd.Top,
        PortHost.Bottom => VesselEnd.Bottom,
        _ => null,
    };

    /// <summary>Path of the key that says how far it reaches in.</summary>
    public string DepthKey => $"{Path}.{(InnerHeight is null ? "inside_length" : "inner_height")}";

    /// <summary>Path of the key of its outside diameter.</summary>
    public string SizeKey => $"{Path}.{(Thread is null ? "tube" : "bung")}.outside_diameter";

    public double OuterRadius => OutsideDiameter / 2;

    public double BoreRadius => Bore / 2;

    /// <summary>Radius of the hole in its host: the bore of what stands on it; outside and clearance of what passes in.</summary>
    public double HoleRadius => Joint == PortJoint.SetOn ? BoreRadius : OuterRadius + Clearance;

    /// <summary>Along the axis to the free end, or to where it meets the first mitre, mm.</summary>
    public double FirstLength => Length + (Elbow?.HalfPiece ?? 0);

    /// <summary>Length over which the tube's first piece is whole all round, mm along its axis.</summary>
    public double WholeLength => FirstLength - (OuterRadius * (Elbow?.Slope ?? 0));

    public double Wall => (OutsideDiameter - Bore) / 2;
}
