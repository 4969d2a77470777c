using System.Globalization;
using Vessel.Design;
using Vessel.Reading;
using Xunit;

namespace Vessel.Tests.Reading;

/// <summary>Small files for the tests of the reader.</summary>
internal static class DesignTexts
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

    public const string WithInside = Breather + """

        inside:
          cap: { outside_diameter: 58, wall: 2, skirt: 40, opens: up, drain_hole: 4, windows: { count: 4, width: 12, height: 18, up: 20 } }
          sleeve: { tube: { outside_diameter: 76, wall: 2 }, length: 120 }
          discs:
            - { name: lower screen, fits: sleeve, at: { height: 70 }, thickness: 1.5, hole_diameter: 3, pitch: 5 }
            - { name: upper screen, at: { height: 100 }, thickness: 1.5, hole_diameter: 3, pitch: 5, pattern: rings, margin: 4 }
            - { name: baffle, fits: shell, at: { height: 20 }, thickness: 2, hole_diameter: 6, pitch: 10, pattern: square }
          packing: { material: stainless wool, between: [lower screen, upper screen], density: 60 kg/m3, fibre_diameter: 0.05 }
        bracket: { at: { height: 95, angle: 90 }, thickness: 3, width: 84, height: 90, stand_off: 25, bolts: { diameter: 8, across: 40, up: 50, slot: 4 } }
        """;

    /// <summary>The breather with that inside it.</summary>
    public static string With(string inside) => $"{Breather}\ninside:\n  {inside}\n";

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
