using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Architecture;

/// <summary>
/// Folders within a folder stand in an order too: of two, at most one knows the other, be it by way of a third. What stands beside them,
/// in the folder itself, is what they share or what puts them together.
/// </summary>
public sealed class CircleTests
{
    private static readonly string[] _projects = ["Vessel", "Vessel.Geometry"];

    /// <summary>Folders that hold folders, from src on. From the disk: what a test runs over is asked before any test runs.</summary>
    public static TheoryData<string> Folders =>
    [
        .. _projects.SelectMany(project => Directory
                .EnumerateDirectories(Path.Combine(Repository.Root, "src", project), "*", SearchOption.AllDirectories)
                .Select(folder => Path.GetRelativePath(Path.Combine(Repository.Root, "src"), folder)).Append(project))
            .Where(folder => folder.Split('/') is not [_, "bin" or "obj", ..])
            .Where(folder => Directory.EnumerateDirectories(Path.Combine(Repository.Root, "src", folder)).Any())
            .Order(StringComparer.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(Folders))]
    public void Folders_within_a_folder_form_no_circle(string folder)
    {
        Assert.NotEmpty(SourceModel.AllUses.Where(use => use.Within == folder || use.Within.StartsWith(folder + "/", StringComparison.Ordinal)));
        var uses = SourceModel.AllUses.Select(use => (From: Child(use.Within, folder), To: Child(use.Of, folder), Use: use))
            .Where(use => use.From is not null && use.To is not null && use.From != use.To).ToList();
        var known = uses.ToLookup(use => use.From!, use => use.To!);

        var round = uses.Where(use => Reached(use.To!, known).Contains(use.From!)).Select(use => $"{use.From} knows {use.To}: {use.Use}").ToList();

        Assert.True(round.Count == 0, string.Join('\n', round));
    }

    /// <summary>Name of the folder right below a folder on the way to another; null where that is not below it.</summary>
    private static string? Child(string at, string folder) =>
        at.StartsWith(folder + "/", StringComparison.Ordinal) ? at[(folder.Length + 1)..].Split('/')[0] : null;

    /// <summary>All that is known from there, at first hand or by way of others.</summary>
    private static HashSet<string> Reached(string from, ILookup<string, string> known)
    {
        var (reached, next) = (new HashSet<string>(), new Queue<string>([from]));
        while (next.TryDequeue(out var at))
        {
            if (!reached.Add(at))
                continue;
            foreach (var to in known[at])
                next.Enqueue(to);
        }

        return reached;
    }
}
