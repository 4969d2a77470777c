namespace Vessel.Design;

/// <summary>A place in the design file: first and last character, 1-based lines and columns, both included.</summary>
public readonly record struct Span(int Line, int Column, int EndLine, int EndColumn);
