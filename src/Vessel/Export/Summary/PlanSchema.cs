using System.Text.Json.Nodes;
using static Vessel.Export.Summary.SummarySchema;

namespace Vessel.Export.Summary;

/// <summary>JSON Schema of summary.json's <c>plan</c>.</summary>
internal static class PlanSchema
{
    public static JsonObject Write() => Object("The day's work",
        ("purge", Object("Of the closed vessel, where its roots are welded in argon",
            ("volume_l", Number("To be filled")),
            ("flow_l_per_min", Number("Argon")),
            ("changes", Number("Of the volume")),
            ("gas_l", Number("Argon")),
            ("min", Number("Before the arc is struck")))),
        ("order", List("What must be done before what", Object("A link",
            ("before", Text("Task")),
            ("after", Text("Task")),
            ("why", Text("Reason"))))),
        ("time", Object("Of the whole vessel",
            ("hand_min", Number("Likely, with parts cut by hand")),
            ("hand_min_range", Range("Of hand_min")),
            ("laser_min", Number("Likely, with parts cut by laser")),
            ("laser_min_range", Range("Of laser_min")))),
        ("access", List("How each weld is reached when its turn comes", Object("A weld",
            ("weld", Text("Number")),
            ("free_share", Number("Of the torch's directions, 0 to 1")),
            ("reached_share", Number("Of the stations along it that torch and rod reach, 0 to 1")),
            ("in_the_way", Nullable(Text("Id of the part that stops most directions")))))),
        ("steps", List("In their order", Object("A step",
            ("step", Count("From 1")),
            ("do", Text("make, fit, tack, weld, cool, check ...")),
            ("task", Text("As in order")),
            ("weld", Nullable(Text("Number, of a weld's step"))),
            ("parts", List("Ids", Text("Id"))),
            ("what", Text("For the bench")),
            ("hand_min", Number("Likely, with parts cut by hand")),
            ("laser_min", Number("Likely, with parts cut by laser"))))));
}
