using System.Globalization;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;

namespace Vessel.Export.Report.Sections;

/// <summary>Every seam with what it takes; a script adds a button that shows it on the model.</summary>
internal static class WeldsSection
{
    public static ReportSection Section { get; } = new("welds", "Welds", Write)
    {
        AppliesTo = report => !report.Build.Welds.IsEmpty,
    };

    private static void Write(ReportContext report, Html html)
    {
        var (sizes, unit, welds) = (report.Sizes, report.Sizes.Unit, report.Build.Welds);
        var totals = WeldTotals.Of(welds, report.Build.Assembly.Design.Shop.Welding);
        html.Table(
            "weld-table",
            "Welds, numbered as on the flats; length along the root, where the outer surfaces meet",
            [
                "Weld", "Joint", "Kind", Column.Figure($"Length, {unit}"), Column.Figure($"Throat, {unit}"),
                Column.Figure($"Legs, {unit}"), Column.Figure("Angle, deg"), Column.Figure($"Widest gap, {unit}"), "Filler",
                Column.Figure("Rods"), Column.Figure("Arc, min"),
            ],
            [
                .. welds.Select(weld => Row(weld.Figures, weld.Cost, sizes)),
                [
                    "All", null, null, sizes.Length(totals.Length), null, null, null, null,
                    Through(totals.FillerMass.Likely, totals.FillerMass.High, 0, " g"),
                    Through(totals.Rods.Likely, totals.Rods.High, 2), Sizes.Text(totals.ArcMinutes, 1),
                ],
            ],
            i => i < welds.Length ? $"weld-{welds[i].Figures.Joint.Number}" : null,
            hasTotal: true);
        var job = totals.JobMinutes;
        html.Tag(
            "p",
            $"At the bench {Sizes.Text(job.Low, 0)} to {Sizes.Text(job.High, 0)} min of welding, likely {Sizes.Text(job.Likely, 0)}: "
            + $"{job.Basis}. Cutting, fitting, tacking and cleaning are not in it.");
        html.Tag("p", $"Filler and rods from a flat face to a convexity of a tenth of the leg. {totals.Rods.Basis}.", ("class", "small"));
    }

    private static Cell[] Row(WeldFigures figures, WeldCost cost, Sizes sizes)
    {
        var joint = figures.Joint;
        return
        [
            new Cell(html => html.Tag("span", joint.Number, ("class", "seam"), ("data-weld", joint.Number))),
            joint.Name,
            joint.Kind.ToString().ToLower(CultureInfo.InvariantCulture),
            sizes.Length(figures.Length),
            sizes.Fine(joint.Throat),
            figures.Leg.End > 0 ? Span(sizes.Fine(figures.Leg.Start), sizes.Fine(figures.Leg.End)) : null,
            Span(Sizes.Text(Turns.ToDegrees(figures.Dihedral.Start), 0), Sizes.Text(Turns.ToDegrees(figures.Dihedral.End), 0)),
            sizes.Fine(figures.GapNormal),
            cost.Filler.Name,
            $"{Through(cost.Rods.Likely, cost.Rods.High, 2)} of {sizes.Fine(cost.Rod.Diameter)}",
            Sizes.Text(cost.ArcMinutes, 1),
        ];
    }

    private static string Through(double low, double high, int digits, string unit = "") =>
        Span(Sizes.Text(low, digits), Sizes.Text(high, digits)) + unit;

    private static string Span(string low, string high) => low == high ? low : $"{low} to {high}";
}
