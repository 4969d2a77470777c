namespace Vessel.Export;

/// <summary>A file to be written: nothing happens until <see cref="OutputFolder"/> calls for it.</summary>
/// <param name="Path">Relative to the output folder, with forward slashes.</param>
/// <param name="Write">Writes the content to the stream that it is given, and leaves it open.</param>
public sealed record OutputFile(string Path, Action<Stream> Write);
