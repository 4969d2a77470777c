namespace Vessel.Design;

/// <summary>What is accepted has a reason that says something.</summary>
internal static class AcceptCheck
{
    public static IEnumerable<Fault> Find(Section file) => file.Items("accept")
        .Where(a => a.Text("reason") is { } reason && !reason.Any(char.IsLetterOrDigit))
        .Select(a => new Fault(FaultCodes.MissingValue, $"{a.Path}.reason", "The reason says nothing.", null, null,
            "Say why it is good enough."));
}
