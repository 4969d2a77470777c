using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Heads;
using Vessel.Members;
using Vessel.Ports;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Reading;

/// <summary>
/// Fills the design's records from the sections of the file. Where a value was at fault its number is NaN, and the
/// design only serves to find further faults.
/// </summary>
internal static class DesignBuilder
{
    public static VesselDesign Build(Section file, UserUnits units, ImmutableDictionary<string, Span> places, Shop workshop)
    {
        var shell = Shell(file.Child("shell") ?? Section.Absent("shell"), workshop);
        var top = HeadKinds.Read(file.Child("top") ?? Section.Absent("top"), shell, VesselEnd.Top);
        var bottom = HeadKinds.Read(file.Child("bottom") ?? Section.Absent("bottom"), shell, VesselEnd.Bottom);
        var sections = file.Items("ports").Where(p => p.Has("in")).ToImmutableArray();
        var design = new VesselDesign(
            file.Text("vessel") ?? "",
            file.Text("revision") ?? "",
            units,
            shell,
            top,
            bottom,
            [.. sections.Select(PortBuilder.Build)],
            FlowBuilder.Build(file.Child("flow") ?? Section.Absent("flow"), file.Child("engine")),
            places)
        {
            Shop = workshop,
            Finish = file.Text("finish") switch
            {
                "painted" => Finish.Painted,
                "powder_coated" => Finish.PowderCoated,
                "anodised" => Finish.Anodised,
                "passivated" => Finish.Passivated,
                _ => Finish.None,
            },
            Quantity = file.Has("quantity") ? (int)file.Number("quantity") : 1,
            Fixtures = file.Text("fixtures") == "printed",
            Capacity = Capacity(file.Child("capacity") ?? Section.Absent("capacity")),
            Mockup = MockupBuilder.Build(file.Child("mockup") ?? Section.Absent("mockup")),
            Mounting = DutyBuilder.Mounting(file.Child("mounting") ?? Section.Absent("mounting"), file.Child("engine") is not null),
            LeakTest = DutyBuilder.LeakTest(file.Child("leak_test") ?? Section.Absent("leak_test")),
            DrainBack = DutyBuilder.DrainBack(file.Child("drain_back") ?? Section.Absent("drain_back")),
        };
        return MemberKinds.Read(file, design with { Ports = PortBuilder.Reaching(PortSites.Of(design), sections) });
    }

    private static ShellDesign Shell(Section section, Shop workshop)
    {
        var wall = section.Number("wall");
        var outside = section.Has("outside_diameter")
            ? section.Number("outside_diameter")
            : section.Number("inside_diameter") + (2 * wall);
        // Whether there is a seam is not known while made_from is at fault.
        var seam = section.Has("made_from") ? Turns.From(section.Number("seam_angle"), 0) : double.NaN;
        var form = Form(section.Text("made_from"));
        var sheets = Sheets(section, "sheets", form);
        return new ShellDesign(section.Path, section.Metal, outside, wall, section.Number("height"), form, seam, form == StockForm.Tube ? 0
            : section.NumberOr("root_gap", Bevel.UsualGap(wall)))
        {
            Rolls = workshop.Rolls,
            Sheets = sheets,
            LargeHoles = section.Text("large_holes") switch
            {
                "after_rolling" => LargeHoles.AfterRolling,
                "on_tabs" => LargeHoles.OnTabs,
                _ => LargeHoles.BeforeRolling,
            },
            TopDiameter = section.Given.Contains("top_diameter") ? section.Number("top_diameter") : null,
            Reducer = section.Child("reducer") is { } reducer ? Reducer(reducer, section, new(seam, sheets)) : null,
        };
    }

    /// <summary>A number at fault stays out of the other figures' way.</summary>
    private static int Sheets(Section section, string key, StockForm form, int usual = 1) =>
        form == StockForm.Tube ? 1 : section.Has(key) ? (int)section.Number(key) : usual;

    private static StockForm Form(string? text) => text == "tube" ? StockForm.Tube : StockForm.Sheet;

    private static ReducerDesign Reducer(Section section, Section shell, SheetSeams below)
    {
        var (sheets, above) = (Sheets(section, "sheets", StockForm.Sheet, below.Count),
            Form(section.Text("above") ?? shell.Text("made_from")));
        var aboveSheets = Sheets(section, "above_sheets", above, sheets);
        var seam = Turns.From(section.NumberOr("seam_angle", double.IsNaN(below.First) ? 0 : below.Between(sheets)), 0);
        return new(
            section.Path,
            section.Number("from"),
            section.Number("length"),
            section.Number("diameter"),
            seam,
            section.NumberOr("root_gap", Bevel.UsualGap(shell.Number("wall"))),
            above,
            Turns.From(section.NumberOr("above_seam_angle", new SheetSeams(seam, sheets).Between(aboveSheets)), 0))
        {
            Sheets = sheets,
            AboveSheets = aboveSheets,
        };
    }

    /// <summary>A value at fault leaves its default: nothing else is checked against it.</summary>
    private static CapacityDesign Capacity(Section section) => CapacityDesign.Usual is var usual && !section.Has("directions")
        ? usual
        : new(
            section.Path,
            section.Number("greatest_lean"),
            section.Number("lean_step"),
            (int)section.Number("directions"),
            section.Number("sideways"),
            section.Number("table_step"))
        {
            Rule = section.Text("rule") is { } rule && rule != CapacityKeys.NoRule ? rule : null,
            BetweenDrains = section.Number("between_drains"),
        };
}
