using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Members;

/// <summary>One kind of member: how the file writes it, what makes one impossible, and how one is built.</summary>
internal abstract class MemberKind
{
    /// <summary>The key of the parts inside.</summary>
    public const string UnderInside = "inside";

    /// <summary>The key of what is said of the vessel's capacity.</summary>
    public const string UnderCapacity = "capacity";

    /// <summary>Key of the kind, in the mapping that it stands in.</summary>
    public abstract Key Key { get; }

    /// <summary>The key of the file that its key stands under; null where it stands in the file itself.</summary>
    public virtual string? Under => null;

    /// <summary>All that the file asks for. A number at fault is NaN and breaks no limit.</summary>
    /// <param name="sections">Sections of its own kind.</param>
    /// <param name="file">The whole, for what it names.</param>
    /// <param name="draft">The vessel with its walls, ports, and the members of the kinds before this one.</param>
    public abstract IEnumerable<MemberSpec> Read(ImmutableArray<Section> sections, Section file, VesselDesign draft);

    /// <summary>Sections of the kind in the file; one where its key is a single mapping.</summary>
    public ImmutableArray<Section> Sections(Section file) =>
        Holder(file) is var holder && holder.Child(Key.Name) is { } one ? [one] : holder.Items(Key.Name);

    /// <summary>The mapping that its key stands in.</summary>
    public Section Holder(Section file) => Under is { } key ? file.Child(key) ?? Section.Absent(key) : file;

    /// <summary>Whether the name may be left out while one is the only one of its kind.</summary>
    public virtual bool MayBeNameless => true;

    /// <summary>The name, fit for files, of the only one that a vessel may have; null for kinds whose members the file names.</summary>
    public virtual string? OnlyName => null;

    /// <summary>Names in its sections of what is not there.</summary>
    public virtual IEnumerable<Fault> References(Section file, VesselDesign design) => [];

    /// <summary>Sections of the kind that are welded to another, with that and with what it is called.</summary>
    public virtual IEnumerable<(Section Part, Section? Host, string HostName)> Welded(Section file) => [];

    /// <summary>
    /// What the parts of one of that name are called beside it, in words, each with the name of its part; none where it is one part.
    /// </summary>
    public virtual ImmutableArray<(string Name, string What)> PartsOf(string name) => [];

    /// <summary>What makes the shape of one impossible.</summary>
    /// <param name="sites">Where the ports stand.</param>
    public abstract IEnumerable<Fault> Faults(VesselDesign design, PortSites sites);

    /// <summary>Those of this kind, in the order of the file, where they stand.</summary>
    public abstract IEnumerable<Member> Build(VesselDesign design, ImmutableArray<PortSite> sites);
}
