using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Heads.Dishes;

/// <summary>
/// A round dish of the shell's outside diameter, butted to the shell's end; spun from a disc, or of gores.
/// </summary>
public abstract record DishedHead(string Path, Material Material, double Wall) : HeadSpec(Path, Material, Wall)
{
    /// <summary>Height of the straight flange between dish and shell, mm.</summary>
    public double Flange { get; init; }

    /// <summary>Null when spun.</summary>
    public GoreDesign? Gores { get; init; }

    /// <summary>What it is called: <c>half sphere</c>.</summary>
    public abstract string Form { get; }

    /// <summary>Inside radius of its sharpest turn, mm, where that is not the whole of it.</summary>
    public virtual double Sharpest => double.PositiveInfinity;

    public override bool CarriesOverSeam => Gores is null;

    /// <summary>The inner face without its flange, from the pole to a radius at z = 0; null where a size is at fault.</summary>
    protected abstract Profile? Dish(double radius);

    public override HeadShape? Shape(ShellSection rim, Frame3 frame, double tip)
    {
        var radius = rim.OuterRadius - Wall;
        if (!(Flange >= 0 && double.IsFinite(Flange)) || Dish(radius) is not { } dish)
            return null;
        var inner = Flange < HeadShape.Least ? dish
            : dish.Moved(-Flange).Then(new(new LinePiece(new(radius, -Flange), new(radius, 0))));
        return new(inner.Offset(Wall), inner, Wall, frame, 0) { InnerSphere = IsSphere ? radius : null };
    }

    /// <summary>What its shape rests on.</summary>
    internal virtual IEnumerable<Assumption> Assumptions => [];

    /// <summary>Whether it is a half sphere but for its flange.</summary>
    public virtual bool IsSphere => false;

    /// <summary>Words for its radii, as they follow its width and depth in a note; empty where those say all.</summary>
    public virtual string Radii => string.Empty;

    /// <summary>The inside with that much wall, mm; null where its sharpest turn is used up.</summary>
    public virtual Profile? Thickened(HeadShape shape, double wall) =>
        wall <= Wall || Sharpest > wall - Wall ? shape.Outer.Offset(-wall) : null;

    /// <summary>Stress as <see cref="Head.Stress"/> tells it.</summary>
    /// <param name="rim">The shell at the end that it closes.</param>
    internal virtual double Stress(double pressure, double hole, ShellSection rim) =>
        hole * ThinWalls.Lengthwise(pressure, rim.OutsideDiameter - Wall, Wall);

    internal virtual string StressFormula => "s = K p D / 4t";

    /// <summary>True or false as <see cref="Head.IsStressedAsCylinder"/> tells it.</summary>
    internal virtual bool IsStressedAsCylinder => false;

    /// <summary>Bulge as <see cref="Head.Bulge"/> tells it.</summary>
    internal virtual (double Clamped, double Supported)? Bulge(double pressure, ShellSection rim) => null;

    public override ImmutableArray<string> RimParts(VesselEnd end, VesselDesign vessel) =>
        Gores is { } gores ? [.. gores.Pieces(end, vessel).Select(piece => piece.Id)] : [Names.Of(end)];

    public override string PartOf(PortDesign port, VesselDesign vessel) => Gores is not { } gores ? Names.Of(port.Host)
        : GorePorts.IsInCap(port, vessel) ? Slug.Of(GoreDesign.CapOf(Names.Of(port.Host)))
        : gores.Pieces(port.End!.Value, vessel).First(piece => piece.Ports.Contains(port)).Id;

    internal override IEnumerable<Fault> Faults(VesselEnd end, VesselDesign design)
    {
        var rim = design.Shell.AtEnd(end);
        if (Misfit(new(design.Units), rim) is { } fault)
            yield return fault;
        if (Gores is not { } gores)
            yield break;
        foreach (var other in GoreCheck.Find(new(design.Units), design, end, this, gores))
            yield return other;
    }

    /// <summary>Radii that do not fit each other or the shell; null where they do.</summary>
    internal virtual Fault? Misfit(UnitFormat shown, ShellSection rim) => null;

    internal override Head Build(VesselEnd end, VesselDesign vessel, ImmutableArray<PortSite> sites) =>
        GoreShape.Of(end, vessel) is { } shape ? new GoreHead(end, shape, vessel, sites) : new SpunHead(end, this, vessel, sites);
}
