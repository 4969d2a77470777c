using Vessel.Design;

namespace Vessel.Members.Dipsticks;

/// <summary>Whether the dipstick passes its port.</summary>
internal static class DipstickCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design, DipstickDesign stick)
    {
        if (design.Ports.FirstOrDefault(port => port.Name == stick.Port) is not { } port)
            yield break;
        if (port.Elbow is { } elbow)
        {
            yield return new Fault(FaultCodes.DipstickDoesNotBend, elbow.Path,
                $"The dipstick cannot pass the elbow of '{port.Name}'.", null, null,
                "Leave out the elbow, or put the dipstick in another port.");
        }

        if (stick.Diagonal >= port.Bore)
        {
            var shown = new UnitFormat(design.Units);
            yield return new Fault(FaultCodes.DipstickTooWide, $"{stick.Path}.width",
                $"The dipstick does not pass the bore of '{port.Name}', corner to corner.",
                shown.Length(stick.Diagonal), $"less than {shown.LengthDown(port.Bore)}",
                "Make the dipstick narrower, or the port wider.");
        }
    }
}
