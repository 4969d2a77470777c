using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Vessel.Geometry;

namespace Vessel.Tests.Support;

/// <summary>Follows the operators of one page. Any operator that it does not know is an error.</summary>
internal sealed partial class PdfContentProbe(Dictionary<int, string> letters)
{
    private const double Points = 72 / 25.4;

    private readonly List<double> _numbers = [];
    private readonly List<(List<Point2> Points, bool Closed)> _path = [];
    private double _width;
    private double _gray;
    private string _dash = string.Empty;
    private string _shown = string.Empty;
    private double _unit = double.NaN;
    private (Point2 Right, Point2 Start) _place;

    public List<PdfProbeStroke> Strokes { get; } = [];

    public List<PdfProbeText> Texts { get; } = [];

    public void Read(string content)
    {
        foreach (var token in Tokens().Matches(content).Select(m => m.Value))
        {
            if (double.TryParse(token, NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
            {
                _numbers.Add(number);
            }
            else if (token[0] is '<' or '[' or '/')
            {
                _shown = token.Trim('<', '>', '[', ']');
            }
            else
            {
                Do(token);
                _numbers.Clear();
            }
        }
    }

    private Point2 Last => At(_numbers.Count - 2);

    private Point2 At(int first) => _unit * new Point2(_numbers[first], _numbers[first + 1]);

    private void Do(string action)
    {
        switch (action)
        {
            case "cm":
                // Only ever set once, to draw in millimetres.
                _unit = double.IsNaN(_unit) && _numbers[0] == _numbers[3] ? _numbers[0] / Points : throw new InvalidDataException("cm");
                break;
            case "w":
                _width = _numbers[^1];
                break;
            case "G":
                _gray = _numbers[^1];
                break;
            case "d":
                _dash = _shown;
                break;
            case "m":
                _path.Add(([Last], false));
                break;
            case "l":
                _path[^1].Points.Add(Last);
                break;
            case "c":
                var (a, b, c, d) = (_path[^1].Points[^1], At(0), At(2), At(4));
                _path[^1].Points.AddRange(Enumerable.Range(1, 16).Select(i => i / 16.0).Select(t =>
                    ((1 - t) * (1 - t) * (1 - t) * a) + (3 * (1 - t) * (1 - t) * t * b) + (3 * (1 - t) * t * t * c) + (t * t * t * d)));
                break;
            case "h":
                _path[^1] = (_path[^1].Points, true);
                break;
            case "S":
                Strokes.AddRange(_path.Select(p => new PdfProbeStroke([.. p.Points], p.Closed, _width, _gray, _dash)));
                _path.Clear();
                break;
            case "f*":
                _path.Clear();
                break;
            case "Tm":
                _place = (new(_numbers[0], _numbers[1]), new(_numbers[4], _numbers[5]));
                break;
            case "Tj":
                var words = Convert.FromHexString(_shown).Select(code => letters[code]);
                Texts.Add(new(string.Concat(words), _place.Start, 6 * _place.Right.Length, _place.Right.Angle));
                break;
            case "J" or "j" or "g" or "BT" or "ET" or "Tr" or "Tf":
                break;
            default:
                throw new InvalidDataException($"the operator {action}");
        }
    }

    [GeneratedRegex(@"<[0-9A-F]*>|\[[^\]]*\]|[^\s<\[]+")]
    private static partial Regex Tokens();
}
