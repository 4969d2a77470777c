using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Findings;

/// <summary>What the design's author knows of and takes: warnings and notes by their codes, errors never.</summary>
public static class Acceptance
{
    /// <summary>The findings in their order; those that the design accepts carry the reason.</summary>
    public static ImmutableArray<Measure> Mark(ImmutableArray<Measure> findings, VesselDesign design) =>
    [
        .. findings.Select(finding => finding.Severity != Severity.Error
            && design.Accepted.FirstOrDefault(a => a.Code == finding.Code) is { } accepted
            ? finding with { AcceptedBecause = accepted.Reason }
            : finding),
    ];

    /// <summary>Acceptances of what is not there: lest one written for an old state hides a new doubt.</summary>
    public static ImmutableArray<Fault> Faults(ImmutableArray<Measure> findings, VesselDesign design) =>
    [
        .. design.Accepted.Select((accepted, i) => Problem(
            accepted,
            design.Accepted.Take(i).Any(a => a.Code == accepted.Code),
            [.. findings.Where(f => f.Code == accepted.Code)]))
            .OfType<Fault>()
            .Select(fault => fault with { At = design.PlaceOf(fault.Path).Span })
            .OrderBy(fault => (fault.At!.Value.Setting, fault.At.Value.Line, fault.At.Value.Column)),
    ];

    private static Fault? Problem(AcceptedCode accepted, bool again, ImmutableArray<Measure> found)
    {
        var (code, path) = (accepted.Code, $"{accepted.Path}.code");
        if (FindingCodes.All.All(known => known.Code != code))
        {
            return new(FaultCodes.UnknownFinding, path, $"'{code}' is not the code of a finding.", code, null,
                Suggestion.Hint(code, FindingCodes.All.Select(c => c.Code)) ?? "Use the code as it is reported.");
        }

        if (again)
            return new(FaultCodes.NothingToAccept, path, $"'{code}' is accepted twice.", code, null, "Delete one of the two.");
        if (found.IsEmpty)
        {
            return new(FaultCodes.NothingToAccept, path, $"'{code}' is accepted, and there is no such finding.", code, null,
                "Delete it from 'accept'.");
        }

        return found.All(f => f.Severity == Severity.Error)
            ? new(FaultCodes.ErrorAccepted, path, $"'{code}' is an error here, and errors cannot be accepted.", code, null,
                $"Put it right: {found[0].Message}")
            : null;
    }
}
