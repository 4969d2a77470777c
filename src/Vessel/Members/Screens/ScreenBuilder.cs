using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Members.Screens;

/// <summary>Fills the records from their sections; see <see cref="MemberKind.Read"/>.</summary>
internal static class ScreenBuilder
{
    /// <param name="hosts">What hangs inside and has a bore.</param>
    /// <param name="sleeves">Their sections.</param>
    public static ScreenDesign Build(Section section, ImmutableArray<Section> sleeves, IEnumerable<HangingSpec> hosts, ShellDesign shell)
    {
        var thickness = section.Number("thickness");
        var clearance = section.Number("clearance");
        var (isKnown, sleeve) = InsideNames.HostOf(section, sleeves);
        var height = (section.Child("at") ?? Section.Absent(section.Path)).Number("height");
        var radius = !isKnown ? double.NaN : sleeve is null ? shell.InnerAt(height)
            : hosts.First(host => host.Path == sleeve.Path).InnerRadius;
        return new ScreenDesign(
            section.Path,
            InsideReading.Name(section),
            section.Metal,
            sleeve is null ? null : InsideReading.Name(sleeve),
            height,
            thickness,
            clearance,
            InsideReading.Fixed(section),
            section.Number("bore"),
            2 * (radius - clearance),
            InsideReading.Holes(section, thickness));
    }
}
