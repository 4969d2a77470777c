using System.Collections.Immutable;
using System.Globalization;

namespace Vessel.Stock;

/// <summary>Unified inch threads, and the dash sizes of fittings and bosses that are cut with them.</summary>
internal static class InchThreads
{
    private const double Inch = 25.4;

    private const string Source = "ASME B1.1; tap drill: published tap drill chart";

    private const string NearSource = "ASME B1.1; tap drill: diameter less pitch";

    private const string DashSource = "thread: SAE J514 (37 degree fittings), SAE J1926 / ISO 11926 (bosses); tap drill: {0}";

    private const string DashBore = "; bore: of a usual 37 degree male fitting, not checked against the source";

    private const string Chart = "published tap drill chart";

    private const string Memory = "not checked against the source";

    public static ImmutableArray<ThreadSize> All { get; } =
    [
        Unified("1/4", 0.25, 20, "UNC", 0.2010),
        Unified("5/16", 0.3125, 18, "UNC", 0.2570),
        Unified("3/8", 0.375, 16, "UNC", 5.0 / 16),
        Unified("7/16", 0.4375, 14, "UNC", 0.3680),
        Unified("1/2", 0.5, 13, "UNC", 27.0 / 64),
        Unified("9/16", 0.5625, 12, "UNC", 31.0 / 64),
        Unified("5/8", 0.625, 11, "UNC", 17.0 / 32),
        Unified("3/4", 0.75, 10, "UNC", 21.0 / 32),
        Unified("7/8", 0.875, 9, "UNC", 49.0 / 64),
        Unified("1", 1, 8, "UNC", 7.0 / 8),
        Unified("1 1/8", 1.125, 7, "UNC", 63.0 / 64),
        Unified("1 1/4", 1.25, 7, "UNC", 71.0 / 64),
        Unified("1 3/8", 1.375, 6, "UNC", 78.0 / 64),
        Unified("1 1/2", 1.5, 6, "UNC", 43.0 / 32),
        Unified("1 3/4", 1.75, 5, "UNC", 99.0 / 64),
        Unified("2", 2, 4.5, "UNC", 57.0 / 32),
        Unified("1/4", 0.25, 28, "UNF", 0.2130),
        Unified("5/16", 0.3125, 24, "UNF", 0.2720),
        Unified("3/8", 0.375, 24, "UNF", 0.3320),
        Unified("7/16", 0.4375, 20, "UNF", 25.0 / 64),
        Unified("1/2", 0.5, 20, "UNF", 29.0 / 64),
        Unified("9/16", 0.5625, 18, "UNF", 33.0 / 64),
        Unified("5/8", 0.625, 18, "UNF", 37.0 / 64),
        Unified("3/4", 0.75, 16, "UNF", 11.0 / 16),
        Unified("7/8", 0.875, 14, "UNF", 13.0 / 16),
        Unified("1", 1, 12, "UNF", 59.0 / 64),
        Unified("1 1/8", 1.125, 12, "UNF", null),
        Unified("1 1/4", 1.25, 12, "UNF", null),
        Unified("1 3/8", 1.375, 12, "UNF", null),
        Unified("1 1/2", 1.5, 12, "UNF", null),
        Unified("1 1/16", 17.0 / 16, 12, "UN", null),
        Unified("1 3/16", 19.0 / 16, 12, "UN", null),
        Unified("1 5/16", 21.0 / 16, 12, "UN", null),
        Unified("1 5/8", 1.625, 12, "UN", null),
        Unified("1 7/8", 1.875, 12, "UN", null),
        Unified("2 1/2", 2.5, 12, "UN", null),
    ];

    /// <summary>Numbers are sixteenths of an inch of the tube that the fitting takes.</summary>
    public static ImmutableArray<ThreadSize> Dashes { get; } =
    [
        Dash(2, "5/16-24 UNF", null, Chart),
        Dash(3, "3/8-24 UNF", null, Chart),
        Dash(4, "7/16-20 UNF", 0.172, Chart),
        Dash(5, "1/2-20 UNF", null, Chart),
        Dash(6, "9/16-18 UNF", 0.297, Chart),
        Dash(8, "3/4-16 UNF", 0.391, Chart),
        Dash(10, "7/8-14 UNF", 0.484, Chart),
        Dash(12, "1 1/16-12 UN", 0.609, Memory, 63.0 / 64),
        Dash(14, "1 3/16-12 UN", null, "diameter less pitch"),
        Dash(16, "1 5/16-12 UN", 0.844, Memory, 79.0 / 64),
        Dash(20, "1 5/8-12 UN", 1.078, Memory, 99.0 / 64),
        Dash(24, "1 7/8-12 UN", null, "diameter less pitch"),
        Dash(32, "2 1/2-12 UN", null, "diameter less pitch"),
    ];

    private static ThreadSize Unified(string size, double major, double perInch, string series, double? drill)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"{size}-{perInch} {series}");
        var (diameter, pitch) = (major * Inch, Inch / perInch);
        return new(name, name, diameter, pitch, drill * Inch ?? diameter - pitch, drill is null ? NearSource : Source) { Seal = ThreadSeal.Washer };
    }

    private static ThreadSize Dash(int dash, string thread, double? bore, string from, double? drill = null)
    {
        var own = All.Single(one => one.Name == thread);
        return own with
        {
            Name = string.Create(CultureInfo.InvariantCulture, $"dash {dash}"),
            TapDrill = drill * Inch ?? own.TapDrill,
            Source = DashSource.Replace("{0}", from, StringComparison.Ordinal) + (bore is null ? "" : DashBore),
            Bore = bore * Inch,
            Seal = ThreadSeal.ORing,
        };
    }
}
