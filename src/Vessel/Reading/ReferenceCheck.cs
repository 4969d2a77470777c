using Vessel.Design;
using Vessel.Members;

namespace Vessel.Reading;

/// <summary>Names of parts that are not there, or not where they would have to be.</summary>
internal static class ReferenceCheck
{
    public static IEnumerable<Fault> Find(Section file, VesselDesign design)
    {
        return
        [
            .. MemberKinds.All.SelectMany(kind => kind.References(file, design)),
            .. FlowOrderCheck.Find(file, design),
            .. file.IsAtFault("ports") || Dipstick(file, design) is not { } fault ? Array.Empty<Fault>() : [fault],
        ];
    }

    private static Fault? Dipstick(Section file, VesselDesign design)
    {
        if (file.Child("capacity")?.Child("dipstick") is not { } stick || stick.Text("in") is not { } name
            || design.Ports.Any(port => port.Name == name))
        {
            return null;
        }

        return Fault.NotFound($"{stick.Path}.in", name, $"'{name}' is not a port", [.. design.Ports.Select(port => port.Name)]);
    }
}
