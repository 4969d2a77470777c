using System.Collections.Immutable;
using Vessel.Export.Report.Drawing;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Joints;

namespace Vessel.Export.Report.Sections;

/// <summary>How far the edges that are welded stand off, all along each joint, against what the process takes.</summary>
internal static class GapsSection
{
    /// <summary>What nobody measures, mm.</summary>
    private const double Hair = 0.005;

    public static ReportSection Section { get; } = new("gaps", "Gaps at the joints", Write)
    {
        AppliesTo = report => Off(report).Any(),
    };

    /// <summary>Joints whose edges do not touch all along.</summary>
    private static IEnumerable<WeldFigures> Off(ReportContext report) =>
        report.Build.Welds.Select(weld => weld.Figures).Where(weld => weld.GapNormal > Hair);

    private static bool Varies(WeldFigures weld) => weld.GapNormal - weld.Stations.Min(station => station.At.GapNormal) > Hair;

    private static void Write(ReportContext report, Html html)
    {
        var (sizes, design) = (report.Sizes, report.Build.Assembly.Design);
        var varying = Off(report).Where(Varies).ToImmutableArray();
        html.Tag("p", "Square to the host's surface, where the torch sees it, as the parts are cut. Aim and limit: shares of the attached "
            + "wall "
            + "[practice]; a shop file may give its own.", ("class", "small"));
        if (!varying.IsEmpty)
        {
            html.Tag(
                "div",
                () =>
                {
                    foreach (var weld in varying)
                    {
                        var (wall, shop) = (RootGap.WallOf(weld.Joint), design.Shop.Welding);
                        html.Tag("figure", () =>
                        {
                            GapPicture.Of(
                                weld, RootGap.Aim(wall, shop), RootGap.Most(wall, shop), RootGap.Limits(wall, shop, sizes.Fine, sizes.Unit),
                                sizes).Write(html);
                            html.Tag("figcaption", $"{weld.Joint.Number}, {weld.Joint.Name}: gap, {sizes.Unit}, against "
                                + (weld.Joint.IsRound ? "the angle round the joint, degrees"
                                    : $"the length along the joint, {sizes.Unit}"));
                        });
                    }
                },
                ("class", "plots"));
        }

        var even = Off(report).Where(weld => !Varies(weld))
            .Select(weld => $"{weld.Joint.Number} ({weld.Joint.Name}) {sizes.Fine(weld.GapNormal)} {sizes.Unit}").ToList();
        if (even.Count > 0)
            html.Tag("p", $"The same all along: {string.Join(", ", even)}.");
    }
}
