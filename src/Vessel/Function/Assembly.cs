using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Joints;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Function;

/// <summary>The whole vessel, built: everything that findings and files are taken from.</summary>
public sealed class Assembly
{
    private readonly Lazy<MockupPlan> _mockup;

    private readonly Lazy<FlowPath?> _flow;

    private Mount? _mount;

    /// <param name="sites">Sites of the design's ports, in their order.</param>
    /// <param name="chamber">The design's walls, built.</param>
    /// <param name="members">The design's ports and members, built.</param>
    internal Assembly(VesselDesign design, ImmutableArray<PortSite> sites, Chamber chamber, ImmutableArray<Member> members)
    {
        (Design, Sites, Chamber, Members) = (design, sites, chamber, members);
        Joints = new([.. Chamber.Joints, .. Members.SelectMany(member => member.Joints)]);
        ImmutableArray<Part> parts =
            [.. Chamber.Walls.SelectMany(wall => wall.Parts(Joints)), .. Members.SelectMany(member => member.Parts(Joints))];
        Attitude = new(CavityBuilder.Build(design, Sites, Members, parts, Position.Upright), Position.Upright);
        Capacity = Capacity.Of(Attitude, design.Capacity, design.Flow.Liquid.Word);
        Parts = [.. parts, .. Members.OfType<IGauge>().SelectMany(gauge => gauge.GaugeParts(Attitude, Capacity))];
        Fits = [.. Chamber.Heads.SelectMany(head => head.Fits), .. Members.SelectMany(member => member.Fits)];
        Bought = [.. Chamber.Walls.SelectMany(wall => wall.Bought), .. Members.SelectMany(member => member.Bought)];
        Welds = [.. Joints.All.Select(WeldFigures.Of)];
        _mockup = new(() => MockupPlan.Of(design, Chamber, Sites, Members));
        _flow = new(() => FlowPath.Of(this));
    }

    /// <summary>The same vessel with another duty, or its parts and welds in another order. Nothing is built anew.</summary>
    internal Assembly(Assembly built, VesselDesign design, ImmutableArray<Part> parts, ImmutableArray<WeldFigures> welds)
    {
        (Design, Sites, Chamber, Members, Joints, Parts, Welds) =
            (design, built.Sites, built.Chamber, built.Members, built.Joints, parts, welds);
        (Fits, Bought, Attitude, Capacity) = (built.Fits, built.Bought, built.Attitude, built.Capacity);
        _mockup = new(() => MockupPlan.Of(design, Chamber, Sites, Members));
        _flow = new(() => FlowPath.Of(this));
    }

    public VesselDesign Design { get; }

    public ImmutableArray<PortSite> Sites { get; }

    /// <summary>Chamber that its walls make.</summary>
    internal Chamber Chamber { get; }

    /// <summary>What stands on, in or through its walls: ports first, then kind by kind, each in the order of the file.</summary>
    internal ImmutableArray<Member> Members { get; }

    public ImmutableArray<Part> Parts { get; }

    /// <summary>What is bought for it finished.</summary>
    public ImmutableArray<BoughtItem> Bought { get; }

    /// <summary>Welds of the vessel by what they are to it.</summary>
    public Welds Joints { get; }

    /// <summary>Where one part is to go into another with a given clearance.</summary>
    public ImmutableArray<SlipFit> Fits { get; }

    public ImmutableArray<WeldFigures> Welds { get; }

    public Cavity Cavity => Attitude.Cavity;

    /// <summary>The cavity as the vessel stands in use.</summary>
    public Attitude Attitude { get; }

    public Capacity Capacity { get; }

    /// <summary>Worked out when it is first asked for.</summary>
    public MockupPlan Mockup => _mockup.Value;

    /// <summary>The gas's way through it, null where there is none; worked out when it is first asked for.</summary>
    internal FlowPath? Flow => _flow.Value;

    /// <summary>How its members carry it; worked out when it is first asked for.</summary>
    internal Mount Mount => LazyInitializer.EnsureInitialized(ref _mount, () => new Mount(this));

    /// <summary>The metals on either side of a weld and the filler between them.</summary>
    public JointMetals MetalsOf(Joint joint) => JointMetals.Of(joint, Parts, Design);
}
