using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Model;

/// <summary>
/// Something that stands on or in the vessel, built: everything that a later stage takes from it. A stage asks every member and names no
/// kind; what a kind does not have, it leaves empty.
/// </summary>
internal abstract class Member(MemberSpec spec)
{
    /// <summary>The mapping in the file that asks for it.</summary>
    public string Path { get; } = spec.Path;

    /// <summary>What the welder calls it.</summary>
    public string Name { get; } = spec.Name;

    /// <summary>Pieces of metal, each with its centre of mass.</summary>
    public virtual IEnumerable<Part> Parts => [];

    /// <summary>What is bought for it finished.</summary>
    public virtual IEnumerable<BoughtItem> Bought => [];

    /// <summary>Flat lengths beside its bends.</summary>
    public virtual IEnumerable<Flange> Flanges => [];

    /// <summary>What it takes up outside the vessel; null for what stands inside.</summary>
    public virtual OutsideBody? Outside => null;

    /// <summary>Its line of the set-up table; null where nothing is measured.</summary>
    public virtual SetUp? SetUp => null;

    /// <summary>Tasks beside making its parts and laying its welds.</summary>
    public virtual IEnumerable<WorkTask> Tasks => [];

    /// <summary>What must come before and after its tasks.</summary>
    public virtual IEnumerable<WorkLink> Links => [];

    /// <summary>What the chapter on mounting says of it; none where it carries nothing.</summary>
    public virtual IEnumerable<string> MountingWords => [];

    /// <summary>What its figures rest on, the same sentence for all members of a kind.</summary>
    public virtual IEnumerable<string> Assumptions => [];

    /// <summary>Whether bolts go through it.</summary>
    public virtual bool IsBolted => false;

    /// <summary>What rules look at in it.</summary>
    public virtual IEnumerable<Measure> Measures(Assembly assembly) => [];
}
