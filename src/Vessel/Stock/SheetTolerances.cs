using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>Lengths by which sheet may be thicker or thinner than it is called, mm either way.</summary>
public static class SheetTolerances
{
    public const string Source = "EN 10259, normal tolerances of cold-rolled stainless strip 1,000 to 1,300 mm wide, as printed by "
        + "bssa.org.uk; "
        + "taken for other metals too: common practice, no source";

    /// <summary>Thicknesses from which on, mm, and by how much they may be off.</summary>
    private static readonly ImmutableArray<(double From, double Off)> _rows =
    [
        (0, 0.03), (0.3, 0.04), (0.5, 0.05), (0.6, 0.05), (0.8, 0.06), (1, 0.07), (1.2, 0.08), (1.5, 0.09), (2, 0.10), (2.5, 0.12),
        (3, 0.14), (4, 0.15),
        (5, 0.15),
    ];

    /// <summary>The table ends at 6.5 mm; beyond, the last value grows in proportion: an estimate.</summary>
    private const double Last = 6.5;

    public static double Thickness(double thickness) => _rows.Last(row => row.From <= thickness).Off * Math.Max(1, thickness / Last);

    /// <summary>For <c>stock</c>: the thickness that a row ends before, null for the last, and its tolerance.</summary>
    public static IEnumerable<(double? Below, double Off)> All =>
        _rows.Select((row, i) => (i + 1 < _rows.Length ? _rows[i + 1].From : (double?)null, row.Off));
}
