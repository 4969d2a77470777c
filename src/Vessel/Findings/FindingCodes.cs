namespace Vessel.Findings;

/// <summary>Every finding code.</summary>
public static class FindingCodes
{
}
