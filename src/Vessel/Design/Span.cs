namespace Vessel.Design;

/// <summary>
/// A place: first and last character, 1-based lines and columns, both included; in the design file, or in the text of
/// a setting given from outside.
/// </summary>
public readonly record struct Span(int Line, int Column, int EndLine, int EndColumn)
{
    /// <summary>Stands for <see cref="Setting"/> in the shop file.</summary>
    public const int InShop = -1;

    /// <summary>
    /// Zero in the design file, <see cref="InShop"/> in the shop file; else which of <see cref="DesignSettings.With"/>, counted from 1.
    /// </summary>
    public int Setting { get; init; }

    /// <summary>Whether the other place begins inside this one.</summary>
    public bool Holds(Span other) => other.Setting == Setting
        && (other.Line, other.Column).CompareTo((Line, Column)) >= 0
        && (other.Line, other.Column).CompareTo((EndLine, EndColumn)) <= 0;
}
