using System.Collections.Immutable;
using Vessel.Function;
using Vessel.Joints;

namespace Vessel.Export.Report.Sections;

/// <summary>Where one part goes into another, and what is left of the clearance when both are off.</summary>
internal static class FitsSection
{
    public static ReportSection Section { get; } = new("fits", "Fits", Write)
    {
        AppliesTo = report => !Fits(report).IsEmpty,
    };

    private static ImmutableArray<SlipFit> Fits(ReportContext report) =>
        report.Build.Assembly.Fits;

    private static void Write(ReportContext report, Html html)
    {
        var (sizes, unit) = (report.Sizes, report.Sizes.Unit);
        html.Table(
            "fit-table",
            $"Clearance of diameter, {unit}; negative is a press fit",
            ["Fit", Column.Figure("As drawn"), Column.Figure("Likely left"), Column.Figure("At worst"),
                "Sizes, with the tolerance of each"],
            [
                .. Fits(report).Select(fit => new Cell[]
                {
                    fit.Name, sizes.Fine(fit.Clearance), sizes.Fine(fit.Likely), sizes.Fine(fit.Worst),
                    string.Join("; ", fit.Shares.Select(share => $"{share.What} {sizes.Fine(share.Size)} \u00B1{sizes.Fine(share.Off)}")),
                }),
            ]);
        html.Tag("p", $"Sources: {string.Join("; ", Fits(report).SelectMany(fit => fit.Shares).Select(share => share.Source).Distinct())}. "
            + "Likely: the root of the sum of the squares, less the out-of-round that assembly pulls out; at worst: all off the same way "
            + "at once.", ("class", "small"));
    }
}
