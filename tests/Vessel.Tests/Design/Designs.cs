using System.Globalization;
using Vessel.Design;
using Xunit;

namespace Vessel.Tests.Design;

/// <summary>Small files for the tests of the reader.</summary>
internal static class Designs
{
    public const string Breather = """
        vessel: Workboat breather
        revision: C
        material: stainless 304
        dimensions: { body: 110, plate: 2 }
        shell: { outside_diameter: body, wall: plate, height: 180, made_from: sheet, seam_angle: 200 }
        top: { shape: flat, thickness: 3 }
        bottom: { shape: hemisphere }
        ports:
          - name: inlet
            in: shell
            at: { height: 120, angle: -30, offset: 10 }
            tube: { outside_diameter: 32, wall: 2 }
            length: 50
            cut: ground
            fitting: dash 20
          - name: outlet
            in: top
            at: { radius: 0 }
            tube: { outside_diameter: 32, wall: 2 }
            length: 40
            inside_length: 10
            joint: set_in
          - name: drain
            in: bottom
            at: { radius: 0 }
            bung: { thread: M14x1.5, outside_diameter: 22, length: 15 }
        flow: { blow_by: 45 L/min }
        """;

    public static VesselDesign Good(string text)
    {
        var outcome = DesignReader.Read(text);
        Assert.Empty(outcome.Faults.Select(f => $"{f.Code} {f.Path}: {f.What}"));
        return outcome.Value!;
    }

    /// <summary>A plain vessel of which one length, the shell's height, is what the text says.</summary>
    public static string WithHeight(string height, string units = "mm", string dimensions = "", string metal = "stainless 304") =>
        string.Create(CultureInfo.InvariantCulture, $"""
        vessel: Gauge glass
        units: {units}
        material: {metal}
        dimensions: {"{"} {dimensions} {"}"}
        shell: {"{"} outside_diameter: 110 mm, wall: 2 mm, height: "{height}", made_from: tube {"}"}
        top: {"{"} shape: flat, thickness: 3 mm {"}"}
        bottom: {"{"} shape: flat, thickness: 3 mm {"}"}
        """);

    public static double Height(string height, string units = "mm", string dimensions = "", string metal = "stainless 304") =>
        Good(WithHeight(height, units, dimensions, metal)).Shell.Height;
}
