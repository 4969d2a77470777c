using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Heads;

/// <summary>A head as it was read, that builds what stands in the vessel.</summary>
public abstract record HeadSpec(string Path, Material Material, double Wall) : HeadDesign(Path, Material, Wall)
{
    /// <summary>The head at that end of the vessel.</summary>
    internal abstract Head Build(VesselEnd end, VesselDesign vessel, ImmutableArray<PortSite> sites);
}
