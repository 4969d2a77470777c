using Vessel.Function;
using Vessel.Mockups;
using Vessel.Parts;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>What stands in the way of a mock-up to print.</summary>
internal static class MockupRules
{
    public static IEnumerable<Measure> Of(Assembly assembly) =>
        assembly.Mockup.Obstacles.IsEmpty ? [.. TooLarge(assembly), .. Unmarked(assembly)] : Obstacles(assembly);

    /// <summary>Larger than the bed, and no cutting helps.</summary>
    private static IEnumerable<Measure> TooLarge(Assembly assembly)
    {
        var (plan, bed) = (assembly.Mockup, assembly.Mockup.Options.Bed);
        var (size, boxes) = (plan.Size, MockupPieces.Boxes(plan.Size, bed));
        if (!plan.Options.Splits)
            yield break;
        yield return new(
            FindingCodes.PrintNotSplit,
            Severity.Note,
            [],
            () => $"the mock-up is {NoteText.Length(size.X)} x {NoteText.Length(size.Y)} x {NoteText.Length(size.Z)} mm: a bed of "
            + $"{NoteText.Length(bed.Width)} x {NoteText.Length(bed.Depth)} x {NoteText.Length(bed.Height)} mm takes it in {boxes:0} "
            + "pieces, more than "
            + $"{MockupPieces.Most}, so that it is written whole: give a smaller 'mockup.scale' or a larger 'mockup.bed'.",
            [new("pieces", boxes, AtMost(MockupPieces.Most), "")],
            assembly.Design.PlaceOf(plan.Options.Path),
            "pieces of the mock-up on the printer's bed");
    }

    private static IEnumerable<Measure> Unmarked(Assembly assembly) => assembly.Mockup.MissingMarks.Select(mark => new Measure(
        FindingCodes.NameNotPrinted,
        Severity.Note,
        [],
        () => $"'{mark.Text}' does not stand on the mock-up: {mark.Because}.",
        [],
        assembly.Design.PlaceOf(mark.Path)));

    private static IEnumerable<Measure> Obstacles(Assembly assembly) => assembly.Mockup.Obstacles.Select(obstacle => new Measure(
        FindingCodes.NoMockup,
        Severity.Note,
        obstacle.Parts,
        () => $"no mock-up to print: {obstacle.What}.",
        obstacle.Distance is { } distance ? [new("distance", distance, AtLeast(Obstacle.Least), "mm")] : [],
        assembly.Design.PlaceOf(obstacle.Path)));
}
