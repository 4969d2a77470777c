using Xunit;

namespace Vessel.Tests.Architecture;

/// <summary>
/// Folders within a folder stand in an order too: of two, at most one knows the other, be it by way of a third. What stands beside them,
/// in the folder itself, is what they share or what puts them together.
/// </summary>
public sealed class CircleTests
{
    public static TheoryData<string> Folders => [.. SourceModel.AllUses.Select(use => use.Within).SelectMany(Above).Distinct().Order()];

    [Theory]
    [MemberData(nameof(Folders))]
    public void Folders_within_a_folder_form_no_circle(string folder)
    {
        var uses = SourceModel.AllUses.Select(use => (From: Child(use.Within, folder), To: Child(use.Of, folder), Use: use))
            .Where(use => use.From is not null && use.To is not null && use.From != use.To).ToList();
        var known = uses.ToLookup(use => use.From!, use => use.To!);

        var round = uses.Where(use => Reached(use.To!, known).Contains(use.From!)).Select(use => $"{use.From} knows {use.To}: {use.Use}").ToList();

        Assert.True(round.Count == 0, string.Join('\n', round));
    }

    /// <summary>The folder and those that it stands in.</summary>
    private static IEnumerable<string> Above(string folder)
    {
        for (var at = folder; !string.IsNullOrEmpty(at); at = Path.GetDirectoryName(at))
            yield return at;
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
