namespace Vessel.Design;

/// <summary>Whether a port in a head finds room there.</summary>
internal static class HeadPortCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        foreach (var port in design.Ports.Where(p => p.Host != PortHost.Shell))
        {
            var fault = design.Head(port.Host) is FlatHead flat
                ? OnFlat(shown, design.Shell, flat, port)
                : OnHemisphere(shown, design.Shell.OuterRadius, design.Head(port.Host).Wall, port);
            if (fault is not null)
                yield return fault;
            if (port.Cut == EndCut.HoleSaw)
            {
                yield return new Fault(FaultCodes.KeyDoesNotApply, $"{port.Path}.cut",
                    $"'{port.Name}' stands in a head: a hole saw of the shell's diameter cuts no end for it.", null, null,
                    "Use 'cut: square' or 'cut: ground'.");
            }
        }
    }

    private static Fault? OnFlat(Shown shown, ShellDesign shell, FlatHead head, PortDesign port)
    {
        // One thickness of plate is left outside the port; an overlay's port must also open into the shell's bore.
        var plate = (head.OutsideDiameter / 2) - head.Wall;
        var wide = Math.Max(port.OuterRadius, ShellHole.HoleRadius(port));
        if (port.Place.Radius + wide > plate)
            return Off(shown, port, wide, plate, "one thickness inside the plate's rim");
        var hole = ShellHole.HoleRadius(port);
        return head.Seat == Seat.Overlay && port.Place.Radius + hole > shell.InnerRadius
            ? Off(shown, port, hole, shell.InnerRadius, "inside the shell's bore")
            : null;
    }

    private static Fault? OnHemisphere(Shown shown, double outer, double wall, PortDesign port)
    {
        if (port.Place.Radius > 0)
        {
            return new Fault(FaultCodes.PortOffPole, $"{port.Path}.at.radius",
                $"'{port.Name}' does not stand at the pole of the hemisphere; ports elsewhere on it are not built yet.",
                shown.Length(port.Place.Radius), shown.Length(0), "Use 'radius: 0', or put the port in the shell.");
        }

        return port.OuterRadius > outer ? Off(shown, port, port.OuterRadius, outer, "on the hemisphere")
            : ShellHole.HoleRadius(port) > outer - wall
                ? Off(shown, port, ShellHole.HoleRadius(port), outer - wall, "inside the hemisphere's bore")
            : null;
    }

    private static Fault Off(Shown shown, PortDesign port, double wide, double room, string where)
    {
        var fits = wide <= room;
        return new Fault(
            FaultCodes.PortOffHead,
            fits ? $"{port.Path}.at.radius" : DesignCheck.SizePath(port),
            $"'{port.Name}' does not stay {where}.",
            shown.Length(port.Place.Radius + wide),
            $"at most {shown.Length(room)}",
            fits ? $"Use a radius of at most {shown.Length(room - wide)}, or a smaller port." : "Use a smaller port.");
    }
}
