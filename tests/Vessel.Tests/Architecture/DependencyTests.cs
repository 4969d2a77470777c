using System.Text.RegularExpressions;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Architecture;

/// <summary>The using lines of the library's folders, held to the one direction that DEVELOPERS.md names.</summary>
public sealed partial class DependencyTests
{
    private static readonly Dictionary<string, string[]> _mayUse = new()
    {
        ["Stock"] = [],
        ["Design"] = ["Geometry", "Stock"],
        ["Parts"] = ["Geometry", "Stock", "Design"],
        ["Joints"] = ["Geometry", "Stock", "Design", "Parts"],
        ["Function"] = ["Geometry", "Stock", "Design", "Parts", "Joints"],
        ["Planning"] = ["Geometry", "Stock", "Design", "Parts", "Joints", "Function"],
        ["Mockups"] = ["Geometry", "Stock", "Design", "Parts", "Joints", "Planning"],
        ["Findings"] = ["Geometry", "Stock", "Design", "Parts", "Joints", "Function", "Planning", "Mockups"],
        ["Starting"] = ["Geometry", "Stock", "Design", "Parts", "Joints", "Function", "Findings"],
        ["Export"] = ["Geometry", "Stock", "Design", "Parts", "Joints", "Function", "Planning", "Mockups", "Findings"],
    };

    public static TheoryData<string> Folders => [.. _mayUse.Keys];

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_uses_only_the_folders_below_it(string folder)
    {
        var root = Path.Combine(Repository.Root, "src", "Vessel", folder);
        var used = Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
            .SelectMany(file => Using().Matches(File.ReadAllText(file)).Select(match => (file, Name: match.Groups[1].Value)))
            .Where(use => use.Name != folder)
            .ToList();

        Assert.All(used, use => Assert.Contains(use.Name, _mayUse[folder]));
    }

    [Fact]
    public void Geometry_knows_nothing_of_the_shop()
    {
        var root = Path.Combine(Repository.Root, "src", "Vessel.Geometry");

        Assert.All(
            Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories).Where(file => !file.Contains("/obj/", StringComparison.Ordinal)),
            file => Assert.DoesNotMatch(@"using Vessel\.(?!Geometry)", File.ReadAllText(file)));
    }

    [Fact]
    public void Every_folder_of_the_library_stands_in_the_table()
    {
        var folders = Directory.EnumerateDirectories(Path.Combine(Repository.Root, "src", "Vessel"))
            .Select(Path.GetFileName)
            .Where(name => name is not ("bin" or "obj"));

        Assert.All(folders, folder => Assert.Contains(folder!, _mayUse.Keys));
    }

    [GeneratedRegex(@"^using Vessel\.(\w+)", RegexOptions.Multiline)]
    private static partial Regex Using();
}
