namespace Vessel.Design;

/// <summary>Names in <c>flow.order</c> that are not openings, and ends that are not ports.</summary>
internal static class FlowOrderCheck
{
    public static IEnumerable<Fault> Find(Section file, VesselDesign design)
    {
        var order = design.Flow.Order;
        // While a list of what is named is at fault nothing can be said.
        if (order.IsEmpty || file.IsAtFault("ports") || file.IsAtFault("inside"))
            yield break;
        var ports = design.Ports.Where(port => port.Thread is null).Select(port => port.Name).ToList();
        var between = Openings(design.Inside).Concat(design.Ports.SelectMany(InTube)).ToList();
        for (var i = 0; i < order.Length; i++)
        {
            var isEnd = i == 0 || i == order.Length - 1;
            // The gas does not leave where it comes in.
            var known = !isEnd ? between : i == 0 ? ports : ports.Where(port => port != order[0]).ToList();
            if (known.Contains(order[i]))
                continue;
            yield return new Fault(
                FaultCodes.PartNotFound,
                $"{design.Flow.Path}.order[{i}]",
                isEnd ? $"'{order[i]}' is not a port with a tube where the gas could {(i == 0 ? "come in" : "leave")}."
                    : $"'{order[i]}' is not an opening inside.",
                order[i],
                null,
                Nearest.Hint(order[i], known)
                    ?? (known.Count == 0 ? "There is none: add one." : $"Use one of: {string.Join(", ", known)}."));
        }
    }

    /// <summary>Of a port's tube with windows.</summary>
    private static IEnumerable<string> InTube(PortDesign port) => port.Windows.IsEmpty ? []
        : port.Windows.Select((_, row) => WindowRows.NameOf(port.Name, row)).Prepend(WindowRows.EndOf(port.Name));

    private static IEnumerable<string> Openings(InsideDesign inside)
    {
        foreach (var name in inside.Sleeves.Select(sleeve => sleeve.Name)
            .Concat(inside.Caps.Where(cap => cap.Opens == CapOpening.Down).Select(cap => cap.Name)))
        {
            yield return $"rim of {name}";
        }

        foreach (var (name, rows) in inside.Sleeves.Select(sleeve => (sleeve.Name, sleeve.Windows.Length))
            .Concat(inside.Caps.Select(cap => (cap.Name, cap.Windows.Length))))
        {
            for (var row = 0; row < rows; row++)
                yield return WindowRows.NameOf(name, row);
        }

        foreach (var cap in inside.Caps.Where(cap => cap.DrainHole > 0 || cap.Pattern is not null))
            yield return $"plate of {cap.Name}";
        foreach (var disc in inside.Discs)
            yield return disc.Name;
    }
}
