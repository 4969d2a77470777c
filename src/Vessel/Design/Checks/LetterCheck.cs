namespace Vessel.Design;

/// <summary>Letters that are sunk through the wall of a print.</summary>
internal static class LetterCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var (options, shell, shown) = (design.Mockup, design.Shell, new UnitFormat(design.Units));
        // A wall that is thickened to the least has nothing to spare.
        var spare = Math.Max(0, (shell.Wall * options.Scale) - options.Wall);
        if (options.Names != PrintNames.Sunk || options.IsSolid || !(options.LetterDepth > spare))
            yield break;
        yield return new Fault(
            FaultCodes.LettersTooDeep,
            $"{options.Path}.names",
            $"Letters sunk into a shell that is printed {shown.Length(Math.Max(shell.Wall * options.Scale, options.Wall))} thick leave "
                + "less than its least wall.",
            shown.Length(options.LetterDepth),
            $"at most {shown.LengthDown(spare)}",
            "Let them be raised ('names: raised'), print it filled ('inside: solid'), or make 'letter_depth' or 'wall' less.");
    }
}
