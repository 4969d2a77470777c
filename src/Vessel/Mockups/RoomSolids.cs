using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>The rooms of hoses and spanners as bodies to look at, where the vessel stands.</summary>
public static class RoomSolids
{
    public static ImmutableArray<(string Name, Mesh Mesh)> Of(MockupPlan plan) =>
    [
        .. plan.Ports.SelectMany(port => PortRoom.Of(port, plan.Options))
            .Select(room => (room.What, Mesher.Flatten(room.Solid(), Accuracy.Solids with { Chord = Mockup.UsualChord }))),
    ];
}
