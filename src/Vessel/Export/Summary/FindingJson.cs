using Vessel.Findings;

namespace Vessel.Export.Summary;

/// <summary>One entry of summary.json's <c>findings</c>.</summary>
internal static class FindingJson
{
    public static void Write(Finding finding, SummaryWriter json) => json.Object(() =>
    {
        json.Put("code", finding.Code);
        json.Put("severity", finding.Severity.ToString().ToLowerInvariant());
        json.List("parts", finding.Parts, json.Value);
        json.Put("message", finding.Message);
        if (finding.AcceptedBecause is { } reason)
        {
            json.Put("accepted", true);
            json.Put("reason", reason);
        }

        json.List("figures", finding.Figures, figure => json.Object(() =>
        {
            json.Put("name", figure.Name);
            json.Put("value", figure.Value);
            json.Put("limit", figure.Limit);
            json.Put("unit", figure.Unit);
        }));
        if (finding.At is { } at)
        {
            json.Object("at", () =>
            {
                if (at.Setting > 0)
                    json.Put("setting", at.Setting);
                json.Put("line", at.Line);
                json.Put("column", at.Column);
            });
        }
    });
}
