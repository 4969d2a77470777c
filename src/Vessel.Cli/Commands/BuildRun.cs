using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;
using Vessel.Export;
using Vessel.Export.Dxf;

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
            return Refuse(file, outcome.Faults, folder, style, console);
        var build = Compiler.Compile(vessel, options);
        if (Compiler.Misaccepted(vessel, build.Findings) is { IsEmpty: false } faults)
            return Refuse(file, faults, folder, style, console);
        if (KerfRoom.TooNarrow(build) is { IsEmpty: false } narrow)
            return RefuseKerf(file, options.Kerf, narrow, console);
        CommitResult written;
        try
        {
            written = OutputFolder.Commit(console.FullPath(folder), Compiler.Files(build));
        }
        catch (OutputException problem)
        {
            console.Complain(problem.Message);
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

    private static int RefuseKerf(DesignFile file, double kerf, ImmutableArray<KerfRoom> narrow, CommandConsole console)
    {
        foreach (var part in narrow)
        {
            var place = part.At is { } at ? file.Place(at) + " " : string.Empty;
            console.Complain(string.Create(CultureInfo.InvariantCulture,
                $"{place}a cut {kerf:0.###} mm wide closes up the narrowest hole or corner of '{part.Part}', which needs one narrower than "
                    + $"{part.Most:0.##} mm"));
        }

        console.Error.WriteLine("Nothing was written. Use a narrower --kerf, or make those holes and corners larger.");
        return ExitCodes.Usage;
    }

    private static int Refuse(DesignFile file, ImmutableArray<Fault> faults, string folder, ReportStyle style, CommandConsole console)
    {
        try
        {
            if (OutputFolder.Mend(console.FullPath(folder)))
                console.Error.WriteLine($"note: an earlier build to '{folder}' had been cut short; it is complete now");
        }
        catch (OutputException problem)
        {
            console.Complain(problem.Message);
        }

        if (style == ReportStyle.Json)
            ReportJson.WriteFaults(file, faults, console.Output);
        else
            FaultText.Write(file, faults, console);
        return ExitCodes.Faults;
    }
}
