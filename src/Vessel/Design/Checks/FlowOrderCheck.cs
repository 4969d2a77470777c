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
        var ports = design.Ports.Where(port => port.IsOpenToAir).Select(port => port.Name).ToList();
        var between = design.All<InsideSpec>().SelectMany(spec => spec.Ways).Concat(design.Ports.SelectMany(InTube)).ToList();
        for (var i = 0; i < order.Length; i++)
        {
            var isEnd = i == 0 || i == order.Length - 1;
            // The gas does not leave where it comes in.
            var known = !isEnd ? between : i == 0 ? ports : ports.Where(port => port != order[0]).ToList();
            if (known.Contains(order[i]))
                continue;
            yield return Fault.NotFound(
                $"{design.Flow.Path}.order[{i}]",
                order[i],
                isEnd ? $"'{order[i]}' is not a port, open to gas, where it could {(i == 0 ? "come in" : "leave")}"
                    : $"'{order[i]}' is not an opening inside",
                known);
        }
    }

    /// <summary>Names of the openings in a port's tube with windows.</summary>
    private static IEnumerable<string> InTube(PortDesign port) => port.Windows.IsEmpty ? []
        : port.Windows.Select((_, row) => WindowRows.NameOf(port.Name, row)).Prepend(WindowRows.EndOf(port.Name));
}
