using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Model;

/// <summary>
/// Something that stands on or in the vessel, built: everything that a later stage takes from it. A stage asks every member and names no
/// kind; what a kind does not have, it leaves empty.
/// </summary>
internal abstract class Member(string path, string name)
{
    /// <summary>The mapping in the file that asks for it.</summary>
    public string Path { get; } = path;

    /// <summary>What the welder calls it.</summary>
    public string Name { get; } = name;

    /// <summary>Welds of the member in the order of their numbers, which are given later.</summary>
    public virtual IEnumerable<Joint> Joints => [];

    /// <summary>Pieces of metal, each with its centre of mass.</summary>
    /// <param name="welds">All of the vessel's, numbered: a flat bears the numbers of its welds.</param>
    public virtual IEnumerable<Part> Parts(Welds welds) => [];

    /// <summary>Where one of its parts is to go into another with a given clearance.</summary>
    public virtual IEnumerable<SlipFit> Fits => [];

    /// <summary>Parts of the member that are rolled from sheet.</summary>
    public virtual IEnumerable<RolledPart> Rolled => [];

    /// <summary>The room that it walls off inside; null where it is none.</summary>
    /// <param name="parts">All of the vessel's so far.</param>
    public virtual Enclosure? Enclosure(ImmutableArray<Part> parts) => null;

    /// <summary>How it parts a room in two; null where it does not.</summary>
    /// <param name="parts">All of the vessel's so far.</param>
    public virtual Partition? Partition(ImmutableArray<Part> parts) => null;

    /// <summary>
    /// Its parts that a fit model prints beside the vessel, with so much more play all round where they slip into others, mm; null for what
    /// is no part of that.
    /// </summary>
    public virtual IEnumerable<Part>? Printed(double play, Welds welds) => null;

    /// <summary>What keeps a torch away.</summary>
    public virtual IEnumerable<Body> Bodies => [];

    /// <summary>What is bought for it finished.</summary>
    public virtual IEnumerable<BoughtItem> Bought => [];

    /// <summary>Flat lengths beside its bends.</summary>
    public virtual IEnumerable<Flange> Flanges => [];

    /// <summary>What it takes up outside the vessel; null for what stands inside.</summary>
    public virtual OutsideBody? Outside => null;

    /// <summary>How it is printed with the mock-up; null for what is left off.</summary>
    public virtual PrintForm? Print => null;

    /// <summary>The angle round the vessel at which the drawing's plan shows its line, radians; null for none.</summary>
    public virtual double? Angle => null;

    /// <summary>Line of the member in the set-up table; null where nothing is measured.</summary>
    public virtual SetUp? SetUp => null;

    /// <summary>Tasks beside making its parts and laying its welds.</summary>
    public virtual IEnumerable<WorkTask> Tasks => [];

    /// <summary>What must come before and after its tasks.</summary>
    /// <param name="welds">All of the vessel's, numbered.</param>
    public virtual IEnumerable<WorkLink> Links(Welds welds) => [];

    /// <summary>What the chapter on mounting says of it; none where it carries nothing.</summary>
    public virtual IEnumerable<string> MountingWords => [];

    /// <summary>What its figures rest on, the same sentence for all members of a kind.</summary>
    public virtual IEnumerable<string> Assumptions => [];

    /// <summary>Whether bolts go through it.</summary>
    public virtual bool IsBolted => false;
}
