using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Vessel.Cli.Commands;
using Vessel.Design;
using Vessel.Export;
using Vessel.Findings;

namespace Vessel.Cli;

/// <summary>What a command has to say as JSON, for programs that call the tool; the figures are in summary.json.</summary>
internal static class ReportJson
{
    public static int Check(DesignFile file, CommandConsole console)
    {
        var outcome = Compiler.Read(file.Text, file.Settings);
        if (outcome.Value is not { } vessel)
        {
            WriteFaults(file, outcome.Faults, console.Output);
            return ExitCodes.Faults;
        }

        var findings = Compiler.Assess(Compiler.Assemble(vessel));
        if (Compiler.Misaccepted(vessel, findings) is { IsEmpty: false } faults)
        {
            WriteFaults(file, faults, console.Output);
            return ExitCodes.Faults;
        }

        Write(console.Output, json => WriteReport(json, file, [], findings));
        return FindingText.ExitCode(findings);
    }

    public static void WriteFaults(DesignFile file, ImmutableArray<Fault> faults, TextWriter output) =>
        Write(output, json => WriteReport(json, file, faults, []));

    /// <summary>What kept a command from its work, apart from the design.</summary>
    public static void WriteErrors(int code, IReadOnlyList<string> errors, TextWriter output) => Write(output, json =>
    {
        json.WriteNumber("exit", code);
        json.WriteStartArray("errors");
        foreach (var error in errors)
            json.WriteStringValue(error);
        json.WriteEndArray();
    });

    public static void WriteBuild(DesignFile file, Build build, string folder, CommitResult written, TextWriter output) =>
        Write(output, json =>
        {
            WriteReport(json, file, [], build.Findings);
            json.WriteString("folder", folder);
            json.WriteStartArray("files");
            foreach (var path in written.Written)
                json.WriteStringValue(path);
            json.WriteEndArray();
        });

    private static void WriteReport(
        Utf8JsonWriter json, DesignFile file, ImmutableArray<Fault> faults, ImmutableArray<Measure> findings)
    {
        json.WriteString("design", file.Shown);
        json.WriteStartArray("faults");
        foreach (var fault in faults)
            WriteFault(json, file, fault);
        json.WriteEndArray();
        json.WriteStartArray("findings");
        foreach (var finding in findings)
        {
            json.WriteStartObject();
            json.WriteString("code", finding.Code);
            json.WriteString("severity", finding.Severity.ToString().ToLowerInvariant());
            json.WriteString("message", finding.Message);
            if (finding.AcceptedBecause is { } reason)
            {
                json.WriteBoolean("accepted", true);
                json.WriteString("reason", reason);
            }

            WritePlace(json, file, finding.At);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteFault(Utf8JsonWriter json, DesignFile file, Fault fault)
    {
        json.WriteStartObject();
        json.WriteString("code", fault.Code);
        json.WriteString("path", fault.Path);
        json.WriteString("what", fault.What);
        json.WriteString("given", fault.Given);
        json.WriteString("limit", fault.Limit);
        json.WriteString("remedy", fault.Remedy);
        WritePlace(json, file, fault.At);
        json.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter json, DesignFile file, Span? at)
    {
        if (at is not { } place)
            return;
        if (place.Setting > 0)
            json.WriteNumber("setting", place.Setting);
        if (place.Setting == Span.InShop)
            json.WriteString("file", file.Holder(place).Shown);
        json.WriteNumber("line", place.Line);
        json.WriteNumber("column", place.Column);
    }

    private static void Write(TextWriter output, Action<Utf8JsonWriter> content)
    {
        using var memory = new MemoryStream();
        using (var json = new Utf8JsonWriter(
            memory, new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            content(json);
            json.WriteEndObject();
        }

        output.WriteLine(Encoding.UTF8.GetString(memory.ToArray()));
    }
}
