using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Members.Inside;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Members.InnerTubes;

/// <summary>Inner tubes: they hang from a head and keep what comes in apart from what goes out.</summary>
internal sealed class InnerTubeKind : MemberKind
{
    public override Key Key { get; } = new("sleeve", KeyKind.OneOrList, "A tube round the outlet")
    {
        DefaultRule = "none",
        Map = InnerTubeKeys.InnerTube,
        Items = new(0, 24),
    };

    public override string Under => UnderInside;

    public override IEnumerable<MemberSpec> Read(ImmutableArray<Section> sections, Section file, VesselDesign draft) =>
        sections.Select(InnerTubeBuilder.Build);

    public override IEnumerable<(Section Part, Section? Host, string HostName)> Welded(Section file) =>
        Sections(file).Where(section => section.Text("fixed") == "weld").Select(section => (section, file.Child("top"), "the top"));

    public override IEnumerable<Fault> Faults(VesselDesign design, PortSites sites) =>
        design.All<InnerTubeDesign>().SelectMany(tube => HangingCheck.Find(design, tube, $"{tube.Path}.tube", $"{tube.Path}.length")
            .Concat(WindowCheck.Find(
                new(design.Units), tube.Windows, new(tube.Name, tube.OutsideDiameter, tube.Wall, tube.Length), null, tube.Path)));

    public override IEnumerable<Member> Build(VesselDesign design, ImmutableArray<PortSite> sites) =>
        design.All<InnerTubeDesign>().Select(tube => new InnerTube(tube, design));
}
