using System.Text.Json.Nodes;
using Vessel.Design;
using Vessel.Export.Solids;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Export.Summary;

/// <summary>
/// summary.json: every figure, for programs. Its names are a contract; a field is declared once, here or in the shape of its part.
/// </summary>
public static class SummaryShape
{
    /// <summary>Version of the layout of this file; changes when a name changes its meaning.</summary>
    public const string Layout = "vessel-summary/1";

    /// <summary>JSON Schema (2020-12) of the file: every name that is written, what it is, and its unit.</summary>
    public static JsonObject Schema()
    {
        var schema = Whole().Schema();
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        return schema;
    }

    internal static void Write(Build build, Stream to)
    {
        using var json = new SummaryWriter(to);
        Whole().Write(json, build);
    }

    private static RecordShape<Build> Whole() => new RecordShape<Build>("summary.json of one build")
        .Of("schema", _ => Layout, new ItemShape<string>(
            () => JsonSchemas.Constant(Layout, "Layout of this file"), (json, layout) => json.Value(layout)))
        .Text("tool_version", "Version of the tool that wrote it", build => build.Options.ToolVersion)
        .Text("vessel", "Name of the vessel", build => build.Assembly.Design.Name)
        .Text("revision", "Revision of the design", build => build.Assembly.Design.Revision)
        .Choice(
            "units", "Of bare lengths in the design file; here everything is metric",
            build => build.Assembly.Design.Units == UserUnits.Inches ? "in" : "mm", "mm", "in")
        .Object("inputs", "Files that it was built from", build => build.Options, inputs => inputs
            .Text("design_sha256", "SHA-256 of the design file", options => options.DesignHash)
            .MaybeText("shop_sha256", "SHA-256 of the shop file; null without one", options => options.ShopHash))
        .Of("options", build => build.Options, Options())
        .List("parts", "In the order of the file", build => build.Parts, PartShape.Entry)
        .List("bought", "Items bought finished", build => build.Assembly.Bought, Bought())
        .List("welds", "In their order of numbers", WeldEntry.Of, WeldShape.Entry)
        .List("fits", "Where one part goes into another", build => build.Assembly.Fits, Fit())
        .Of(
            "totals",
            build => (WeldTotals.Of(build.Welds, build.Assembly.Design.Shop.Welding), Weight.Empty(build.Assembly).Mass),
            Totals())
        .Object("section", "The cut through the vessel's axis", build => build.Section, section => section
            .Number("angle_deg", "Direction that lies to the right in it", of => Turns.ToDegrees(of.Angle))
            .Number("area_mm2", "Of all cut faces", of => of.Area)
            .List("pieces", "Those of which something is left", of => of.Pieces, "A piece", piece => piece
                .Text("name", "As in section/assembly.3mf", of => of.Name)
                .Number("area_mm2", "Of its cut faces; 0 where the plane passes it", of => of.Cut.Area)))
        .Of("mockup", build => build, MockupShape.Entry)
        .List("fixtures", "To print, where the design asks for them; one a port", build => build.Fixtures, MockupShape.Fixture)
        .Of("capacity", build => build.Assembly.Capacity, CapacityShape.Entry)
        .Of("plan", build => build.Plan, PlanShape.Entry)
        .Object("shop", "The shop that the estimates hold for", build => build.Assembly.Design.Shop, shop => shop
            .Text("name", "As its file says; may be empty", of => of.Name)
            .List("figures", "In use", of => of.Figures, "A figure", figure => figure
                .Text("key", "In the shop file", of => of.Path)
                .Text("value", "With its unit", of => of.Value)
                .Text("source", "Of the default, or that it is the shop's own", of => of.Source)))
        .List("function", "Whether it does its work, by chapters", build => build.Function, FunctionShape.Entry)
        .List("findings", "Findings: weak points of the design", build => build.Findings, FindingShape.Entry)
        .Texts("assumptions", "Assumptions", "One assumption", build => Assumptions.Of(build.Assembly))
        .Texts("cautions", "Cautions", "One caution", build => Cautions.Of(build.Assembly));

    private static RecordShape<BuildOptions> Options() => new RecordShape<BuildOptions>("Options of the build")
        .Choice(
            "dxf", "Release of the drawings", options => options.Drawing.Release == Dxf.DxfRelease.R12 ? "r12" : "r2000", "r2000", "r12")
        .Flag("cut_only", "Whether each flat also comes as cut lines alone", options => options.CutOnly)
        .Number("kerf_mm", "Width of the cut that flats also come moved for; zero for none", options => options.Kerf)
        .Number(
            "frame_below_mm", "Sheet parts that are smaller both ways also come in a frame that holds them; zero for none",
            options => options.FrameBelow)
        .Number("flat_tolerance_mm", "Greatest deviation of flats", options => options.Drawing.Tolerance)
        .Number("chord_mm", "Greatest deviation of solids", options => options.Solids.Chord)
        .Number("angle_deg", "Greatest turn between facets", options => Turns.ToDegrees(options.Solids.Angle))
        .Choice("paper", "Of templates and drawings", options => options.Paper.Size.Name.ToLowerInvariant(), "a4", "letter")
        .Choice("weld_symbols", "On the drawing", options => options.WeldSymbols.ToString().ToLowerInvariant(), "iso", "aws")
        .Number("paper_thickness_mm", "Thickness of the paper that is wrapped round tubes", options => options.Paper.Thickness)
        .MaybeText("variant", "Variant of the design file; null for the file as it stands", options => options.Settings.Variant)
        .Texts("with", "Values set from outside the file", "As path=value", options => options.Settings.With);

    private static RecordShape<BoughtItem> Bought() => new RecordShape<BoughtItem>("A line of the shopping list")
        .Text("name", "Purpose", item => item.Name)
        .Text("what", "Order text", item => item.What)
        .Count("quantity", "Quantity", item => item.Quantity)
        .MaybeNumber("mass_g", "Of all together", item => item.Mass)
        .MaybeNumber("volume_ml", "Room that it fills", item => item.Volume / 1000);

    private static RecordShape<SlipFit> Fit() => new RecordShape<SlipFit>("Whether one part goes into another")
        .Text("name", "In words", fit => fit.Name)
        .Texts("parts", "Outer and inner", "Id", fit => fit.Parts)
        .Number("clearance_mm", "As drawn, of diameter; negative for a press fit", fit => fit.Clearance)
        .Number("worst_mm", "Left when all sizes are off the same way", fit => fit.Worst)
        .Number("likely_mm", "Left by the root of the sum of squares", fit => fit.Likely)
        .List("shares", "Sizes that it depends on", fit => fit.Shares, "A size", share => share
            .Text("what", "In words", of => of.What)
            .Number("size_mm", "As drawn", of => of.Size)
            .Number("off_mm", "Either way", of => of.Off)
            .Text("source", "Of the tolerance", of => of.Source)
            .FlagIfSo("taken_up", "Whether putting the parts together takes it up: it counts at worst alone", of => of.IsTakenUp));

    private static RecordShape<(WeldTotals Welds, double Empty)> Totals() =>
        new RecordShape<(WeldTotals Welds, double Empty)>("The whole job")
            .Number("weld_length_mm", "Of all seams", job => job.Welds.Length)
            .Likely("filler_g", "Likely", job => job.Welds.FillerMass)
            .Likely("rods", "Likely", job => job.Welds.Rods)
            .Number("arc_min", "Likely", job => job.Welds.ArcMinutes)
            .Range("job_min", "Minutes at the bench", job => job.Welds.JobMinutes)
            .Number(
                "mass_g", "Of the empty vessel: its parts and packing, without fittings and the metal of the welds", job => job.Empty);
}
