using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Members.Inside;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Members.Cups;

/// <summary>Cups: they stop the straight path to the outlet.</summary>
internal sealed class CupKind : MemberKind
{
    public override Key Key { get; } = new("cap", KeyKind.OneOrList, "A cup under the outlet")
    {
        DefaultRule = "none",
        Map = CupKeys.Cup,
        Items = new(0, 24),
    };

    public override string Under => UnderInside;

    public override IEnumerable<MemberSpec> Read(ImmutableArray<Section> sections, Section file, VesselDesign draft) =>
        sections.Select(section => CupBuilder.Build(section, draft.Ports));

    public override ImmutableArray<(string Name, string What)> PartsOf(string name) =>
        [(CupDesign.SkirtOf(name), "the skirt"), (CupDesign.PlateOf(name), "the plate")];

    public override IEnumerable<(Section Part, Section? Host, string HostName)> Welded(Section file) =>
        from cup in Sections(file)
        where cup.Text("fixed") == "weld"
        let outlet = cup.Text("opens") == "down" ? Outlet(file, cup) : null
        select cup.Text("opens") == "down" ? (cup, outlet, $"'{outlet?.Text("name")}'") : (cup, file.Child("top"), "the top");

    public override IEnumerable<Fault> References(Section file, VesselDesign design) =>
        file.IsAtFault("ports") || file.Items("ports").Any(port => !port.Has("in")) ? []
            : Sections(file).Select(cup => Unknown(cup, design)).OfType<Fault>();

    public override IEnumerable<Fault> Faults(VesselDesign design, PortSites sites) =>
        design.All<CupDesign>().SelectMany(cup => CupCheck.Find(design, cup));

    public override IEnumerable<Member> Build(VesselDesign design, ImmutableArray<PortSite> sites) =>
        design.All<CupDesign>().Select(cup => new Cup(cup, design));

    private static Section? Outlet(Section file, Section cup) => file.Items("ports").FirstOrDefault(p =>
        p.Text("in") == "top" && p.Text("joint") == "set_in" && p.Child("at")?.Number("radius") == 0
        && (cup.Text("outlet") is not { } name || InsideNames.AreOne(p.Text("name"), name)));

    private static Fault? Unknown(Section cup, VesselDesign design)
    {
        var head = VesselEnd.Top;
        if (cup.Text("opens") != "down" || cup.IsAtFault("outlet")
            || InsideNames.Outlet(cup.Text("outlet"), head, design.Ports) is not null)
            return null;
        return cup.Text("outlet") is { } name
            ? Fault.NotFound($"{cup.Path}.outlet", name, $"'{name}' is not a tube set in the middle of the top",
                [.. InsideNames.Carriers(head, design.Ports).Select(p => p.Name)])
            : new Fault(FaultCodes.PartNotFound, $"{cup.Path}.opens",
                $"No tube is set in the middle of the top to carry '{cup.Text("name")}'.", null, null,
                "Add a port with 'in: top', 'at: { radius: 0 }' and 'joint: set_in', or use 'opens: up'.");
    }
}
