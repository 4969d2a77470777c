namespace Vessel.Model;

/// <summary>How much a measure that does not hold matters, mildest first.</summary>
public enum Severity
{
    Note,
    Warning,
    Error,
}
