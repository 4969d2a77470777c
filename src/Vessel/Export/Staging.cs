using System.Security.Cryptography;

namespace Vessel.Export;

/// <summary>The hidden place inside the output folder where files wait until all of them are complete.</summary>
internal sealed class Staging(string folder)
{
    public const string Name = OutputPath.OwnPrefix + "staging";

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

    public ManifestEntry Add(OutputFile file)
    {
        var path = Path.Combine(_root, file.Path);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using (var stream = new FileStream(path, FileMode.CreateNew))
        {
            file.Write(stream);
            stream.Flush(flushToDisk: true);
        }

        return new(file.Path, new FileInfo(path).Length, HashOf(path));
    }
}
