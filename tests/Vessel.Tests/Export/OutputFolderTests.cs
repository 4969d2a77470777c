using System.Runtime.Versioning;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Vessel.Export;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export;

public sealed class OutputFolderTests : IDisposable
{
    private static readonly string[] _edited = ["changed", "fresh/made", "gone", "same", "updated"];

    private static readonly string[] _pair = ["flats/a", "flats/b"];

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Files_are_written_with_their_folders()
    {
        OutputFolder.Commit(_folder.Path, [Text("flats/lid.dxf", "lid"), Text("summary.json", "{}")]);

        Assert.Equal("lid", File.ReadAllText(_folder["flats/lid.dxf"]));
        Assert.Equal("{}", File.ReadAllText(_folder["summary.json"]));
    }

    [Fact]
    public void The_manifest_lists_size_and_hash_of_each_file_in_order()
    {
        OutputFolder.Commit(_folder.Path, [Text("b.csv", "bb"), Text("a/z.stl", "z")]);

        using var manifest = JsonDocument.Parse(File.ReadAllText(_folder["manifest.json"]));
        var files = manifest.RootElement.GetProperty("files").EnumerateArray()
            .Select(file =>
                (file.GetProperty("path").GetString(), file.GetProperty("bytes").GetInt64(), file.GetProperty("sha256").GetString()));
        Assert.Equal([("a/z.stl", 1L, Sha("z")), ("b.csv", 2L, Sha("bb"))], files);
    }

    [Fact]
    public void The_same_build_twice_leaves_the_same_bytes()
    {
        OutputFolder.Commit(_folder.Path, [Text("a", "1"), Text("b", "2")]);
        var first = _folder.Seen();

        OutputFolder.Commit(_folder.Path, [Text("b", "2"), Text("a", "1")]);

        Assert.Equal(first, _folder.Seen());
    }

    [Fact]
    public void A_file_that_is_no_longer_made_is_removed_with_its_empty_folder()
    {
        OutputFolder.Commit(_folder.Path, [Text("a", "1"), Text("solids/old.stl", "2")]);

        var result = OutputFolder.Commit(_folder.Path, [Text("a", "1")]);

        Assert.False(Directory.Exists(_folder["solids"]));
        Assert.Equal(["solids/old.stl"], result.Removed);
    }

    [Fact]
    public void A_file_that_the_user_changed_and_that_is_no_longer_made_is_kept_and_named()
    {
        OutputFolder.Commit(_folder.Path, [Text("a", "1"), Text("b", "2")]);
        _folder.Put("b", "mine");

        var result = OutputFolder.Commit(_folder.Path, [Text("a", "1")]);

        Assert.Equal("mine", File.ReadAllText(_folder["b"]));
        Assert.Equal(["b"], result.Kept);
    }

    [Fact]
    public void A_file_that_the_user_changed_and_that_is_made_anew_is_set_aside()
    {
        OutputFolder.Commit(_folder.Path, [Text("flats/lid.dxf", "1")]);
        _folder.Put("flats/lid.dxf", "mine");

        var result = OutputFolder.Commit(_folder.Path, [Text("flats/lid.dxf", "2")]);

        Assert.Equal(["flats/lid.changed-1.dxf"], result.SetAside);
        Assert.Equal("mine", File.ReadAllText(_folder["flats/lid.changed-1.dxf"]));
        Assert.Equal("2", File.ReadAllText(_folder["flats/lid.dxf"]));
    }

    [Fact]
    public void Foreign_files_are_left_alone()
    {
        _folder.Put("notes.txt", "mine");
        OutputFolder.Commit(_folder.Path, [Text("a", "1")]);

        OutputFolder.Commit(_folder.Path, []);

        Assert.Equal("mine", File.ReadAllText(_folder["notes.txt"]));
        Assert.False(File.Exists(_folder["a"]));
    }

    [Fact]
    public void A_foreign_file_in_the_way_is_refused_by_name_and_nothing_is_written()
    {
        _folder.Put("b", "mine");

        var refused = Assert.Throws<OutputException>(() => OutputFolder.Commit(_folder.Path, [Text("a", "1"), Text("b", "2")]));

        Assert.Contains("'b'", refused.Message, StringComparison.Ordinal);
        Assert.Equal(["b"], _folder.Seen().Keys);
    }

    [Fact]
    public void A_foreign_file_with_the_very_bytes_is_taken_over()
    {
        _folder.Put("b", "2");

        OutputFolder.Commit(_folder.Path, [Text("b", "2")]);
        var result = OutputFolder.Commit(_folder.Path, []);

        Assert.Equal(["b"], result.Removed);
    }

    [Theory]
    [InlineData("../a")]
    [InlineData("/a")]
    [InlineData("a/../../b")]
    [InlineData("a//b")]
    [InlineData("")]
    [InlineData("./a")]
    [InlineData("c:a")]
    [InlineData("..\\a")]
    [InlineData(".vessel-staging/a")]
    [InlineData("manifest.json")]
    public void Paths_that_leave_the_folder_or_are_the_writers_own_are_refused(string path)
    {
        Assert.Throws<OutputException>(() => OutputFolder.Commit(_folder.Path, [Text(path, "1")]));
        Assert.Empty(_folder.Seen());
    }

    [Fact]
    public void Two_files_of_one_name_are_refused_also_where_only_the_case_differs() =>
        Assert.Throws<OutputException>(() => OutputFolder.Commit(_folder.Path, [Text("a", "1"), Text("A", "2")]));

    [Fact]
    public void A_link_that_leads_out_of_the_folder_is_refused()
    {
        using var elsewhere = new TemporaryFolder();
        Directory.CreateDirectory(elsewhere.Path);
        Directory.CreateDirectory(_folder.Path);
        Directory.CreateSymbolicLink(_folder["flats"], elsewhere.Path);

        Assert.Throws<OutputException>(() => OutputFolder.Commit(_folder.Path, [Text("flats/lid.dxf", "1")]));

        Assert.Empty(elsewhere.Seen());
    }

    [Fact]
    public void A_link_that_stays_inside_the_folder_is_followed()
    {
        Directory.CreateDirectory(_folder["real"]);
        Directory.CreateSymbolicLink(_folder["flats"], _folder["real"]);

        OutputFolder.Commit(_folder.Path, [Text("flats/lid.dxf", "1")]);

        Assert.Equal("1", File.ReadAllText(_folder["real/lid.dxf"]));
    }

    [Fact]
    public void A_second_build_into_the_folder_is_refused_while_the_first_runs()
    {
        OutputException? second = null, third = null;
        OutputException Refused() => Assert.Throws<OutputException>(() => OutputFolder.Commit(_folder.Path, [Text("b", "2")]));
        // The refusal itself must not let go of the lock.
        var nested = new OutputFile("a", _ => (second, third) = (Refused(), Refused()));

        OutputFolder.Commit(_folder.Path, [nested]);

        Assert.Contains("another build", second!.Message, StringComparison.Ordinal);
        Assert.Contains("another build", third!.Message, StringComparison.Ordinal);
        Assert.False(File.Exists(_folder[".vessel-lock"]));
    }

    [Fact]
    public void A_file_that_cannot_be_written_leaves_the_old_build()
    {
        OutputFolder.Commit(_folder.Path, [Text("a", "1")]);
        var before = _folder.Seen();
        var broken = new OutputFile("c", _ => throw new IOException("disk full"));

        var failed = Assert.Throws<OutputException>(() => OutputFolder.Commit(_folder.Path, [Text("a", "2"), Text("b", "2"), broken]));

        Assert.Contains("disk full", failed.Message, StringComparison.Ordinal);
        Assert.Equal(before, _folder.Seen());
        Assert.False(Directory.Exists(_folder[".vessel-staging"]));
    }

    [Fact]
    public void A_bug_in_a_writer_is_not_taken_for_a_trouble_of_the_disk()
    {
        var broken = new OutputFile("c", _ => throw new InvalidOperationException());

        Assert.Throws<InvalidOperationException>(() => OutputFolder.Commit(_folder.Path, [broken]));
    }

    [Fact]
    public void What_a_run_that_was_killed_while_staging_left_is_thrown_away()
    {
        _folder.Put(".vessel-staging/a", "half");

        OutputFolder.Commit(_folder.Path, [Text("b", "2")]);

        Assert.Equal(["b", "manifest.json"], _folder.Seen().Keys);
        Assert.False(Directory.Exists(_folder[".vessel-staging"]));
    }

    // Of the nine steps of a journal.
    public static TheoryData<int> Kills => [.. Enumerable.Range(0, 9)];

    [Theory]
    [MemberData(nameof(Kills))]
    public void A_run_that_is_killed_at_any_step_is_finished_by_the_next(int step)
    {
        Prepare();
        Kill(step);

        // The next build cannot be staged: what it finds is therefore what the finished run left.
        Assert.Throws<OutputException>(() => OutputFolder.Commit(_folder.Path, [new("x", _ => throw new IOException())]));

        Assert.Equal(Finished(), Files());
    }

    [Theory]
    [MemberData(nameof(Kills))]
    public void A_run_that_is_killed_is_finished_by_one_that_writes_nothing(int step)
    {
        Prepare();
        Kill(step);

        Assert.True(OutputFolder.Mend(_folder.Path));

        Assert.Equal(Finished(), Files());
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder.Path, ".vessel-*"));
        Assert.False(OutputFolder.Mend(_folder.Path));
    }

    [Theory]
    [MemberData(nameof(Kills))]
    public void What_the_user_changes_after_a_kill_is_never_lost(int step)
    {
        Prepare();
        Kill(step);
        string[] changed = [.. _edited.Where(name => File.Exists(_folder[name]))];
        foreach (var name in changed)
            _folder.Put(name, $"edit of {name}");

        OutputFolder.Mend(_folder.Path);
        OutputFolder.Commit(_folder.Path, [Text("same", "same"), Text("updated", "newest")]);

        var texts = Files().Values;
        Assert.All(changed, name => Assert.Contains($"edit of {name}", texts));
        Assert.Contains("mine", texts.Append(changed.Contains("changed") && step == 0 ? "mine" : ""));
    }

    [Theory]
    [MemberData(nameof(Kills))]
    public void After_a_kill_the_next_run_gives_what_it_would_have_given_anyway(int step)
    {
        Prepare();
        Kill(step);
        OutputFolder.Commit(_folder.Path, [Text("same", "same"), Text("updated", "newest")]);

        using var other = new TemporaryFolder();
        OutputFolder.Commit(other.Path, [Text("same", "same"), Text("updated", "newest")]);
        var expected = other.Seen();
        expected["changed.changed-1"] = "mine";
        Assert.Equal(expected, _folder.Seen());
    }

    [Theory]
    [MemberData(nameof(Kills))]
    public void A_file_that_cannot_be_moved_leaves_the_whole_folder_as_it_was(int step)
    {
        if (step == Kills.Count - 1)
            return; // By then everything is moved.
        Prepare();
        var before = _folder.Seen();
        var steps = 0;

        var failed = Assert.Throws<OutputException>(() => Commit(Second(), _ =>
        {
            if (steps++ == step)
                throw new IOException("Operation not permitted");
        }));

        Assert.Contains("Operation not permitted", failed.Message, StringComparison.Ordinal);
        Assert.Contains("still holds the build before", failed.Message, StringComparison.Ordinal);
        Assert.Equal(before, _folder.Seen());
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder.Path, ".vessel-*"));
        Assert.False(Directory.Exists(_folder["fresh"]));
    }

    [Fact]
    public void A_journal_has_nine_steps_to_be_killed_at()
    {
        // One set aside, one taken out, two placed, two replaced, the journal.
        Prepare();
        var steps = new List<string>();

        Commit(Second(), steps.Add);

        Assert.Equal(
            ["changed.changed-1", "gone", "changed", "fresh/made", "updated", "updated", "manifest.json", "manifest.json",
                ".vessel-journal"], steps);
    }

    [Fact]
    [SupportedOSPlatform("linux")]
    public void Where_the_folder_can_be_exchanged_there_is_one_step_from_old_to_new()
    {
        if (!OperatingSystem.IsLinux())
            Assert.Skip("only Linux exchanges folders");
        Prepare();
        _folder.Put("notes/of the shop.txt", "mine");
        Directory.CreateDirectory(_folder["empty"]);
        var inode = Linux.Look(_folder["notes/of the shop.txt"])!.Value.Inode;
        var old = _folder.Seen();
        var seen = new List<SortedDictionary<string, string>>();

        OutputFolder.Commit(_folder.Path, Second(), _ => seen.Add(_folder.Seen()));

        var made = _folder.Seen();
        Assert.Equal([old, made], seen);
        Assert.Equal("mine", made["notes/of the shop.txt"]);
        Assert.Equal(inode, Linux.Look(_folder["notes/of the shop.txt"])!.Value.Inode);
        Assert.True(Directory.Exists(_folder["empty"]));
        made.Remove("notes/of the shop.txt");
        made.Remove("manifest.json");
        Assert.Equal(Finished(), made);
        Assert.Single(Directory.EnumerateFileSystemEntries(Path.GetDirectoryName(_folder.Path)!));
    }

    [Fact]
    public void What_is_changed_in_the_moment_of_the_exchange_is_not_lost()
    {
        if (!OperatingSystem.IsLinux())
            Assert.Skip("only Linux exchanges folders");
        Prepare();
        _folder.Put("notes.txt", "mine");

        var result = OutputFolder.Commit(_folder.Path, Second(), step =>
        {
            if (step != FolderSwap.MarkName)
                return;
            // As editors write: a new file of the old one's name.
            File.Delete(_folder["notes.txt"]);
            _folder.Put("notes.txt", "mine, later");
            File.Delete(_folder["updated"]);
            _folder.Put("updated", "edited");
            _folder.Put("brand new.txt", "mine too");
        });

        var texts = _folder.Seen().Values;
        Assert.All(["mine, later", "edited", "mine too", "new", "mine"], text => Assert.Contains(text, texts));
        Assert.Equal("mine too", File.ReadAllText(_folder["brand new.txt"]));
        Assert.Contains("updated.changed-1", result.SetAside);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [UnsupportedOSPlatform("windows")]
    public void Files_keep_their_rights(bool mayExchange)
    {
        if (OperatingSystem.IsWindows())
            Assert.Skip("Windows has no mode bits");
        const UnixFileMode shared = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite;
        OutputFolder.Commit(_folder.Path, [Text("flats/a", "1"), Text("flats/b", "1")], _ => { }, mayExchange);
        File.SetUnixFileMode(_folder["flats/a"], shared);
        File.SetUnixFileMode(_folder["flats/b"], shared);
        File.SetUnixFileMode(_folder["flats"], shared | UnixFileMode.UserExecute | UnixFileMode.GroupExecute);

        OutputFolder.Commit(_folder.Path, [Text("flats/a", "2"), Text("flats/b", "1")], _ => { }, mayExchange);

        Assert.Equal("2", File.ReadAllText(_folder["flats/a"]));
        Assert.Equal([shared, shared], _pair.Select(name => File.GetUnixFileMode(_folder[name])));
        Assert.Equal(shared | UnixFileMode.UserExecute | UnixFileMode.GroupExecute, File.GetUnixFileMode(_folder["flats"]));
    }

    [Theory]
    [InlineData("""{"aside":[],"remove":["precious"],"place":[]}""")]
    [InlineData("""{"schema":2,"manifest":"00"}""")]
    [InlineData("not JSON")]
    [InlineData("")]
    public void A_forged_or_damaged_journal_has_nothing_removed_and_is_named(string journal)
    {
        OutputFolder.Commit(_folder.Path, [Text("a", "1")]);
        _folder.Put("precious", "1");
        _folder.Put(".vessel-journal", journal);
        var before = _folder.Seen();

        var refused = Assert.Throws<OutputException>(() => OutputFolder.Commit(_folder.Path, [Text("a", "2")]));

        Assert.Contains(_folder[".vessel-journal"], refused.Message, StringComparison.Ordinal);
        Assert.Equal(before, _folder.Seen());
        File.Delete(_folder[".vessel-journal"]);
        OutputFolder.Commit(_folder.Path, [Text("a", "2")]);
        Assert.Equal("2", File.ReadAllText(_folder["a"]));
    }

    [Fact]
    public void A_folder_named_as_the_manifest_is_refused_and_nothing_changes()
    {
        Directory.CreateDirectory(_folder["manifest.json"]);

        var refused = Assert.Throws<OutputException>(() => OutputFolder.Commit(_folder.Path, [Text("a", "1")]));

        Assert.Contains("'manifest.json' is a folder", refused.Message, StringComparison.Ordinal);
        Assert.Empty(_folder.Seen());
    }

    [Fact]
    public void A_manifest_of_somebody_else_is_refused()
    {
        _folder.Put("manifest.json", "[1, 2]");

        Assert.Throws<OutputException>(() => OutputFolder.Commit(_folder.Path, [Text("a", "1")]));

        Assert.Equal("[1, 2]", File.ReadAllText(_folder["manifest.json"]));
    }

    [Fact]
    public void A_manifest_that_names_files_outside_cannot_have_them_removed()
    {
        using var elsewhere = new TemporaryFolder();
        elsewhere.Put("precious", "1");
        var path = Path.GetRelativePath(_folder.Path, elsewhere["precious"]).Replace('\\', '/');
        _folder.Put("manifest.json", $$"""{"schema":1,"files":[{"path":"{{path}}","bytes":1,"sha256":"{{Sha("1")}}"}]}""");

        Assert.Throws<OutputException>(() => OutputFolder.Commit(_folder.Path, []));

        Assert.True(File.Exists(elsewhere["precious"]));
    }

    [Fact]
    public void A_folder_or_file_in_the_way_is_refused_before_anything_changes()
    {
        Directory.CreateDirectory(_folder["a"]);
        _folder.Put("flats", "a file");

        Assert.Throws<OutputException>(() => OutputFolder.Commit(_folder.Path, [Text("0", "1"), Text("a", "1")]));
        Assert.Throws<OutputException>(() => OutputFolder.Commit(_folder.Path, [Text("0", "1"), Text("flats/lid", "1")]));

        Assert.Equal(["flats"], _folder.Seen().Keys);
    }

    private void Prepare()
    {
        OutputFolder.Commit(_folder.Path, [Text("same", "same"), Text("updated", "old"), Text("changed", "old"), Text("gone", "old")]);
        _folder.Put("changed", "mine");
    }

    private static OutputFile[] Second() =>
        [Text("same", "same"), Text("updated", "new"), Text("changed", "new"), Text("fresh/made", "new")];

    /// <summary>What is there once the second build stands, but for the list of files.</summary>
    private static SortedDictionary<string, string> Finished() => new(StringComparer.Ordinal)
    {
        ["changed"] = "new",
        ["changed.changed-1"] = "mine",
        ["fresh/made"] = "new",
        ["same"] = "same",
        ["updated"] = "new",
    };

    private SortedDictionary<string, string> Files()
    {
        var seen = _folder.Seen();
        seen.Remove("manifest.json");
        return seen;
    }

    private void Commit(OutputFile[] files, Action<string> before) => OutputFolder.Commit(_folder.Path, files, before, mayExchange: false);

    private void Kill(int step)
    {
        var steps = 0;
        Assert.Throws<KilledException>(() => Commit(Second(), _ =>
        {
            if (steps++ == step)
                throw new KilledException();
        }));
    }

    private static OutputFile Text(string path, string text) => new(path, stream => stream.Write(Encoding.UTF8.GetBytes(text)));

    private static string Sha(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private sealed class KilledException : Exception;
}
