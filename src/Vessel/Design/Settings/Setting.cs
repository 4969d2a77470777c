namespace Vessel.Design;

/// <summary>One value that takes the place of another, or comes in where there was none.</summary>
/// <param name="Path">Path such as <c>ports[0].tube.wall</c>, or <c>ports.inlet.tube.wall</c> by name.</param>
/// <param name="PathAt">Where the path is written.</param>
internal sealed record Setting(string Path, YamlScalar Value, Span PathAt)
{
    /// <param name="text">Text such as <c>path=value</c>; without a sign of equality the value is nothing.</param>
    /// <param name="number">Which of the settings it is, from 1.</param>
    public static Setting Parse(string text, int number)
    {
        var sign = text.IndexOf('=', StringComparison.Ordinal);
        var path = sign < 0 ? text : text[..sign];
        var start = sign < 0 ? text.Length : sign + 1;
        var value = text[start..].Trim();
        var column = start + 1 + (text.Length - start - text[start..].TrimStart().Length);
        return new(
            path.Trim(),
            new(value, false, column, Place(column, value.Length)),
            Place(1, path.Length));

        Span Place(int first, int length) => new(1, first, 1, Math.Max(first, first + length - 1)) { Setting = number };
    }
}
