using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>Every fault code.</summary>
public static class FaultCodes
{
    public const string FileTooLarge = "file-too-large";
    public const string FileEmpty = "file-empty";
    public const string YamlSyntax = "yaml-syntax";
    public const string SecondDocument = "second-document";
    public const string AnchorOrTag = "anchor-or-tag";
    public const string NestingTooDeep = "nesting-too-deep";
    public const string TooManyValues = "too-many-values";
    public const string TooManyItems = "too-many-items";
    public const string UnfitCharacter = "unfit-character";
    public const string TextTooLong = "text-too-long";
    public const string DuplicateKey = "duplicate-key";
    public const string KeyNotAWord = "key-not-a-word";
    public const string UnknownKey = "unknown-key";
    public const string MissingKey = "missing-key";
    public const string MissingValue = "missing-value";
    public const string OnlyOneOf = "only-one-of";
    public const string KeyDoesNotApply = "key-does-not-apply";
    public const string WrongKind = "wrong-kind";
    public const string UnknownChoice = "unknown-choice";
    public const string NotBuiltYet = "not-built-yet";
    public const string OutOfRange = "out-of-range";
    public const string ExpressionSyntax = "expression-syntax";
    public const string DecimalComma = "decimal-comma";
    public const string UnknownUnit = "unknown-unit";
    public const string UnknownName = "unknown-name";
    public const string WrongDimension = "wrong-dimension";
    public const string AmbiguousUnit = "ambiguous-unit";
    public const string DivisionByZero = "division-by-zero";
    public const string NumberNotFinite = "number-not-finite";
    public const string ExpressionTooDeep = "expression-too-deep";
    public const string GaugeUnknown = "gauge-unknown";
    public const string DimensionName = "dimension-name";
    public const string DimensionCycle = "dimension-cycle";
    public const string UnknownMaterial = "unknown-material";
    public const string MissingMaterial = "missing-material";
    public const string UnknownThread = "unknown-thread";
    public const string MetalsDoNotJoin = "metals-do-not-join";
    public const string NameWithoutLetters = "name-without-letters";
    public const string NameTwice = "name-twice";
    public const string WallTooThick = "wall-too-thick";
    public const string LidTooDeep = "lid-too-deep";
    public const string LidDoesNotFit = "lid-does-not-fit";
    public const string BranchWiderThanShell = "branch-wider-than-shell";
    public const string TubeDoesNotEnter = "tube-does-not-enter";
    public const string DrillRunsOut = "drill-runs-out";
    public const string HoleNearShellEnd = "hole-near-shell-end";
    public const string PortOffShell = "port-off-shell";
    public const string HoleBehindLid = "hole-behind-lid";
    public const string HolesOverlap = "holes-overlap";
    public const string PortOverSeam = "port-over-seam";
    public const string PortOffHead = "port-off-head";
    public const string RadiiDoNotFit = "radii-do-not-fit";
    public const string ConeTipOpen = "cone-tip-open";
    public const string BungTooThin = "bung-too-thin";
    public const string PortTooShort = "port-too-short";
    public const string PortTooDeep = "port-too-deep";
    public const string InnerHeightMissed = "inner-height-missed";
    public const string FlushEndInside = "flush-end-inside";
    public const string EndOutsideHost = "end-outside-host";
    public const string HoleSawNotMade = "hole-saw-not-made";
    public const string ElbowTooSharp = "elbow-too-sharp";
    public const string ElbowClosesUp = "elbow-closes-up";
    public const string DipstickDoesNotBend = "dipstick-does-not-bend";
    public const string DipstickTooWide = "dipstick-too-wide";
    public const string NotAWholeNumber = "not-a-whole-number";
    public const string UnknownPlace = "unknown-place";
    public const string UnknownVariant = "unknown-variant";
    public const string UnknownFinding = "unknown-finding";
    public const string NothingToAccept = "nothing-to-accept";
    public const string ErrorAccepted = "error-accepted";
    public const string PartNotFound = "part-not-found";
    public const string HangsFromDome = "hangs-from-dome";
    public const string CapNotCarried = "cap-not-carried";
    public const string TooWideInside = "too-wide-inside";
    public const string OutsideTheInside = "outside-the-inside";
    public const string DiscDoesNotFit = "disc-does-not-fit";
    public const string PartsCollide = "parts-collide";
    public const string WindowsOverlap = "windows-overlap";
    public const string WindowNearEnd = "window-near-end";
    public const string WindowCornerTooLarge = "window-corner-too-large";
    public const string WindowOverSeam = "window-over-seam";
    public const string WindowsNotInside = "windows-not-inside";
    public const string BoreTooWide = "bore-too-wide";
    public const string HolesTouch = "holes-touch";
    public const string NoHoleFits = "no-hole-fits";
    public const string TooManyHoles = "too-many-holes";
    public const string PackingNotBetween = "packing-not-between";
    public const string BracketTooWide = "bracket-too-wide";
    public const string BracketOffShell = "bracket-off-shell";
    public const string PlateTooShort = "plate-too-short";
    public const string PlateCornerTooLarge = "plate-corner-too-large";
    public const string EarTooShort = "ear-too-short";
    public const string BoltOffPlate = "bolt-off-plate";
    public const string BoltHolesOverlap = "bolt-holes-overlap";
    public const string BracketOverPort = "bracket-over-port";
    public const string StrapGapTooWide = "strap-gap-too-wide";
    public const string TabsDoNotFit = "tabs-do-not-fit";
    public const string SlotInTheWay = "slot-in-the-way";
    public const string GoresDoNotFit = "gores-do-not-fit";
    public const string SegmentsDoNotFit = "segments-do-not-fit";
    public const string ConeFromTube = "cone-from-tube";
    public const string ShellConeAngle = "shell-cone-angle";
    public const string ReducerOffShell = "reducer-off-shell";
    public const string PortAcrossGirth = "port-across-girth";
    public const string BracketOnCone = "bracket-on-cone";
    public const string LettersTooDeep = "letters-too-deep";
    public const string DiscInCone = "disc-in-cone";

    public static ImmutableArray<FaultCode> All { get; } =
    [
        new(nameof(FileTooLarge), FileTooLarge, "The file has more bytes than a vessel file can have.",
            "Keep one vessel in one file."),
        new(nameof(FileEmpty), FileEmpty, "The file holds no keys.", "Begin with 'vessel: <name>'."),
        new(nameof(YamlSyntax), YamlSyntax, "The file is not well-formed YAML.",
            "Check indentation, colons, quotes and brackets."),
        new(nameof(SecondDocument), SecondDocument, "A second document follows after '---'.",
            "Keep one vessel in one file."),
        new(nameof(AnchorOrTag), AnchorOrTag, "Anchors, aliases, tags and merge keys are not taken.",
            "Write the value out, or name it under 'dimensions'."),
        new(nameof(NestingTooDeep), NestingTooDeep, "Mappings or lists are nested too deeply.",
            "Write the keys at the levels that the format has."),
        new(nameof(TooManyValues), TooManyValues, "The file holds more values than a vessel file can hold.",
            "Keep one vessel in one file."),
        new(nameof(TooManyItems), TooManyItems, "A list holds more items than a vessel can have.",
            "Keep one vessel in one file."),
        new(nameof(UnfitCharacter), UnfitCharacter, "A text holds a control character, or a code that Unicode gives to no character.",
            "Delete the character."),
        new(nameof(TextTooLong), TextTooLong, "A name or another text is longer than drawings and tables can take.",
            "Use a shorter text."),
        new(nameof(DuplicateKey), DuplicateKey, "A key stands twice in one mapping.", "Delete one of the two."),
        new(nameof(KeyNotAWord), KeyNotAWord, "A key is a list or mapping.", "Use a word as the key."),
        new(nameof(UnknownKey), UnknownKey, "A mapping has no key of that name.",
            "Correct the spelling, or delete the key."),
        new(nameof(MissingKey), MissingKey, "A key that has no default is missing.", "Add the key."),
        new(nameof(MissingValue), MissingValue, "A key has no value.", "Write a value after the colon, or delete the key."),
        new(nameof(OnlyOneOf), OnlyOneOf, "A group of keys takes exactly one of them, and the file gives none or several.",
            "Give one of them."),
        new(nameof(KeyDoesNotApply), KeyDoesNotApply, "The key means nothing with the choice beside it.",
            "Delete the key, or change the choice."),
        new(nameof(WrongKind), WrongKind, "A mapping, a list or a single value stands where another of these belongs.",
            "Write a value of the kind that the key takes; the message shows an example."),
        new(nameof(UnknownChoice), UnknownChoice, "The word is not among the key's choices.", "Use one of the choices."),
        new(nameof(NotBuiltYet), NotBuiltYet, "The file asks for a thing that the tool does not support.",
            "Use one of the choices that the message lists."),
        new(nameof(OutOfRange), OutOfRange, "A number lies outside the key's range.", "Use a number inside the range."),
        new(nameof(ExpressionSyntax), ExpressionSyntax, "A value cannot be read as a number, unit or expression.",
            "Write a number with a unit, or an expression of them."),
        new(nameof(DecimalComma), DecimalComma, "A comma stands where the decimal point belongs.", "Write a point."),
        new(nameof(UnknownUnit), UnknownUnit, "The word after a number is not a unit.", "Use a unit that is known."),
        new(nameof(UnknownName), UnknownName, "An expression uses a name that is not defined.",
            "Define it under 'dimensions'."),
        new(nameof(WrongDimension), WrongDimension, "Quantities of different kinds are mixed, as a length and an angle.",
            "Use a value of the kind that the key takes."),
        new(nameof(AmbiguousUnit), AmbiguousUnit, "A bare number is added to values in another unit, or in several.",
            "Write a unit after the bare number."),
        new(nameof(DivisionByZero), DivisionByZero, "A value is divided by zero.", "Change the divisor."),
        new(nameof(NumberNotFinite), NumberNotFinite, "A number is too large.", "Use a smaller number."),
        new(nameof(ExpressionTooDeep), ExpressionTooDeep, "The parentheses of an expression are nested too deeply.",
            "Split it with names under 'dimensions'."),
        new(nameof(GaugeUnknown), GaugeUnknown, "A sheet gauge is not in the table of the metal.",
            "Give the thickness in mm or in."),
        new(nameof(DimensionName), DimensionName,
            "A name under 'dimensions' is a unit, a reserved word or not a plain word.",
            "Use another name."),
        new(nameof(DimensionCycle), DimensionCycle, "Named sizes are defined by each other in a circle.",
            "Give one of them a value of its own."),
        new(nameof(UnknownMaterial), UnknownMaterial, "The metal is not in the table.", "Use a metal of the table."),
        new(nameof(MissingMaterial), MissingMaterial, "A part has no material, and the file names none.",
            "Add 'material' at the top of the file."),
        new(nameof(UnknownThread), UnknownThread, "The thread is not in the table.", "Use a thread of the table."),
        new(nameof(MetalsDoNotJoin), MetalsDoNotJoin,
            "Two parts that are welded together are of metals that do not join.",
            "Make both of one family of metals."),
        new(nameof(NameWithoutLetters), NameWithoutLetters, "A name has no letter or digit that a file name can take.",
            "Use a name with the letters a to z or digits."),
        new(nameof(NameTwice), NameTwice, "Two parts have one name, or names that give one file name.", "Rename one."),
        new(nameof(WallTooThick), WallTooThick, "The wall leaves no bore.", "Make the wall thinner or the diameter larger."),
        new(nameof(LidTooDeep), LidTooDeep, "Inset heads take up the whole height of the shell.",
            "Make recess or thickness smaller, or the shell higher."),
        new(nameof(LidDoesNotFit), LidDoesNotFit, "A flat head does not cover, or does not fit, the shell's bore.",
            "Change the plate's diameter or clearance."),
        new(nameof(BranchWiderThanShell), BranchWiderThanShell, "A port that stands on the shell reaches beside it.",
            "Make the port or its offset smaller."),
        new(nameof(TubeDoesNotEnter), TubeDoesNotEnter,
            "A port that passes into the shell is wider than its bore there.",
            "Make the port or its offset smaller, or set it on."),
        new(nameof(DrillRunsOut), DrillRunsOut, "A hole drilled through a tube leaves its bore sideways.",
            "Make the bore or the offset smaller."),
        new(nameof(HoleNearShellEnd), HoleNearShellEnd,
            "Less than one wall of metal is left between a hole and an edge.",
            "Move the port away from the edge."),
        new(nameof(PortOffShell), PortOffShell, "A port's footprint reaches over an edge of the shell.",
            "Move the port away from the edge."),
        new(nameof(HoleBehindLid), HoleBehindLid, "An inset head covers a hole of the shell.",
            "Move the port, or make the head's recess smaller."),
        new(nameof(HolesOverlap), HolesOverlap, "Two holes run into each other.", "Move one of the ports."),
        new(nameof(PortOverSeam), PortOverSeam, "A port stands over a seam of the shell or of a head.",
            "Turn the seam, or make the polar cap larger."),
        new(nameof(PortOffHead), PortOffHead, "A port reaches over the rim of its head.", "Move the port inward."),
        new(nameof(RadiiDoNotFit), RadiiDoNotFit, "Crown and knuckle of a torisphere do not meet in a dish of its diameter.",
            "Make the knuckle less, and the crown more, than the inside radius."),
        new(nameof(ConeTipOpen), ConeTipOpen, "No port closes a cone's tip, or only one that is too narrow for its wall.",
            "Put a port at the cone's pole, at radius 0."),
        new(nameof(BungTooThin), BungTooThin, "A bung has too little metal round its thread.",
            "Make its outside diameter larger."),
        new(nameof(PortTooShort), PortTooShort, "A port's free end does not clear the outside of its host.",
            "Make the port longer."),
        new(nameof(PortTooDeep), PortTooDeep, "A port's inner end meets the far side of the vessel.",
            "Make its inside length smaller, or use inner_end: flush."),
        new(nameof(InnerHeightMissed), InnerHeightMissed, "A port's axis never comes to the height on which its inner end is to stand.",
            "Give inside_length instead, or a height that lies further in."),
        new(nameof(FlushEndInside), FlushEndInside, "An inner end is to be flush and also to reach in.",
            "Delete inside_length, or use inner_end: square."),
        new(nameof(EndOutsideHost), EndOutsideHost, "The square inner end of a set-in port stays outside its host for part of the way "
            + "round, so that its hole is open.",
            "Give a longer inside_length or none, or use inner_end: flush."),
        new(nameof(HoleSawNotMade), HoleSawNotMade, "No hole saw is made of the shell's diameter.", "Use cut: ground or cut: square."),
        new(nameof(ElbowTooSharp), ElbowTooSharp, "An elbow turns too far at one mitre.", "Use more pieces, or a smaller angle."),
        new(nameof(ElbowClosesUp), ElbowClosesUp, "The pieces of an elbow leave each other no room on the inside of the bend.",
            "Use a larger radius, a longer end, or fewer pieces."),
        new(nameof(DipstickDoesNotBend), DipstickDoesNotBend, "The port that a dipstick stands in has an elbow.",
            "Leave out the elbow, or name another port."),
        new(nameof(DipstickTooWide), DipstickTooWide, "The dipstick does not pass through the bore of its port.",
            "Make the dipstick narrower, or the port wider."),
        new(nameof(NotAWholeNumber), NotAWholeNumber, "A count is not a whole number.", "Use a whole number."),
        new(nameof(UnknownPlace), UnknownPlace, "The path of a setting or variant leads to no value.",
            "Write the keys that lead to the value, as 'ports[0].tube.wall' or 'ports.inlet.length'."),
        new(nameof(UnknownVariant), UnknownVariant, "The file has no variant of the name that is asked for.",
            "Use a name under 'variants'."),
        new(nameof(UnknownFinding), UnknownFinding, "The accepted code is not the code of a finding.",
            "Use the code as it is reported."),
        new(nameof(NothingToAccept), NothingToAccept, "The file accepts a finding that it does not have.",
            "Delete it from 'accept'."),
        new(nameof(ErrorAccepted), ErrorAccepted, "A finding of severity error is accepted.",
            "Put the fault right: only warnings and notes can be accepted."),
        new(nameof(PartNotFound), PartNotFound,
            "A part is named that is not in the file, or not where it would have to be.",
            "Correct the name, or add the part."),
        new(nameof(HangsFromDome), HangsFromDome, "A cap or sleeve hangs from a head that is not flat.",
            "Make the head flat, or leave the part out."),
        new(nameof(CapNotCarried), CapNotCarried,
            "The outlet's tube does not reach the plate of a cap that opens down.",
            "Make the tube's inside length larger, or the drop smaller."),
        new(nameof(TooWideInside), TooWideInside, "A cap or sleeve is wider than the bore that it stands in.",
            "Make it narrower."),
        new(nameof(OutsideTheInside), OutsideTheInside,
            "A part reaches beyond the room inside the vessel, or beyond the sleeve that it stands in.",
            "Move it, or make it shorter."),
        new(nameof(DiscDoesNotFit), DiscDoesNotFit,
            "A disc is larger than the bore it fits without being pressed in, or its clearance leaves none.",
            "Change its clearance."),
        new(nameof(PartsCollide), PartsCollide, "Two parts inside the vessel take up the same place.",
            "Move one of them, or make an opening for it."),
        new(nameof(WindowsOverlap), WindowsOverlap, "Windows leave less than one wall of metal between them.",
            "Use fewer or narrower windows."),
        new(nameof(WindowNearEnd), WindowNearEnd, "A window leaves less than one wall of metal above or below it.",
            "Make the window lower, or move it."),
        new(nameof(WindowCornerTooLarge), WindowCornerTooLarge,
            "The corners of a window are larger than half of its smaller side.",
            "Make the corner's radius smaller."),
        new(nameof(WindowOverSeam), WindowOverSeam, "A window stands over the seam of a rolled skirt.",
            "Turn the seam."),
        new(nameof(WindowsNotInside), WindowsNotInside, "A port's tube does not stand free inside far enough for windows.",
            "Set it in with an inside length."),
        new(nameof(BoreTooWide), BoreTooWide, "The opening in the middle of a disc or plate leaves no plate.",
            "Make the opening smaller."),
        new(nameof(HolesTouch), HolesTouch, "The pitch of a pattern is no larger than its holes.",
            "Make the pitch larger or the holes smaller."),
        new(nameof(NoHoleFits), NoHoleFits, "Not one whole hole of a pattern fits the plate.",
            "Make the holes, the margin or the opening smaller."),
        new(nameof(TooManyHoles), TooManyHoles, "A pattern has more holes than the tool can handle.",
            "Use larger holes and pitch."),
        new(nameof(PackingNotBetween), PackingNotBetween,
            "The two discs of a packing do not stand one above the other in one bore.",
            "Name the lower disc first, and discs of one bore."),
        new(nameof(BracketTooWide), BracketTooWide, "A bracket reaches beside the shell.", "Make it narrower."),
        new(nameof(BracketOffShell), BracketOffShell, "A bracket reaches beyond an end of the shell.",
            "Move it, or make it lower."),
        new(nameof(PlateTooShort), PlateTooShort, "A bracket's plate does not clear the shell that it stands on.",
            "Make it deeper or narrower, or its offset smaller."),
        new(nameof(PlateCornerTooLarge), PlateCornerTooLarge, "The corners of a bracket's plate are larger than the plate.",
            "Make their radius smaller."),
        new(nameof(EarTooShort), EarTooShort, "A bracket stands so near the shell that its bends leave no ear.",
            "Make the stand-off larger or the bend sharper."),
        new(nameof(BoltOffPlate), BoltOffPlate, "A bolt's washer does not lie wholly on the flat of the bracket.",
            "Move the bolts inward, or make the plate larger."),
        new(nameof(BoltHolesOverlap), BoltHolesOverlap, "Two bolt holes or slots run into each other.",
            "Set the bolts further apart, or make the slots shorter."),
        new(nameof(BracketOverPort), BracketOverPort, "A bracket stands over a port.", "Move one of the two."),
        new(nameof(StrapGapTooWide), StrapGapTooWide, "The halves of a strap stand so far apart that they do not reach round the shell.",
            "Make the gap smaller."),
        new(nameof(TabsDoNotFit), TabsDoNotFit, "A bracket's tabs find no room on its edge, or stand too little out of it.",
            "Use fewer or narrower tabs."),
        new(nameof(SlotInTheWay), SlotInTheWay, "A slot for a tab lies too near to a hole, a seam, another slot or an end of the shell.",
            "Move the bracket, or the part in the way."),
        new(nameof(GoresDoNotFit), GoresDoNotFit, "The polar cap leaves no gores, or gores too narrow at their tips.",
            "Change the cap's diameter or the number of gores."),
        new(nameof(SegmentsDoNotFit), SegmentsDoNotFit, "The segments of a cone are too narrow at their tips.",
            "Use fewer segments, or a wider port at the pole."),
        new(nameof(ConeFromTube), ConeFromTube, "A shell that is a frustum is to be cut from tube.", "Roll it from sheet."),
        new(nameof(ShellConeAngle), ShellConeAngle, "A conical part of the shell is hardly a cone, or too flat to be rolled.",
            "Make its diameters differ more, or make it longer."),
        new(nameof(ReducerOffShell), ReducerOffShell, "A reducer leaves no straight shell below or above it.",
            "Move it, make it shorter, or make the shell higher."),
        new(nameof(PortAcrossGirth), PortAcrossGirth, "A port stands over the seam between two parts of the shell.",
            "Move it up or down, or make it smaller."),
        new(nameof(BracketOnCone), BracketOnCone, "A bracket stands on a conical part of the shell.",
            "Move it to a cylindrical part."),
        new(nameof(LettersTooDeep), LettersTooDeep, "Letters are sunk so deep into a print that less than its least wall is left.",
            "Raise them, or make letter_depth or the print's wall less."),
        new(nameof(DiscInCone), DiscInCone, "A disc that fits the shell stands in a conical part of it.",
            "Move it to a cylindrical part, or let it fit a sleeve."),
    ];
}

/// <summary>A row of the table of faults.</summary>
/// <param name="Constant">Name of the constant.</param>
/// <param name="Code">The word that the user sees.</param>
/// <param name="Cause">When it is reported.</param>
/// <param name="Remedy">What to change, in general; each fault says it in particular.</param>
public sealed record FaultCode(string Constant, string Code, string Cause, string Remedy);
