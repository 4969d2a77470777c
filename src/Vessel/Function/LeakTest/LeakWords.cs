using System.Globalization;
using Vessel.Design;

namespace Vessel.Function;

/// <summary>
/// The one leak test of a design in words: steps, as-built sheet, drawing, cautions and figures all take its pressure and its medium
/// from here.
/// </summary>
public static class LeakWords
{
    private const double PascalsPerMillibar = 100;

    private const double PascalsPerPsi = 6894.757;

    /// <summary>Pressure of the test in words: <c>200 mbar (2.9 psi)</c>.</summary>
    public static string Pressure(LeakTestDesign test) => string.Create(
        CultureInfo.InvariantCulture,
        $"{FigureText.Of(test.Pressure / PascalsPerMillibar)} mbar ({test.Pressure / PascalsPerPsi:0.0} psi)");

    public static string Medium(LeakTestDesign test) => test.With == TestMedium.Air ? "air" : "water";

    /// <summary>Name of the test in words: <c>water at 200 mbar (2.9 psi)</c>.</summary>
    public static string Named(LeakTestDesign test) => $"{Medium(test)} at {Pressure(test)}";

    /// <summary>What gives a leak away.</summary>
    public static string Sign(LeakTestDesign test) => test.With == TestMedium.Air ? "bubbles" : "drops";

    /// <summary>The work itself, but for blanks and places.</summary>
    public static string Method(LeakTestDesign test) => test.With == TestMedium.Air
        ? $"raise the air inside to {Pressure(test)} through a regulator with a relief valve set just above, nobody beside the vessel "
            + "while it rises; "
            + "then brush soap film on"
        : $"fill with water until no air is left, dry the outside, raise the water to {Pressure(test)} with a hand pump and a gauge; then "
            + "look for drops along";

    /// <summary>The hazard, with the energy that this vessel stores. HSE GS4 names no pressure.</summary>
    public static string Caution(Assembly assembly)
    {
        var (test, volume) = (assembly.Design.LeakTest, LeakTest.Of(assembly).Volume);
        var (air, water) = (StoredEnergy.AirIsothermal(test.Pressure, volume), StoredEnergy.Water(test.Pressure, volume));
        return $"Leak test with {Named(test)}: full of air this vessel sets free up to {FigureText.Of(air)} J if it bursts, full of water "
            + $"{FigureText.Of(water, "J")}. "
            + "First fill it with water until the last bubble is out; let pressure in through a regulator with a relief valve, never "
            + "straight from the shop's line; "
            + "stand clear of ends and blanks (HSE GS4).";
    }
}
