using System.Collections.Immutable;
using System.Globalization;
using Vessel.Geometry;

namespace Vessel.Model;

public enum FlatKind
{
    /// <summary>Cut from sheet: goes to flats/.</summary>
    Sheet,

    /// <summary>Laid round a tube: goes to wraps/, lest it be cut from sheet.</summary>
    Wrap,

    /// <summary>Cut from sheet as a starting size for forming; not a development of the finished part.</summary>
    Blank,
}

/// <summary>
/// Cut outlines, drawn with the finished part's outside face up: +x towards increasing angle, +y up. Lengths in mm.
/// </summary>
/// <param name="Cut">Lines for the cutter; exact.</param>
/// <param name="Marks">Centre lines, quadrants, names: scribed, on the outside.</param>
/// <param name="Bends">Bend lines; none for a part that is only rolled.</param>
/// <param name="Notes">For the reader of the drawing; one line of text each.</param>
/// <param name="From">How the flat and the finished surface correspond.</param>
/// <param name="Governing">Which surface the outline was taken on, in words: <c>mean diameter</c>.</param>
public sealed record Flat(
    FlatKind Kind,
    Region2 Cut,
    ImmutableArray<Mark> Marks,
    ImmutableArray<BendLine> Bends,
    ImmutableArray<string> Notes,
    Development From,
    string Governing)
{
    /// <summary>Area that is drawn twice on a wrap that laps over itself, mm2.</summary>
    public double LapArea { get; init; }
}

/// <summary>Something scribed. A closed set: <see cref="LineMark"/>, <see cref="CurveMark"/>, <see cref="TextMark"/>.</summary>
public abstract record Mark;

public sealed record LineMark(Point2 A, Point2 B) : Mark;

/// <summary>A line that is not straight, exact: who draws it keeps to a tolerance of his own.</summary>
public sealed record CurveMark(Curve2 Curve) : Mark;

/// <param name="Text">Engraved in single-stroke letters.</param>
/// <param name="Center">Middle of the line of text.</param>
/// <param name="Height">Height of a capital letter, mm.</param>
/// <param name="Angle">Direction of the base line, radians from +x.</param>
public sealed record TextMark(string Text, Point2 Center, double Height, double Angle) : Mark
{
    /// <summary>A single-stroke letter with its space is about this share of its height wide.</summary>
    private const double LetterWidth = 0.8;

    /// <summary>About how long a line of text is, mm.</summary>
    public static double Width(string text, double height) => text.Length * height * LetterWidth;
}

/// <summary>Where and how to bend: the line's two ends on the flat.</summary>
/// <param name="Angle">Turned, radians; positive towards the viewer (up).</param>
/// <param name="InsideRadius">mm.</param>
/// <param name="K">Place of the neutral line as a share of the thickness from the inside.</param>
public sealed record BendLine(Point2 A, Point2 B, double Angle, double InsideRadius, double K)
{
    /// <summary>Words for the bend wherever one is named: <c>bend 1: 90° down, inside R 5</c>.</summary>
    /// <param name="number">Number from 1, in the order in which the bends are drawn.</param>
    public string Words(int number) => Words(number, Angle, NoteText.Length(InsideRadius));

    /// <summary>What the one at the brake has to know of a bend on a flat.</summary>
    /// <param name="axis">Across which its line lies: x or y.</param>
    public static string Note(int number, Bend bend, string axis) =>
        $"{Words(number, bend.Angle, NoteText.Length(bend.InsideRadius))}; its middle on {axis} = {NoteText.Length(bend.Line)} mm; "
        + $"K {Math.Round(bend.K, 2).ToString(CultureInfo.InvariantCulture)}";

    /// <summary>Words for a bend whose radius is already written, in the reader's unit.</summary>
    public static string Words(int number, double angle, string insideRadius) => string.Create(
        CultureInfo.InvariantCulture,
        $"bend {number}: {NoteText.Degrees(Math.Abs(angle))}\u00B0 {(angle > 0 ? "up" : "down")}, inside R {insideRadius}");
}
