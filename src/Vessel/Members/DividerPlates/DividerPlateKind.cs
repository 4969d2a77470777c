using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Inside;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Members.DividerPlates;

/// <summary>Divider plates: solid, welded all round into the shell.</summary>
internal sealed class DividerPlateKind : MemberKind
{
    public override Key Key { get; } = new("divider", KeyKind.OneOrList, "A solid plate welded into the shell that parts it in two")
    {
        DefaultRule = "none",
        Items = new(0, 24),
        Map = new("a divider",
        [
            InsideKeys.Name("divider"),
            new("at", KeyKind.Mapping, "Where it stands")
            {
                IsRequired = true,
                Map = new("the place of a divider",
                [
                    new("height", KeyKind.Length,
                        "Of its lower face, above the shell's lower edge") { IsRequired = true, Range = CommonKeys.FromZero },
                ]),
            },
            new("thickness", KeyKind.Length, "Of the plate") { IsRequired = true, Range = CommonKeys.Wall },
            new("clearance", KeyKind.Length, "To the shell's bore, all round") { Default = "0.2 mm", Range = CommonKeys.Gap },
            new("drain_notch", KeyKind.Length, "Radius of a half-round notch in its rim that liquid drains through; 0 for none")
            {
                Default = "0 mm", Range = CommonKeys.FromZero,
            },
            new("notch_angle", KeyKind.Angle, "Round the vessel of that notch") { Default = "0 deg", Range = CommonKeys.Turn },
            new("vent_hole", KeyKind.Length,
                "Diameter of a hole opposite the notch; 0 for none") { Default = "0 mm", Range = CommonKeys.FromZero },
            CommonKeys.Material,
        ]),
    };

    public override string Under => UnderInside;

    public override IEnumerable<MemberSpec> Read(ImmutableArray<Section> sections, Section file, VesselDesign draft) =>
        sections.Select(section =>
    {
        var height = (section.Child("at") ?? Section.Absent(section.Path)).Number("height");
        var clearance = section.Number("clearance");
        return new DividerPlateDesign(
            section.Path, InsideReading.Name(section), section.Metal, height, section.Number("thickness"), clearance,
            2 * (draft.Shell.InnerAt(height) - clearance), section.Number("drain_notch"), Turns.From(section.Number("notch_angle"), 0),
            section.Number("vent_hole"));
    });

    public override IEnumerable<(Section Part, Section? Host, string HostName)> Welded(Section file) =>
        Sections(file).Select(section => (section, file.Child("shell"), "the shell"));

    public override IEnumerable<Fault> Faults(VesselDesign design, PortSites sites) =>
        design.All<DividerPlateDesign>().SelectMany(plate => DividerCheck.Find(design, plate).Concat(Openings(new(design.Units), plate)));

    public override IEnumerable<Member> Build(VesselDesign design, ImmutableArray<PortSite> sites) =>
        design.All<DividerPlateDesign>().Select(plate => new DividerPlate(plate, design));

    /// <summary>Notch and vent hole, with the metal round them, go into the radius on their own sides.</summary>
    private static IEnumerable<Fault> Openings(UnitFormat shown, DividerPlateDesign plate)
    {
        var most = plate.Radius / 2;
        if (plate.Notch > most)
        {
            yield return new(FaultCodes.BoreTooWide, $"{plate.Path}.drain_notch",
                $"The notch of '{plate.Name}' takes up more than half of the plate's radius.",
                shown.Length(plate.Notch), $"at most {shown.LengthDown(most)}", "Make the notch smaller.");
        }

        var widest = plate.VentRadius + (plate.Vent / 2);
        if (plate.Vent > widest)
        {
            yield return new(FaultCodes.BoreTooWide, $"{plate.Path}.vent_hole",
                $"The vent hole of '{plate.Name}' reaches past the middle of the plate.",
                shown.Length(plate.Vent), $"at most {shown.LengthDown(Math.Max(0, widest))}",
                "Make the hole smaller, or the plate thinner.");
        }
    }
}
