using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Vessel.Design;
using Vessel.Reading;
using Vessel.Export.Summary;

namespace Vessel.Cli.Commands;

/// <summary><c>schema</c>: JSON Schema of the design file, the shop file or summary.json, for editors and programs.</summary>
internal static class SchemaCommand
{
    public static Command Create(CommandConsole console)
    {
        var what = new Argument<string>("what")
        {
            Description = "Schema of a design file (design, unless given), of a shop file (shop) or of summary.json (summary).",
            DefaultValueFactory = _ => "design",
        };
        what.AcceptOnlyFromAmong("design", "shop", "summary");
        var command = new Command("schema", "Print the JSON Schema of design files, of shop files or of summary.json.") { what };
        command.SetAction(parsed =>
        {
            Write(
                parsed.GetValue(what) switch
                {
                    "summary" => SummaryShape.Schema(),
                    "shop" => DesignSchema.WriteShop(),
                    _ => DesignSchema.Write(),
                },
                console.Output);
            return ExitCodes.Good;
        });
        return command;
    }

    private static void Write(JsonObject schema, TextWriter output)
    {
        var options = new JsonSerializerOptions
        {
            WriteIndented = true,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        output.WriteLine(schema.ToJsonString(options));
    }
}
