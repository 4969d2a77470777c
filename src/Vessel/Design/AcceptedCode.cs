namespace Vessel.Design;

/// <summary>A warning or note that the user knows of and takes, with the reason.</summary>
/// <param name="Path">Path of its mapping in the file.</param>
/// <param name="Code">Code of the finding, as written.</param>
public sealed record AcceptedCode(string Path, string Code, string Reason);
