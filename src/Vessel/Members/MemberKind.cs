using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;

namespace Vessel.Members;

/// <summary>One kind of member: how the file writes it, what makes one impossible, and how one is built.</summary>
internal abstract class MemberKind
{
    /// <summary>Its key: under the file itself, or under <c>inside</c>.</summary>
    public abstract Key Key { get; }

    /// <summary>Whether its key stands under <c>inside</c>.</summary>
    public virtual bool IsInside => false;

    /// <summary>All that the file asks for. A number at fault is NaN and breaks no limit.</summary>
    /// <param name="sections">Its own.</param>
    /// <param name="file">The whole, for what it names.</param>
    /// <param name="draft">The vessel with its walls, ports, and the members of the kinds before this one.</param>
    public abstract IEnumerable<MemberSpec> Read(ImmutableArray<Section> sections, Section file, VesselDesign draft);

    /// <summary>Its sections in the file.</summary>
    public ImmutableArray<Section> Sections(Section file) => Holder(file).Items(Key.Name);

    /// <summary>The mapping that its key stands in.</summary>
    public Section Holder(Section file) => IsInside ? file.Child("inside") ?? Section.Absent("inside") : file;

    /// <summary>Whether the name may be left out while one is the only one of its kind.</summary>
    public virtual bool MayBeNameless => true;

    /// <summary>Names in its sections of what is not there.</summary>
    public virtual IEnumerable<Fault> References(Section file, VesselDesign design) => [];

    /// <summary>Its sections that are welded to another, with that and with what it is called.</summary>
    public virtual IEnumerable<(Section Part, Section? Host, string HostName)> Welded(Section file) => [];

    /// <summary>What the parts of one of that name are called beside it, in words, each with the name of its part; none where it is one part.</summary>
    public virtual ImmutableArray<(string Name, string What)> PartsOf(string name) => [];

    /// <summary>What makes the shape of one impossible.</summary>
    /// <param name="holes">Of the ports in the shell.</param>
    public abstract IEnumerable<Fault> Faults(VesselDesign design, IReadOnlyList<ShellHole> holes);

    /// <summary>Those of this kind, in the order of the file, where they stand.</summary>
    public abstract IEnumerable<Member> Build(VesselDesign design, ImmutableArray<PortSite> sites);
}
