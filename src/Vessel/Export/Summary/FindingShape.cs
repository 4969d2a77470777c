using Vessel.Design;
using Vessel.Findings;

namespace Vessel.Export.Summary;

/// <summary>Layout of one entry of summary.json's <c>findings</c>.</summary>
internal static class FindingShape
{
    public static Shape<Measure> Entry { get; } = new RecordShape<Measure>("A finding")
        .Text("code", "See explain", finding => finding.Code)
        .Choice("severity", "Severity", finding => finding.Severity.ToString().ToLowerInvariant(), "note", "warning", "error")
        .Texts("parts", "Ids of the parts", "Id", finding => finding.Parts)
        .Text("message", "The weak point and the change to make", finding => finding.Message)
        .FlagIfSo("accepted", "True where the design accepts it", finding => finding.AcceptedBecause is not null)
        .OptionalText("reason", "Reason for accepting it", finding => finding.AcceptedBecause)
        .List("figures", "Behind it", finding => finding.Figures, "A figure", figure => figure
            .Text("name", "In words", of => of.Name)
            .Number("value", "Its value", of => of.Value)
            .MaybeNumber("limit", "Limit", of => of.Limit?.For(of.Value))
            .Text("unit", "Of both", of => of.Unit))
        .OptionalValue("at", finding => finding.At, new RecordShape<Span>("Where the design says it")
            .OptionalCount("setting", "Number in options.with, from 1; without it, the file", at => at.Setting > 0 ? at.Setting : null)
            .Count("line", "From 1", at => at.Line)
            .Count("column", "From 1", at => at.Column));
}
