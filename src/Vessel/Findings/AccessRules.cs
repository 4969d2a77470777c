using Vessel.Design;
using Vessel.Function;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Planning;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>What cannot be welded as drawn: out of reach, or shut in.</summary>
internal static class AccessRules
{
    public static IEnumerable<Measure> Of(Plan plan)
    {
        foreach (var access in plan.Access)
            yield return Reach(access, plan.Assembly);
        foreach (var room in SealedRooms(plan.Assembly.Cavity))
            yield return Sealed(room, plan.Assembly.Design);
    }

    private static Measure Reach(TorchAccess access, Assembly assembly)
    {
        var joint = access.Joint;
        var missing = Math.Round(100 * (1 - access.ReachedShare));
        return new(
            FindingCodes.JointOutOfReach,
            Severity.Error,
            [.. joint.Between.Distinct()],
            () => $"{joint.Number}, {joint.Name}, is out of reach of a torch (cup {NoteText.Length(access.CupDiameter)} mm) and rod along "
            + $"{missing} % "
            + $"of its length when its turn comes: {access.InTheWay ?? "its own parts"} is in the way; {Remedy(access)}.",
            [new("reached share", access.ReachedShare, AtLeast(1), string.Empty),
                new("free directions", access.FreeShare, null, string.Empty)],
            assembly.Design.PlaceOf(Key(joint)));
    }

    private static string Key(Joint joint) => joint.Role == WeldRole.Hold ? joint.Path : joint.Owner;

    private static string Remedy(TorchAccess access) => access.Joint.Words?.Remedy ?? access.Joint.Role switch
    {
        WeldRole.HeadSeam => "give less recess, or take an overlay seat",
        _ => "move it away from its neighbour, tilt it less, or make the neighbour shorter",
    };

    /// <summary>Rooms from which no way leads to a port, be it a bung with its plug out; none where there is no port at all.</summary>
    private static IEnumerable<Room> SealedRooms(Cavity cavity)
    {
        if (!cavity.Openings.Any(opening => opening.IsPort))
            return [];
        var vented = cavity.Openings.Where(opening => opening.IsPort).Select(opening => opening.From).ToHashSet();
        for (var before = -1; before < vented.Count;)
        {
            before = vented.Count;
            foreach (var way in cavity.Openings.Where(way => !way.IsPort && way.Area > 0))
            {
                if (vented.Contains(way.From))
                    vented.Add(way.To);
                else if (vented.Contains(way.To))
                    vented.Add(way.From);
            }
        }

        return cavity.Rooms.Where(room => !vented.Contains(room.Name));
    }

    private static Measure Sealed(Room room, VesselDesign design) => new(
        FindingCodes.SealedRoom,
        Severity.Error,
        [],
        () => $"the room {room.Name} has no way to any port: it is shut in when the vessel is welded and bursts when it is heated "
        + "(20 to 600 degC triples the pressure); give it windows, a drain hole or a free rim.",
        [],
        design.PlaceOf("inside"));
}
