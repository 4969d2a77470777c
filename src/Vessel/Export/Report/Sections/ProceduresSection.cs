using Vessel.Planning;
using Vessel.Stock;

namespace Vessel.Export.Report.Sections;

/// <summary>How each weld is laid: edges, machine, gas, and what to heed.</summary>
internal static class ProceduresSection
{
    public static ReportSection Section { get; } = new("procedures", "Weld settings", Write)
    {
        AppliesTo = report => !report.Build.Plan.Procedures.IsEmpty,
    };

    private static void Write(ReportContext report, Html html)
    {
        var (sizes, welds) = (report.Sizes, report.Build.Plan.Procedures);
        var reached = report.Build.Plan.Access.ToDictionary(access => access.Joint.Number, access => Reached(access, report));
        html.Tag(
            "p",
            "A start for a trial on scrap of the same metal and wall; no qualified procedure. A millimetre of seam may carry the least of "
            + "the weld's metal "
            + "and the metal beside it, softened by the arc where it is aluminium: static loads, no rating. AC: alternating current, "
            + "balance as the machine sets it; DCEN: direct current, "
            + "electrode negative.");
        html.Table(
            "procedure-table",
            "TIG by hand, weld by weld",
            [
                "Weld", "Edges", Column.Figure("Passes"), "Current", Column.Figure("Amps"), Column.Figure($"Tungsten, {sizes.Unit}"),
                Column.Figure("Cup"), "Gas", Column.Figure("L/min"), Column.Figure("Heat, kJ/mm"),
                Column.Figure("Shear it may carry, N/mm"), Column.Figure("Pull, N/mm"), "Weakest", "Root side", "Reached by torch and rod",
                "Notes",
            ],
            [.. welds.Select(weld => Row(weld, reached.GetValueOrDefault(weld.Joint.Number), sizes))]);
        if (report.Build.Plan.Procedures.Any(weld => weld.Purged))
        {
            var purge = report.Build.Plan.Purge;
            html.Tag(
                "p",
                $"To purge the closed vessel of {Sizes.Text(purge.Volume, 2)} L: {Sizes.Text(purge.Changes, 1)} changes of its volume, "
                + $"{Sizes.Text(purge.Gas, 1)} L of argon, "
                + $"{Sizes.Text(purge.Minutes, 1)} min at {Sizes.Text(purge.Flow, 1)} L/min; twice that where corners are dead.");
        }

        html.Tag("details", () =>
        {
            html.Tag("summary", "Sources");
            html.Tag("ul", () =>
            {
                var sources = welds.SelectMany(weld => new[]
                {
                    $"Amps and gas: {weld.Settings.Source}", $"Travel: {weld.Travel.Source}", $"Heat: {weld.HeatInput.Basis}",
                    $"Shear: {weld.Strength.Shear.Source}", $"Pull: {weld.Strength.Pull.Source}",
                });
                foreach (var source in sources.Distinct())
                    html.Tag("li", source);
            });
        });
    }

    private static string Reached(TorchAccess access, ReportContext report) =>
        $"{Sizes.Text(100 * access.ReachedShare, 0)} %, {Sizes.Text(100 * access.FreeShare, 0)} % of directions free"
        + (access.ReachedShare < 1 && access.InTheWay is { } part ? $", past {report.NameOf(part) ?? part}" : string.Empty);

    private static Cell[] Row(WeldProcedure weld, string? reached, Sizes sizes) =>
    [
        Cell.Link($"#weld-{weld.Joint.Number}", weld.Joint.Number),
        weld.Preparation,
        Sizes.Count(weld.Passes),
        weld.Current.Short(),
        $"{Sizes.Text(weld.Settings.Low, 0)} to {Sizes.Text(weld.Settings.High, 0)}",
        weld.Tungsten is { } tungsten ? sizes.Fine(tungsten.Diameter) : "none",
        weld.Tungsten is { } electrode ? Sizes.Count(electrode.Cup) : null,
        weld.Settings.GasName,
        Sizes.Text(weld.Settings.Gas, 1),
        $"{Sizes.Text(weld.HeatInput.Low, 2)} to {Sizes.Text(weld.HeatInput.High, 2)}",
        Sizes.Text(weld.Strength.Shear.Value, 0),
        Sizes.Text(weld.Strength.Pull.Value, 0),
        weld.Strength.Shear.By,
        weld.Purged ? "argon" : "open",
        reached,
        string.Join("; ", weld.Notes),
    ];
}
