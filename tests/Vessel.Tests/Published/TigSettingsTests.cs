using Vessel.Planning;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>Machine settings, electrodes and strengths as they are printed.</summary>
public sealed class TigSettingsTests
{
    private const double Inch = 25.4;

    /// <summary>The tables take the throat as 0.707 of the leg.</summary>
    private const double TableThroat = 0.707;

    /// <summary>CK Worldwide Form 116: aluminium 1/8 in fillet 140 to 160 A at 17 cfh; 1/4 in butt 260 to 300 A at 25 cfh.</summary>
    [Theory]
    [InlineData(SeamForm.Fillet, 0.125, 140, 160, 17)]
    [InlineData(SeamForm.Butt, 0.25, 260, 300, 25)]
    [InlineData(SeamForm.Butt, 0.0625, 60, 80, 15)]
    public void Aluminium(SeamForm form, double inches, double low, double high, double cfh)
    {
        var row = TigSettings.At(MaterialFamily.Aluminium, form, inches * Inch);

        Assert.Equal((low, high), (row.Low, row.High));
        // A cubic foot an hour is 28.316846592 L in 60 min.
        Assert.Equal(cfh * 28.316846592 / 60, row.Gas, 1e-5);
    }

    /// <summary>ESAB ET 201i: mild steel 3.2 mm 80 to 100 A butt, 90 to 115 A fillet at 7 L/min;
    /// stainless 6.4 mm 160 to 180 A fillet.</summary>
    [Theory]
    [InlineData(MaterialFamily.MildSteel, SeamForm.Butt, 3.2, 80, 100, 7)]
    [InlineData(MaterialFamily.MildSteel, SeamForm.Fillet, 3.2, 90, 115, 7)]
    [InlineData(MaterialFamily.Stainless, SeamForm.Fillet, 6.4, 160, 180, 10)]
    // Welding Dictionary: 2.4 mm butt 85 to 125 A at 7 L/min. Panasonic: 1.5 mm T joint 70 to 90 A at 5 L/min.
    [InlineData(MaterialFamily.Stainless, SeamForm.Butt, 2.4, 85, 125, 7)]
    [InlineData(MaterialFamily.Stainless, SeamForm.Fillet, 1.5, 70, 90, 5)]
    public void Steels(MaterialFamily family, SeamForm form, double wall, double low, double high, double gas)
    {
        var row = TigSettings.At(family, form, wall);

        Assert.Equal((low, high, gas), (row.Low, row.High, row.Gas));
    }

    /// <summary>The sum of the two neighbours' halves, half-way between them.</summary>
    [Fact]
    public void Between_two_rows_lies_their_mean()
    {
        var row = TigSettings.At(MaterialFamily.MildSteel, SeamForm.Butt, 4.0);

        Assert.Equal((97.5, 117.5, 8.5), (Math.Round(row.Low, 9), Math.Round(row.High, 9), Math.Round(row.Gas, 9)));
    }

    public static TheoryData<MaterialFamily, SeamForm> Tables() =>
        [.. from family in Enum.GetValues<MaterialFamily>() from form in Enum.GetValues<SeamForm>() select (family, form)];

    [Theory]
    [MemberData(nameof(Tables))]
    public void A_thicker_wall_asks_for_no_less(MaterialFamily family, SeamForm form)
    {
        var rows = Enumerable.Range(3, 90).Select(i => TigSettings.At(family, form, i / 10.0)).ToList();

        Assert.All(rows, row => Assert.InRange(row.Low, 1, row.High));
        Assert.All(rows.Zip(rows.Skip(1)), pair =>
            Assert.True(pair.Second.Low + pair.Second.High >= pair.First.Low + pair.First.High && pair.Second.Gas >= pair.First.Gas));
    }

    [Theory]
    [InlineData(0.3, "thinner")]
    [InlineData(20, "thicker")]
    public void Outside_the_table_is_said(double wall, string word) =>
        Assert.Contains(word, TigSettings.At(MaterialFamily.Stainless, SeamForm.Butt, wall).Source, StringComparison.Ordinal);

    /// <summary>Air Products, MetFab Welder's Handbook: 1.6 mm 50 to 150 A direct, 50 to 120 A alternating;
    /// 2.4 mm to 250 and 180.</summary>
    [Theory]
    [InlineData(80, WeldingCurrent.ElectrodeNegative, 1.6)]
    [InlineData(80, WeldingCurrent.Alternating, 1.6)]
    [InlineData(115, WeldingCurrent.Alternating, 2.4)]
    [InlineData(145, WeldingCurrent.ElectrodeNegative, 2.4)]
    [InlineData(200, WeldingCurrent.Alternating, 3.2)]
    [InlineData(30, WeldingCurrent.ElectrodeNegative, 1.0)]
    // Kemppi: 4.0 mm to 280 A on AC; Tweco: 4.8 mm to 340.
    [InlineData(250, WeldingCurrent.Alternating, 4.0)]
    [InlineData(300, WeldingCurrent.Alternating, 4.8)]
    public void The_electrode_carries_the_current(double amps, WeldingCurrent current, double diameter)
    {
        var tungsten = Tungstens.For(amps, amps, current)!;

        Assert.Equal(diameter, tungsten.Diameter);
        var (low, high) = tungsten.Carries(current);
        Assert.InRange(amps, low, high);
    }

    /// <summary>6.35 mm aluminium: 260 to 320 A, for which 3.2 mm, good for 250, is too thin.</summary>
    [Theory]
    [MemberData(nameof(Tables))]
    public void No_setting_overloads_its_electrode(MaterialFamily family, SeamForm form)
    {
        var current = WeldingCurrents.Of(family);

        Assert.All(Enumerable.Range(3, 120).Select(i => TigSettings.At(family, form, i / 10.0)), row =>
            Assert.True(row.High <= Tungstens.For(row.Low, row.High, current)!.Carries(current).High));
        Assert.Null(Tungstens.For(900, 1000, current));
    }

    /// <summary>CK Worldwide Form 116: argon to 1/8 in, argon with helium at 3/16 and 1/4 in;
    /// the steels' tables are for argon alone.</summary>
    [Theory]
    [InlineData(MaterialFamily.Aluminium, 3.2, "argon")]
    [InlineData(MaterialFamily.Aluminium, 4.75, "argon/helium")]
    [InlineData(MaterialFamily.Aluminium, 6.35, "argon/helium")]
    [InlineData(MaterialFamily.Stainless, 6.35, "argon")]
    [InlineData(MaterialFamily.MildSteel, 6.35, "argon")]
    public void Thick_aluminium_is_welded_in_argon_with_helium(MaterialFamily family, double wall, string gas) => Assert.All(
        Enum.GetValues<SeamForm>(), form => Assert.Equal(gas, TigSettings.At(family, form, wall).GasName));

    /// <summary>
    /// AWS D1.1 and AISC: the metal of a fillet of 1/8 in in E70 carries 1855.9 lb/in, and so does 316L (70 ksi); 308L (75 ksi) 1988.4.
    /// ADM: 4043 521.2, 5356 770.4. From memory.
    /// </summary>
    [Theory]
    [InlineData("ER316L", "1855.9")]
    [InlineData("ER70S-2", "1855.9")]
    [InlineData("ER308L", "1988.4")]
    [InlineData("ER4043", "521.2")]
    [InlineData("ER5356", "770.4")]
    public void Strength_of_an_eighth_fillet(string filler, string poundsPerInch)
    {
        var stress = WeldMetalStrength.Shear(Fillers.All.Single(f => f.Name == filler)).Value;
        var newtonsPerMillimetre = stress * TableThroat * Inch / 8;

        // 1 lbf = 4.4482216152605 N.
        Near.Printed(poundsPerInch, newtonsPerMillimetre * Inch / 4.4482216152605);
    }

    /// <summary>3.2 mm in E70, its 70 ksi printed as 482.6 MPa: 327.55 N/mm.</summary>
    [Fact]
    public void Strength_of_a_metric_fillet() => Assert.Equal(
        327.55,
        WeldMetalStrength.Shear(Fillers.Er70S2).Value * TableThroat * 3.2,
        // Half a digit of the result, and of the strength.
        0.005 + (327.55 * 0.05 / 482.6));

    [Fact]
    public void Every_filler_has_a_strength() =>
        Assert.All(Fillers.All, f => Assert.InRange(WeldMetalStrength.Shear(f).Value, 20, WeldMetalStrength.Pull(f).Value));

    /// <summary>AWS D1.1:2025 table 7.7, low-hydrogen processes, by the thinner part: 1/8 in to 1/4 in, 3/16 to 1/2, 1/4 to 3/4,
    /// 5/16 beyond.</summary>
    [Theory]
    [InlineData(0.25, 0.125)]
    [InlineData(0.3, 0.1875)]
    [InlineData(0.75, 0.25)]
    [InlineData(1, 0.3125)]
    [InlineData(0.125, 0.125)]
    public void Least_leg(double thinner, double leg) =>
        Assert.Equal(leg * Inch, LeastFillet.Leg(MaterialFamily.MildSteel, thinner * Inch)!.Value, 1e-12);

    /// <summary>D1.1 is for carbon and low-alloy steel from 1/8 in.</summary>
    [Fact]
    public void No_least_leg_is_told_for_sheet_stainless_or_aluminium()
    {
        Assert.Null(LeastFillet.Leg(MaterialFamily.MildSteel, 3));
        Assert.Null(LeastFillet.Leg(MaterialFamily.Stainless, 6));
        Assert.Null(LeastFillet.Leg(MaterialFamily.Aluminium, 6));
    }

    /// <summary>EN 1011-1 with k = 0.6: 100 A at 14 V and 120 mm/min leave 0.42 kJ/mm; twice the speed half of it.</summary>
    [Fact]
    public void Heat_input()
    {
        Assert.Equal(0.42, ArcHeat.Input(14, 100, 120), 1e-12);
        Assert.Equal(0.21, ArcHeat.Input(14, 100, 240), 1e-12);
    }

    /// <summary>Electrode negative in argon 10.5 to 12 V at 100 A (from memory); on alternating current at most 10 V + 0.04 V/A (IEC
    /// 60974-1, from memory).</summary>
    [Fact]
    public void Volts_of_an_arc()
    {
        Assert.Equal((10.5, 12), ArcHeat.Volts(100, WeldingCurrent.ElectrodeNegative));
        Assert.Equal(14, ArcHeat.Volts(100, WeldingCurrent.Alternating).High);
    }
}
