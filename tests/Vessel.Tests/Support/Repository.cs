using Xunit;

namespace Vessel.Tests.Support;

/// <summary>Where the checkout that these tests were built from lies.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    public static IEnumerable<string> Designs =>
        Directory.EnumerateFiles(Path.Combine(Root, "designs"), "*.yaml").Order(StringComparer.Ordinal);

    public static TheoryData<string> DesignFiles() => [.. Designs.Select(f => Path.GetFileName(f))];

    /// <summary>Text of a file of <see cref="DesignFiles"/>.</summary>
    public static string Design(string file) => File.ReadAllText(Path.Combine(Root, "designs", file));

    private static string Find(string folder) =>
        File.Exists(Path.Combine(folder, "Vessel.sln"))
            ? folder
            : Find(Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("no Vessel.sln above the tests"));
}
