using System.Collections.Immutable;
using Vessel.Export.Pictures;
using Vessel.Findings;
using Vessel.Function;

namespace Vessel.Export.Report;

/// <summary>What the sections of the page are written from.</summary>
internal sealed record ReportContext(Build Build, Sizes Sizes, StillPictures Pictures)
{
    public static ReportContext Of(Build build, StillPictures pictures) => new(build, new(build.Assembly.Design.Units), pictures);

    /// <summary>Gravest first, accepted ones last.</summary>
    public ImmutableArray<Measure> Findings =>
    [
        .. Build.Findings
            .OrderBy(finding => finding.AcceptedBecause is not null)
            .ThenByDescending(finding => finding.Severity),
    ];

    /// <summary>Those that are still to be looked at.</summary>
    public int Open(Severity severity) =>
        Build.Findings.Count(finding => finding.AcceptedBecause is null && finding.Severity == severity);

    /// <summary>Null when no part is called so.</summary>
    public string? NameOf(string partId) => Build.Parts.FirstOrDefault(built => built.Part.Id == partId)?.Part.Name;
}
