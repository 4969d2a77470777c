using System.Collections.Immutable;

namespace Vessel.Export;

/// <summary>
/// Looks through a folder of files that a commit has taken out, before it is thrown away: what the user changed while the
/// commit ran goes back, under its own name or one beside it.
/// </summary>
internal static class Rescue
{
    /// <param name="taken">The folder that is about to be thrown away.</param>
    /// <param name="root">The output folder.</param>
    /// <returns>What went back, as it is called now, relative to the output folder.</returns>
    public static ImmutableArray<string> From(string taken, string root)
    {
        var list = Path.Combine(taken, Manifest.FileName);
        // Without a list nothing is known to be ours.
        var ours = File.Exists(list) ? Manifest.Parse(File.ReadAllBytes(list)) : Manifest.Empty;
        return From(taken, root, ours);
    }

    public static ImmutableArray<string> From(string taken, string root, Manifest ours)
    {
        var back = ImmutableArray.CreateBuilder<string>();
        foreach (var relative in Files(taken))
        {
            var path = Path.Combine(taken, relative);
            if (relative == Manifest.FileName || IsIn(root, relative, path) || ours[relative]?.Hash == Staging.HashOf(path))
                continue;
            var hash = Staging.HashOf(path);
            if (FolderPlan.AsideNames(relative).TakeWhile(name => File.Exists(Path.Combine(root, name)))
                .Any(name => Staging.HashOf(Path.Combine(root, name)) == hash))
            {
                continue;
            }

            var name = Path.Exists(Path.Combine(root, relative)) ? FolderPlan.FreeName(root, relative) : relative;
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(root, name))!);
            File.Move(path, Path.Combine(root, name));
            back.Add(name);
        }

        return back.ToImmutable();
    }

    /// <summary>Every file below the folder but the writer's own, with forward slashes.</summary>
    public static IEnumerable<string> Files(string folder) => Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .Select(path => Path.GetRelativePath(folder, path).Replace('\\', '/'))
        .Where(relative => !relative.StartsWith(OutputPath.OwnPrefix, StringComparison.Ordinal))
        .Order(StringComparer.Ordinal)
        .ToList();

    // The same file under both names, or one of the same bytes.
    private static bool IsIn(string root, string relative, string path)
    {
        var there = Path.Combine(root, relative);
        if (!File.Exists(there))
            return false;
        if (OperatingSystem.IsLinux() && Linux.Look(path) is { } one && Linux.Look(there)?.Inode == one.Inode)
            return true;
        return Staging.HashOf(path) == Staging.HashOf(there);
    }
}
