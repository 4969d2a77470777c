using System.Collections.Immutable;
using System.Text.Json;

namespace Vessel.Export;

/// <summary>
/// Puts a build in place file by file, where the folder cannot be exchanged whole. The journal stands in the folder while it is
/// neither the old build nor the new one; the next run makes a plan anew from what it finds, and carries that out.
/// </summary>
internal sealed class Journal(string root)
{
    public const string Name = OutputPath.OwnPrefix + "journal";

    /// <summary>Where the files of the old build go until the new one stands.</summary>
    private const string TakenName = OutputPath.OwnPrefix + "replaced";

    private const int Schema = 2;

    private readonly string _path = Path.Combine(root, Name);

    private readonly string _taken = Path.Combine(root, TakenName);

    /// <summary>Whether a run was cut short while it moved files.</summary>
    public bool IsThere => Path.Exists(_path);

    /// <summary>
    /// The build that the run was to put in place and the one that was there before, both by their own lists: the journal says
    /// only which list is meant, so that a forged one can have nothing removed.
    /// </summary>
    /// <exception cref="OutputException">It is damaged.</exception>
    public (Manifest Made, Manifest Old) Read()
    {
        OutputPath.RefuseLinkOut(root, _path, Name);
        OutputPath.RefuseLinkOut(root, _taken, TakenName);
        var (staged, placed, taken) = (Bytes(Staging.In(root, Manifest.FileName)), Bytes(Path.Combine(root, Manifest.FileName)),
            Bytes(Path.Combine(_taken, Manifest.FileName)));
        if ((staged ?? placed) is not { } made || Wanted() != Convert.ToHexStringLower(Sha256.Of(made)))
            throw Damaged(null);
        var old = taken ?? (staged is null ? null : placed);
        return (Manifest.Parse(made), old is null ? Manifest.Empty : Manifest.Parse(old));
    }

    /// <summary>Written whole or not at all.</summary>
    public void Write()
    {
        var draft = Path.Combine(root, Staging.Name, Name);
        using (var stream = new FileStream(draft, FileMode.Create))
        {
            using (var json = new Utf8JsonWriter(stream))
            {
                json.WriteStartObject();
                json.WriteNumber("schema", Schema);
                json.WriteString("manifest", Staging.HashOf(Staging.In(root, Manifest.FileName)));
                json.WriteEndObject();
            }

            stream.Flush(flushToDisk: true);
        }

        File.Move(draft, _path);
    }

    /// <summary>Carries the plan out, or leaves the folder as it was.</summary>
    /// <param name="plan">Made from the folder as it is.</param>
    /// <param name="before">Called with a path before each change.</param>
    /// <param name="isAgain">Whether it finishes what an earlier run began, so that there is no build before to go back to.</param>
    /// <returns>Files that changed meanwhile, as they are called now.</returns>
    /// <exception cref="OutputException">A file cannot be moved; the message names it.</exception>
    public ImmutableArray<string> Apply(FolderPlan plan, Action<string> before, bool isAgain)
    {
        var done = new Stack<Move>();
        foreach (var move in Moves(plan))
        {
            try
            {
                if (!File.Exists(In(move.From)))
                    continue;
                before(move.To.StartsWith(TakenName, StringComparison.Ordinal) ? move.From : move.To);
                Carry(move);
                done.Push(move);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                throw Undone(done, move, e, isAgain);
            }
        }

        foreach (var path in plan.Remove)
            RemoveIfEmpty(path);
        before(Name);
        var back = Directory.Exists(_taken) ? Rescue.From(_taken, root) : [];
        File.Delete(_path);
        Clear();
        return back;
    }

    /// <summary>Throws away what was taken out; only where no journal stands.</summary>
    public void Clear()
    {
        OutputPath.RefuseLinkOut(root, _taken, TakenName);
        if (Directory.Exists(_taken))
            Directory.Delete(_taken, recursive: true);
    }

    private static IEnumerable<Move> Moves(FolderPlan plan)
    {
        foreach (var move in plan.SetAside)
            yield return move;
        foreach (var path in plan.Remove)
            yield return new(path, Taken(path));
        foreach (var path in plan.Place)
        {
            yield return new(path, Taken(path));
            yield return new($"{Staging.Name}/{path}", path);
        }
    }

    private static string Taken(string path) => $"{TakenName}/{path}";

    private void Carry(Move move)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(In(move.To))!);
        // A file that an earlier, killed run took out is the older one of two; nobody misses it.
        File.Move(In(move.From), In(move.To), overwrite: move.To.StartsWith(TakenName, StringComparison.Ordinal));
    }

    /// <summary>The exception to throw after all that was done is undone, last first.</summary>
    private OutputException Undone(Stack<Move> done, Move failed, Exception why, bool isAgain)
    {
        var name = failed.From.StartsWith(Staging.Name, StringComparison.Ordinal) ? failed.To : failed.From;
        var what = $"'{name}' could not be replaced ({why.Message}); it may be open in another program, locked, or another user's";
        try
        {
            while (done.TryPop(out var move))
            {
                File.Move(In(move.To), In(move.From));
                RemoveIfEmpty(move.To);
            }

            if (!isAgain)
                File.Delete(_path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            isAgain = true;
        }

        return new(isAgain ? $"{what}; until then the folder is half new, and the next build to it finishes the rest"
            : $"{what}; the folder still holds the build before", why);
    }

    // A staged or taken file is the writer's own; any other path must keep inside the folder.
    private string In(string path)
    {
        var own = new[] { Staging.Name, TakenName }.FirstOrDefault(name => path.StartsWith(name + "/", StringComparison.Ordinal));
        return own is null ? OutputPath.Resolve(root, path) : OutputPath.Resolve(Path.Combine(root, own), path[(own.Length + 1)..]);
    }

    private void RemoveIfEmpty(string path)
    {
        for (var at = Path.GetDirectoryName(path); !string.IsNullOrEmpty(at); at = Path.GetDirectoryName(at))
        {
            var directory = Path.Combine(root, at);
            if (!Directory.Exists(directory) || Directory.EnumerateFileSystemEntries(directory).Any())
                return;
            Directory.Delete(directory);
        }
    }

    private string? Wanted()
    {
        try
        {
            using var document = JsonDocument.Parse(File.ReadAllBytes(_path));
            return document.RootElement.GetProperty("schema").GetInt32() == Schema
                ? document.RootElement.GetProperty("manifest").GetString() : throw Damaged(null);
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException
            or UnauthorizedAccessException)
        {
            throw Damaged(e);
        }
    }

    private OutputException Damaged(Exception? why) => new(
        $"'{_path}', left by a build that was cut short, is damaged: look over the folder, delete that file, and build again", why!);

    private static byte[]? Bytes(string path) => File.Exists(path) ? File.ReadAllBytes(path) : null;
}
