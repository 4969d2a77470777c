using Vessel.Design;

namespace Vessel.Reading;

/// <summary>Names of parts that are not there, or not where they would have to be.</summary>
internal static class ReferenceCheck
{
    public static IEnumerable<Fault> Find(Section file, VesselDesign design)
    {
        var inside = file.Child("inside") ?? Section.Absent("inside");
        return
        [
            .. inside.IsAtFault("sleeve") ? [] : inside.Items("discs").Select(d => Fits(d, inside)).OfType<Fault>(),
            .. inside.IsAtFault("discs") ? [] : inside.Items("packing").SelectMany(p => Between(p, inside)),
            .. file.IsAtFault("ports") || file.Items("ports").Any(p => !p.Has("in")) ? []
                : inside.Items("cap").Select(c => Outlet(c, design)).OfType<Fault>(),
            .. FlowOrderCheck.Find(file, design),
            .. file.IsAtFault("ports") || Dipstick(file, design) is not { } fault ? Array.Empty<Fault>() : [fault],
        ];
    }

    private static Fault? Fits(Section disc, Section inside)
    {
        if (disc.Text("fits") is not { } name || InsideNames.HostOf(disc, inside.Items("sleeve")).IsKnown)
            return null;
        return Unknown($"{disc.Path}.fits", name, $"'{name}' is neither a sleeve nor 'shell'",
            [.. inside.Items("sleeve").Select(s => s.Text("name")).OfType<string>(), "shell"]);
    }

    private static IEnumerable<Fault> Between(Section packing, Section inside) => packing.Texts("between")
        .Where(name => InsideNames.Find(inside.Items("discs"), name) is null)
        .Select(name => Unknown($"{packing.Path}.between", name, $"'{name}' is not a disc",
            [.. inside.Items("discs").Select(d => d.Text("name")).OfType<string>()]));

    private static Fault? Outlet(Section cap, VesselDesign design)
    {
        var head = PortHost.Top;
        if (cap.Text("opens") != "down" || cap.IsAtFault("outlet")
            || InsideNames.Outlet(cap.Text("outlet"), head, design.Ports) is not null)
        {
            return null;
        }

        var carriers = InsideNames.Carriers(head, design.Ports).Select(p => p.Name).ToList();
        return cap.Text("outlet") is { } name
            ? Unknown($"{cap.Path}.outlet", name, $"'{name}' is not a tube set in the middle of the top", carriers)
            : new Fault(FaultCodes.PartNotFound, $"{cap.Path}.opens",
                $"No tube is set in the middle of the top to carry '{cap.Text("name")}'.", null, null,
                "Add a port with 'in: top', 'at: { radius: 0 }' and 'joint: set_in', or use 'opens: up'.");
    }

    private static Fault? Dipstick(Section file, VesselDesign design)
    {
        if (file.Child("capacity")?.Child("dipstick") is not { } stick || stick.Text("in") is not { } name
            || design.Ports.Any(port => port.Name == name))
        {
            return null;
        }

        return Unknown($"{stick.Path}.in", name, $"'{name}' is not a port", [.. design.Ports.Select(port => port.Name)]);
    }

    private static Fault Unknown(string path, string name, string what, List<string> known) => new(
        FaultCodes.PartNotFound, path, $"{what}.", name, null,
        Nearest.Hint(name, known)
            ?? (known.Count == 0 ? "There is none: add one." : $"Use one of: {string.Join(", ", known)}."));
}
