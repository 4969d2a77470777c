using Vessel.Design;
using Vessel.Export.Solids;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Export.Summary;

/// <summary>summary.json: every figure, for programs. Its names are a contract.</summary>
internal static class SummaryJson
{
    /// <summary>Of the layout of this file; changes when a name changes its meaning.</summary>
    public const string Schema = "vessel-summary/1";

    public static void Write(Build build, Stream to)
    {
        using var json = new SummaryWriter(to);
        json.Object(() =>
        {
            json.Put("schema", Schema);
            json.Put("tool_version", build.Options.ToolVersion);
            json.Put("vessel", build.Assembly.Design.Name);
            json.Put("revision", build.Assembly.Design.Revision);
            json.Put("units", build.Assembly.Design.Units == UserUnits.Inches ? "in" : "mm");
            json.Object("inputs", () =>
            {
                json.Put("design_sha256", build.Options.DesignHash);
                json.Put("shop_sha256", build.Options.ShopHash);
            });
            json.Object("options", () => WriteOptions(build.Options, json));
            json.List("parts", build.Parts, part => PartJson.Write(part, json));
            json.List("bought", BoughtItems.Of(build.Assembly.Design, build.Assembly.Sites), item => WriteBought(item, json));
            json.List("welds", build.Welds.Zip(build.Plan.Procedures), weld => WeldJson.Write(weld.First, weld.Second, build.Assembly, json));
            json.List("fits", SlipFits.Of(build.Assembly.Design, build.Assembly.Sites), fit => FitJson.Write(fit, json));
            json.Object("totals", () => WriteTotals(build, json));
            json.Object("section", () => WriteSection(build.Section, json));
            json.Object("mockup", () => MockupJson.Write(build, json));
            json.List("fixtures", build.Fixtures, fixture => json.Object(() =>
            {
                json.Put("port", fixture.Site.Port.Name);
                json.List("files", fixture.Files, json.Value);
                json.Put("has_stop", fixture.HasStop);
                json.Put("hook", fixture.Hook);
                json.Put("refused", fixture.Refused);
            }));
            json.Object("capacity", () => CapacityJson.Write(build.Assembly.Capacity, json));
            json.Object("plan", () => PlanJson.Write(build.Plan, json));
            json.Object("shop", () => ShopJson.Write(build.Assembly.Design.Shop, json));
            json.List("function", build.Function, group => FunctionJson.Write(group, json));
            json.List("findings", build.Findings, finding => FindingJson.Write(finding, json));
            json.List("assumptions", Assumptions.Of(build.Assembly), json.Value);
            json.List("cautions", Cautions.Of(build.Assembly), json.Value);
        });
    }

    private static void WriteOptions(BuildOptions options, SummaryWriter json)
    {
        json.Put("dxf", options.Drawing.Release == Dxf.DxfRelease.R12 ? "r12" : "r2000");
        json.Put("cut_only", options.CutOnly);
        json.Put("kerf_mm", options.Kerf);
        json.Put("frame_below_mm", options.FrameBelow);
        json.Put("flat_tolerance_mm", options.Drawing.Tolerance);
        json.Put("chord_mm", options.Solids.Chord);
        json.Put("angle_deg", Turns.ToDegrees(options.Solids.Angle));
        json.Put("paper", options.Paper.Size.Name.ToLowerInvariant());
        json.Put("weld_symbols", options.WeldSymbols.ToString().ToLowerInvariant());
        json.Put("paper_thickness_mm", options.Paper.Thickness);
        json.Put("variant", options.Settings.Variant);
        json.List("with", options.Settings.With, json.Value);
    }

    private static void WriteSection(AxialSection section, SummaryWriter json)
    {
        json.Put("angle_deg", Turns.ToDegrees(section.Angle));
        json.Put("area_mm2", section.Area);
        json.List("pieces", section.Pieces, piece => json.Object(() =>
        {
            json.Put("name", piece.Name);
            json.Put("area_mm2", piece.Cut.Area);
        }));
    }

    private static void WriteBought(BoughtItem item, SummaryWriter json) => json.Object(() =>
    {
        json.Put("name", item.Name);
        json.Put("what", item.What);
        json.Put("quantity", item.Quantity);
        json.Put("mass_g", item.Mass);
        json.Put("volume_ml", item.Volume / 1000);
    });

    private static void WriteTotals(Build build, SummaryWriter json)
    {
        var totals = WeldTotals.Of(build.Welds, build.Assembly.Design.Shop.Welding);
        json.Put("weld_length_mm", totals.Length);
        json.Put("filler_g", totals.FillerMass);
        json.Put("rods", totals.Rods);
        json.Put("arc_min", totals.ArcMinutes);
        json.Range("job_min", totals.JobMinutes);
        json.Put("mass_g", Weight.Empty(build.Assembly).Mass);
    }
}
