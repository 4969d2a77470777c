using System.Collections.Immutable;

namespace Vessel.Cli;

/// <summary>What the process returns.</summary>
internal static class ExitCodes
{
    public const int Good = 0;

    /// <summary>The design has faults; nothing was written.</summary>
    public const int Faults = 1;

    public const int Usage = 2;

    /// <summary>The files could not be read or written.</summary>
    public const int CouldNotWrite = 3;

    /// <summary>Written, with findings of severity error.</summary>
    public const int GraveFindings = 4;

    public const int OurBug = 70;

    /// <summary>Each with its meaning, for the manual.</summary>
    public static ImmutableArray<(int Code, string Meaning)> All { get; } =
    [
        (Good, "All is well."),
        (Faults, "The design has faults; nothing was written."),
        (Usage, "The command line is not understood."),
        (CouldNotWrite, "Files could not be read or written."),
        (GraveFindings, "Written, with findings of severity error."),
        (OurBug, "A bug in the tool."),
    ];
}
