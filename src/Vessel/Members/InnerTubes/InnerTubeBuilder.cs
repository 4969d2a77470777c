using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Members.InnerTubes;

/// <summary>Fills the records from their sections; see <see cref="MemberKind.Read"/>.</summary>
internal static class InnerTubeBuilder
{
    public static InnerTubeDesign Build(Section section)
    {
        var tube = section.Child("tube") ?? Section.Absent($"{section.Path}.tube");
        return new InnerTubeDesign(
            section.Path,
            InsideReading.Name(section),
            section.Metal,
            tube.Number("outside_diameter"),
            tube.Number("wall"),
            section.Number("length"),
            InsideReading.Head(section),
            InsideReading.Fixed(section),
            WindowsBuilder.Build(section));
    }
}
