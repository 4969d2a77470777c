namespace Vessel.Export;

/// <summary>Relative paths that stay inside the output folder.</summary>
internal static class OutputPath
{
    /// <summary>What begins so is the writer's own and not a name for a file.</summary>
    public const string OwnPrefix = ".vessel-";

    /// <summary>The path on this machine.</summary>
    /// <exception cref="OutputException">The path is absolute, leaves the folder, or passes a link out of it.</exception>
    public static string Resolve(string folder, string relative)
    {
        var steps = relative.Split('/');
        if (steps.Any(step => step is "" or "." or ".." || step.AsSpan().ContainsAny('\\', ':', '\0')))
            throw new OutputException($"'{relative}' is not a path inside the output folder");
        if (steps[0].StartsWith(OwnPrefix, StringComparison.OrdinalIgnoreCase))
            throw new OutputException($"'{relative}' begins as the writer's own files do");
        var path = folder;
        foreach (var step in steps)
        {
            path = Path.Combine(path, step);
            RefuseLinkOut(folder, path, relative);
        }

        return path;
    }

    /// <summary>Refuses a place that a link leads out of the folder.</summary>
    public static void RefuseLinkOut(string folder, string path, string name)
    {
        FileSystemInfo entry = Directory.Exists(path) ? new DirectoryInfo(path) : new FileInfo(path);
        if (entry.LinkTarget is null)
            return;
        var target = entry.ResolveLinkTarget(returnFinalTarget: true)?.FullName;
        var root = Real(folder) + Path.DirectorySeparatorChar;
        if (target is null || !Real(target).StartsWith(root, StringComparison.Ordinal))
            throw new OutputException($"'{name}' passes a link that leads out of the output folder");
    }

    /// <summary>The path with every link on the way followed.</summary>
    public static string Real(string path)
    {
        if (Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(path)) is not { } parent)
            return Path.TrimEndingDirectorySeparator(path);
        var here = Path.Combine(Real(parent), Path.GetFileName(Path.TrimEndingDirectorySeparator(path)));
        return new DirectoryInfo(here).ResolveLinkTarget(returnFinalTarget: true) is { } target ? Real(target.FullName) : here;
    }
}
