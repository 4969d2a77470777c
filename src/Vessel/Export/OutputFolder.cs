using System.Collections.Immutable;

namespace Vessel.Export;

/// <summary>
/// The only writer to disk. A build is staged inside the folder, written down in a journal, and then moved into place
/// file by file, the manifest last: after a kill the folder is as before, or new, or is finished by the next run.
/// </summary>
public static class OutputFolder
{
    private const string LockName = OutputPath.OwnPrefix + "lock";
    private const string JournalName = OutputPath.OwnPrefix + "journal";

    /// <summary>
    /// Brings the folder to hold this build. Files of the last build that are no longer made are removed unless the
    /// user has changed them; what the user has changed and is made anew is set aside under a new name; what is not
    /// of a build is never touched.
    /// </summary>
    /// <exception cref="OutputException">
    /// A path leaves the folder, a file of somebody else stands in the way, another build is at work, or the disk
    /// refuses. The folder then holds the old build, or the next run finishes the new one.
    /// </exception>
    public static CommitResult Commit(string folder, IEnumerable<OutputFile> files) => Commit(folder, files, _ => { });

    /// <param name="folder">Is made if need be.</param>
    /// <param name="files">Written once each, several at a time.</param>
    /// <param name="before">Called with a relative path before each change that can be seen from outside.</param>
    internal static CommitResult Commit(string folder, IEnumerable<OutputFile> files, Action<string> before)
    {
        try
        {
            var root = Path.GetFullPath(folder);
            Directory.CreateDirectory(root);
            using var held = Lock(root);
            return Build(root, [.. files], before);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new OutputException($"could not write to '{folder}': {e.Message}", e);
        }
    }

    // Removed while still held, so whoever makes a new one of its name comes after this build. One that a killed build
    // left behind holds nothing.
    private static FileStream Lock(string root)
    {
        var path = Path.Combine(root, LockName);
        OutputPath.RefuseLinkOut(root, path, LockName);
        try
        {
            return new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException e) when (e is not (DirectoryNotFoundException or PathTooLongException))
        {
            throw new OutputException($"another build is writing to '{root}': wait for it, or build to another folder", e);
        }
    }

    private static CommitResult Build(string root, ImmutableArray<OutputFile> files, Action<string> before)
    {
        var staging = new Staging(root);
        FinishEarlierRun(root, staging, before);
        RefuseBadPaths(root, files);
        var old = ReadManifest(root);
        var (journal, result) = Stage(root, staging, files, old);
        WriteJournal(root, journal);
        Finish(root, staging, journal, before);
        return result;
    }

    private static void FinishEarlierRun(string root, Staging staging, Action<string> before)
    {
        var path = Path.Combine(root, JournalName);
        OutputPath.RefuseLinkOut(root, path, JournalName);
        if (File.Exists(path))
            Finish(root, staging, Journal.Parse(File.ReadAllBytes(path)), before);
        else
            staging.Clear();
    }

    private static void Finish(string root, Staging staging, Journal journal, Action<string> before)
    {
        journal.Apply(root, before);
        before(JournalName);
        File.Delete(Path.Combine(root, JournalName));
        staging.Clear();
    }

    private static void RefuseBadPaths(string root, ImmutableArray<OutputFile> files)
    {
        // Windows and macOS take two names that differ in case for one.
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase) { Manifest.FileName };
        foreach (var file in files)
        {
            OutputPath.Resolve(root, file.Path);
            if (!seen.Add(file.Path))
                throw new OutputException($"two files would be written as '{file.Path}'");
        }
    }

    private static Manifest ReadManifest(string root)
    {
        var path = OutputPath.Resolve(root, Manifest.FileName);
        return File.Exists(path) ? Manifest.Parse(File.ReadAllBytes(path)) : Manifest.Empty;
    }

    private static (Journal Journal, CommitResult Result) Stage(
        string root, Staging staging, ImmutableArray<OutputFile> files, Manifest old)
    {
        try
        {
            var manifest = new Manifest([.. staging.Add(files).OrderBy(file => file.Path, StringComparer.Ordinal)]);
            staging.Add([new(Manifest.FileName, manifest.Write)]);
            return Plan(root, manifest, old);
        }
        catch
        {
            staging.Clear();
            throw;
        }
    }

    private static (Journal Journal, CommitResult Result) Plan(string root, Manifest manifest, Manifest old)
    {
        var aside = new List<Move>();
        var place = new List<Move>();
        foreach (var file in manifest.Files)
        {
            RefuseFileForFolder(root, file.Path, old);
            var there = HashAt(root, file.Path);
            if (there == file.Hash)
                continue;
            if (there is not null && old[file.Path] is null)
                throw new OutputException($"'{file.Path}' is there already and is not of a build: move it away");
            if (there is not null && there != old[file.Path]!.Hash)
                aside.Add(new(file.Path, FreeName(root, file.Path)));
            place.Add(new(Staging.PathOf(file.Path), file.Path));
        }

        place.Add(new(Staging.PathOf(Manifest.FileName), Manifest.FileName));
        var gone = old.Files.Where(file => manifest[file.Path] is null)
            .Select(file => (file.Path, Mine: HashAt(root, file.Path) is { } hash ? hash == file.Hash : (bool?)null))
            .ToLookup(file => file.Mine, file => file.Path);
        ImmutableArray<string> removed = [.. gone[true]];
        return (
            new([.. aside], removed, [.. place]),
            new([.. manifest.Files.Select(file => file.Path)], removed, [.. gone[false]], [.. aside.Select(move => move.To)]));
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

    private static string FreeName(string root, string relative)
    {
        var extension = Path.GetExtension(relative);
        var stem = relative[..^extension.Length];
        return Enumerable.Range(1, int.MaxValue).Select(i => FormattableString.Invariant($"{stem}.changed-{i}{extension}"))
            .First(name => !Path.Exists(Path.Combine(root, name)));
    }

    private static void WriteJournal(string root, Journal journal)
    {
        var draft = Path.Combine(root, Staging.Name, JournalName);
        using (var stream = new FileStream(draft, FileMode.CreateNew))
        {
            journal.Write(stream);
            stream.Flush(flushToDisk: true);
        }

        File.Move(draft, Path.Combine(root, JournalName));
    }
}
