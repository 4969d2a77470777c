using System.Collections.Immutable;

namespace Vessel.Export;

/// <summary>What became of the output folder. Relative paths, in order.</summary>
/// <param name="Written">All files of this build, also those that were there already with the same bytes.</param>
/// <param name="Removed">Files of an older build that are no longer made.</param>
/// <param name="Kept">The same, but changed by the user since, and therefore left alone.</param>
/// <param name="SetAside">New names of files that the user had changed and that this build makes anew.</param>
public sealed record CommitResult(
    ImmutableArray<string> Written,
    ImmutableArray<string> Removed,
    ImmutableArray<string> Kept,
    ImmutableArray<string> SetAside);
