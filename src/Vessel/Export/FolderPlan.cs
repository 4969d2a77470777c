using System.Collections.Immutable;

namespace Vessel.Export;

/// <summary>A move of one file within the output folder, both paths relative to it.</summary>
internal sealed record Move(string From, string To);

/// <summary>What brings the folder from what it holds to what is staged. Made anew, from hashes, whenever it is carried out.</summary>
/// <param name="SetAside">Files of the user that make room; never over another file.</param>
/// <param name="Remove">Files of an older build that the user has not changed.</param>
/// <param name="Kept">The same that the user has changed: they stay.</param>
/// <param name="Place">Paths whose staged files come in, the manifest last.</param>
internal sealed record FolderPlan(
    ImmutableArray<Move> SetAside, ImmutableArray<string> Remove, ImmutableArray<string> Kept, ImmutableArray<string> Place)
{
    /// <param name="root">The folder.</param>
    /// <param name="made">The build that is staged.</param>
    /// <param name="old">The build that is there.</param>
    /// <exception cref="OutputException">A file or folder of somebody else stands in the way.</exception>
    public static FolderPlan Of(string root, Manifest made, Manifest old)
    {
        var aside = ImmutableArray.CreateBuilder<Move>();
        var place = ImmutableArray.CreateBuilder<string>();
        foreach (var file in made.Files)
        {
            RefuseFileForFolder(root, file.Path, old);
            var there = HashAt(root, file.Path);
            // What is no longer staged has been placed by a run that was cut short.
            if (there == file.Hash || !File.Exists(Staging.In(root, file.Path)))
                continue;
            if (there is not null && old[file.Path] is null)
                throw new OutputException($"'{file.Path}' is there already and is not of a build: move it away");
            if (there is not null && there != old[file.Path]!.Hash)
                aside.Add(new(file.Path, FreeName(root, file.Path)));
            place.Add(file.Path);
        }

        var gone = old.Files.Where(file => made[file.Path] is null)
            .Select(file => (file.Path, Mine: HashAt(root, file.Path) is { } hash ? hash == file.Hash : (bool?)null))
            .ToLookup(file => file.Mine, file => file.Path);
        if (File.Exists(Staging.In(root, Manifest.FileName)))
            place.Add(Manifest.FileName);
        return new(aside.ToImmutable(), [.. gone[true]], [.. gone[false]], place.ToImmutable());
    }

    /// <summary>A name beside the file's that is free.</summary>
    public static string FreeName(string root, string relative) =>
        AsideNames(relative).First(name => !Path.Exists(Path.Combine(root, name)));

    /// <summary>The names under which a file of the user is set aside, in their order.</summary>
    public static IEnumerable<string> AsideNames(string relative)
    {
        var extension = Path.GetExtension(relative);
        var stem = relative[..^extension.Length];
        return Enumerable.Range(1, int.MaxValue).Select(i => FormattableString.Invariant($"{stem}.changed-{i}{extension}"));
    }

    // Null when there is no such file.
    private static string? HashAt(string root, string relative)
    {
        var path = OutputPath.Resolve(root, relative);
        if (Directory.Exists(path))
            throw new OutputException($"'{relative}' is a folder, where a file belongs: move it away");
        return File.Exists(path) ? Staging.HashOf(path) : null;
    }

    private static void RefuseFileForFolder(string root, string relative, Manifest old)
    {
        for (var slash = relative.LastIndexOf('/'); slash > 0; slash = relative.LastIndexOf('/', slash - 1))
        {
            var above = relative[..slash];
            if (File.Exists(OutputPath.Resolve(root, above)) && old[above] is null)
                throw new OutputException($"'{above}' is a file, where a folder belongs: move it away");
        }
    }
}
