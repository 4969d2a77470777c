using Vessel.Design;
using Vessel.Function;
using Vessel.Mockups;
using Vessel.Parts;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>Whether hoses and spanners find their way to the ports.</summary>
internal static class RoomRules
{
    public static IEnumerable<Measure> Of(Assembly assembly) => RoomClashes.Of(
        assembly.Mockup, [.. assembly.Members.Select(member => member.Outside).OfType<OutsideBody>()]).Select(clash => new Measure(
        FindingCodes.NoRoomAtPort,
        Severity.Warning,
        [.. new[] { clash.Room.Port.Id, clash.OtherId }.Distinct()],
        () => (clash.Distance.End <= Hair
            ? $"{clash.Room.What} runs into {clash.Other}"
            : $"{clash.Room.What} comes within {NoteText.Length(clash.Distance.End)} mm of {clash.Other}")
            + $" (a cylinder of {NoteText.Length(2 * clash.Room.Radius)} mm over {NoteText.Length(clash.Room.To - clash.Room.From)} mm "
            + "along the "
            + "port's axis): turn, move or lengthen the port, or give the hose's true sizes under 'mockup'.",
        [new("distance", clash.Distance.Start, AtLeast(RoomClashes.Least), "mm")],
        assembly.Design.PlaceOf(clash.Room.Port.Site.Port.Path),
        $"between {clash.Room.What} and {clash.Other}"));

    /// <summary>Below this two bodies meet, mm: the bracket within which distances are known.</summary>
    private const double Hair = Geometry.ConvexDistance.Usual;
}
