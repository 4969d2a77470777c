using System.Collections.Immutable;
using System.Runtime.Versioning;

namespace Vessel.Export;

/// <summary>
/// Puts a build in place by one rename: beside the output folder a second one is filled with the new files and with second names
/// (hard links) of everything that stays, and the two are exchanged. Whoever looks sees the old build or the new one.
/// </summary>
/// <remarks>
/// Left behind by a kill: before the exchange the second folder without a mark, which is thrown away; after it the old folder,
/// which bears the mark, is looked through by <see cref="Rescue"/> and thrown away.
/// </remarks>
internal sealed class FolderSwap(string root)
{
    /// <summary>Stands in the old folder from just before the exchange.</summary>
    public const string MarkName = OutputPath.OwnPrefix + "old";

    // A folder with more files of others than this is not one of output.
    private const int MostKept = 2000;

    private readonly string _mark = Path.Combine(root, MarkName);

    /// <summary>The second folder; null where the output folder has nothing above it.</summary>
    public string? Spare { get; } = Path.GetDirectoryName(root) is { } above
        ? Path.Combine(above, $"{OutputPath.OwnPrefix}swap-{Path.GetFileName(root)}") : null;

    /// <summary>Whether an earlier run left something.</summary>
    public bool HasLeftovers => (Spare is not null && Directory.Exists(Spare)) || File.Exists(_mark);

    /// <summary>Tidies up what a run that was killed left.</summary>
    public ImmutableArray<string> Recover()
    {
        var back = ImmutableArray<string>.Empty;
        if (Spare is not null && new DirectoryInfo(Spare) is { Exists: true } spare)
        {
            if (spare.LinkTarget is not null)
                throw new OutputException($"'{Spare}' is a link: delete it");
            if (File.Exists(Path.Combine(Spare, MarkName)))
                back = Rescue.From(Spare, root);
            Discard();
        }

        File.Delete(_mark);
        return back;
    }

    /// <summary>False, with nothing changed, where the machine or something in the folder does not allow it.</summary>
    /// <param name="plan">What is to be done.</param>
    /// <param name="before">Called with a path before each change that can be seen from outside.</param>
    /// <param name="back">Files that changed meanwhile, as they are called now.</param>
    public bool TryApply(FolderPlan plan, Action<string> before, out ImmutableArray<string> back)
    {
        back = [];
        if (!OperatingSystem.IsLinux() || Spare is null)
            return false;
        try
        {
            if (!Suits(root) || !TryFill(plan) || Linux.IsStoodIn(root))
            {
                Discard();
                return false;
            }

            before(MarkName);
            File.WriteAllBytes(_mark, []);
            if (!Linux.Exchange(root, Spare))
            {
                File.Delete(_mark);
                Discard();
                return false;
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or DllNotFoundException or EntryPointNotFoundException)
        {
            Discard();
            File.Delete(_mark);
            return false;
        }

        before(Spare);
        back = Rescue.From(Spare, root);
        Discard();
        return true;
    }

    /// <summary>Throws the second folder away, the mark first: from then on nothing in it is looked at again.</summary>
    public void Discard()
    {
        if (Spare is null || !Directory.Exists(Spare))
            return;
        File.Delete(Path.Combine(Spare, MarkName));
        try
        {
            Directory.Delete(Spare, recursive: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new OutputException($"'{Spare}' is left of a build and cannot be deleted ({e.Message}): delete it", e);
        }
    }

    /// <summary>Plain files and folders only, all of which this process may move and remove.</summary>
    [SupportedOSPlatform("linux")]
    private static bool Suits(string folder)
    {
        var whose = Linux.Look(folder);
        return whose is { IsFixed: false } && Linux.MayChange(folder) && !Linux.HasRightsOfItsOwn(folder)
            && new DirectoryInfo(folder).EnumerateFileSystemInfos().All(entry =>
                entry.LinkTarget is null && Linux.Look(entry.FullName) is { IsFixed: false }
                && (entry is not DirectoryInfo inner || Suits(inner.FullName)));
    }

    [SupportedOSPlatform("linux")]
    private bool TryFill(FolderPlan plan)
    {
        var gone = plan.Remove.Concat(plan.Place).Concat(plan.SetAside.Select(move => move.From)).ToHashSet(StringComparer.Ordinal);
        var kept = Rescue.Files(root).Where(relative => !gone.Contains(relative)).Select(relative => new Move(relative, relative))
            .Concat(plan.SetAside).Append(new(FolderLock.Name, FolderLock.Name)).ToList();
        if (kept.Count > MostKept || !TryMake(""))
            return false;
        foreach (var empty in Directory.EnumerateDirectories(root, "*", SearchOption.AllDirectories).Where(IsEmpty))
        {
            if (!TryMake(Path.GetRelativePath(root, empty)))
                return false;
        }

        foreach (var (from, to) in kept)
        {
            if (!TryMake(Path.GetDirectoryName(to)!))
                return false;
            Linux.Link(Path.Combine(root, from), Path.Combine(Spare!, to));
        }

        foreach (var path in plan.Place)
        {
            if (!TryMake(Path.GetDirectoryName(path)!))
                return false;
            Linux.Link(Staging.In(root, path), Path.Combine(Spare!, path));
        }

        return true;
    }

    private static bool IsEmpty(string folder) => !Directory.EnumerateFileSystemEntries(folder).Any();

    /// <summary>
    /// A folder like the one of that path, with those above it; false where it would not belong to the same user and group.
    /// </summary>
    [SupportedOSPlatform("linux")]
    private bool TryMake(string relative)
    {
        var (like, path) = (Path.Combine(root, relative), Path.Combine(Spare!, relative));
        if (Directory.Exists(path))
            return true;
        if (relative.Length > 0 && !TryMake(Path.GetDirectoryName(relative)!))
            return false;
        Directory.CreateDirectory(path);
        if (!Directory.Exists(like))
            return true;
        File.SetUnixFileMode(path, File.GetUnixFileMode(like));
        return Linux.Look(like) is { } one && Linux.Look(path) is { } other && (one.User, one.Group) == (other.User, other.Group);
    }
}
