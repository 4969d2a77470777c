using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Members;

/// <summary>One kind of member: how the file writes it, what makes one impossible, and how one is built.</summary>
internal abstract class MemberKind
{
    /// <summary>Its key under the file.</summary>
    public abstract Key Key { get; }

    /// <summary>All that the file asks for. A number at fault is NaN and breaks no limit.</summary>
    public abstract IEnumerable<MemberSpec> Read(Section file, Shop shop);

    /// <summary>What the parts of one of that name are called beside it, in words, each with the name of its part; none where it is one part.</summary>
    public virtual ImmutableArray<(string Name, string What)> PartsOf(string name) => [];

    /// <summary>What makes the shape of one impossible.</summary>
    /// <param name="holes">Of the ports in the shell.</param>
    public abstract IEnumerable<Fault> Faults(VesselDesign design, IReadOnlyList<ShellHole> holes);

    /// <summary>Those of this kind, in the order of the file, where they stand.</summary>
    public abstract IEnumerable<Member> Build(VesselDesign design);
}
