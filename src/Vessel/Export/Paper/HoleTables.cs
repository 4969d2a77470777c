using System.Collections.Immutable;
using System.Globalization;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Paper;

/// <summary>The holes of a part as tables in two units: a row for each single hole, a row for each row or ring of a pattern.</summary>
internal static class HoleTables
{
    /// <summary>Rows of a pattern; more stand in the table of holes alone.</summary>
    private const int MostRows = 200;

    /// <summary>Holes of a pattern that are looked at for its rows.</summary>
    private const int MostHoles = 20_000;

    public static IEnumerable<PaperTable> Of(Part part, TwoUnits units)
    {
        if (!part.Holes.IsEmpty)
            yield return Single(part, units);
        foreach (var field in part.Fields.Where(field => field.Lattice.Count is > 0 and <= MostHoles))
            yield return field.Lattice is RingLattice2 ? Rings(field.Lattice, units) : Rows(field.Lattice, units);
    }

    private static PaperTable Single(Part part, TwoUnits units)
    {
        var (a, b) = units.Names;
        var round = part.Holes.Any(hole => hole.OnOutside is not null);
        return new(
            [
                "no", $"x {a}", $"y {a}", $"x {b}", $"y {b}",
                .. round ? new[] { $"arc {a}", $"height {a}", $"arc {b}", $"height {b}" } : [$"radius {a}", $"radius {b}", "angle deg"],
                $"size {a}", $"size {b}", "tap", "how", "for",
            ],
            [.. part.Holes.SelectMany(hole => Tools(hole, round, units).Prepend(Row(hole, round, units)))]);
    }

    private static ImmutableArray<string> Row(Hole hole, bool round, TwoUnits units)
    {
        var (x, y) = (units.Of(hole.Center.U), units.Of(hole.Center.V));
        var d = hole.Shape is { } shape ? (shape.Text(mm => units.Of(mm).First), shape.Text(mm => units.Of(mm).Second))
            : units.Of(hole.Diameter);
        var (arc, height) = (hole.OnOutside is { } o ? units.Of(o.U) : ("", ""), hole.OnOutside is { } p ? units.Of(p.V) : ("", ""));
        var radius = units.Of(hole.Center.Length);
        return
        [
            hole.Number.ToString(CultureInfo.InvariantCulture), x.First, y.First, x.Second, y.Second,
            .. round
                ? new[] { arc.Item1, height.Item1, arc.Item2, height.Item2 }
                : [radius.First, radius.Second, TwoUnits.Degrees(hole.Center.Angle)],
            d.Item1, d.Item2, hole.Thread?.Thread ?? string.Empty, HoleWords.Tool(hole), hole.Purpose,
        ];
    }

    /// <summary>Where the drill of a window's corners or a slot's ends goes, a row each: <c>3a</c>.</summary>
    private static IEnumerable<ImmutableArray<string>> Tools(Hole hole, bool round, TwoUnits units)
    {
        if (hole.Shape is not { } shape)
            return [];
        return hole.ToolPlaces.Select((at, i) =>
        {
            var (x, y, d, radius) = (units.Of(at.U), units.Of(at.V), units.Of(shape.Drill), units.Of(at.Length));
            return (ImmutableArray<string>)
            [
                string.Create(CultureInfo.InvariantCulture, $"{hole.Number}{(char)('a' + i)}"), x.First, y.First, x.Second, y.Second,
                .. round ? Enumerable.Repeat(string.Empty, 4) : [radius.First, radius.Second, TwoUnits.Degrees(at.Angle)],
                d.First, d.Second, "", "drill", shape.IsSlot ? $"end of {hole.Number}" : $"corner of {hole.Number}",
            ];
        });
    }

    private static PaperTable Rows(Lattice2 lattice, TwoUnits units)
    {
        var (a, b) = units.Names;
        var rows = lattice.Centers().GroupBy(center => center.V).SelectMany(row => Runs([.. row], lattice.Pitch));
        return new(
            ["row", "holes", $"y {a}", $"first x {a}", $"last x {a}", $"step {a}", $"y {b}", $"first x {b}", $"last x {b}", $"step {b}"],
            [
                .. rows.Take(MostRows).Select((row, i) =>
                {
                    var step = row.Length > 1 ? units.Of((row[^1].U - row[0].U) / (row.Length - 1)) : (string.Empty, string.Empty);
                    var (y, first, last) = (units.Of(row[0].V), units.Of(row[0].U), units.Of(row[^1].U));
                    return ImmutableArray.Create(
                        Text(i + 1), Text(row.Length), y.First, first.First, last.First, step.Item1, y.Second, first.Second, last.Second,
                        step.Item2);
                }),
            ]);
    }

    /// <summary>A row that is parted by a bore is two.</summary>
    private static IEnumerable<Point2[]> Runs(Point2[] row, double pitch)
    {
        // The in-row step is at most sqrt(2) pitches; a bore leaves at least two of those.
        var start = 0;
        for (var i = 1; i <= row.Length; i++)
        {
            if (i < row.Length && row[i].U - row[i - 1].U < 1.5 * pitch * Math.Sqrt(2))
                continue;
            yield return row[start..i];
            start = i;
        }
    }

    private static PaperTable Rings(Lattice2 lattice, TwoUnits units)
    {
        var (a, b) = units.Names;
        return new(
            ["ring", "holes", $"radius {a}", $"radius {b}", "first deg", "step deg"],
            [
                .. lattice.Centers().GroupBy(center => Math.Round(center.Length, 6)).Take(MostRows).Select((ring, i) =>
                {
                    var radius = units.Of(ring.Key);
                    return ImmutableArray.Create(
                        Text(i + 1), Text(ring.Count()), radius.First, radius.Second,
                        TwoUnits.Degrees(ring.First().Angle), TwoUnits.Degrees(Turns.Full / ring.Count()));
                }),
            ]);
    }

    private static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);
}
