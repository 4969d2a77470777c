using Vessel.Design;
using Vessel.Function;
using Vessel.Planning;

namespace Vessel.Export.Summary;

/// <summary>Layout of summary.json's <c>plan</c>.</summary>
internal static class PlanShape
{
    public static Shape<Plan> Entry { get; } = new RecordShape<Plan>("The day's work")
        .Object("purge", "Of the closed vessel, where its roots are welded in argon", plan => plan.Purge, purge => purge
            .Number("volume_l", "To be filled", of => of.Volume)
            .Number("flow_l_per_min", "Argon", of => of.Flow)
            .Number("changes", "Of the volume", of => of.Changes)
            .Number("gas_l", "Argon", of => of.Gas)
            .Number("min", "Before the arc is struck", of => of.Minutes))
        .List("order", "Order constraints between tasks", plan => plan.Order.Links, "A link", link => link
            .Text("before", "Task", of => of.Before)
            .Text("after", "Task", of => of.After)
            .Text("why", "Reason", of => of.Why))
        .Object("time", "Of the whole vessel", plan => plan.Timing, time => time
            .Likely("hand_min", "Likely, with parts cut by hand", of => of.Hand)
            .Likely("laser_min", "Likely, with parts cut by laser", of => of.Laser))
        .Optional("quote", Quote.Of, new RecordShape<Quote>("At the shop's own prices; left out where it gives none")
            .Text("currency", "Of the amounts", quote => quote.Currency)
            .Likely("hand", "Likely amount, with parts cut by hand", quote => quote.Hand)
            .Likely("laser", "Likely amount, with parts cut by laser", quote => quote.Laser)
            .Count("vessels", "Number of vessels that the amounts are for", quote => quote.Vessels)
            .Number("paid_over_cost", "With margin and tax, over the amounts", quote => quote.PaidOverCost)
            .Texts("not_priced", "Items that are in no total", "Line", quote => quote.NotPriced))
        .List("nests", "Flats on sheets", plan => plan.Sheets, Nests())
        .List("bars", "Tubes and bars in stock lengths", plan => plan.Bars, Bars())
        .Object("leak_test", "Its pressure, blanks for the ports, and the places to look for leaks", plan => plan.LeakKit, kit => kit
            .Number("pressure_mbar", "Above the air round the vessel", of => of.Test.Pressure / 100)
            .Choice("with", "Test medium", of => LeakWords.Medium(of.Test), "water", "air")
            .List("blanks", "One a port", of => of.Blanks, "A blank", blank => blank
                .Text("port", "Name", of => of.Port)
                .Text("blank", "To buy or to make", of => of.Blank))
            .List("points", "To look at", of => of.Points, "A place", point => point
                .Text("where", "Weld's number, or port", of => of.Where)
                .Text("what", "To look at", of => of.What)))
        .List("set_up", "Measured positions for the bench", plan => SetUpTable.Of(plan.Assembly), Rows())
        .List("access", "Access to each weld when its turn comes", plan => plan.Access, "A weld", access => access
            .Text("weld", "Number", of => of.Joint.Number)
            .Number("free_share", "Of the torch's directions, 0 to 1", of => of.FreeShare)
            .Number("reached_share", "Of the stations along it that torch and rod reach, 0 to 1", of => of.ReachedShare)
            .MaybeText("in_the_way", "Id of the part that stops most directions", of => of.InTheWay))
        .List("steps", "In their order", plan => plan.Steps.Select(step => (step, plan.Timing.Of(step))), Steps());

    private static RecordShape<SheetStock> Nests() => new RecordShape<SheetStock>("Of one metal and thickness")
        .Text("material", "Metal", sheet => sheet.Nest.Material.Name)
        .Number("thickness_mm", "Of the sheet", sheet => sheet.Nest.Thickness)
        .Count("sheets", "Number of sheets that are cut into", sheet => sheet.Nest.UsedLength.Length)
        .List("used_length_mm", "Of each sheet, over its whole width", sheet => sheet.Nest.UsedLength, Items.Number("To the last piece"))
        .Number("utilisation", "Area of the outlines over the area used, 0 to 1", sheet => sheet.Nest.Utilisation)
        .Texts("too_large", "Parts that no sheet holds", "Name", sheet => sheet.Nest.TooLarge)
        .Optional("smallest_rectangle", sheet => sheet.Rectangle, new RecordShape<Nest>(
            "Smallest remnant for a one-off, margins and spacing kept; left out where one sheet does not hold all")
            .Number("length_mm", "Along the grain", rectangle => rectangle.Sheet.Length)
            .Number("width_mm", "Across it", rectangle => rectangle.Sheet.Width)
            .Number("utilisation", "Outlines over the rectangle, 0 to 1", rectangle => rectangle.Utilisation));

    private static RecordShape<BarStock> Bars() => new RecordShape<BarStock>("Of one section")
        .Choice("form", "Tube, or solid", bar => bar.Form, "tube", "bar")
        .Text("material", "Metal", bar => bar.Material.Name)
        .Number("diameter_mm", "Outside", bar => bar.Diameter)
        .Number("wall_mm", "0 for bar", bar => bar.Wall)
        .Number("stock_length_mm", "As bought", bar => bar.StockLength)
        .List(
            "lengths", "To be bought", bar => bar.Packing.Bars.Select(one => one.Select(i => bar.Pieces[i])),
            Items.List("Pieces, in the order in which they are sawn", new RecordShape<(string Name, double Length)>("A piece")
                .Text("name", "Part", piece => piece.Name)
                .Number("length_mm", "Of the piece", piece => piece.Length)))
        .Number("used_mm", "Of all together, kerfs included", bar => bar.Used)
        .Number("utilisation", "Length of the pieces over the length used, 0 to 1", bar => bar.Utilisation)
        .Number("whole_utilisation", "Pieces over whole lengths, 0 to 1", bar => bar.WholeUtilisation)
        .Count("least_lengths", "No fewer will do", bar => bar.Packing.Bound)
        .Texts("too_long", "Pieces that no length holds", "Name", bar => bar.Packing.TooLong.Select(i => bar.Pieces[i].Name));

    private static RecordShape<SetUp> Rows() => new RecordShape<SetUp>("A row")
        .Text("what", "Part or port", row => row.What)
        .Texts("welds", "That hold it", "Number", row => row.Welds)
        .Text("datum", "Datum of the heights", row => row.Datum)
        .Number("height_mm", "From the datum", row => row.Height)
        .MaybeNumber("clock_deg", "Counter-clockwise from the front, seen from above", row => row.Clock)
        .MaybeNumber("arc_mm", "Round the shell's outside from the front line", row => row.Arc)
        .MaybeNumber("from_axis_mm", "Sideways offset in the shell, radius in a head", row => row.FromAxis)
        .MaybeNumber("depth_mm", "Of the inner end", row => row.Depth)
        .Text("remark", "For the bench", row => row.Remark);

    private static RecordShape<(Step Step, (Estimate Hand, Estimate Laser) Time)> Steps() =>
        new RecordShape<(Step Step, (Estimate Hand, Estimate Laser) Time)>("A step")
            .Count("step", "From 1", of => of.Step.Number)
            .Text("do", "make, fit, tack, weld, cool, check ...", of => of.Step.Kind.ToString().ToLowerInvariant())
            .Text("task", "As in order", of => of.Step.Task.Id)
            .MaybeText("weld", "Number, of a weld's step", of => of.Step.Task.Welds)
            .Texts("parts", "Ids", "Id", of => of.Step.Task.Parts)
            .Text("what", "For the bench", of => of.Step.What)
            .Number("hand_min", "Likely, with parts cut by hand", of => of.Time.Hand.Likely)
            .Number("laser_min", "Likely, with parts cut by laser", of => of.Time.Laser.Likely);
}
