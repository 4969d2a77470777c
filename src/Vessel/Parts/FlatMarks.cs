using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>Gathers the marks of a rectangular flat and keeps them off its holes and inside its edges.</summary>
/// <param name="width">Width of the flat, mm; it starts at x = 0.</param>
/// <param name="height">Height of the flat, mm; it starts at y = 0.</param>
internal sealed class FlatMarks(double width, double height, ImmutableArray<Loop2> holes)
{
    /// <summary>Between a mark and an edge or hole, mm.</summary>
    private const double Margin = 2;

    /// <summary>Half the length of a cross's strokes, mm.</summary>
    private const double CrossReach = 4;

    private readonly ImmutableArray<Mark>.Builder _marks = ImmutableArray.CreateBuilder<Mark>();
    private readonly ImmutableArray<Box2> _boxes = [.. holes.Select(CurveMeasures.Bounds)];
    private readonly List<Box2> _texts = [];

    public ImmutableArray<Mark> ToImmutable() => _marks.ToImmutable();

    /// <summary>
    /// A line from edge to edge, broken at holes, its label beside its lower end. On a side edge, which is a line itself,
    /// only the label.
    /// </summary>
    /// <param name="bottom">Where the flat's lower edge lies at x.</param>
    /// <param name="beside">Where it lies highest under the label; as at x unless given.</param>
    /// <param name="top">Where the upper edge lies at x; the flat's height unless given.</param>
    /// <param name="above">Where it lies lowest over the label; as at x unless given.</param>
    public void AddVertical(
        double x, string label, double letter, double bottom = 0, double? beside = null, double? top = null, double? above = null)
    {
        var from = bottom + Margin;
        foreach (var (low, high) in _boxes.Where(box => box.Min.U - Margin < x && x < box.Max.U + Margin).OrderBy(box => box.Min.V))
        {
            AddLine(x, from, low.V - Margin);
            from = Math.Max(from, high.V + Margin);
        }

        AddLine(x, from, (top ?? height) - Margin);

        // A letter's height of room, for an edge that rises beside the line.
        var foot = (beside ?? bottom) + Margin + (1.5 * letter);
        var last = (above ?? top ?? height) - Margin - (letter / 2);
        if (foot > last)
            return;
        // Higher up where a hole is in the way: moved sideways the label would cross the line.
        var places = Enumerable.Range(0, (int)((last - foot) / letter) + 1)
            .Select(step => new Point2(x + Margin + (TextMark.Width(label, letter) / 2), foot + (step * letter))).ToList();
        AddText(label, places.Where(place => IsFree(label, place, letter)).DefaultIfEmpty(places[0]).First(), letter);
    }

    public void AddLine(Point2 a, Point2 b) => _marks.Add(new LineMark(a, b));

    public void AddCurve(Curve2 curve) => _marks.Add(new CurveMark(curve));

    /// <summary>A cross on a tool's centre; it falls into the waste of a hole.</summary>
    public void AddCross(Point2 at)
    {
        _marks.Add(new LineMark(at - new Point2(CrossReach, 0), at + new Point2(CrossReach, 0)));
        _marks.Add(new LineMark(at - new Point2(0, CrossReach), at + new Point2(0, CrossReach)));
    }

    /// <summary>A name above its hole, or below it where there is no room above.</summary>
    public void AddName(string name, Loop2 hole, double letter)
    {
        var (low, high) = CurveMeasures.Bounds(hole);
        var above = high.V + Margin + (letter / 2);
        var y = above + (letter / 2) + Margin <= height ? above : low.V - Margin - (letter / 2);
        AddText(name, new((low.U + high.U) / 2, y), letter);
    }

    /// <summary>A line of text along the top edge, from the left.</summary>
    public void AddTitle(string title, double letter) => AddTitle(title, letter, 0, height);

    /// <summary>A line of text from <paramref name="left"/> on, under an upper edge.</summary>
    /// <param name="top">Where that lies lowest over the text.</param>
    public void AddTitle(string title, double letter, double left, double top) =>
        AddText(title, new(left + Margin + (TextMark.Width(title, letter) / 2), top - Margin - (letter / 2)), letter);

    /// <summary>An arrow with a word beside its middle, to the right of an upright shaft, below a level one.</summary>
    public void AddArrow(Point2 from, Point2 to, string word, double letter)
    {
        var along = (to - from).Unit();
        _marks.Add(new LineMark(from, to));
        _marks.Add(new LineMark(to, to - (letter / 2 * (along + along.Turned))));
        _marks.Add(new LineMark(to, to - (letter / 2 * (along - along.Turned))));
        var aside = Math.Abs(along.U) > Math.Abs(along.V)
            ? new Point2(0, -letter - Margin)
            : new Point2((TextMark.Width(word, letter) / 2) + Margin, 0);
        AddText(word, (0.5 * (from + to)) + aside, letter);
    }

    /// <summary>Whether it stands there without moving aside, the tails of its letters included.</summary>
    private bool IsFree(string text, Point2 center, double letter)
    {
        var half = TextMark.Width(text, letter) / 2;
        return center.U <= width - Margin - half
            && !Taken(center.V - (0.2 * letter), half, 1.4 * letter).Any(t => t.Low < center.U && center.U < t.High);
    }

    /// <summary>Where the middle of a text that long may not lie along a level line, for holes and other texts.</summary>
    private List<(double Low, double High)> Taken(double level, double half, double letter) =>
        _boxes.Concat(_texts)
            .Where(box => box.Min.V < level + (letter / 2) + (Margin / 2) && box.Max.V > level - (letter / 2) - (Margin / 2))
            .Select(box => (Low: box.Min.U - half - Margin, High: box.Max.U + half + Margin))
            .ToList();

    /// <summary>
    /// Places a text as near to its centre as edges, holes and other texts allow; none where it fits nowhere on its line.
    /// </summary>
    private void AddText(string text, Point2 center, double letter)
    {
        var half = TextMark.Width(text, letter) / 2;
        var (left, right) = (Margin + half, width - Margin - half);
        if (left > right || center.V - (letter / 2) < 0 || center.V + (letter / 2) > height)
            return;
        var taken = Taken(center.V, half, letter);
        var wanted = Math.Clamp(center.U, left, right);
        var places = taken
            .SelectMany(t => new[] { t.Low, t.High })
            .Append(wanted)
            .Where(u => u >= left && u <= right && !taken.Any(t => t.Low < u && u < t.High))
            .OrderBy(u => Math.Abs(u - wanted))
            .ToList();
        if (places.Count == 0)
            return;
        _marks.Add(new TextMark(text, new(places[0], center.V), letter, 0));
        var reach = new Point2(half - Margin, letter / 2);
        _texts.Add(new(new Point2(places[0], center.V) - reach, new Point2(places[0], center.V) + reach));
    }

    private void AddLine(double x, double from, double to)
    {
        if (to - from > Margin && x > Margin && x < width - Margin)
            _marks.Add(new LineMark(new(x, from), new(x, to)));
    }
}
