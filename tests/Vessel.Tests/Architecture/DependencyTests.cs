using System.Collections.Concurrent;
using Microsoft.CodeAnalysis;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Architecture;

/// <summary>The library's source as the compiler binds it, held to what DEVELOPERS.md says of it.</summary>
public sealed class DependencyTests
{
    private static readonly Dictionary<string, string[]> _mayUse = new()
    {
        ["Geometry"] = [],
        ["Stock"] = [],
        ["Design"] = ["Geometry", "Stock"],
        ["Model"] = ["Geometry", "Stock", "Design", ""],
        ["Parts"] = ["Geometry", "Stock", "Design", "Model"],
        ["Joints"] = ["Geometry", "Stock", "Design", "Model", "Parts"],
        ["Function"] = ["Geometry", "Stock", "Design", "Model", "Parts", "Joints", ""],
        ["Planning"] = ["Geometry", "Stock", "Design", "Model", "Parts", "Joints", "Function", ""],
        ["Mockups"] = ["Geometry", "Stock", "Design", "Model", "Parts", "Joints", "Planning", ""],
        ["Findings"] = ["Geometry", "Stock", "Design", "Model", "Parts", "Joints", "Function", "Planning", "Mockups", ""],
        ["Members"] = ["Geometry", "Stock", "Design", "Model", "Parts", "Joints", "Function", "Planning", "Mockups", "Findings", ""],
        ["Reading"] = ["Geometry", "Stock", "Design", "Members"],
        ["Starting"] = ["Geometry", "Stock", "Design", "Model", "Parts", "Joints", "Function", "Findings", ""],
        ["Export"] = ["Geometry", "Stock", "Design", "Model", "Parts", "Joints", "Function", "Planning", "Mockups", "Findings", ""],
    };

    public static TheoryData<string> Folders => [.. _mayUse.Keys];

    /// <summary>But for bodies that source generators write, which do not run here.</summary>
    [Fact]
    public void The_compiler_binds_every_name() => Assert.Empty(SourceModel.Errors.Where(error => error.Id != "CS8795").Take(5));

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_uses_only_the_folders_below_it(string folder)
    {
        var uses = SourceModel.AllUses.Where(use => use.From == folder && use.To != folder).ToList();

        Assert.DoesNotContain(uses, use => !_mayUse[folder].Contains(use.To));
    }

    [Fact]
    public void Every_folder_of_the_library_stands_in_the_table()
    {
        var folders = SourceModel.AllUses.Select(use => use.From).Where(folder => folder.Length > 0).Distinct().ToList();

        Assert.Equal(_mayUse.Keys.Order(), folders.Order());
    }

    /// <summary>A record is copied with "with", and the copy would keep what the first one worked out late.</summary>
    [Fact]
    public void No_record_works_anything_out_late()
    {
        var late = SourceModel.Types.Where(type => type.IsRecord)
            .Where(type => type.GetMembers().OfType<IFieldSymbol>().Any(field => !field.IsStatic && field.Type.Name == nameof(Lazy<>)));

        Assert.Empty(late.Select(type => type.Name));
    }

    /// <summary>
    /// Static fields are set once and hold what does not change. A cache is one that nobody can tell from working it out anew: each is
    /// named here.
    /// </summary>
    [Fact]
    public void Nothing_static_changes()
    {
        string[] caches = ["StrokeGlyph._read"];
        string[] mutable =
        [
            nameof(Dictionary<,>), nameof(List<>), nameof(HashSet<>), nameof(ConcurrentDictionary<,>), "ConditionalWeakTable", nameof(Queue<>), nameof(Stack<>),
        ];

        var changing = SourceModel.Types.SelectMany(type => type.GetMembers().OfType<IFieldSymbol>())
            .Where(field => field is { IsStatic: true, IsConst: false } && (!field.IsReadOnly || mutable.Contains(field.Type.Name)))
            .Select(field => $"{field.ContainingType.Name}.{field.Name}");

        Assert.Equal(caches, changing);
    }
}
