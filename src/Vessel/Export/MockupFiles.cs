using Vessel.Export.Solids;
using Vessel.Export.Stl;
using Vessel.Geometry;
using Vessel.Mockups;

namespace Vessel.Export;

/// <summary>What is written to be printed, where a mock-up is possible; and the rooms of hoses and spanners, to be looked at.</summary>
internal static class MockupFiles
{
    private const string Plastic = "print plastic";

    public static IEnumerable<OutputFile> Of(Build build)
    {
        var (plan, name) = (build.Assembly.Mockup, build.Assembly.Design.Name);
        if (plan.Obstacles.IsEmpty)
        {
            yield return new("mockup/print.stl", to => StlWriter.Write(build.Mockup!.Mesh, name, to));
            yield return new("mockup/print.3mf", to => ThreeMfWriter.Write(
                [new("mock-up", build.Mockup!.Mesh, [Frame3.Identity], Plastic, Colour.Plastic)], name, to));
        }

        if (!build.Assembly.Sites.IsEmpty)
        {
            yield return new("mockup/room.3mf", to => ThreeMfWriter.Write(
                [.. RoomSolids.Of(plan).Select(room => new Body(room.Name, room.Mesh, [Frame3.Identity], "room to keep free", Colour.Room))], name, to));
        }
    }
}
