namespace Vessel.Cli;

/// <summary>Where a command writes: results to one side, complaints to the other.</summary>
internal sealed record CommandConsole(TextWriter Output, TextWriter Error, ConsoleStyle Style);
