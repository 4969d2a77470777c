using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>What hangs from the top goes in from above, and may not pass what reaches in through the shell.</summary>
/// <remarks>
/// Everything inside goes all round the axis, so turning it on its way changes nothing: it is tried along the axis only. Its
/// way is each of its rings, drawn out to the shell's upper end.
/// </remarks>
internal static class InsertionRules
{
    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        var design = assembly.Design;
        var ways = InsideSpec.BodiesIn(design)
            .Select(body => body with { Rings = [.. body.Rings.Select(ring => ring with { High = InsideRoom.UpperEnd(design) })] })
            .ToList();
        foreach (var site in assembly.Sites.Where(site => site.Port is { Host: PortHost.Shell, InsideLength: > 0 }))
        {
            var (port, lines) = (site.Port, new TubeLines(site));
            var first = ways.Select(way => new { way.Name, Reach = lines.FirstMeeting(way) })
                .Where(met => met.Reach is not null)
                .MinBy(met => met.Reach);
            if (first is not { Name: var name, Reach: { } reach })
                continue;
            yield return new(
                FindingCodes.InsertBeforePort,
                Severity.Warning,
                [Slug.Of(name), Slug.Of(port.Name)],
                () => $"'{name}' goes in from above, tried along its axis and turning about it, and does not pass the inner end of "
                + $"'{port.Name}': put '{port.Name}' in "
                + $"after it, or let it reach in by no more than {NoteText.Length(reach)} mm.",
                [new("inside length", port.InsideLength, AtMost(reach), "mm")],
                design.PlaceOf($"{port.Path}.inside_length"),
                $"inside length of '{port.Name}' in the way of '{name}'");
        }
    }
}
