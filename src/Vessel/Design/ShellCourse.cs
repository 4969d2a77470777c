using System.Collections.Immutable;
using System.Globalization;
using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>A length of shell between two level edges: a cylinder, or a cone of even wall.</summary>
/// <param name="Name">Name of its part.</param>
/// <param name="Start">Height of its lower edge, mm in the vessel's frame.</param>
/// <param name="End">Height of its upper edge; not a number, or below the other, where a size is at fault.</param>
/// <param name="Low">Outer radius at its lower edge, mm.</param>
/// <param name="High">Outside diameter at its upper edge, mm.</param>
public sealed record ShellCourse(
    ShellDesign Shell,
    string Name,
    double Start,
    double End,
    double Low,
    double High,
    StockForm MadeFrom,
    SheetSeams Seams,
    double RootGap)
{
    /// <summary>Path of the mapping that asks for the course.</summary>
    public string Path { get; init; } = string.Empty;

    /// <summary>Path of the key that sets the root gap of its long seams.</summary>
    public string RootGapPath { get; init; } = string.Empty;

    /// <summary>Path of the key that turns its long seams.</summary>
    public string SeamPath { get; init; } = string.Empty;

    /// <summary>Path of the key that tells how many sheets go round it.</summary>
    public string SheetsPath { get; init; } = string.Empty;

    /// <summary>The paths that stand for its long seams; none from tube.</summary>
    public ImmutableArray<string> SeamPaths => !IsRolled ? []
        : Seams.Count == 1 ? [SeamPath]
        : [.. Enumerable.Range(0, Seams.Count).Select(i => string.Create(CultureInfo.InvariantCulture, $"{SeamPath}[{i}]"))];

    public string Id => Slug.Of(Name);

    /// <summary>What one of its sheets is called.</summary>
    public static string SheetOf(string course) => $"{course} sheet";

    public bool IsCone => Low != High;

    public bool IsRolled => MadeFrom == StockForm.Sheet;

    public double Wall => Shell.Wall;

    public double Height => End - Start;

    /// <exception cref="ArgumentException">A size is at fault.</exception>
    public Interval Heights => new(Start, End);

    /// <summary>Between its axis and its line, radians; above zero whichever way it narrows.</summary>
    public double HalfAngle => Math.Atan2(Math.Abs(High - Low), Height);

    /// <summary>Whether it narrows upward.</summary>
    public bool NarrowsUp => High < Low;

    /// <summary>Thickness of the wall cut level, mm.</summary>
    public double Across => IsCone ? Wall * (double.Hypot(High - Low, Height) / Height) : Wall;

    public double OuterAt(double height) => !IsCone || height == Start ? Low
        : height == End ? High
        : Low + ((High - Low) * ((height - Start) / Height));

    public double InnerAt(double height) => OuterAt(height) - Across;

    public double MidRadius => Low - (Wall / 2);

    /// <summary>The line of the outside, upward.</summary>
    public LinePiece Outer => new(new(Low, Start), new(High, End));

    /// <summary>The line of the inside, upward.</summary>
    public LinePiece Inner => new(new(Low - Across, Start), new(High - Across, End));

    /// <summary>The level section at a height.</summary>
    public ShellSection At(double height) => new(this, OuterAt(height));
}
