using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Joints;

/// <summary>What a joint is between, and with what it is welded: the one place that chooses a joint's filler.</summary>
/// <param name="Host">Metal of the first side; its family decides the machine's settings.</param>
/// <param name="Part">Metal of the other side.</param>
/// <param name="FillerWhy">Where what the vessel has to stand decided the filler; else null.</param>
public sealed record JointMetals(Material Host, Material Part, Filler Filler, string? FillerWhy)
{
    public static JointMetals Of(Joint joint, ImmutableArray<Part> parts, VesselDesign design)
    {
        Material Metal(string id) => parts.First(part => part.Id == id).Material;
        var (host, part) = (Metal(joint.Between[0]), Metal(joint.Between[1]));
        var (filler, why) = Fillers.Between(host, part, new(design.Flow.Temperature, design.Finish == Finish.Anodised))
            ?? throw new ArgumentException($"no filler joins {host.Name} to {part.Name}");
        return new(host, part, filler, why);
    }

    public WeldStrength StrengthOf(Joint joint) => WeldStrength.Of(joint, Filler, Host, Part);
}
