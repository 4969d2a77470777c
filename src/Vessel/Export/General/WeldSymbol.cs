using System.Globalization;
using Vessel.Design;
using Vessel.Export.Drawing;
using Vessel.Export.Paper;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Export.General;

/// <summary>Whose symbols the welds bear.</summary>
public enum WeldSymbols
{
    /// <summary>ISO 2553:2019, system A: a dashed line beside the reference line; a before a throat, s before a penetration.</summary>
    Iso,

    /// <summary>AWS A2.4: arrow side below the line, leg size on the left.</summary>
    Aws,
}

/// <summary>
/// The symbol of a weld on the side of its arrow: reference line, kind, size, all-round circle, and its number in the tail.
/// </summary>
internal sealed record WeldSymbol(WeldFigures Weld, string Numbers, WeldSymbols By, TwoUnits Units)
{
    /// <summary>Height of letters, mm.</summary>
    private const double Letter = 2;

    private const double Mark = 2.4;

    private const double LineLength = 19;

    private const double Tail = 2;

    public const double Height = 9;

    public double Width => LineLength + Tail + 1 + Strokes.Width(Numbers, Letter);

    private Joint Joint => Weld.Joint;

    /// <summary>Throat of a fillet by ISO, its leg by AWS; the depth of a butt.</summary>
    public string Size => (Joint.Kind, By) switch
    {
        (JointKind.Fillet, WeldSymbols.Iso) => $"a{Tenths(Joint.Throat)}",
        (JointKind.Fillet, _) => WeldSize(Weld.Leg.Start),
        (_, WeldSymbols.Iso) => $"s{Tenths(Joint.Throat)}",
        _ => $"({WeldSize(Joint.Throat)})",
    };

    /// <summary>No bead is laid, or measured with a gauge, to less than 0.1 mm or 0.01 in.</summary>
    private string WeldSize(double mm) => Units.First == UserUnits.Inches ? Vessel.Export.Numbers.Text(mm / 25.4, 2) : Tenths(mm);

    private static string Tenths(double mm) => Vessel.Export.Numbers.Text(mm, 1);

    /// <summary>Number and length of short runs; nothing for a seam all along.</summary>
    private string Runs => Joint.Runs.Length > 1
        ? string.Create(CultureInfo.InvariantCulture, $"{Joint.Runs.Length}x{Weld.Length / Joint.Runs.Length:0}")
        : string.Empty;

    /// <param name="elbow">Where the arrow's line joins the reference line.</param>
    /// <param name="way">+1 when the line runs to the right from there, -1 to the left.</param>
    public IEnumerable<Item> Items(Point2 elbow, int way)
    {
        // Whatever the way, symbols are read from left to right.
        var left = way > 0 ? elbow : elbow - new Point2(LineLength, 0);
        var right = left + new Point2(LineLength, 0);
        yield return Stroke.Line(left, right, Pens.Thin);
        if (By == WeldSymbols.Iso)
            yield return Stroke.Line(left - new Point2(0, 0.9), right - new Point2(0, 0.9), Pens.WeldDashes);
        foreach (var item in Kind(left + new Point2(11, 0)))
            yield return item;
        var level = By == WeldSymbols.Iso ? 0.8 : -0.8 - Letter;
        yield return Text.Right(Size, left + new Point2(9.6, level), Letter);
        if (Runs.Length > 0)
            yield return Text.Fitted(Runs, left + new Point2(14, level), Letter, 5.5);
        if (Joint.IsRound && Joint.Runs.IsEmpty)
            yield return new Circle(elbow, 0.9, Pens.Thin);
        var end = way > 0 ? right : left;
        yield return Stroke.Line(end, end + new Point2(way * Tail, Tail), Pens.Thin);
        yield return Stroke.Line(end, end + new Point2(way * Tail, -Tail), Pens.Thin);
        var words = end + new Point2(way * (Tail + 0.5), -Letter / 2);
        yield return way > 0 ? Text.Left(Numbers, words, Letter) : Text.Right(Numbers, words, Letter);
    }

    /// <summary>Sign of the weld's kind on the arrow side: above the line by ISO's system A, below it by AWS.</summary>
    private IEnumerable<Item> Kind(Point2 foot)
    {
        var up = new Point2(0, By == WeldSymbols.Iso ? Mark : -Mark);
        var across = new Point2(Mark, 0);
        switch (Joint.Kind)
        {
            case JointKind.Fillet:
                // The upright stroke stands on the left in either standard.
                yield return Stroke.Through([foot, foot + up, foot + across], Pens.Thin, closed: true);
                break;
            case var kind when EdgePreparation.IsBevelled(kind, Joint.Wall):
                yield return Stroke.Through([foot + up - (0.1 * across), foot + (0.5 * across), foot + up + (1.1 * across)], Pens.Thin);
                break;
            default:
                yield return Stroke.Line(foot + (0.3 * across), foot + (0.3 * across) + up, Pens.Thin);
                yield return Stroke.Line(foot + (0.7 * across), foot + (0.7 * across) + up, Pens.Thin);
                break;
        }
    }
}
