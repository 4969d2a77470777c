using System.Collections.Immutable;

namespace Vessel.Export;

/// <summary>
/// The only writer to disk. A build is staged inside the folder; then the whole folder is exchanged for one with the new files
/// (<see cref="FolderSwap"/>), or, where that cannot be, its files are moved one by one under a journal (<see cref="Journal"/>).
/// After a kill the folder is as before, or new, or, with the journal in it, finished by the next run.
/// </summary>
public static class OutputFolder
{
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
    /// <param name="mayExchange">Whether the folder may be exchanged whole, where the machine can do that.</param>
    internal static CommitResult Commit(string folder, IEnumerable<OutputFile> files, Action<string> before, bool mayExchange = true) =>
        Guarded(folder, () =>
        {
            Directory.CreateDirectory(folder);
            var root = OutputPath.Real(Path.GetFullPath(folder));
            using var held = FolderLock.Take(root);
            return Build(root, [.. files], before, mayExchange, held);
        });

    /// <summary>Finishes what a run that was killed began, for a run that has nothing to write itself.</summary>
    /// <returns>Whether a half-done build was completed.</returns>
    /// <exception cref="OutputException">As for a build.</exception>
    public static bool Mend(string folder) => Guarded(folder, () =>
    {
        if (!Directory.Exists(folder))
            return false;
        var root = OutputPath.Real(Path.GetFullPath(folder));
        var journal = new Journal(root);
        if (!journal.IsThere && !new FolderSwap(root).HasLeftovers && !new Staging(root).IsThere)
            return false;
        using var held = FolderLock.Take(root);
        var isHalfDone = journal.IsThere;
        FinishEarlierRun(root, _ => { });
        return isHalfDone;
    });

    private static T Guarded<T>(string folder, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new OutputException($"could not write to '{folder}': {e.Message}", e);
        }
    }

    private static CommitResult Build(
        string root, ImmutableArray<OutputFile> files, Action<string> before, bool mayExchange, FolderLock held)
    {
        var staging = new Staging(root);
        var found = FinishEarlierRun(root, before);
        RefuseBadPaths(root, files);
        using var interruption = new Interruption(() => ThrowAway(root, held));
        try
        {
            var made = new Manifest([.. staging.Add(files, interruption.Gate).OrderBy(file => file.Path, StringComparer.Ordinal)]);
            staging.Add([new(Manifest.FileName, made.Write)], interruption.Gate);
            lock (interruption.Gate)
            {
                var plan = FolderPlan.Of(root, made, ReadManifest(root));
                staging.TakeModes(plan.Place);
                var back = Apply(root, plan, before, mayExchange);
                return new(
                    [.. made.Files.Select(file => file.Path)], plan.Remove, plan.Kept,
                    [.. found, .. plan.SetAside.Select(move => move.To), .. back]);
            }
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // A journal that stands needs what is staged.
            if (!new Journal(root).IsThere)
                staging.Clear();
            throw;
        }
    }

    private static ImmutableArray<string> Apply(string root, FolderPlan plan, Action<string> before, bool mayExchange)
    {
        if (mayExchange && new FolderSwap(root).TryApply(plan, before, out var back))
            return back;
        var journal = new Journal(root);
        journal.Write();
        var meanwhile = journal.Apply(plan, before, isAgain: false);
        new Staging(root).Clear();
        return meanwhile;
    }

    /// <summary>The names of files that the user changed meanwhile.</summary>
    private static ImmutableArray<string> FinishEarlierRun(string root, Action<string> before)
    {
        var back = new FolderSwap(root).Recover();
        var (journal, staging) = (new Journal(root), new Staging(root));
        if (journal.IsThere)
        {
            var (made, old) = journal.Read();
            var plan = FolderPlan.Of(root, made, old);
            back = [.. back, .. plan.SetAside.Select(move => move.To), .. journal.Apply(plan, before, isAgain: true)];
        }

        journal.Clear();
        staging.Clear();
        return back;
    }

    private static void ThrowAway(string root, FolderLock held)
    {
        try
        {
            new FolderSwap(root).Discard();
            new Staging(root).Clear();
            held.Dispose();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or OutputException)
        {
            // The next run tidies up.
        }
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
        if (Directory.Exists(path))
            throw new OutputException($"'{Manifest.FileName}' is a folder, where a file belongs: move it away");
        return File.Exists(path) ? Manifest.Parse(File.ReadAllBytes(path)) : Manifest.Empty;
    }
}
