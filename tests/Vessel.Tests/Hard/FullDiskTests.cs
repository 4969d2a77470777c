using System.Diagnostics;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Hard;

/// <summary>A real file system that is too small, where this process may mount one (Linux, as root).</summary>
public sealed class FullDiskTests
{
    private static readonly string _design = Path.Combine(Repository.Root, "designs", "harbour-launch-breather.yaml");

    [Fact]
    public void A_disk_that_runs_full_half_way_keeps_the_last_build_whole()
    {
        using var measured = new TemporaryFolder();
        using var disk = new TemporaryFolder();
        Directory.CreateDirectory(measured.Path);
        Directory.CreateDirectory(disk.Path);
        Assert.Equal(0, CommandRun.In(measured.Path, "build", _design, "--out", "a").Code);
        var build = Directory.EnumerateFiles(measured["a"], "*", SearchOption.AllDirectories).Sum(file => new FileInfo(file).Length);

        // Room for one build and half of the next, which is staged beside it.
        if (!Run("mount", "-t", "tmpfs", "-o", $"size={build * 3 / 2}", "tmpfs", disk.Path))
            Assert.Skip("this process may not mount a file system");
        try
        {
            Assert.Equal(0, CommandRun.In(disk.Path, "build", _design, "--out", "a").Code);
            var before = Seen(disk["a"]);

            var second = CommandRun.In(disk.Path, "build", _design, "--out", "a", "--with", "revision=Z");

            Assert.Equal(3, second.Code);
            Assert.Contains("could not write", second.Error, StringComparison.Ordinal);
            Assert.Equal(before, Seen(disk["a"]));
        }
        finally
        {
            Run("umount", disk.Path);
        }
    }

    private static List<(string, long)> Seen(string folder) =>
        [.. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Select(file => (file, new FileInfo(file).Length))];

    private static bool Run(string command, params string[] arguments)
    {
        if (!OperatingSystem.IsLinux())
            return false;
        try
        {
            using var process = Process.Start(new ProcessStartInfo(command, arguments) { RedirectStandardError = true })!;
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
