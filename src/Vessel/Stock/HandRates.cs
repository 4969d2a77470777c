using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>
/// How long handwork takes in a small shop that makes one of a kind; minutes, or millimetres a minute. Fixed before the
/// first vessel was timed with them.
/// </summary>
public static class HandRates
{
    private const string Each = "min";

    private const string Speed = "mm/min";

    public static WorkRate SetUp { get; } = Min("set_up", "Reading the drawings and laying out the bench, once a vessel", 8, 15, 30);

    public static WorkRate Mark { get; } = Min("mark_part", "Marking out one part", 2, 4, 8);

    public static WorkRate MarkHole { get; } = Min("mark_hole", "Marking and punching one hole", 0.3, 0.7, 1.5);

    public static WorkRate CutStraight { get; } = new(
        "cut_straight", "One straight cut in sheet, shear or saw", Each, 0.7, 1.5, 3,
        "[practice]; a rectangular plate cut and punched in series takes 3 to 6 min (Methvin, workshop fabrication)");

    public static WorkRate CutCurve { get; } = new(
        "cut_curve", "Cutting and filing to a curved line by hand", Speed, 40, 80, 150, WeldingRates.Practice);

    public static WorkRate Saw { get; } = Min("saw_tube", "Sawing one length of tube or bar", 2, 4, 7);

    public static WorkRate Cope { get; } = Min("cope_end", "Cutting and grinding one tube's end to fit, offering it up", 6, 12, 20);

    public static WorkRate Drill { get; } = new(
        "drill", "One hole with a twist drill", Each, 1, 2, 4,
        "[practice]; heavy plate: 12 min with laying out (Page, Estimator's Piping Man-Hour Manual)");

    public static WorkRate StepDrill { get; } = Min("step_drill", "One hole with a step drill", 2, 4, 7);

    public static WorkRate HoleSaw { get; } = Min("hole_saw", "One hole with a hole saw", 4, 7, 12);

    public static WorkRate FileOpening { get; } = Min("file_opening", "One opening drilled out and filed to the line", 6, 10, 18);

    public static WorkRate Tap { get; } = Min("tap", "Drilling and tapping one hole", 4, 6, 10);

    public static WorkRate FieldHole { get; } = Min("field_hole", "One of many equal holes, marked and drilled", 0.25, 0.4, 0.8);

    public static WorkRate Turn { get; } = Min("turn_bung", "Turning and tapping one bung", 12, 20, 35);

    public static WorkRate Deburr { get; } =
        new("deburr", "Deburring an edge that was cut by hand", Speed, 120, 250, 500, WeldingRates.Practice);

    public static WorkRate DeburrLaser { get; } = new(
        "deburr_laser", "Deburring an edge that was cut by laser", Speed, 400, 800, 1500, WeldingRates.Practice);

    public static WorkRate Handle { get; } = Min("handle_laser", "Sorting and checking one part that comes from the laser", 0.5, 1, 2);

    public static WorkRate CleanPart { get; } = Min("clean_part", "Degreasing and brushing one part before welding", 0.7, 1.5, 3);

    public static WorkRate Bend { get; } = Min("bend", "One bend, with setting the stop", 3, 5, 9);

    public static WorkRate Roll { get; } = Min("roll", "Rolling one cylinder, with its ends", 8, 15, 25);

    public static WorkRate Dish { get; } = Min("dish", "Bending and dishing one gore or cap to a gauge", 6, 12, 20);

    public static WorkRate FitUp { get; } = Min("fit_up", "Fitting up one joint", 4, 7, 12);

    public static WorkRate FitLoose { get; } = Min("fit_loose", "Bringing in one part that is not welded", 2, 5, 10);

    public static WorkRate Tack { get; } = Min("tack", "One tack", 0.3, 0.5, 0.9);

    public static WorkRate Cool { get; } = Min("cool", "Waiting for one weld that nothing else fills", 1, 3, 8);

    public static WorkRate Check { get; } = Min("check_weld", "Looking at and measuring one weld", 0.7, 1.5, 3);

    public static WorkRate Round { get; } = Min("re_round", "Re-rounding one cylinder after its seam", 5, 10, 20);

    public static WorkRate Plug { get; } = Min("plug", "Plugging one thread", 1, 1.5, 3);

    public static WorkRate Chase { get; } = Min("chase", "Chasing one thread and facing it", 2, 3, 6);

    public static WorkRate Dress { get; } = Min("dress", "Dressing one lip or bead inside", 2, 5, 10);

    public static WorkRate CleanInside { get; } = Min("clean_inside", "Cleaning and drying before the closing seam", 5, 10, 15);

    public static WorkRate LeakTest { get; } = Min("leak_test", "Blanking, filling, testing with film, drying", 15, 25, 45);

    public static WorkRate SendOut { get; } = Min(
        "send_out", "Packing, sending and fetching parts made elsewhere, each; days of waiting not in it", 5, 12, 30);

    public static WorkRate Passivate { get; } = Min(
        "passivate", "Pickling, rinsing and passivating one vessel, waiting for the paste with it", 30, 60, 120);

    public static WorkRate Paint { get; } = Min(
        "paint", "Degreasing, masking, priming and painting one vessel; drying not counted", 30, 50, 90);

    public static ImmutableArray<WorkRate> All { get; } =
    [
        SetUp, Mark, MarkHole, CutStraight, CutCurve, Saw, Cope, Drill, StepDrill, HoleSaw, FileOpening, Tap, FieldHole, Turn, Deburr,
        DeburrLaser, Handle, CleanPart, Bend, Roll, Dish, FitUp, FitLoose, Tack, Cool, Check, Round, Plug, Chase, Dress, CleanInside,
        LeakTest,
        SendOut, Passivate, Paint,
    ];

    private static WorkRate Min(string name, string what, double low, double likely, double high) =>
        new(name, what, Each, low, likely, high, WeldingRates.Practice);
}
