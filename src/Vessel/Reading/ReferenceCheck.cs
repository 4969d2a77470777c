using Vessel.Design;
using Vessel.Members;

namespace Vessel.Reading;

/// <summary>Names of parts that are not there, or not where they would have to be.</summary>
internal static class ReferenceCheck
{
    public static IEnumerable<Fault> Find(Section file, VesselDesign design) =>
        [.. MemberKinds.All.SelectMany(kind => kind.References(file, design)), .. FlowOrderCheck.Find(file, design)];
}
