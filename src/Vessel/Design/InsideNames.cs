using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>Which part is meant where one part of the inside names another.</summary>
internal static class InsideNames
{
    /// <summary>Names that give one file name are one name.</summary>
    public static bool AreOne(string? a, string b) => a is not null && Slug.Of(a) == Slug.Of(b);

    public static Section? Find(ImmutableArray<Section> parts, string name) =>
        parts.FirstOrDefault(p => AreOne(p.Text("name"), name));

    /// <summary>
    /// The sleeve in which a disc stands, null for the shell. Not known where the name is at fault, or is that of no
    /// sleeve.
    /// </summary>
    public static (bool IsKnown, Section? Sleeve) HostOf(Section disc, ImmutableArray<Section> sleeves)
    {
        var only = sleeves.Length == 1 ? sleeves[0] : null;
        if (disc.Text("fits") is not { } name)
            return (!disc.IsAtFault("fits"), only);
        if (AreOne("shell", name))
            return (true, null);
        var found = Find(sleeves, name) ?? (AreOne("sleeve", name) ? only : null);
        return (found is not null, found);
    }

    /// <summary>
    /// Tubes that may carry a cap: set in the middle of its head. One whose place or joint is at fault may be such.
    /// </summary>
    public static IEnumerable<PortDesign> Carriers(VesselEnd head, IEnumerable<PortDesign> ports) => ports.Where(p =>
        p.End == head && p.Thread is null && !(p.Place.Radius > 0)
        && (p.Joint == PortJoint.SetIn || double.IsNaN(p.OutsideDiameter)));

    /// <summary>The tube that carries a cap which opens down; null where there is none of that name, or none at all.</summary>
    public static PortDesign? Outlet(string? name, VesselEnd head, IEnumerable<PortDesign> ports) =>
        Carriers(head, ports).FirstOrDefault(p => name is null || AreOne(p.Name, name));
}
