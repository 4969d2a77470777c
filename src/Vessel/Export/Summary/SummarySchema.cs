using System.Text.Json.Nodes;

namespace Vessel.Export.Summary;

/// <summary>JSON Schema (2020-12) of summary.json: every name that is written, what it is, and its unit.</summary>
public static class SummarySchema
{
    public static JsonObject Write()
    {
        var schema = Object("summary.json of one build",
            ("schema", Constant(SummaryJson.Schema, "Layout of this file")),
            ("tool_version", Text("Version of the tool that wrote it")),
            ("vessel", Text("Name of the vessel")),
            ("revision", Text("Revision of the design")),
            ("units", Choice("Of bare lengths in the design file; here everything is metric", "mm", "in")),
            ("inputs", Object("Origin of the build",
                ("design_sha256", Text("SHA-256 of the design file")),
                ("shop_sha256", Nullable(Text("SHA-256 of the shop file; null without one"))))),
            ("options", Options()),
            ("parts", List("In the order of the file", Part())),
            ("bought", List("Items bought finished", Bought())),
            ("welds", List("In their order of numbers", Weld())),
            ("fits", List("Where one part goes into another", Fit())),
            ("totals", Totals()),
            ("section", Section()),
            ("mockup", Mockup()),
            ("fixtures", List("To print, where the design asks for them; one a port", Object("A sleeve in two halves",
                ("port", Text("Name")),
                ("files", List("One a half", Text("In the output folder"))),
                ("has_stop", Flag("Whether it ends the tube's way out")),
                ("hook", Nullable(Text("The edge that its legs hook over"))),
                ("refused", Nullable(Text("Why there is none")))))),
            ("capacity", Capacity()),
            ("plan", PlanSchema.Write()),
            ("shop", Object("The shop that the estimates hold for",
                ("name", Text("As its file says; may be empty")),
                ("figures", List("In use", Object("A figure",
                    ("key", Text("In the shop file")),
                    ("value", Text("With its unit")),
                    ("source", Text("Of the default, or that it is the shop's own"))))))),
            ("function", List("Whether it does its work, by chapters", Function())),
            ("findings", List("Findings: weak points of the design", Finding())),
            ("assumptions", List("Assumptions", Text("One assumption"))),
            ("cautions", List("Cautions", Text("One caution"))));
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        return schema;
    }

    private static JsonObject Options() => Object("How it was built",
        ("dxf", Choice("Release of the drawings", "r2000", "r12")),
        ("cut_only", Flag("Whether each flat also comes as cut lines alone")),
        ("frame_below_mm", Number("Sheet parts that are smaller both ways also come in a frame that holds them; zero for none")),
        ("kerf_mm", Number("Width of the cut that flats also come moved for; zero for none")),
        ("flat_tolerance_mm", Number("Greatest deviation of flats")),
        ("chord_mm", Number("Greatest deviation of solids")),
        ("angle_deg", Number("Greatest turn between facets")),
        ("paper", Choice("Of templates and drawings", "a4", "letter")),
        ("weld_symbols", Choice("On the drawing", "iso", "aws")),
        ("paper_thickness_mm", Number("Of the paper that is wrapped round tubes")),
        ("variant", Nullable(Text("Variant of the design file; null for the file as it stands"))),
        ("with", List("Values set from outside the file", Text("As path=value"))));

    private static JsonObject Part() => Object("A part",
        ("id", Text("Also in file names")),
        ("name", Text("As the design calls it")),
        ("kind", Text("Kind of part")),
        ("material", Text("Metal")),
        ("thickness_mm", Number("Of sheet or wall")),
        ("quantity", Count("How many alike")),
        ("mass_g", Number("Of one")),
        ("volume_mm3", Number("Of its metal, exact")),
        ("files", Map("By role: flat, wrap, template, solid, holes, holes_drawing", Text("Path in the output folder"))),
        ("placement", Any("4 x 4 matrix by rows that takes the part to its place, mm; a list of them for several",
            List("Rows", List("A row", Number("An element"))),
            List("Places", List("Rows", List("A row", Number("An element")))))),
        ("flat?", Flat()),
        ("patterns?", List("Holes by rule", Pattern())),
        ("solid", Object("The mesh in the STL file",
            ("volume_mm3", Number("Volume")),
            ("area_mm2", Number("Surface")),
            ("triangles", Count("Facets")),
            ("closed", Flag("Always true")),
            ("genus", Count("Handles")),
            ("chord_mm", Number("Greatest deviation")),
            ("drawn?", Choice("Gore and polar cap: as dished, or as bent only", "round", "faceted")))));

    private static JsonObject Fit() => Object("Whether one part goes into another",
        ("name", Text("In words")),
        ("parts", List("Outer and inner", Text("Id"))),
        ("clearance_mm", Number("As drawn, of diameter; negative for a press fit")),
        ("worst_mm", Number("Left when all sizes are off the same way")),
        ("likely_mm", Number("Left by the root of the sum of squares")),
        ("shares", List("Host", Object("A size",
            ("what", Text("In words")),
            ("size_mm", Number("As drawn")),
            ("off_mm", Number("Either way")),
            ("taken_up?", Flag("Whether putting the parts together takes it up: it counts at worst alone")),
            ("source", Text("Of the tolerance"))))));

    private static JsonObject Flat() => Object("Cut outlines",
        ("width_mm", Number("Of the cut lines")),
        ("height_mm", Number("Of the cut lines")),
        ("area_mm2", Number("Of the metal")),
        ("cut_length_mm", Number("Of all cut lines")),
        ("pierces", Count("Closed cut lines")),
        ("holes", Count("Closed cut lines inside the outline")),
        ("left_to_cut", Count("Holes of the part that are made later, when it is formed or welded")),
        ("governed_by", Nullable(Text("Which face of the metal decided the cut"))),
        ("development", Object("How the flat lies on the part",
            ("kind", Text("rolled, wrapped, folded, cone, gore, blank or plane")),
            ("radius_mm?", Number("Of the surface that keeps its length")),
            ("k?", Number("Place of the neutral line in the wall, from the inside")),
            ("seam_deg?", Number("Angle at the flat's edge")),
            ("sheets?", Count("Rolled and cone: equal sheets that go round")),
            ("gap_mm?", Number("Left open at the seam; below zero where the seam is to draw in by more")),
            ("trim_mm?", Number("Added at each end of a rolled sheet, to be cut off")),
            ("lap_mm?", Number("Wrapped: excess over once round, where no line up the tube is free of holes")),
            ("lap_area_mm2?", Number("Wrapped: what is drawn twice, which the area leaves out")),
            ("across?", Choice("Folded: the axis that the bends cross", "x", "y")),
            ("bends?", List("Folded: in their order", Bend())),
            ("half_angle_deg?", Number("Gore: of the sphere, from its middle to a side; cone: between axis and line")),
            ("centre_line_mm?", Number("Gore: length along its middle")),
            ("side_mm?", Number("Gore: length of a side; cone: of a seam edge")),
            ("tip_to_edge_mm?", MinMax("Cone: from the tip to the narrow and to the wide edge")),
            ("stretch?", Number("Gore: of the metal, at its sides")),
            ("flat_inside_mm?", Number("Gore: distance of a straight strip inside the sphere")),
            ("flat_outside_mm?", Number("Gore: distance of a straight strip outside the sphere")),
            ("radial_error?", Number("Gore: share of the radius")),
            ("origin", List("Where seam_deg at height 0 lies on the flat, mm", Number("x, y"))))),
        ("fit", Object("How the drawing approaches the curves",
            ("tolerance_mm", Number("Allowed")),
            ("deviation_mm", Number("Reached")),
            ("entities", Count("Lines and arcs")))));

    private static JsonObject Pattern() => Object("Equal round holes",
        ("purpose", Text("What it is for")),
        ("kind", Choice("Arrangement", "staggered60", "staggered45", "square", "rings")),
        ("hole_diameter_mm", Number("Of each")),
        ("pitch_mm", Number("Least distance of centres")),
        ("margin_mm", Number("From a hole to an edge")),
        ("holes", Count("Whole ones that fit")),
        ("open_area_mm2", Number("Of all together")),
        ("open_share", Number("Of the plate, 0 to 1")));

    private static JsonObject Bought() => Object("A line of the shopping list",
        ("name", Text("What it is for")),
        ("what", Text("Order text")),
        ("quantity", Count("How many")),
        ("mass_g", Nullable(Number("Of all together"))),
        ("volume_ml", Nullable(Number("Room that it fills"))));

    private static JsonObject Bend() => Object("A bend",
        ("line_mm", Number("Where its line crosses the axis")),
        ("angle_deg", Number("Positive towards the viewer")),
        ("inside_radius_mm", Number("Of the bend")),
        ("k", Number("Place of the neutral line, as a share of the thickness from the inside")),
        ("allowance_mm", Number("Length of the flat that the bend takes up")));

    private static JsonObject Weld() => Object("A weld",
        ("number", Text("As on the flats")),
        ("name", Text("Parts that it joins")),
        ("between", List("Ids of the parts", Text("Id"))),
        ("kind", Text("fillet, butt, groove ...")),
        ("length_mm", Number("Along the root")),
        ("leg_mm", MinMax("Legs; zero for a butt")),
        ("throat_mm", Number("Asked for")),
        ("dihedral_deg", MinMax("Between the surfaces")),
        ("groove_share", Number("Share of the length too flat for a fillet, 0 to 1")),
        ("deposit_mm3", Number("Metal")),
        ("filler", Text("Alloy of the rod")),
        ("filler_g", Number("Likely")),
        ("filler_g_range", Range("Of filler_g")),
        ("rod_mm", Number("Diameter")),
        ("rods", Number("Likely")),
        ("rods_range", Range("Of rods")),
        ("travel_mm_per_min", Number("Speed of the torch")),
        ("travel_source", Text("Of the speed")),
        ("arc_min", Number("Likely")),
        ("gap_normal_mm", Number("Greatest, at right angles to the host")),
        ("gap_axial_mm", Number("Greatest, along the part's axis")),
        ("lip_mm", Number("Greatest width of the host's lip in a set-on port's bore; 0 for other joints")),
        ("procedure", Object("How it is laid: a start for a trial on scrap",
            ("preparation", Text("Of the edges")),
            ("least_leg_mm", Nullable(Number("Published least leg; null where none holds"))),
            ("passes", Count("Beads over each other")),
            ("current", Choice("Alternating, or direct with the electrode negative", "AC", "DCEN")),
            ("tungsten_mm", Nullable(Number("Diameter of the electrode; null where none of the table carries the amps"))),
            ("cup", Nullable(Count("Number of the gas cup: bore in sixteenths of an inch"))),
            ("amps", MinMax("By the table")),
            ("gas", Choice("Through the cup", "argon", "argon/helium")),
            ("gas_l_per_min", Number("Through the cup")),
            ("settings_source", Text("Of amps and gas")),
            ("volts", MinMax("Of the arc, by the low and high amps")),
            ("heat_kj_per_mm", Number("Of a pass, at the middle of the amps")),
            ("heat_kj_per_mm_range", Range("Of heat_kj_per_mm")),
            ("shear", Load("What a millimetre may carry along the seam; static, no rating")),
            ("pull", Load("The same across the seam; of a fillet its shear")),
            ("purged", Flag("Whether the root is flooded with argon")),
            ("cool_below_c", Nullable(Number("To wait for before the next weld, degrees Celsius; null where it is that cool by then"))),
            ("notes", List("To heed", Text("A line"))))),
        ("stations", List("Points along the seam", Object("A point",
            ("at_deg?", Number("Angle round the part, of a round seam")),
            ("at_mm?", Number("Way along a straight seam")),
            ("point_mm", List("Of the root", Number("x, y, z"))),
            ("dihedral_deg", Number("Between the surfaces")),
            ("leg_mm", Number("Of the fillet")),
            ("gap_normal_mm", Number("At right angles to the host")),
            ("gap_axial_mm", Number("Along the part's axis"))))));

    private static JsonObject Load(string description) => Object(description,
        ("n_per_mm", Number("The least of the weld's metal and the metal beside it")),
        ("weakest", Text("Which of them: a filler or a metal")),
        ("source", Text("Of its stress")));

    private static JsonObject Totals() => Object("The whole job",
        ("weld_length_mm", Number("Of all seams")),
        ("filler_g", Number("Likely")),
        ("filler_g_range", Range("Of filler_g")),
        ("rods", Number("Likely")),
        ("rods_range", Range("Of rods")),
        ("arc_min", Number("Likely")),
        ("job_min", Range("Minutes at the bench")),
        ("mass_g", Number("Of the empty vessel: its parts and packing, without fittings and the metal of the welds")));

    private static JsonObject Section() => Object("The cut through the vessel's axis",
        ("angle_deg", Number("Direction that lies to the right in it")),
        ("area_mm2", Number("Of all cut faces")),
        ("pieces", List("Those of which something is left", Object("A piece",
            ("name", Text("As in section/assembly.3mf")),
            ("area_mm2", Number("Of its cut faces; 0 where the plane passes it"))))));

    private static JsonObject Mockup() => Object("The mock-up for the 3D printer",
        ("written", Flag("Whether there is one")),
        ("because", List("Obstacle", Text("In words"))),
        ("inside", Choice("With its room and open bores, or filled", "open", "solid")),
        ("scale", Number("Of the print to the vessel")),
        ("least_wall_mm", Number("Of the print")),
        ("names", Choice("How ports' names and long seams stand on it", "none", "raised", "sunk")),
        ("letter_depth_mm", Number("That they stand out or in, as printed")),
        ("marks", List("Names, seams' lines and their numbers on it", Object("A mark",
            ("text", Text("A port's name or a weld's number")),
            ("on", Text("Name of the part that it stands on")),
            ("letter_height_mm", Nullable(Number("Of a capital, as printed; null for the line of a seam"))),
            ("fields", Count("Raised or sunk, that it consists of"))))),
        ("left_out", List("Names and numbers for which there is no place", Object("One that is left out",
            ("text", Text("A port's name or a weld's number")),
            ("because", Text("Why"))))),
        ("internals", List("Printed beside it, where the design asks for them", Object("A sleeve, cap or disc",
            ("name", Text("As in mockup/internals.3mf")),
            ("quantity", Count("Of equal ones")),
            ("volume_mm3", Number("Of the mesh of one, as printed")),
            ("fits_bed", Flag("Upright"))))),
        ("print?", Object("As it stands on the bed",
            ("width_mm", Number("Along x")),
            ("depth_mm", Number("Along y")),
            ("height_mm", Number("Along z")),
            ("volume_mm3", Number("Of the mesh")),
            ("area_mm2", Number("Of the mesh")),
            ("triangles", Count("Facets")),
            ("genus", Count("Handles")),
            ("chord_mm", Number("Greatest deviation")),
            ("mass_g", Number("Of plastic, likely")),
            ("mass_g_range", Range("Of mass_g")),
            ("fits_bed", Flag("Upright")),
            ("turned_deg", Nullable(Number("That it stands turned on the bed against the vessel, counter-clockwise from above; null where it does not fit"))),
            ("bed_mm", List("Of the printer", Number("Width, depth, height"))),
            ("pieces", List("Where the whole is larger than the bed", Object("A piece",
                ("name", Text("As in mockup/pieces.3mf")),
                ("pegs", Count("On the face that looks up or to the side, and sockets in the other")),
                ("volume_mm3", Number("Of its mesh")),
                ("fits_bed", Flag("Upright")),
                ("warning", Nullable(Text("Where no place was found at which its cut leaves wide facets alone")))))),
            ("stand_diameter_mm", Nullable(Number("Of the ring that it stands in; null where there is none"))))));

    private static JsonObject Capacity() => Object("Capacity",
        ("brim_ml", Number("Inside, less internals")),
        ("fillable_ml", Number("Less trapped air")),
        ("usable_ml", Number("To the first seal or spill, upright")),
        ("limited_by", Text("Limit of usable_ml")),
        ("usable_leaning_ml", Number("The least of usable_ml upright and leaning")),
        ("leaning", List("Each lean and direction", Object("A way of standing",
            ("lean_deg", Number("Of the vessel's axis from the plumb line")),
            ("toward_deg", Number("Where its top tips to")),
            ("because", Nullable(Text("A sideways acceleration that acts like that lean"))),
            ("usable_ml", Number("To the first seal or spill")),
            ("limited_by", Text("Its limit"))))),
        ("events", List("Events as it fills", Object("An event",
            ("what", Text("Event")),
            ("lean_deg", Number("Of the vessel")),
            ("toward_deg", Number("Direction of the lean")),
            ("height_mm", Number("Where the liquid's level crosses the vessel's axis, from the shell's lower edge; of a lean perhaps outside the vessel")),
            ("volume_ml", Number("Held then"))))),
        ("levels", List("Gauge table", Object("A level",
            ("height_mm", Number("Of the level")),
            ("volume_ml", Number("Held then"))))));

    private static JsonObject Function() => Object("A chapter",
        ("name", Text("One word")),
        ("title", Text("In words")),
        ("figures", List("In the order of the report", Object("A figure",
            ("name", Text("As explain takes it")),
            ("symbol", Text("As in its formula")),
            ("title", Text("What it is")),
            ("low", Number("At least")),
            ("likely", Number("Likely; the same as low and high where it is exact")),
            ("high", Number("At most")),
            ("unit", Text("Of the three")),
            ("formula", Text("In plain text")),
            ("inputs", List("Inputs of the formula", Object("An input",
                ("symbol", Text("As in the formula")),
                ("title", Text("What it is")),
                ("low", Number("At least")),
                ("likely", Number("Likely")),
                ("high", Number("At most")),
                ("unit", Text("Of the three")),
                ("from", Text("A key of the design, a table, or another figure"))))),
            ("source", Text("Of the formula")),
            ("valid_for", Text("Where the formula holds")),
            ("inside", Flag("Whether the inputs lie there"))))),
        ("tables", List("Figures of one kind for several things", Object("A table",
            ("name", Text("One word")),
            ("title", Text("In words")),
            ("first", Text("Title of the rows' labels")),
            ("columns", List("In order", Object("A column",
                ("name", Text("Unique in the table")),
                ("title", Text("In words")),
                ("unit", Text("Of its values"))))),
            ("rows", List("In order", Object("A row",
                ("label", Text("Subject")),
                ("values", List("One a column", Nullable(Number("Null where there is none")))))))))),
        ("words", List("Remarks", Text("A sentence"))));

    private static JsonObject Finding() => Object("A finding",
        ("code", Text("See explain")),
        ("severity", Choice("How grave", "note", "warning", "error")),
        ("parts", List("Ids of the parts", Text("Id"))),
        ("message", Text("The weak point and the change to make")),
        ("accepted?", Flag("The design's author takes it")),
        ("reason?", Text("Why it is taken")),
        ("figures", List("Behind it", Object("A figure",
            ("name", Text("What it is")),
            ("value", Number("How much")),
            ("limit", Nullable(Number("Limit"))),
            ("unit", Text("Of both"))))),
        ("at?", Object("Where the design says it",
            ("setting?", Count("Which of options.with, from 1; else the file")),
            ("line", Count("From 1")),
            ("column", Count("From 1")))));

    internal static JsonObject MinMax(string description) =>
        Object(description, ("min", Number("Least")), ("max", Number("Greatest")));

    internal static JsonObject Range(string description) => Object(description,
        ("low", Number("At least")),
        ("likely", Number("Likely")),
        ("high", Number("At most")),
        ("basis", Text("Where the range comes from")));

    /// <summary>No other names than these; one that ends in a question mark may be left out.</summary>
    internal static JsonObject Object(string description, params (string Name, JsonObject Schema)[] fields)
    {
        var properties = new JsonObject();
        foreach (var (name, schema) in fields)
            properties.Add(name.TrimEnd('?'), schema);
        return new()
        {
            ["description"] = description,
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = new JsonArray([.. fields.Where(f => f.Name[^1] != '?').Select(f => JsonValue.Create(f.Name))]),
            ["additionalProperties"] = false,
        };
    }

    private static JsonObject Map(string description, JsonObject values) =>
        new() { ["description"] = description, ["type"] = "object", ["additionalProperties"] = values };

    internal static JsonObject List(string description, JsonObject items) =>
        new() { ["description"] = description, ["type"] = "array", ["items"] = items };

    internal static JsonObject Any(string description, params JsonObject[] ways) =>
        new() { ["description"] = description, ["anyOf"] = new JsonArray([.. ways]) };

    internal static JsonObject Nullable(JsonObject schema)
    {
        schema["type"] = new JsonArray((string)schema["type"]!, "null");
        return schema;
    }

    private static JsonObject Constant(string value, string description) =>
        new() { ["description"] = description, ["const"] = value };

    internal static JsonObject Choice(string description, params string[] words) =>
        new() { ["description"] = description, ["enum"] = new JsonArray([.. words.Select(w => JsonValue.Create(w))]) };

    internal static JsonObject Text(string description) => Plain("string", description);

    internal static JsonObject Number(string description) => Plain("number", description);

    internal static JsonObject Count(string description) => Plain("integer", description);

    internal static JsonObject Flag(string description) => Plain("boolean", description);

    private static JsonObject Plain(string type, string description) =>
        new() { ["description"] = description, ["type"] = type };
}
