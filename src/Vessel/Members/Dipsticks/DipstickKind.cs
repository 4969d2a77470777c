using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Members.Dipsticks;

/// <summary>The dipstick: a strip of sheet that stands in a port; a vessel has one at most.</summary>
internal sealed class DipstickKind : MemberKind
{
    public override Key Key { get; } = new("dipstick", KeyKind.Mapping, "A strip of sheet with marks at round volumes")
    {
        DefaultRule = "none; a strip of paper is always made",
        Map = new("a dipstick of sheet",
        [
            new("in", KeyKind.Text, "Name of the port that it stands in") { IsRequired = true },
            new("width", KeyKind.Length, "Of the strip") { Default = "12 mm", Range = new(6, 100) },
            new("thickness", KeyKind.Length, "Of the sheet") { Default = "2 mm", Range = CommonKeys.Wall },
            new("clear", KeyKind.Length, "From its tip to the metal below") { Default = "3 mm", Range = new(0.5, 1000) },
            new("above", KeyKind.Length, "Length that stands out of the port's free end, to hold it by") { Default = "30 mm",
                Range = new(10, 1000) },
            CommonKeys.Material,
        ]),
    };

    public override string Under => UnderCapacity;

    public override string OnlyName => DipstickDesign.PartName;

    public override IEnumerable<MemberSpec> Read(ImmutableArray<Section> sections, Section file, VesselDesign draft) =>
        sections.Select(section => new DipstickDesign(
        section.Path,
        section.Metal,
        section.Text("in") ?? string.Empty,
        section.Number("width"),
        section.Number("thickness"),
        section.Number("clear"),
        section.Number("above")));

    public override IEnumerable<Fault> References(Section file, VesselDesign design) => file.IsAtFault("ports") ? []
        : from stick in Sections(file)
          let name = stick.Text("in")
          where name is not null && design.Ports.All(port => port.Name != name)
          select Fault.NotFound($"{stick.Path}.in", name, $"'{name}' is not a port", [.. design.Ports.Select(port => port.Name)]);

    public override IEnumerable<Fault> Faults(VesselDesign design, PortSites sites) =>
        design.All<DipstickDesign>().SelectMany(stick => DipstickCheck.Find(design, stick));

    public override IEnumerable<Member> Build(VesselDesign design, ImmutableArray<PortSite> sites) =>
        design.All<DipstickDesign>().Select(stick => new Dipstick(stick, design, sites));
}
