using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>One row of a table of machine settings for manual TIG.</summary>
/// <param name="Wall">mm.</param>
/// <param name="Low">Amps, least.</param>
/// <param name="High">Amps, greatest.</param>
/// <param name="Gas">Through the cup, L/min.</param>
public sealed record TigRow(double Wall, double Low, double High, double Gas, string Source)
{
    /// <summary>Whether the row is for argon with helium in it; how much the tables do not say.</summary>
    public bool HasHelium { get; init; }

    public string GasName => HasHelium ? "argon/helium" : "argon";
}

/// <summary>Amps and gas of manual TIG seams; the current is that of <see cref="WeldingCurrents"/>.</summary>
public static class TigSettings
{
    private const double Inch = 25.4;

    /// <summary>1 cubic foot an hour, L/min.</summary>
    private const double Cfh = 0.4719474;

    private const string Ck = Sources.TorchTables;

    private const string Esab = Sources.SteelManual;

    private const string Dictionary = "Welding Dictionary vol. 1 p. 150, stainless butt welds";

    private const string Panasonic = Sources.TigManual;

    private static readonly ImmutableArray<TigRow> _aluminiumButt =
    [
        new(Inch / 16, 60, 80, 15 * Cfh, Ck), new(Inch / 8, 125, 145, 17 * Cfh, Ck),
        new(Inch * 3 / 16, 190, 220, 21 * Cfh, Ck) { HasHelium = true }, new(Inch / 4, 260, 300, 25 * Cfh, Ck) { HasHelium = true },
    ];

    private static readonly ImmutableArray<TigRow> _aluminiumFillet =
    [
        new(Inch / 16, 70, 90, 15 * Cfh, Ck), new(Inch / 8, 140, 160, 17 * Cfh, Ck),
        new(Inch * 3 / 16, 210, 240, 21 * Cfh, Ck) { HasHelium = true }, new(Inch / 4, 280, 320, 25 * Cfh, Ck) { HasHelium = true },
    ];

    private static readonly ImmutableArray<TigRow> _stainlessButt =
    [
        new(0.8, 20, 50, 5, Dictionary), new(1.0, 50, 80, 5, Dictionary), new(1.5, 65, 105, 7, Dictionary),
        new(2.4, 85, 125, 7, Dictionary), new(3.2, 100, 135, 7, Dictionary), new(6.4, 135, 160, 10, Esab),
    ];

    private static readonly ImmutableArray<TigRow> _stainlessFillet =
    [
        new(1.0, 25, 35, 5, Esab), new(1.5, 70, 90, 5, Panasonic), new(3.0, 130, 150, 7, Panasonic), new(6.4, 160, 180, 10, Esab),
    ];

    private static readonly ImmutableArray<TigRow> _mildSteelButt =
    [
        new(1.0, 35, 45, 5, Esab), new(1.6, 60, 70, 7, Esab), new(3.2, 80, 100, 7, Esab), new(4.8, 115, 135, 10, Esab),
        new(6.4, 160, 175, 10, Esab),
    ];

    private static readonly ImmutableArray<TigRow> _mildSteelFillet =
    [
        new(1.0, 40, 50, 5, Esab), new(1.6, 70, 90, 7, Esab), new(3.2, 90, 115, 7, Esab), new(4.8, 140, 165, 10, Esab),
        new(6.4, 170, 200, 10, Esab),
    ];

    public static ImmutableArray<TigRow> Rows(MaterialFamily family, SeamForm form) => (family, form) switch
    {
        (MaterialFamily.Aluminium, SeamForm.Butt) => _aluminiumButt,
        (MaterialFamily.Aluminium, _) => _aluminiumFillet,
        (MaterialFamily.Stainless, SeamForm.Butt) => _stainlessButt,
        (MaterialFamily.Stainless, _) => _stainlessFillet,
        (_, SeamForm.Butt) => _mildSteelButt,
        _ => _mildSteelFillet,
    };

    /// <summary>
    /// For the thinner of two walls: linear between the table's rows, its end rows beyond them; the gas is that of the nearer row.
    /// </summary>
    public static TigRow At(MaterialFamily family, SeamForm form, double wall)
    {
        var rows = Rows(family, form);
        ImmutableArray<double> walls = [.. rows.Select(row => row.Wall)];
        double Of(Func<TigRow, double> column) => WallTable.At(walls, [.. rows.Select(column)], wall);
        var sources = new[] { rows.LastOrDefault(row => row.Wall <= wall), rows.FirstOrDefault(row => row.Wall >= wall) }
            .OfType<TigRow>().Select(row => row.Source).Distinct();
        return new(
            wall, Of(row => row.Low), Of(row => row.High), Of(row => row.Gas),
            WallTable.Sourced(walls, wall, string.Join(" and ", sources)))
        {
            HasHelium = rows.MinBy(row => Math.Abs(row.Wall - wall))!.HasHelium,
        };
    }
}
