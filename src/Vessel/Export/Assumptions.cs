using System.Collections.Immutable;
using Vessel.Function;
using Vessel.Stock;

namespace Vessel.Export;

/// <summary>What the figures rest on, in plain words, for the report and the summary.</summary>
internal static class Assumptions
{
    public static ImmutableArray<string> Of(Assembly assembly)
    {
        var design = assembly.Design;
        List<string> all =
        [
            "Leg of a fillet on a right angle = the thinner wall; throat kept constant as the angle changes [practice].",
            "Deposited metal is the flat-faced section along the path of its centroid; gaps are reported, not filled.",
            "Cap and root of a butt: 1.875 x 0.3125 and 1.25 x 0.25 of the wall [practice].",
            "98 % of the melted rod stays; length and stub of a rod are among the shop's figures.",
            "Welding time: arc time over the shop's arc share. Cutting, fitting, tacking and cleaning are not in it.",
            $"Capacity: still {design.Flow.Liquid.Word}, level in all rooms at once; bores through the walls do not count"
                + (design.Ports.Any(port => port.Purpose is null)
                    ? "; a port that does not say its purpose is open if it is a tube, plugged if it is a bung." : "."),
            "Leans unless the file gives others: 15 deg, the lasting list that ships' machinery must stand by IACS UR M46 (not checked "
                + "against the source), and twice that, which is also 0.58 g sideways.",
            "Order of assembly, tacks, preheat and distortion notes: [practice], but where a source is named; amps and gas are a start for "
                + "a trial on scrap.",
            "Times: the shop's rates for one of a kind; bought finishes and spinning are not in them; laser: the machine's minutes and "
                + "sorting its parts.",
            "Solids are drawn closed, as welded, without weld metal and without threads.",
        ];
        if (design.Shell.Courses.Any(course => course.IsRolled))
            all.Add("Shell blank on the mean diameter, less the root gap; no allowance for weld shrinkage or for the flat ends that rolls "
                + "leave.");
        var walls = assembly.Chamber.Heads.SelectMany(head => head.Assumptions).Distinct().OrderBy(assumption => assumption.Place).ToList();
        all.AddRange(walls.Where(assumption => assumption.Place < Assumption.Last).Select(assumption => assumption.Text));
        all.AddRange(assembly.Members.SelectMany(member => member.Assumptions).Distinct());
        all.AddRange(walls.Where(assumption => assumption.Place >= Assumption.Last).Select(assumption => assumption.Text));
        all.Add($"Marks of sources: {string.Join("; ", Sources.Legend(Sources.All.Select(source => source.Mark)))}.");
        return [.. all];
    }
}
