using System.Collections.Immutable;
using Vessel.Findings;
using Vessel.Planning;
using Vessel.Tests.Support;

namespace Vessel.Tests.Findings;

/// <summary>An example of <c>designs</c> so changed that it has a finding.</summary>
/// <param name="With">Settings, each as path=value.</param>
internal sealed record RaisedFinding(string Code, string File, params string[] With)
{
    /// <summary>Pieces of the file's text and what stands in their place, for what no setting changes.</summary>
    public ImmutableArray<(string Old, string New)> Instead { get; init; } = [];

    /// <summary>Text of the shop's file.</summary>
    public string? Shop { get; init; }

    public Plan Plan()
    {
        var text = Instead.Aggregate(Repository.Design($"{File}.yaml"), (text, piece) => text.Contains(piece.Old, StringComparison.Ordinal)
            ? text.Replace(piece.Old, piece.New, StringComparison.Ordinal)
            : throw new InvalidOperationException($"{File} has no '{piece.Old}'"));
        return Vessel.Planning.Plan.Of(Compiler.Assemble(Compiler.Read(text, new(null, [.. With]) { Shop = Shop }).Value!));
    }
}

/// <summary>One case for each code.</summary>
internal static class RaisedFindings
{
    public static ImmutableArray<RaisedFinding> All { get; } =
    [
        new(FindingCodes.BeadUnderLid, "grain-dryer-fuel-trap"),
        new(FindingCodes.BeadUnderStrap, "canal-boat-day-tank", "strap[0].liner=0", "shell.seam_angle=150"),
        new(FindingCodes.BendTooTight, "harbour-launch-breather", "bracket.inside_radius=1"),
        new(FindingCodes.CatchTooSmall, "harbour-launch-breather"),
        new(FindingCodes.DipstickMissesOil, "canal-boat-day-tank", "capacity.dipstick.in=feed"),
        new(FindingCodes.EarGapTooWide, "harbour-launch-breather", "bracket.ears=sides"),
        new(FindingCodes.EarTooFlat, "trawler-winch-breather", "bracket.ears=sides", "bracket.width=98"),
        new(FindingCodes.ElbowHoldsOil, "ferry-bilge-vent")
        {
            Instead =
            [
                ("angle: 200, offset: 25, tilt: -20", "angle: 200, offset: 25, tilt: -40"),
                ("joint: set_in, inner_end: flush",
                    "joint: set_in, inner_end: flush, elbow: { angle: 90, direction: 180, end_length: 60 }"),
            ],
        },
        new(FindingCodes.EndShortOfInside, "harbour-launch-breather", "ports.drain.inside_length=0"),
        new(FindingCodes.FaceTooNarrow, "canal-boat-day-tank", "ports.feed.bung.outside_diameter=21"),
        new(FindingCodes.FillTooLow, "orchard-sprayer-settling-pot", "ports.return.purpose=fill"),
        new(FindingCodes.LiquidOnMetal, "ferry-bilge-vent", "flow.liquid=brine"),
        new(FindingCodes.OutletTooHigh, "ferry-bilge-vent", "ports.skimmer.at.height=170"),
        new(FindingCodes.OverflowIsVent, "canal-boat-day-tank", "ports.vent.purpose=overflow"),
        new(FindingCodes.OverflowTooHigh, "orchard-sprayer-settling-pot", "ports.return.purpose=overflow", "ports.suction.purpose=vent"),
        new(FindingCodes.FitUncertain, "baler-gearbox-breather"),
        new(FindingCodes.FittingChokes, "harbour-launch-breather", "ports.inlet.fitting=dash 6"),
        new(FindingCodes.FlangeTooShort, "harbour-launch-breather", "bracket.stand_off=6"),
        new(FindingCodes.GapTooWide, "harbour-launch-breather", "shell.root_gap=1.5"),
        new(FindingCodes.GasPathBlocked, "harbour-launch-breather")
        {
            Instead =
            [
                ("    windows: { count: 4, width: 18, height: 16, corner: 3, up: 16 }", ""),
                ("    drain_hole: 5", ""),
            ],
        },
        new(FindingCodes.GoreStretch, "sawmill-generator-breather", "bottom.gores.count=6", "material=aluminium 3003-H18"),
        new(FindingCodes.GoresNeedDishing, "sawmill-generator-breather"),
        new(FindingCodes.GrooveAtFlank, "baler-gearbox-breather"),
        new(FindingCodes.HoleNearBend, "harbour-launch-breather", "bracket.bolts.up=72"),
        new(FindingCodes.HoleTooSmallToCut, "harbour-launch-breather", "inside.discs[0].hole_diameter=1"),
        new(FindingCodes.HoseGripShort, "ferry-bilge-vent", "ports[0].elbow.end_length=20"),
        new(FindingCodes.InsertBeforePort, "harbour-launch-breather")
        {
            Instead =
            [
                ("    joint: set_on", "    joint: set_in"),
                ("    cut: ground", "    inside_length: 8"),
                ("  discs:", "  discs:\n    - { name: baffle, fits: shell, at: { height: 20 }, thickness: 2, fixed: "
                    + "tabs, hole_diameter: 4, pitch: 8, pattern: staggered_60, margin: 5 }"),
            ],
        },
        new(FindingCodes.InsideClash, "harbour-launch-breather")
        {
            Instead =
            [
                ("    joint: set_on", "    joint: set_in"),
                ("    cut: ground", "    inside_length: 12.5"),
            ],
        },
        new(FindingCodes.JointOutOfReach, "harbour-launch-breather", "shell.height=400",
            "inside.sleeve.length=300", "inside.discs[0].at.height=230", "inside.discs[1].at.height=250"),
        new(FindingCodes.LargeHoleBeforeRolling, "harbour-launch-breather", "dimensions.hose=50"),
        new(FindingCodes.LedgeTooNarrow, "harbour-launch-breather", "top.recess=1"),
        new(FindingCodes.LigamentTooNarrow, "canal-boat-day-tank", "ports.feed.at.height=15"),
        new(FindingCodes.LipInBore, "grain-dryer-fuel-trap"),
        new(FindingCodes.LooseDisc, "harbour-launch-breather", "inside.discs[0].fixed=loose"),
        new(FindingCodes.LossTooGreat, "harbour-launch-breather", "flow.blow_by=6000 L/min"),
        new(FindingCodes.MayCollapse, "canal-boat-day-tank", "leak_test.suction=900 mbar", "shell.wall=0.5"),
        new(FindingCodes.MediaBypassed, "harbour-launch-breather")
        {
            Instead =
            [
                ("    hangs_from: top\n    fixed: weld\n\n  discs",
                    "    hangs_from: top\n    fixed: weld\n    windows: { count: 4, width: 18, height: 6, up: 70 "
                    + "}\n\n  discs"),
            ],
        },
        new(FindingCodes.MountOverloaded, "harbour-launch-breather", "mounting.acceleration=60"),
        new(FindingCodes.NameNotPrinted, "trawler-winch-breather", "ports.inlet.name=a very long name that never ends on the print"),
        new(FindingCodes.NoFixture, "harbour-launch-breather", "fixtures=printed"),
        new(FindingCodes.NoMockup, "ferry-bilge-vent")
        {
            Instead =
            [
                ("{ height: 60, angle: 200, offset: 25, tilt: -20 }", "{ height: 80.4, angle: 0 }"),
                (", inner_end: flush", ""),
            ],
        },
        new(FindingCodes.NoOpenPort, "canal-boat-day-tank", "ports.vent.purpose=plugged"),
        new(FindingCodes.NoRoomAtPort, "trawler-winch-breather", "bracket.at.angle=100"),
        new(FindingCodes.NoSheetHolds, "canal-boat-day-tank", "dimensions.body=900"),
        new(FindingCodes.OilHeldUp, "harbour-launch-breather", "flow.blow_by=3000 L/min"),
        new(FindingCodes.OutsideClash, "canal-boat-day-tank", "ports[0].at.radius=25", "ports[0].at.angle=85"),
        new(FindingCodes.PackingWithoutScreen, "harbour-launch-breather")
        {
            Instead =
            [
                ("between: [lower screen, upper screen]", "between: [lower screen]"),
            ],
        },
        new(FindingCodes.PortNearCapSeam, "sawmill-generator-breather", "bottom.gores.cap_diameter=36"),
        new(FindingCodes.PortOverHeadSeam, "harbour-launch-breather", "ports.inlet.at.height=8"),
        new(FindingCodes.PrintNotSplit, "harbour-launch-breather", "mockup.bed.width=50", "mockup.bed.depth=50", "mockup.bed.height=30"),
        new(FindingCodes.SealedRoom, "shop-compressor-catch-can", "inside.cap.outside_diameter=1.25")
        {
            Instead =
            [
                ("    opens: down", "    opens: up"),
                ("at: { radius: 0 }", "at: { radius: 1.4, angle: 0 }"),
            ],
        },
        new(FindingCodes.SeamUnderBracket, "harbour-launch-breather", "shell.seam_angle=60"),
        new(FindingCodes.SeamsMeet, "sawmill-generator-breather", "bottom.gores.seam_angle=150"),
        new(FindingCodes.StageBelowInlet, "shop-compressor-catch-can"),
        new(FindingCodes.StepAtSeam, "harbour-launch-breather", "bottom.wall=3"),
        new(FindingCodes.TemperTooHard, "harbour-launch-breather", "material=aluminium 5052-H32"),
        new(FindingCodes.TestOverstress, "harbour-launch-breather", "leak_test.pressure=8 bar"),
        new(FindingCodes.TestPressureHigh, "harbour-launch-breather", "leak_test.pressure=600 mbar"),
        new(FindingCodes.TightRoll, "harbour-launch-breather", "shell.wall=11", "inside.sleeve.tube.outside_diameter=70"),
        new(FindingCodes.TighterThanRolls, "harbour-launch-breather")
        {
            Shop = "rolls: { least_diameter: 200 }\n",
        },
        new(FindingCodes.TrappedOil, "harbour-launch-breather", "inside.cap.drain_hole=0"),
        new(FindingCodes.UnlikeMetals, "harbour-launch-breather", "inside.packing.material=copper wool"),
        new(FindingCodes.WasherNearBend, "harbour-launch-breather", "bracket.bolts.up=72"),
        new(FindingCodes.WebTooNarrow, "harbour-launch-breather", "inside.discs[0].pitch=3.5"),
    ];
}
