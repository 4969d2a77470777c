namespace Vessel.Design;

/// <summary>Formed heads whose radii do not fit, and cones whose tip nothing closes.</summary>
internal static class HeadShapeCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        return new[] { PortHost.Top, PortHost.Bottom }
            .Select(end => design.Head(end) switch
            {
                TorisphereHead head => Radii(shown, design.Shell.AtEnd(end), head),
                PanHead head => Knuckle(shown, design.Shell.AtEnd(end), head, head.Knuckle),
                ToriconeHead head =>
                    Knuckle(shown, design.Shell.AtEnd(end), head, head.Knuckle) ?? Nose(shown, design.Shell.AtEnd(end), head),
                ConeHead cone => Tip(shown, design, end, cone),
                _ => null,
            })
            .OfType<Fault>();
    }

    private static Fault? Radii(Shown shown, ShellSection shell, TorisphereHead head)
    {
        var radius = shell.OuterRadius - head.Wall;
        if (!(radius > 0))
            return null;
        // The standards' radii are named by one key, and fit all but very thick walls.
        var (crown, knuckle) = head.Standard is null ? ("crown_radius", "knuckle_radius") : ("standard", "standard");
        if (Knuckle(shown, shell, head, head.Knuckle, knuckle) is { } wide)
            return wide;
        return head.Crown <= radius
            ? new Fault(FaultCodes.RadiiDoNotFit, $"{head.Path}.{crown}",
                $"The crown of the {head.Path} head is no wider than its bore.", shown.Length(head.Crown),
                $"more than {shown.LengthUp(radius)}", "Make the crown radius larger, or use 'shape: hemisphere'.")
            : null;
    }

    private static Fault? Knuckle(Shown shown, ShellSection shell, DishedHead head, double knuckle, string key = "knuckle_radius")
    {
        var radius = shell.OuterRadius - head.Wall;
        return radius > 0 && knuckle >= radius
            ? new Fault(FaultCodes.RadiiDoNotFit, $"{head.Path}.{key}",
                $"The knuckle of the {head.Path} head is as wide as its bore.", shown.Length(knuckle),
                $"less than {shown.LengthDown(radius)}", "Make the knuckle radius smaller, or use 'shape: hemisphere'.")
            : null;
    }

    /// <summary>Nose and knuckle leave some straight cone between them.</summary>
    private static Fault? Nose(Shown shown, ShellSection shell, ToriconeHead head)
    {
        var (radius, sin, cos) = (shell.OuterRadius - head.Wall, Math.Sin(head.HalfAngle), Math.Cos(head.HalfAngle));
        // Of the cone this much is to be left, lest its edges run together.
        var most = ((radius - head.Knuckle - (HeadShape.Least * sin)) / cos) + head.Knuckle;
        return radius > 0 && head.Nose >= most
            ? new Fault(FaultCodes.RadiiDoNotFit, $"{head.Path}.nose_radius",
                $"Nose and knuckle of the {head.Path} head leave no cone between them.", shown.Length(head.Nose),
                $"less than {shown.LengthDown(most)}", "Make the nose radius smaller, or use 'shape: torisphere'.")
            : null;
    }

    private static Fault? Tip(Shown shown, VesselDesign design, PortHost end, ConeHead cone)
    {
        if (design.Ports.FirstOrDefault(p => HeadShape.IsAtPole(p, end)) is not { } port)
        {
            // A port whose place is at fault may be meant for it.
            return design.Ports.Any(p => p.Host == end && double.IsNaN(p.Place.Radius)) ? null
                : new Fault(FaultCodes.ConeTipOpen, cone.Path,
                    $"Nothing closes the tip of the {cone.Path} cone, and a pointed one can be neither cut nor welded.", null, null,
                    $"Add a port with 'in: {cone.Path}, at: {{ radius: 0 }}'.");
        }

        // The tip is cut square to the sheet, so that its inner edge is narrower than a bore taken on the outside.
        var least = cone.Wall * Math.Cos(cone.HalfAngle);
        return port.Joint == PortJoint.SetOn && port.BoreRadius <= least
            ? new Fault(FaultCodes.ConeTipOpen, port.SizeKey,
                $"The bore of '{port.Name}' is too narrow for the tip of a cone so thick.", shown.Length(port.Bore),
                $"more than {shown.LengthUp(2 * least)}", "Make its bore wider, or use 'joint: set_in'.")
            : null;
    }
}
