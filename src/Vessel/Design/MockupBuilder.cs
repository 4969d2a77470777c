namespace Vessel.Design;

/// <summary>Fills the mock-up's record from its section; by the same rule as the whole design.</summary>
internal static class MockupBuilder
{
    /// <summary>A value at fault leaves its default: nothing else is checked against it.</summary>
    public static MockupDesign Build(Section section)
    {
        if (!section.Has("inside") || !section.Has("split") || !section.Has("internals") || !section.Has("names"))
            return MockupDesign.Usual;
        var bed = section.Child("bed") ?? Section.Absent($"{section.Path}.bed");
        return new(
            section.Path,
            section.Text("inside") == "solid",
            section.Number("wall"),
            section.Number("scale"),
            section.Number("clearance"),
            new(bed.Number("width"), bed.Number("depth"), bed.Number("height")),
            section.Text("split") == "when_needed",
            section.Number("stand"),
            [
                .. section.Items("drain_holes").Select(hole => new DrainHoleDesign(
                    hole.Path, hole.Number("diameter"), hole.Number("radius"), Geometry.Turns.From(hole.Number("angle"), 0))),
            ],
            section.Number("hose_wall"),
            section.Number("hose_straight"))
        {
            KeepsInternals = section.Text("internals") == "beside",
            Names = section.Text("names") switch { "raised" => PrintNames.Raised, "sunk" => PrintNames.Sunk, _ => PrintNames.None },
            LetterHeight = section.Number("letter_height"),
            LetterDepth = section.Number("letter_depth"),
        };
    }
}
