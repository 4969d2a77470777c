namespace Vessel.Export.Report.Sections;

/// <summary>Every other file of the build, folder by folder.</summary>
internal static class FilesSection
{
    public static ReportSection Section { get; } = new("files", "Files of this build", (report, html) =>
    {
        var folders = VesselFiles.Of(report.Build)
            .Select(file => file.Path)
            .Append(Manifest.FileName)
            .Where(path => path != ReportPage.FileName)
            .GroupBy(path => path.LastIndexOf('/') is var slash && slash < 0 ? string.Empty : path[..slash]);
        foreach (var folder in folders.OrderBy(folder => folder.Key.Length > 0).ThenBy(folder => folder.Key, StringComparer.Ordinal))
        {
            html.Tag("h3", folder.Key.Length == 0 ? "In this folder" : folder.Key);
            html.Tag(
                "ul",
                () =>
                {
                    foreach (var path in folder)
                        html.Tag("li", () => html.Link(path, path[(path.LastIndexOf('/') + 1)..]));
                },
                ("class", "files"));
        }
    });
}
