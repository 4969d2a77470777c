using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Vessel.Function;
using Vessel.Tests.Support;

namespace Vessel.Tests.Architecture;

/// <summary>
/// The library as the compiler understands it: every name in its source with the symbol that it stands for, so that a type which is
/// used without a using line, through a parent namespace or by inference is seen as well.
/// </summary>
internal static class SourceModel
{
    private static readonly Lazy<CSharpCompilation> _library = new(Compile);

    private static readonly Lazy<ImmutableArray<TypeUse>> _uses = new(() => [.. _library.Value.SyntaxTrees.AsParallel().AsOrdered().SelectMany(Uses)]);

    /// <summary>Types of the library that its files name or take a member from, each with the place of its first use in a file.</summary>
    public static ImmutableArray<TypeUse> AllUses => _uses.Value;

    /// <summary>All types that the library declares, nested ones too.</summary>
    public static IEnumerable<INamedTypeSymbol> Types => _library.Value.Assembly.GlobalNamespace.GetNamespaceMembers().SelectMany(Within);

    /// <summary>Errors that the compiler finds; without references it would bind nothing, and every law would hold.</summary>
    public static IEnumerable<Diagnostic> Errors => _library.Value.GetDiagnostics().Where(found => found.Severity == DiagnosticSeverity.Error);

    private static readonly string[] _projects = ["Vessel.Geometry", "Vessel"];

    private static CSharpCompilation Compile()
    {
        var options = CSharpParseOptions.Default.WithLanguageVersion(LanguageVersion.Latest);
        var source = Path.Combine(Repository.Root, "src");
        var trees = _projects
            .SelectMany(project => Directory.EnumerateFiles(Path.Combine(source, project), "*.cs", SearchOption.AllDirectories))
            .Where(file => !file.Contains("/bin/", StringComparison.Ordinal))
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) || file.EndsWith(".GlobalUsings.g.cs", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(file => CSharpSyntaxTree.ParseText(File.ReadAllText(file), options, file));
        var references = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(file => Path.GetFileName(file) is var name && !name.StartsWith("Vessel", StringComparison.Ordinal))
            .Select(file => MetadataReference.CreateFromFile(file));
        return CSharpCompilation.Create(
            "Vessel", trees, references,
            new(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable, allowUnsafe: true));
    }

    private static IEnumerable<TypeUse> Uses(SyntaxTree tree)
    {
        var model = _library.Value.GetSemanticModel(tree);
        var seen = new HashSet<INamedTypeSymbol>(SymbolEqualityComparer.Default);
        foreach (var node in tree.GetRoot().DescendantNodes().OfType<SimpleNameSyntax>())
        {
            foreach (var type in Of(model, node).Where(type => type.Locations.Any(at => at.IsInSource) && seen.Add(type)))
                yield return new(tree.FilePath, node.GetLocation().GetLineSpan().StartLinePosition.Line + 1, type);
        }
    }

    /// <summary>The type that a word names, or takes its member from.</summary>
    private static IEnumerable<INamedTypeSymbol> Of(SemanticModel model, SimpleNameSyntax word)
    {
        var symbol = model.GetSymbolInfo(word).Symbol;
        return new[] { symbol as INamedTypeSymbol, symbol?.ContainingType }.OfType<INamedTypeSymbol>().Select(type => type.OriginalDefinition);
    }

    private static IEnumerable<INamedTypeSymbol> Within(INamespaceOrTypeSymbol of) => of.GetMembers().SelectMany(member => member switch
    {
        INamespaceSymbol space => Within(space),
        INamedTypeSymbol type => Within(type).Prepend(type),
        _ => [],
    });
}

/// <summary>A type of the library that a file makes use of.</summary>
internal sealed record TypeUse(string File, int Line, INamedTypeSymbol Type)
{
    /// <summary>
    /// Folder below src/Vessel in which the use stands; empty for the files beside the folders, "Geometry" for that project.
    /// </summary>
    public string From => FolderOf(File);

    /// <summary>The same of the type that is used.</summary>
    public string To => FolderOf(Type.Locations.First(at => at.IsInSource).SourceTree!.FilePath);

    /// <summary>The folder in which the use stands, from src on.</summary>
    public string Within => Path.GetDirectoryName(Path.GetRelativePath(Path.Combine(Repository.Root, "src"), File))!;

    /// <summary>The same of the type that is used.</summary>
    public string Of =>
        Path.GetDirectoryName(Path.GetRelativePath(Path.Combine(Repository.Root, "src"), Type.Locations.First(at => at.IsInSource).SourceTree!.FilePath))!;

    public override string ToString() => $"{Path.GetRelativePath(Repository.Root, File)}:{Line} uses {Type.Name}";

    public static string FolderOf(string file)
    {
        var parts = Path.GetRelativePath(Path.Combine(Repository.Root, "src"), file).Split('/');
        return parts[0] == "Vessel.Geometry" ? "Geometry"
            : parts.Length > 2 ? parts[1] : string.Empty;
    }
}
