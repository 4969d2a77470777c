using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Heads;
using Vessel.Members;
using Vessel.Ports;
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
        var top = HeadKinds.Read(file.Child("top") ?? Section.Absent("top"), shell, PortHost.Top);
        var bottom = HeadKinds.Read(file.Child("bottom") ?? Section.Absent("bottom"), shell, PortHost.Bottom);
        var sections = file.Items("ports").Where(p => p.Has("in")).ToImmutableArray();
        var design = new VesselDesign(
            file.Text("vessel") ?? "",
            file.Text("revision") ?? "",
            units,
            shell,
            top,
            bottom,
            [.. sections.Select(Port)],
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
        var ports = design.Ports.Zip(sections, (port, section) => Reaching(design, port, section)).ToImmutableArray();
        return MemberKinds.Read(file, design with { Ports = ports });
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
        return new ShellDesign(section.Path, section.Metal, outside, wall, section.Number("height"), form, seam, form == StockForm.Tube ? 0 : section.NumberOr("root_gap", Bevel.UsualGap(wall)))
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

    /// <summary>As the file gives it: without a length inside that is not given, a bung with its whole length.</summary>
    private static PortDesign Port(Section section)
    {
        var host = section.Text("in") switch
        {
            "shell" => PortHost.Shell,
            "top" => PortHost.Top,
            _ => PortHost.Bottom,
        };
        var place = Place(section.Child("at") ?? Section.Absent(section.Path), host);
        var joint = section.Text("joint") == "set_in" ? PortJoint.SetIn : PortJoint.SetOn;
        var tube = section.Child("tube");
        var bung = section.Child("bung");
        var round = bung ?? tube ?? Section.Absent(section.Path);
        // While the joint is at fault nothing can be said about the hole.
        var outside = section.Has("joint") ? round.Number("outside_diameter") : double.NaN;
        return new PortDesign(
            section.Path,
            section.Text("name") ?? "",
            host,
            place,
            section.Metal,
            outside,
            bung is null ? outside - (2 * round.Number("wall")) : bung.Thread("thread")?.TapDrill ?? double.NaN,
            (bung ?? section).Number("length"),
            joint == PortJoint.SetIn ? section.NumberOr("inside_length", 0) : 0,
            joint == PortJoint.SetIn ? section.Number("clearance") : 0,
            joint,
            section.Text("cut") switch
            {
                "ground" => EndCut.Ground,
                "hole_saw" => EndCut.HoleSaw,
                _ => EndCut.Square,
            },
            bung?.Thread("thread"),
            section.Thread("fitting"))
        {
            IsFlush = joint == PortJoint.SetIn && section.Text("inner_end") == "flush",
            Elbow = section.Child("elbow") is { } elbow ? Elbow(elbow) : null,
            Windows = WindowsBuilder.Build(section),
        };
    }

    /// <summary>With what hangs on its host: how far a set-in one reaches in, and what is left of a bung outside.</summary>
    private static PortDesign Reaching(VesselDesign design, PortDesign port, Section section)
    {
        if (port.Joint == PortJoint.SetOn)
            return port;
        var reaching = port.IsFlush || section.Given.Contains("inside_length") ? port
            : port with { InsideLength = FreeLength.ToComeThrough(design, port) };
        // A bung's own length is that of the whole.
        return section.Child("bung") is null ? reaching
            : reaching with { Length = reaching.Length - reaching.InsideLength - Through(reaching, design.Shell, design.Head(port.Host == PortHost.Shell ? PortHost.Bottom : port.Host)) };
    }

    private static ElbowDesign Elbow(Section section) => new(
        section.Path,
        // While the number of pieces is at fault nothing can be said about their slants.
        section.Has("pieces") ? section.Number("angle") : double.NaN,
        section.Number("radius"),
        section.Has("pieces") ? (int)section.Number("pieces") : 2,
        section.Number("direction"),
        section.Number("end_length"),
        section.Text("cut") == "square" ? MitreCut.Square : MitreCut.Sawn);

    private static PortPlace Place(Section at, PortHost host)
    {
        var angle = Turns.From(at.Number("angle"), 0);
        return host == PortHost.Shell
            ? new PortPlace(at.Number("height"), angle, at.Number("offset"), at.Number("tilt"), 0)
            : new PortPlace(0, angle, 0, 0, at.Number("radius")) { SquareToSurface = at.Text("square_to_surface") == "true" };
    }

    /// <summary>How far the port's axis runs through the wall of its host, mm; about that where it misses the wall.</summary>
    private static double Through(PortDesign port, ShellDesign shell, HeadDesign head)
    {
        if (port.Host == PortHost.Shell)
            return -ShellFooting.Of(shell, port).Inside.Reach(0, 0);
        var shape = HeadShape.Of(port.Host, head, shell.AtEnd(port.Host), HeadShape.TipOf(port));
        return shape is not null && HeadFooting.Of(shape, port) is { } footing
            && footing.Inside.Reach(footing.AxisRadius, 0) is var reach && double.IsFinite(reach)
            ? -reach
            : head.Wall;
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
