using System.Collections.Concurrent;
using Microsoft.CodeAnalysis;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Architecture;

/// <summary>The library's source as the compiler binds it, held to what DEVELOPERS.md says of it.</summary>
public sealed class DependencyTests
{
    /// <summary>Folders in the order in which they stand on one another, each with those before it that it does without.</summary>
    private static readonly (string Folder, string[] Without)[] _order =
    [
        ("Geometry", []),
        ("Stock", ["Geometry"]),
        ("Design", []),
        ("Sites", []),
        ("Model", ["Sites"]),
        ("Parts", []),
        ("Joints", []),
        ("Mockups", []),
        ("Function", []),
        ("Planning", ["Mockups"]),
        ("Fixtures", []),
        ("Findings", []),
    ];

    private static readonly Dictionary<string, string[]> _mayUse = new(_order.Select(step => KeyValuePair.Create(step.Folder, Before(step.Folder, step.Without))))
    {
        // Kinds of wall and what stands on walls know no other kind; what is read of them comes together in Reading.
        ["Shells"] = Before("Planning"),
        ["Heads"] = Before("Shells"),
        ["Ports"] = Before("Shells"),
        ["Members"] = Before("Shells"),
        ["Reading"] = ["Geometry", "Stock", "Design", "Sites", "Ports", "Heads", "Members"],
        ["Starting"] = [.. Before("Mockups"), "Function", "Findings", ""],
        ["Export"] = [.. Before("Shells"), "Ports"],
    };

    private static string[] Before(string folder, params string[] without) =>
        [.. _order.Select(step => step.Folder).TakeWhile(name => name != folder).Except(without)];

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

    /// <summary>Folders of kinds, the registry of each, and those within it that several kinds share.</summary>
    public static TheoryData<string, string, string[]> Kinds => new()
    {
        { "Shells", "Courses.cs", [""] },
        { "Heads", "HeadKinds.cs", [""] },
        { "Members", "MemberKinds.cs", ["", "Inside", "Brackets"] },
    };

    /// <summary>Else a new kind would have to be known elsewhere.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void No_kind_is_named_outside_its_folder_and_the_registry(string folder, string registry, string[] shared)
    {
        string? Kind(string file) => Path.GetRelativePath(Path.Combine(Repository.Root, "src/Vessel", folder), file).Split('/') is [not "..", _, ..] and var parts
            ? parts.Length > 1 ? parts[0] : "" : null;
        var uses = SourceModel.AllUses.Select(use => (Use: use, From: Kind(use.File), To: Kind(use.Type.Locations[0].SourceTree!.FilePath))).ToList();

        Assert.Contains(uses, use => use.From is not null && use.From == use.To && !shared.Contains(use.To));
        Assert.Contains(uses, use => use.To is { Length: > 0 } && Path.GetFileName(use.Use.File) == registry);
        Assert.DoesNotContain(uses, use => use.To is { Length: > 0 } kind && use.From != kind
            && Path.GetFileName(use.Use.File) != registry && (use.From is null || !shared.Contains(kind)));
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
