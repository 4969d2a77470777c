using System.Collections.Immutable;

namespace Vessel.Findings;

/// <summary>Every finding code, once, with what it is about and what to do.</summary>
public static class FindingCodes
{
    public const string GapTooWide = "gap-too-wide";
    public const string LipInBore = "lip-in-bore";
    public const string GrooveAtFlank = "groove-at-flank";
    public const string LargeHoleBeforeRolling = "large-hole-before-rolling";
    public const string HoleTooSmallToCut = "hole-too-small-to-cut";
    public const string HoseGripShort = "hose-grip-short";
    public const string ElbowHoldsOil = "elbow-holds-oil";
    public const string EndShortOfInside = "end-short-of-inside";
    public const string FittingChokes = "fitting-chokes";
    public const string NoOpenPort = "no-open-port";
    public const string StepAtSeam = "step-at-seam";
    public const string LedgeTooNarrow = "ledge-too-narrow";
    public const string NoSheetHolds = "no-sheet-holds";
    public const string TightRoll = "tight-roll";
    public const string TighterThanRolls = "tighter-than-rolls";
    public const string DipstickMissesOil = "dipstick-misses-oil";
    public const string TrappedOil = "trapped-oil";
    public const string GasPathBlocked = "gas-path-blocked";
    public const string BeadUnderLid = "bead-under-lid";
    public const string BendTooTight = "bend-too-tight";
    public const string HoleNearBend = "hole-near-bend";
    public const string WasherNearBend = "washer-near-bend";
    public const string EarGapTooWide = "ear-gap-too-wide";
    public const string EarTooFlat = "ear-too-flat";
    public const string SeamUnderBracket = "seam-under-bracket";
    public const string BeadUnderStrap = "bead-under-strap";
    public const string TemperTooHard = "temper-too-hard";
    public const string GoresNeedDishing = "gores-need-dishing";
    public const string GoreStretch = "gore-stretch";
    public const string SeamsMeet = "seams-meet";
    public const string PortNearCapSeam = "port-near-cap-seam";
    public const string WebTooNarrow = "web-too-narrow";
    public const string LooseDisc = "loose-disc";
    public const string PackingWithoutScreen = "packing-without-screen";
    public const string StageBelowInlet = "stage-below-inlet";
    public const string MediaBypassed = "media-bypassed";
    public const string LossTooGreat = "loss-too-great";
    public const string MountOverloaded = "mount-overloaded";
    public const string TestPressureHigh = "test-pressure-high";
    public const string TestOverstress = "test-overstress";
    public const string MayCollapse = "may-collapse";
    public const string CatchTooSmall = "catch-too-small";
    public const string OilHeldUp = "oil-held-up";
    public const string UnlikeMetals = "unlike-metals";
    public const string JointOutOfReach = "joint-out-of-reach";
    public const string SealedRoom = "sealed-room";
    public const string FitUncertain = "fit-uncertain";
    public const string OutsideClash = "outside-clash";
    public const string InsideClash = "inside-clash";
    public const string LigamentTooNarrow = "ligament-too-narrow";
    public const string PortOverHeadSeam = "port-over-head-seam";
    public const string InsertBeforePort = "insert-before-port";
    public const string NoRoomAtPort = "no-room-at-port";
    public const string NoMockup = "no-mock-up";
    public const string NoFixture = "no-fixture";
    public const string FaceTooNarrow = "face-too-narrow";
    public const string FillTooLow = "fill-too-low";
    public const string LiquidOnMetal = "liquid-on-metal";
    public const string OutletTooHigh = "outlet-too-high";
    public const string OverflowIsVent = "overflow-is-vent";
    public const string OverflowTooHigh = "overflow-too-high";
    public const string FlangeTooShort = "flange-too-short";
    public const string PrintNotSplit = "print-not-split";
    public const string NameNotPrinted = "name-not-printed";

    public static ImmutableArray<FindingCode> All { get; } =
    [
        new(GapTooWide, "A tube's end stands too far off its host, or a seam or clearance is too wide, for its wall.",
            "Grind the end or cut it with a hole saw (cut: ground or hole_saw); give a smaller root_gap or clearance."),
        new(LipInBore, "The host's wall stands into a port's bore.", "Dress the lip before closing, or choose joint: set_in."),
        new(GrooveAtFlank, "Along part of a port the surfaces meet too flatly for a fillet.",
            "Reduce the offset or bevel the tube's end there."),
        new(LargeHoleBeforeRolling, "A hole is so large that the sheet rolls unevenly across it.",
            "Cut it after rolling, or leave it on tabs (shell.large_holes)."),
        new(HoleTooSmallToCut, "A hole is small for its sheet.", "Drill it instead of having it cut."),
        new(HoseGripShort, "The straight end beyond an elbow is too short for a hose and its clamp.", "Give a longer end_length."),
        new(ElbowHoldsOil, "An elbow dips below both ends of its tube and holds liquid.",
            "Turn it to another side, or tilt the port up."),
        new(EndShortOfInside, "A set-in tube's inner end does not come through the host all round.", "Give a longer inside_length."),
        new(FaceTooNarrow, "A bung is narrower than the face that its fitting seals on.", "Use a wider bung, or a smaller thread."),
        new(FillTooLow, "A filler's rim lies below the working level.", "Lengthen the filler, or move it up."),
        new(LiquidOnMetal, "A metal does not suit the liquid, or suits it only on a condition.", "Take another metal, or meet the condition."),
        new(OutletTooHigh, "A liquid outlet's mouth lies above the working level: it draws air.", "Move the outlet down."),
        new(OverflowIsVent, "Nothing but an overflow lets air in and out: liquid in it shuts the vessel.", "Add a vent above the overflow."),
        new(OverflowTooHigh, "Liquid runs out elsewhere, or seals the gas path, before it reaches the overflow.", "Move the overflow down."),
        new(FittingChokes, "A fitting's bore is much smaller than its tube's.", "Choose a larger fitting, or a smaller tube."),
        new(NoOpenPort, "No port is open: the closed volume would be heated without a vent.",
            "Add a port with a tube, or leave one bung open while welding and in use."),
        new(StepAtSeam, "Two walls of different thickness meet edge to edge.", "Choose equal walls, or bevel the thicker one inside."),
        new(LedgeTooNarrow, "A lid stands back, or out, by less than its weld needs.",
            "Make the recess or overhang zero or at least one leg."),
        new(DipstickMissesOil, "The dipstick does not reach the liquid: its port does not lead down, or something stands in its way.",
            "Stand it in a port of the top that has nothing below it."),
        new(TrappedOil, "A cup that opens up holds liquid that cannot run back.", "Give the cap a drain_hole, or let it open down."),
        new(GasPathBlocked, "Gas that comes in at one port has no way to another.", "Give the cap windows, or a sleeve a free rim."),
        new(BeadUnderLid, "An inset head sits where the long seam's bead stands inside the shell.",
            "Dress the bead flush there, or file a notch in the head."),
        new(TemperTooHard, "A dome is to be formed from sheet that is sold too hard for it.",
            "Use annealed sheet (temper O), or anneal it first."),
        new(GoresNeedDishing, "Gores that are only bent along the meridian stay off the head by more than a butt weld takes.",
            "Dish them, use more gores, or spin the head (made_from: spinning)."),
        new(GoreStretch, "Dishing the gores stretches the metal further than it should.",
            "Use more gores or a softer temper, or spin the head (made_from: spinning)."),
        new(SeamsMeet, "A long seam, of a gore, a cone or a course of the shell, runs into the shell's.",
            "Turn the gores (gores.seam_angle), the cone (seam_angle) or the shell's seam."),
        new(PortNearCapSeam, "A port's weld lies too near the polar cap's.",
            "Make the polar cap larger (gores.cap_diameter), or the port smaller."),
        new(WebTooNarrow, "Holes of a pattern leave less than a thickness between them.",
            "Widen the pitch, or take smaller holes or thinner sheet."),
        new(LooseDisc, "A disc is held by nothing.", "Fix it, unless something else holds it."),
        new(PackingWithoutScreen, "Packing has no disc on one side: loose media can leave.", "Put it between two discs."),
        new(NoRoomAtPort, "The straight run of a hose, or a spanner, has no room at its port.",
            "Turn, move or lengthen the port, or give the hose's true sizes (mockup.hose_wall, hose_straight)."),
        new(NoMockup, "Parts graze, cross or nearly touch, so that the outside is no clean solid: no mock-up to print is written.",
            "Move them apart by 0.2 mm, or leave the mock-up out."),
        new(NoFixture, "A port's printed fixture is left out: there is no room for it, or a part welded by then is in its way.",
            "Hold the port by measuring, move it, or tack it before its neighbour."),
        new(FlangeTooShort, "A flange is so short for its thickness that it slips off the shoulder of a press brake's die.",
            "Make it longer, bend it over length and cut it back, or weld it up from strips."),
        new(PrintNotSplit, "The mock-up is so much larger than the printer's bed that it is not cut into pieces.",
            "Give a smaller mockup.scale, or a larger mockup.bed."),
        new(NameNotPrinted, "A port's name or a seam's number finds no free room on the mock-up, or has no letters that can be printed.",
            "Give a shorter name, or move the port; at a smaller mockup.scale letters take more room."),
        new(UnlikeMetals, "Two metals touch in the wet and the less noble one corrodes.", "Choose one metal for both."),
        new(FitUncertain, "The tolerances of the sizes may use up a fit's clearance, or its press.",
            "Measure both parts before cutting, or give more clearance."),
        new(OutsideClash, "Tubes, fittings, brackets or a head's rim touch, or nearly touch, each other outside the vessel.",
            "Move, turn or shorten one of the two."),
        new(InsideClash, "The inner end of a tube nearly touches a part inside.",
            "Make its inside length smaller, or move one of the two."),
        new(LigamentTooNarrow, "Two welds on the outside leave too little plate between them.",
            "Move one of the two parts, or turn the seam."),
        new(PortOverHeadSeam, "A port stands over the seam between shell and head: weld crosses weld, and its hole waits for the seam.",
            "Move it a few walls away from the seam, where there is room."),
        new(InsertBeforePort, "A port's inner end blocks a part that goes in from above.",
            "Put the port in afterwards, or shorten its inside_length."),
        new(JointOutOfReach, "A torch and rod cannot come to a joint when its turn comes.",
            "Move or shorten the part in the way, or hold the part without a weld."),
        new(SealedRoom, "A room has no way to any port: heating it builds pressure.", "Give it windows, a drain hole or a free rim."),
        new(TighterThanRolls, "A part is to be rolled tighter than the shop's rolls can make it.",
            "Cut it from tube, have it rolled elsewhere, or bend it over a bar."),
        new(NoSheetHolds, "A flat is larger than the sheet that the shop buys.",
            "Put the shell together from several sheets (shell.sheets), a cone from segments, or buy larger sheet."),
        new(TightRoll, "The sheet is rolled so tightly that the neutral line leaves its middle.",
            "Cut the shell from tube, or measure a rolled trial first."),
        new(BendTooTight, "An inside radius is below the published least one for the alloy, its temper and thickness.",
            "Give a larger inside_radius, bend across the grain, or take a softer temper."),
        new(HoleNearBend, "A hole lies so near to a bend that bending draws it out of round.",
            "Move the hole away from the bend, or drill it after bending."),
        new(WasherNearBend, "A washer does not lie flat beside a bend.", "Bring the bolts together, or widen the bracket."),
        new(EarGapTooWide, "A bracket's edge, cut square, stands too far off the shell where it is welded.", "Grind or bevel it to the "
            + "shell, make the bracket narrower or bring it nearer to the middle, or take ears: ends, or a level plate."),
        new(EarTooFlat, "A bracket's edge meets the shell too flatly for a fillet.",
            "Make the bracket narrower, bring it nearer to the middle, bevel its edge, or take ears: ends."),
        new(SeamUnderBracket, "The shell's long seam runs under a bracket.", "Turn the seam."),
        new(BeadUnderStrap, "A weld's bead stands up under a strap, which then bears on it alone.",
            "Move or turn the strap, so that the bead lies beside it or in its gap, dress the bead flush there, or give a thicker liner."),
        new(StageBelowInlet, "A stage of the gas path is narrower than the inlet.",
            "Widen it: more or larger windows or holes, more room round or under the sleeve."),
        new(MediaBypassed, "Gas has a way from inlet to vent that does not pass the packing.",
            "Close that way, or set the packing where all gas has to pass it."),
        new(LossTooGreat,
            "The gas loses more pressure from inlet to vent than the design allows; a choked crankcase pushes oil past its seals.",
            "Widen the stages that lose most, or raise flow.most_loss if the engine's maker allows more."),
        new(MountOverloaded,
            "Welds, ears, plate or bolts of a bracket, or the shell's wall under it, bear less than the full vessel puts on them.",
            "Bring the plate nearer, make it thicker, wider or higher, take a thicker shell, more or thicker bolts, or a second bracket."),
        new(TestPressureHigh, "The leak test is above the pressure at which published rules for pressure vessels begin.",
            "Test at 200 to 300 mbar, with water."),
        new(TestOverstress, "Shell or end yields next to its welds at the leak test.", "Test at less, or take thicker metal or a dome."),
        new(MayCollapse, "The suction in use may fold the shell.", "Take a thicker shell, or a ring round it; lower the suction."),
        new(CatchTooSmall, "The vessel holds less than may gather between two drains, or than the rule book asks for.",
            "Make it larger, shorten the parts that hang inside, or drain it sooner."),
        new(OilHeldUp, "The vessel's depression holds up more liquid than the drain hose is high.",
            "Hang the vessel higher above the sump, or widen the gas path."),
    ];
}

/// <param name="Code">Code that the report and summary give.</param>
/// <param name="Cause">What it means.</param>
/// <param name="Remedy">What to change.</param>
public sealed record FindingCode(string Code, string Cause, string Remedy);
