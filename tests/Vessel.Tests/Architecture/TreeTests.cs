using Microsoft.CodeAnalysis;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Architecture;

/// <summary>Tests stand where what they test stands.</summary>
public sealed class TreeTests
{
    /// <summary>Folders of tests of the vessel as a whole, and of what tests need.</summary>
    private static readonly string[] _own = ["Architecture", "Faults", "Hard", "Laws", "Published", "Reassembly", "Support"];

    private static readonly string _tests = Path.Combine(Repository.Root, "tests/Vessel.Tests");

    private static readonly string _source = Path.Combine(Repository.Root, "src");

    private static IEnumerable<string> TestFiles => Directory.EnumerateFiles(_tests, "*.cs", SearchOption.AllDirectories)
        .Where(file => FolderOf(file).Split('/')[0] is not ("bin" or "obj") && !_own.Contains(FolderOf(file).Split('/')[0]));

    [Fact]
    public void Every_folder_of_tests_is_one_of_the_source()
    {
        var folders = TestFiles.Select(FolderOf).Distinct().ToList();

        Assert.Contains("Export/Report", folders);
        Assert.DoesNotContain(folders, folder => !Directory.Exists(Path.Combine(_source, SourceOf(folder))));
        Assert.All(_own, folder => Assert.True(Directory.Exists(Path.Combine(_tests, folder)), folder));
    }

    /// <summary>The test of a type is named for it.</summary>
    [Fact]
    public void A_type_is_tested_in_its_own_folder()
    {
        var types = SourceModel.Types.Where(type => type.ContainingType is null).ToLookup(type => type.Name);
        var tests = TestFiles.Select(file => (Folder: FolderOf(file), Name: Path.GetFileNameWithoutExtension(file)))
            .Where(test => test.Name.EndsWith("Tests", StringComparison.Ordinal))
            .Select(test => (test.Folder, Type: test.Name[..^"Tests".Length])).Where(test => types.Contains(test.Type)).ToList();

        Assert.True(tests.Count > 30, $"only {tests.Count} are named for a type");
        Assert.Empty(tests.Where(test => !types[test.Type].Any(type => FolderOf(type) == SourceOf(test.Folder))).Select(test => $"{test.Folder}/{test.Type}Tests"));
    }

    private static string FolderOf(string file) => Path.GetDirectoryName(Path.GetRelativePath(_tests, file))!;

    private static string FolderOf(INamedTypeSymbol type) =>
        Path.GetDirectoryName(Path.GetRelativePath(_source, type.Locations.First(at => at.IsInSource).SourceTree!.FilePath))!;

    private static string SourceOf(string folder) => folder.Split('/')[0] switch
    {
        "Geometry" or "Cli" => $"Vessel.{folder}",
        _ => $"Vessel/{folder}",
    };
}
