using System.Text;
using Vessel.Export;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Hard;

/// <summary>
/// A build that is killed at a random moment. The folder as it is at that moment is copied away: that copy is what a
/// kill would leave, with no handler of the running build having a chance to tidy up.
/// </summary>
public sealed class KillTests
{
    private const string Foreign = "notes of the workshop.txt";

    public static TheoryData<int> Seeds() => [.. Enumerable.Range(0, 60)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_killed_folder_is_old_or_new_or_finished_by_the_next_run(int seed)
    {
        // The folder above is looked at too: there a folder is made ready for the exchange.
        using var live = new TemporaryFolder();
        using var left = new TemporaryFolder();
        var random = new Random(seed);
        var mayExchange = seed % 2 == 0;
        var (first, second) = (Contents(random), Contents(random));
        live.Put($"out/{Foreign}", "mine");
        OutputFolder.Commit(live["out"], Files(first, () => { }));
        // Sometimes the user has changed a file since.
        if (random.Next(3) == 0)
            live.Put("out/1.csv", "changed by hand");
        var old = live.Seen("out");
        var moments = CountMoments(live.Path, second, mayExchange);
        var fatal = random.Next(moments);
        OutputFolder.Commit(live["out"], Files(second, Moment), _ => Moment(), mayExchange);
        var made = live.Seen("out");

        var seen = left.Seen("out");
        var started = File.Exists(left["out/.vessel-journal"]);
        // Before the journal stands nothing has been touched; a mixture never stands without it.
        Assert.True(started || Same(seen, old) || Same(seen, made), $"moment {fatal} of {moments}");
        Assert.False(started && mayExchange && OperatingSystem.IsLinux());
        OutputFolder.Commit(left["out"], Files(second, () => { }));
        Assert.Equal(made, left.Seen("out"));
        Assert.Equal("mine", left.Seen("out")[Foreign]);
        Assert.Single(Directory.EnumerateFileSystemEntries(left.Path));

        void Moment()
        {
            if (fatal-- == 0)
                Copy(live.Path, left.Path);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void A_full_disk_leaves_the_old_build_and_nothing_half_written(int at)
    {
        using var folder = new TemporaryFolder();
        folder.Put(Foreign, "mine");
        OutputFolder.Commit(folder.Path, Files(Contents(new Random(1)), () => { }));
        var old = folder.Seen();
        var written = 0;

        Assert.Throws<OutputException>(() => OutputFolder.Commit(folder.Path, Files(Contents(new Random(2)), () =>
        {
            if (written++ == at)
                throw new IOException("No space left on device");
        })));

        Assert.Equal(old, folder.Seen());
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder.Path, ".vessel-*"));
    }

    private static Dictionary<string, string> Contents(Random random) => Enumerable.Range(0, random.Next(3, 9))
        .ToDictionary(i => i % 2 == 0 ? $"flats/{i}.dxf" : $"{i}.csv", _ => new string((char)('a' + random.Next(3)), random.Next(1, 50)));

    /// <param name="contents">By path.</param>
    /// <param name="moment">Called before, in the middle of, and after each file.</param>
    private static IEnumerable<OutputFile> Files(Dictionary<string, string> contents, Action moment) => contents.Select(
        file => new OutputFile(file.Key, to =>
        {
            moment();
            var bytes = Encoding.UTF8.GetBytes(file.Value);
            to.Write(bytes.AsSpan(0, bytes.Length / 2));
            to.Flush();
            moment();
            to.Write(bytes.AsSpan(bytes.Length / 2));
            to.Flush();
            moment();
        }));

    private static bool Same(SortedDictionary<string, string> a, SortedDictionary<string, string> b) => a.SequenceEqual(b);

    private static int CountMoments(string folder, Dictionary<string, string> contents, bool mayExchange)
    {
        using var trial = new TemporaryFolder();
        Copy(folder, trial.Path);
        var moments = 0;
        OutputFolder.Commit(trial["out"], Files(contents, () => moments++), _ => moments++, mayExchange);
        return moments;
    }

    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var folder in Directory.EnumerateDirectories(from, "*", SearchOption.AllDirectories))
            Directory.CreateDirectory(Path.Combine(to, Path.GetRelativePath(from, folder)));
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            // The lock is held, as it is by a build that is killed; a dead one's is free.
            if (Path.GetFileName(file) != ".vessel-lock")
                File.Copy(file, Path.Combine(to, Path.GetRelativePath(from, file)));
        }
    }
}
