using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>The two kinds of seam that the travel tables tell apart.</summary>
public enum SeamForm
{
    Butt,
    Fillet,
}

/// <summary>How fast a TIG seam is run by hand.</summary>
public static class TigTables
{
    private const double Inch = 25.4;

    private const string Aluminium = Sources.TorchTables;

    private const string StainlessButt = "Welding Dictionary vol. 1 p. 150, stainless butt welds";

    private const string StainlessFillet = Sources.TigManual + " middle of the range";

    private const string MildSteel = "not checked against a source: 15, 11, 10, 10 in/min at 1/16, 1/8, 3/16, 1/4 in";

    private static readonly ImmutableArray<double> _sixteenths = [Inch / 16, Inch / 8, Inch * 3 / 16, Inch / 4];

    private static readonly ImmutableArray<double> _aluminiumButt = [12 * Inch, 12 * Inch, 11 * Inch, 10 * Inch];

    private static readonly ImmutableArray<double> _aluminiumFillet = [10 * Inch, 10 * Inch, 9 * Inch, 8 * Inch];

    private static readonly ImmutableArray<double> _mildSteel = [15 * Inch, 11 * Inch, 10 * Inch, 10 * Inch];

    private static readonly ImmutableArray<double> _stainlessButtWalls = [0.8, 1.0, 1.5, 2.4, 3.2];

    private static readonly ImmutableArray<double> _stainlessButt = [660, 560, 300, 300, 300];

    private static readonly ImmutableArray<double> _stainlessFilletWalls = [1.5, 3.0];

    private static readonly ImmutableArray<double> _stainlessFillet = [150, 250];

    /// <summary>
    /// Travel speed, mm/min, for the thinner wall, mm: linear between the table's rows, its end rows beyond them.
    /// </summary>
    public static Datum Travel(MaterialFamily family, SeamForm form, double wall) => (family, form) switch
    {
        (MaterialFamily.Aluminium, SeamForm.Butt) => At(_sixteenths, _aluminiumButt, wall, Aluminium),
        (MaterialFamily.Aluminium, _) => At(_sixteenths, _aluminiumFillet, wall, Aluminium),
        (MaterialFamily.Stainless, SeamForm.Butt) => At(_stainlessButtWalls, _stainlessButt, wall, StainlessButt),
        (MaterialFamily.Stainless, _) => At(_stainlessFilletWalls, _stainlessFillet, wall, StainlessFillet),
        _ => At(_sixteenths, _mildSteel, wall, MildSteel),
    };

    /// <summary>The table itself: wall in mm, speed in mm/min.</summary>
    public static IEnumerable<(double Wall, Datum Travel)> Rows(MaterialFamily family, SeamForm form)
    {
        var walls = family != MaterialFamily.Stainless ? _sixteenths
            : form == SeamForm.Butt ? _stainlessButtWalls
            : _stainlessFilletWalls;
        return walls.Select(wall => (wall, Travel(family, form, wall)));
    }

    private static Datum At(ImmutableArray<double> walls, ImmutableArray<double> speeds, double wall, string source) =>
        new(WallTable.At(walls, speeds, wall), WallTable.Sourced(walls, wall, source));
}
