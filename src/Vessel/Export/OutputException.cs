namespace Vessel.Export;

/// <summary>The output could not be written; the message says why in words for the user.</summary>
public sealed class OutputException : Exception
{
    public OutputException()
    {
    }

    public OutputException(string message)
        : base(message)
    {
    }

    public OutputException(string message, Exception cause)
        : base(message, cause)
    {
    }
}
