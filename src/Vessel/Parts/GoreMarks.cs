using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>
/// The marks of a gore: centre line with an arrow that points up, lines of latitude, and between them, from the equator on,
/// a word each.
/// </summary>
internal sealed class GoreMarks(GoreDevelopment flat)
{
    /// <summary>Between lines of latitude.</summary>
    private const double Step = Math.PI / 12;

    /// <summary>Between a mark and an edge, mm.</summary>
    private const double Margin = 2;

    private const double GreatestLetter = 4;

    /// <summary>Smaller ones cannot be read, mm.</summary>
    private const double LeastLetter = 1.5;

    private const double DegreeLetter = 2;

    private readonly ImmutableArray<Mark>.Builder _marks = ImmutableArray.CreateBuilder<Mark>();

    /// <summary>Where texts stand on the centre line, by distance from the equator.</summary>
    private readonly List<Interval> _taken = [];

    /// <param name="equator">Beside the equator.</param>
    /// <param name="name">In the first band of latitude that is left.</param>
    /// <param name="seams">In the band after that.</param>
    /// <param name="cap">Beside the polar cap's seam.</param>
    public ImmutableArray<Mark> All(string equator, string name, string seams, string cap)
    {
        var lines = Enumerable.Range(1, 5).Select(i => i * Step * flat.Radius).Where(m => m < flat.Length - Margin).ToList();
        AddText(equator, new(0, lines.Append(flat.Length).First()));
        var ends = lines.Append(flat.Length - (2 * Margin) - GreatestLetter).ToList();
        foreach (var (text, i) in new[] { (name, 1), (seams, 2) })
        {
            if (i < ends.Count && ends[i] > ends[i - 1])
                AddText(text, new(ends[i - 1], ends[i]));
        }

        AddText(cap, new(flat.Length - GreatestLetter - (2 * Margin), flat.Length));
        foreach (var m in lines.Where(m => _taken.TrueForAll(t => m < t.Start - Margin || m > t.End + Margin)))
            AddLatitude(m);
        AddCentreLine();
        return _marks.ToImmutable();
    }

    private Point2 OnCentre(double m) => flat.Flatten(new(0, m));

    /// <summary>In the middle of a stretch of the centre line, as large as the sides let it be there.</summary>
    private void AddText(string text, Interval stretch)
    {
        var middle = stretch.At(0.5);
        var tall = Math.Min(GreatestLetter, stretch.Length - (2 * Margin));
        var narrowest = flat.HalfWidth(Math.Min(flat.Length, middle + (tall / 2)));
        var letter = Math.Min(tall, 2 * (narrowest - Margin) / TextMark.Width(text, 1));
        if (letter < LeastLetter)
            return;
        _marks.Add(new TextMark(text, OnCentre(middle), letter, 0));
        _taken.Add(new(middle - (letter / 2), middle + (letter / 2)));
    }

    /// <summary>A line across, its degrees at the right end where there is room.</summary>
    private void AddLatitude(double m)
    {
        var half = flat.HalfWidth(m) - Margin;
        if (half < Margin)
            return;
        var middle = OnCentre(m);
        _marks.Add(new LineMark(middle - new Point2(half, 0), middle + new Point2(half, 0)));
        var degrees = $"{Math.Round(Turns.ToDegrees(m / flat.Radius))}";
        var width = TextMark.Width(degrees, DegreeLetter);
        if (half > width + (3 * Margin))
        {
            var beside = new Point2(half - Margin - (width / 2), (DegreeLetter / 2) + (Margin / 2));
            _marks.Add(new TextMark(degrees, middle + beside, DegreeLetter, 0));
        }
    }

    /// <summary>From end to end, broken at texts, with an arrow head at its upper end.</summary>
    private void AddCentreLine()
    {
        var pieces = new List<Interval>();
        var from = Margin;
        foreach (var text in _taken.OrderBy(t => t.Start).Append(new(flat.Length, flat.Length)))
        {
            if (text.Start - Margin - from > Margin / 2)
                pieces.Add(new(from, text.Start - Margin));
            from = text.End + Margin;
        }

        foreach (var piece in pieces)
            _marks.Add(new LineMark(OnCentre(piece.Start), OnCentre(piece.End)));
        if (pieces.Count == 0)
            return;
        var tip = OnCentre(flat.PoleUp ? pieces[^1].End : pieces[0].Start);
        foreach (var side in new[] { -1, 1 })
            _marks.Add(new LineMark(tip, tip - new Point2(side * Margin / 2, Margin)));
    }
}
