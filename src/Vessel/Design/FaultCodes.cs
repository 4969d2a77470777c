namespace Vessel.Design;

/// <summary>Every fault code.</summary>
public static class FaultCodes
{
}
