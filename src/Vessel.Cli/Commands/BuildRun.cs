using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Export;

namespace Vessel.Cli.Commands;

/// <summary>How much a build says.</summary>
internal enum ReportStyle
{
    Full,
    Quiet,
    Json,
}

/// <summary>One build from a read design file to its folder.</summary>
internal static class BuildRun
{
    public static int Run(DesignFile file, BuildOptions options, string folder, ReportStyle style, CommandConsole console)
    {
        var outcome = Compiler.Read(file.Text, file.Settings);
        if (outcome.Value is not { } vessel)
            return Refuse(file, outcome.Faults, style, console);
        var build = Compiler.Compile(vessel, options);
        if (Compiler.Misaccepted(vessel, build.Findings) is { IsEmpty: false } faults)
            return Refuse(file, faults, style, console);
        CommitResult written;
        try
        {
            written = OutputFolder.Commit(console.FullPath(folder), Compiler.Files(build));
        }
        catch (OutputException problem)
        {
            console.Error.WriteLine($"error: {problem.Message}");
            return ExitCodes.CouldNotWrite;
        }

        foreach (var kept in written.Kept)
            console.Error.WriteLine($"note: '{kept}' is no longer made; you have changed it, so it stays");
        foreach (var aside in written.SetAside)
            console.Error.WriteLine($"note: a file that you have changed was made anew; yours is now '{aside}'");
        switch (style)
        {
            case ReportStyle.Json:
                ReportJson.WriteBuild(file, build, folder, written, console.Output);
                break;
            case ReportStyle.Quiet:
                FindingText.Write(file, build.Findings, console.Output, console.Style);
                break;
            default:
                BuildText.Write(file, build, folder, written, console);
                break;
        }

        return FindingText.ExitCode(build.Findings);
    }

    private static int Refuse(DesignFile file, ImmutableArray<Fault> faults, ReportStyle style, CommandConsole console)
    {
        if (style == ReportStyle.Json)
            ReportJson.WriteFaults(file, faults, console.Output);
        else
            FaultText.Write(file, faults, console);
        return ExitCodes.Faults;
    }
}
