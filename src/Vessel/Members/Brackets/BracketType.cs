using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Sites;

namespace Vessel.Members.Brackets;

/// <summary>One of the types between which <c>kind</c> under the file's key <c>bracket</c> chooses.</summary>
internal abstract class BracketType
{
    /// <summary>What <c>kind</c> says for it.</summary>
    public abstract string Word { get; }

    /// <summary>What its mapping is, in words: <c>a plate that stands on the shell</c>.</summary>
    public abstract string What { get; }

    /// <summary>The keys of its own, between its name and its tabs.</summary>
    public abstract ImmutableArray<Key> Keys { get; }

    /// <summary>One of them, without tabs.</summary>
    /// <param name="at">Section of its place.</param>
    public abstract BracketDesign Read(Section section, Section at, Shop shop);

    /// <summary>What makes the shape of one of this type impossible.</summary>
    public abstract IEnumerable<Fault> Faults(VesselDesign design, PortSites sites);
}
