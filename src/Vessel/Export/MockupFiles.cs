using Vessel.Export.Solids;
using Vessel.Export.Stl;
using Vessel.Geometry;

namespace Vessel.Export;

/// <summary>What is written to be printed; nothing where a mock-up is not possible.</summary>
internal static class MockupFiles
{
    private const string Plastic = "print plastic";

    public static IEnumerable<OutputFile> Of(Build build)
    {
        if (!build.Assembly.Mockup.Obstacles.IsEmpty)
            return [];
        var name = build.Assembly.Design.Name;
        return
        [
            new("mockup/print.stl", to => StlWriter.Write(build.Mockup!.Mesh, name, to)),
            new("mockup/print.3mf", to => ThreeMfWriter.Write(
                [new("mock-up", build.Mockup!.Mesh, [Frame3.Identity], Plastic, Colour.Plastic)], name, to)),
        ];
    }
}
