using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Heads.Dishes;

/// <summary>
/// The marks of a gore: centre line with an arrow that points up, lines across where the surface leans by steps of 15 degrees towards
/// the pole (on a sphere, of latitude), and between them, from the rim on, a word each.
/// </summary>
internal sealed class GoreMarks(GoreDevelopment flat)
{
    /// <summary>Between lines across, degrees.</summary>
    private const int Step = 15;

    /// <summary>Between a mark and an edge, mm.</summary>
    private const double Margin = 2;

    private const double GreatestLetter = 4;

    /// <summary>Smaller ones cannot be read, mm.</summary>
    private const double LeastLetter = 1.5;

    private const double DegreeLetter = 2;

    private readonly ImmutableArray<Mark>.Builder _marks = ImmutableArray.CreateBuilder<Mark>();

    /// <summary>Where texts stand on the centre line, by distance from the rim.</summary>
    private readonly List<Interval> _taken = [];

    /// <param name="equator">Beside the rim.</param>
    /// <param name="name">Name in the first band of latitude that is left.</param>
    /// <param name="seams">Names of the seams in the band after that.</param>
    /// <param name="cap">Beside the polar cap's seam.</param>
    public ImmutableArray<Mark> All(string equator, string name, string seams, string cap)
    {
        var latitudes = Latitudes().ToList();
        var lines = latitudes.ConvertAll(line => line.Distance);
        AddText(equator, new(0, lines.Append(flat.Length).First()));
        var ends = lines.Append(flat.Length - (2 * Margin) - GreatestLetter).ToList();
        foreach (var (text, i) in new[] { (name, 1), (seams, 2) })
        {
            if (i < ends.Count && ends[i] > ends[i - 1])
                AddText(text, new(ends[i - 1], ends[i]));
        }

        AddText(cap, new(flat.Length - GreatestLetter - (2 * Margin), flat.Length));
        foreach (var (m, degrees) in latitudes.Where(line => _taken.TrueForAll(t => line.Distance < t.Start - Margin
            || line.Distance > t.End + Margin)))
            AddLatitude(m, degrees);
        AddCentreLine();
        return _marks.ToImmutable();
    }

    /// <summary>Those far enough from each other for a word between; of a straight flange its end.</summary>
    private IEnumerable<(double Distance, int Degrees)> Latitudes()
    {
        var last = 0.0;
        for (var degrees = 0; degrees < 90; degrees += Step)
        {
            var m = flat.LengthAtLean(degrees * Math.PI / 180);
            if (m - last < GreatestLetter + (2 * Margin) || m >= flat.Length - Margin)
                continue;
            yield return (m, degrees);
            last = m;
        }
    }

    private Point2 OnCentre(double m) => flat.Flatten(new(0, m));

    /// <summary>Adds a text in the middle of a stretch of the centre line, as large as the sides let it be there.</summary>
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
    private void AddLatitude(double m, int latitude)
    {
        var half = flat.HalfWidth(m) - Margin;
        if (half < Margin)
            return;
        var middle = OnCentre(m);
        _marks.Add(new LineMark(middle - new Point2(half, 0), middle + new Point2(half, 0)));
        var degrees = $"{latitude}";
        var width = TextMark.Width(degrees, DegreeLetter);
        if (half > width + (3 * Margin))
        {
            var beside = new Point2(half - Margin - (width / 2), (DegreeLetter / 2) + (Margin / 2));
            _marks.Add(new TextMark(degrees, middle + beside, DegreeLetter, 0));
        }
    }

    /// <summary>Adds the centre line from end to end, broken at texts, with an arrow head at its upper end.</summary>
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
