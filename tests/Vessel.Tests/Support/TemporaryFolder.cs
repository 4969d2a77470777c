namespace Vessel.Tests.Support;

/// <summary>A folder of a test's own, gone afterwards; its name has a space and letters of other scripts.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo _root = Directory.CreateTempSubdirectory("vessel-");

    public TemporaryFolder() => Path = System.IO.Path.Combine(_root.FullName, "Öl abscheider Ω 油");

    public string Path { get; }

    public string this[string relative] => System.IO.Path.Combine(Path, relative);

    public void Put(string relative, string text)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(this[relative])!);
        File.WriteAllText(this[relative], text);
    }

    /// <summary>Relative path and text of every file that the user sees.</summary>
    /// <param name="within">A folder in this one.</param>
    public SortedDictionary<string, string> Seen(string within = "") => new(
        Directory.EnumerateFiles(this[within], "*", SearchOption.AllDirectories)
            .Select(file => (Name: System.IO.Path.GetRelativePath(this[within], file).Replace('\\', '/'), At: file))
            .Where(file => !file.Name.StartsWith('.'))
            .ToDictionary(file => file.Name, file => File.ReadAllText(file.At)), StringComparer.Ordinal);

    public void Dispose() => _root.Delete(recursive: true);
}
