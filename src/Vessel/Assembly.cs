using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Joints;
using Vessel.Mockups;
using Vessel.Parts;

namespace Vessel;

/// <summary>The whole vessel, built: everything that findings and files are taken from.</summary>
public sealed class Assembly(
    VesselDesign design,
    ImmutableArray<PortSite> sites,
    ImmutableArray<Part> parts,
    ImmutableArray<WeldFigures> welds,
    Cavity cavity,
    Capacity capacity)
{
    private readonly Lazy<MockupPlan> _mockup = new(() => MockupPlan.Of(design, sites));

    private Mount? _mount;

    public VesselDesign Design { get; } = design;

    public ImmutableArray<PortSite> Sites { get; } = sites;

    public ImmutableArray<Part> Parts { get; } = parts;

    public ImmutableArray<WeldFigures> Welds { get; } = welds;

    public Cavity Cavity { get; } = cavity;

    public Capacity Capacity { get; } = capacity;

    /// <summary>Worked out when it is first asked for.</summary>
    public MockupPlan Mockup => _mockup.Value;

    /// <summary>How its brackets carry it; worked out when it is first asked for.</summary>
    internal Mount Mount => LazyInitializer.EnsureInitialized(ref _mount, () => new Mount(this));

    /// <summary>The metals on either side of a weld and the filler between them.</summary>
    public JointMetals MetalsOf(Joint joint) => JointMetals.Of(joint, Parts, Design);

    public static Assembly Of(VesselDesign design)
    {
        var sites = design.Ports.Select(port => PortSite.Of(port, design)).ToImmutableArray();
        var numbers = WeldNumbers.Of(design);
        var parts = VesselParts.Of(design, sites, numbers);
        var cavity = CavityBuilder.Build(design, sites, parts);
        var capacity = Capacity.Of(cavity, design.Capacity, design.Flow.Liquid.Word);
        return new(
            design,
            sites,
            [.. parts, .. Dipstick(design, sites, cavity, capacity)],
            [.. VesselJoints.Of(design, sites, numbers).Select(WeldFigures.Of)],
            cavity,
            capacity);
    }

    /// <summary>What is marked on it is known only when the capacity is.</summary>
    private static IEnumerable<Part> Dipstick(
        VesselDesign design, ImmutableArray<PortSite> sites, Cavity cavity, Capacity capacity) =>
        DipstickSite.Of(design, sites) is { } site
            ? [DipstickPart.Build(
                site,
                GaugeScale.Of(cavity, capacity).Select(mark => (mark.Height, mark.Text)),
                capacity.Events.IsEmpty ? null : capacity.Events[0].Height)]
            : [];
}
