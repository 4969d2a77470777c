using System.Text;
using Vessel.Function;

namespace Vessel.Export.Report;

/// <summary>Style and script of the page, each in files of its own that are built into the library.</summary>
internal static class ReportAssets
{
    public static string Style { get; } = Read("report.css");

    /// <summary>Script joined in this order into one, so that one sum of it can be named in the policy.</summary>
    public static string Script { get; } = "\"use strict\";\n(() => {\n" + string.Concat(new[]
    {
        "page.js", "mesh.js", "draw.js", "camera.js", "scene.js", "hands.js", "panel.js",
    }.Select(Read)) + "})();\n";

    /// <summary>Nothing is fetched; no script and no style runs but these two, whatever a name in the design holds.</summary>
    public static string Policy { get; } =
        $"default-src 'none'; img-src data:; script-src '{Sum(Script)}'; style-src '{Sum(Style)}'; base-uri 'none'; form-action 'none'";

    private static string Read(string name)
    {
        var path = $"Vessel.Export.Report.Assets.{name}";
        using var stream = typeof(ReportAssets).Assembly.GetManifestResourceStream(path)
            ?? throw new InvalidOperationException($"{path} is not built into the library");
        using var text = new StreamReader(stream, Encoding.UTF8);
        return text.ReadToEnd().ReplaceLineEndings("\n");
    }

    /// <summary>Sum of a text as Content Security Policy Level 3 wants it.</summary>
    private static string Sum(string text) => $"sha256-{Convert.ToBase64String(Sha256.Of(Encoding.UTF8.GetBytes(text)))}";
}
