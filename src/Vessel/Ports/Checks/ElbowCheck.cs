using Vessel.Design;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>Whether the pieces of an elbow leave each other room on the inside of the bend.</summary>
internal static class ElbowCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design) =>
        design.Ports.Where(port => port.Elbow is not null).SelectMany(port => Find(port, port.Elbow!, new UnitFormat(design.Units)));

    private static IEnumerable<Fault> Find(PortDesign port, ElbowDesign elbow, UnitFormat shown)
    {
        if (elbow.IsTooSharp)
        {
            yield return new Fault(FaultCodes.ElbowTooSharp, $"{elbow.Path}.pieces",
                $"The elbow of '{port.Name}' turns too far at one mitre.", shown.Angle(2 * elbow.Slant),
                $"at most {shown.AngleDown(ElbowDesign.MostTurn)}",
                $"Use at least {Math.Ceiling((elbow.Angle / ElbowDesign.MostTurn) - 1e-9) + 1} pieces.");
            yield break;
        }

        // A piece's short side must take the beads at both its ends: they are about as wide as the wall.
        var least = port.OuterRadius + (port.Wall / 2 / elbow.Slope);
        if (elbow.Mitres > 1 && elbow.Radius < least)
        {
            yield return new Fault(FaultCodes.ElbowClosesUp, $"{elbow.Path}.radius",
                $"The pieces of the elbow of '{port.Name}' run into each other on the inside of the bend.",
                shown.Length(elbow.Radius), $"at least {shown.LengthUp(least)}", "Use a larger radius, or fewer pieces.");
        }

        var leastEnd = port.Wall - ((elbow.Radius - port.OuterRadius) * elbow.Slope);
        if (elbow.EndLength < leastEnd)
        {
            yield return new Fault(FaultCodes.ElbowClosesUp, $"{elbow.Path}.end_length",
                $"The last piece of the elbow of '{port.Name}' ends within its mitre.",
                shown.Length(elbow.EndLength), $"at least {shown.LengthUp(leastEnd)}", "Use a longer end, or a larger radius.");
        }
    }
}
