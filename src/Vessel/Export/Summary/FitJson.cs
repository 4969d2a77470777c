using Vessel.Joints;

namespace Vessel.Export.Summary;

/// <summary>One entry of summary.json's <c>fits</c>.</summary>
internal static class FitJson
{
    public static void Write(SlipFit fit, SummaryWriter json) => json.Object(() =>
    {
        json.Put("name", fit.Name);
        json.List("parts", fit.Parts, json.Value);
        json.Put("clearance_mm", fit.Clearance);
        json.Put("worst_mm", fit.Worst);
        json.Put("likely_mm", fit.Likely);
        json.List("shares", fit.Shares, share => json.Object(() =>
        {
            json.Put("what", share.What);
            json.Put("size_mm", share.Size);
            json.Put("off_mm", share.Off);
            if (share.IsTakenUp)
                json.Put("taken_up", true);
            json.Put("source", share.Source);
        }));
    });
}
