using Vessel.Function;
using Vessel.Mockups;
using Vessel.Parts;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>What stands on the outside and touches, or nearly touches, something else there.</summary>
internal static class OutsideRules
{
    public static IEnumerable<Measure> Of(Assembly assembly) => OutsideClashes.Of(assembly).Select(clash => new Measure(
        FindingCodes.OutsideClash,
        clash.Distance.End <= Hair ? Severity.Error : Severity.Warning,
        [clash.One.Id, clash.Other.Id],
        () => (clash.Distance.End <= Hair
            ? $"{clash.One.Name} and {clash.Other.Name} run into each other outside the vessel"
            : $"{clash.One.Name} and {clash.Other.Name} come within {NoteText.Length(clash.Distance.Start)} to "
                + $"{NoteText.Length(clash.Distance.End)} mm "
                + "of each other outside the vessel")
            + ": move, turn or shorten one of the two.",
        [new("distance", clash.Distance.Start, AtLeast(OutsideClashes.Least), "mm")],
        assembly.Design.PlaceOf(clash.Path),
        $"between {clash.One.Name} and {clash.Other.Name}, outside"));

    /// <summary>Below this two bodies meet, mm: the bracket within which distances are known.</summary>
    private const double Hair = Geometry.ConvexDistance.Usual;
}
