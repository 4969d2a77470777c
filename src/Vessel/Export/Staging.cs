using System.Collections.Immutable;
using System.Runtime.ExceptionServices;
using System.Security.Cryptography;

namespace Vessel.Export;

/// <summary>The hidden place inside the output folder where files wait until all of them are complete.</summary>
internal sealed class Staging(string folder)
{
    public const string Name = OutputPath.OwnPrefix + "staging";

    // More than there are processors, since a writer waits for the disk most of the time.
    private const int Writers = 8;

    private const int BufferLength = 1 << 16;

    private readonly string _root = Path.Combine(folder, Name);

    /// <summary>Path of a staged file relative to the folder.</summary>
    public static string PathOf(string relative) => $"{Name}/{relative}";

    public static string HashOf(string file)
    {
        using var stream = File.OpenRead(file);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }

    /// <summary>Throws away what an earlier run left.</summary>
    public void Clear()
    {
        OutputPath.RefuseLinkOut(folder, _root, Name);
        if (Directory.Exists(_root))
            Directory.Delete(_root, recursive: true);
    }

    /// <summary>Written side by side; the entries are in the files' order. The first fault ends it.</summary>
    public ImmutableArray<ManifestEntry> Add(ImmutableArray<OutputFile> files)
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
                    entries[i] = Add(files[i]);
                }
                // Whatever it is, it is thrown again where the build waits.
                catch (Exception e)
                {
                    Interlocked.CompareExchange(ref fault, ExceptionDispatchInfo.Capture(e), null);
                }
            }
        }
    }

    private ManifestEntry Add(OutputFile file)
    {
        var path = Path.Combine(_root, file.Path);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.Read, BufferLength);
        using var hashed = new HashedStream(stream);
        file.Write(hashed);
        stream.Flush(flushToDisk: true);
        return new(file.Path, stream.Length, hashed.Hash());
    }
}
