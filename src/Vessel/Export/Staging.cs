using System.Collections.Immutable;
using System.Runtime.ExceptionServices;

namespace Vessel.Export;

/// <summary>The hidden place inside the output folder where files wait until all of them are complete.</summary>
internal sealed class Staging(string folder)
{
    public const string Name = OutputPath.OwnPrefix + "staging";

    // More than there are processors, since a writer waits for the disk most of the time.
    private const int Writers = 8;

    private const int BufferLength = 1 << 16;

    private readonly string _root = Path.Combine(folder, Name);

    public bool IsThere => Directory.Exists(_root);

    /// <summary>Path of a staged file on this machine.</summary>
    public static string In(string folder, string relative) => OutputPath.Resolve(Path.Combine(folder, Name), relative);

    public static string HashOf(string file)
    {
        using var stream = File.OpenRead(file);
        return Convert.ToHexStringLower(Sha256.Of(stream));
    }

    /// <summary>Throws away what an earlier run left.</summary>
    public void Clear()
    {
        OutputPath.RefuseLinkOut(folder, _root, Name);
        if (Directory.Exists(_root))
            Directory.Delete(_root, recursive: true);
    }

    /// <summary>Staged files that will take the place of others get their rights.</summary>
    public void TakeModes(IEnumerable<string> paths)
    {
        if (OperatingSystem.IsWindows())
            return;
        foreach (var path in paths.Where(path => File.Exists(Path.Combine(folder, path))))
            File.SetUnixFileMode(In(folder, path), File.GetUnixFileMode(Path.Combine(folder, path)));
    }

    /// <summary>Written side by side; the entries are in the files' order. The first fault ends it.</summary>
    /// <param name="files">What is to be written.</param>
    /// <param name="gate">Held while a file is begun.</param>
    public ImmutableArray<ManifestEntry> Add(ImmutableArray<OutputFile> files, Lock gate)
    {
        var entries = new ManifestEntry[files.Length];
        var (next, fault) = (-1, (ExceptionDispatchInfo?)null);
        // Threads of their own: while those of the pool wait for the disk, or for a figure that two files share, the parallel
        // work inside a file would stand still.
        var writers = Enumerable.Range(0, Math.Min(Writers, files.Length)).Select(_ => new Thread(Write)).ToList();
        writers.ForEach(writer => writer.Start());
        writers.ForEach(writer => writer.Join());
        fault?.Throw();
        return [.. entries];

        void Write()
        {
            while (Volatile.Read(ref fault) is null && Interlocked.Increment(ref next) is var i && i < files.Length)
            {
                try
                {
                    entries[i] = Add(files[i], gate);
                }
                // Whatever it is, it is thrown again where the build waits.
                catch (Exception e)
                {
                    Interlocked.CompareExchange(ref fault, ExceptionDispatchInfo.Capture(e), null);
                }
            }
        }
    }

    private ManifestEntry Add(OutputFile file, Lock gate)
    {
        using var stream = Begin(Path.Combine(_root, file.Path), gate);
        using var hashed = new HashedStream(stream);
        file.Write(hashed);
        stream.Flush(flushToDisk: true);
        return new(file.Path, stream.Length, hashed.Hash());
    }

    private static FileStream Begin(string path, Lock gate)
    {
        lock (gate)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            return new(path, FileMode.CreateNew, FileAccess.Write, FileShare.Read, BufferLength);
        }
    }
}
