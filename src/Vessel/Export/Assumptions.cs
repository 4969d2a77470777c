using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Export;

/// <summary>What the figures rest on, in plain words, for the report and the summary.</summary>
internal static class Assumptions
{
    public static ImmutableArray<string> Of(Assembly assembly)
    {
        var design = assembly.Design;
        List<string> all =
        [
            "Leg of a fillet on a right angle = the thinner wall; throat kept constant as the angle changes (common practice, no source).",
            "Deposited metal is the flat-faced section along the path of its centroid; gaps are reported, not filled.",
            "Cap and root of a butt: 1.875 x 0.3125 and 1.25 x 0.25 of the wall (common practice, no source).",
            "98 % of the melted rod stays; length and stub of a rod are among the shop's figures.",
            "Welding time: arc time over the shop's arc share. Cutting, fitting, tacking and cleaning are not in it.",
            "Capacity: still oil, level in all rooms at once; bungs plugged, tubes open; bores through the walls do not count.",
            "Leans unless the file gives others: 15 deg, the lasting list that ships' machinery must stand by IACS UR M46 (from memory), and twice that, which is also 0.58 g sideways.",
            "Order of assembly, tacks, preheat and distortion notes: common practice, no source, but where one is named; amps and gas are a start for a trial on scrap.",
            "Solids are drawn closed, as welded, without weld metal and without threads.",
        ];
        if (design.Shell.MadeFrom == StockForm.Sheet)
            all.Add("Shell blank on the mean diameter, less the root gap; no allowance for weld shrinkage or for the flat ends that rolls leave.");
        var domes = new[] { design.Top, design.Bottom }.OfType<HemisphereHead>().ToList();
        if (domes.Exists(dome => dome.Gores is null))
            all.Add("Blank of a half sphere by equal area; spinning thins the wall.");
        if (design.Bracket is not null)
            all.Add("Bracket flat: legs and bend allowances with the K given for every bend; ears' ends cut square through the sheet.");
        if (domes.Exists(dome => dome.Gores is not null))
            all.Add("Gores of equal girth on the mean sphere with straight ends, drawn dished; seams fitted tight; blank of the polar cap by equal area.");
        return [.. all];
    }
}
