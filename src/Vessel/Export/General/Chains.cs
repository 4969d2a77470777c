using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export.General;

/// <summary>Single segments joined to lines, so that a drawing has hundreds of strokes and not thousands.</summary>
internal static class Chains
{
    /// <summary>Ends as near as this are one, mm.</summary>
    private const double Same = 1e-3;

    /// <param name="off">Points nearer than this to the line between their neighbours are left out, mm.</param>
    public static IEnumerable<ImmutableArray<Point2>> Of(IReadOnlyList<(Point2 A, Point2 B)> segments, double off)
    {
        var ends = new Dictionary<(long, long), List<int>>();
        for (var i = 0; i < segments.Count; i++)
        {
            foreach (var end in new[] { segments[i].A, segments[i].B })
            {
                if (!ends.TryGetValue(Key(end), out var here))
                    ends[Key(end)] = here = [];
                here.Add(i);
            }
        }

        var used = new bool[segments.Count];
        for (var i = 0; i < segments.Count; i++)
        {
            if (used[i])
                continue;
            used[i] = true;
            var line = new LinkedList<Point2>([segments[i].A, segments[i].B]);
            while (Next(line.Last!.Value) is { } after)
                line.AddLast(after);
            while (Next(line.First!.Value) is { } before)
                line.AddFirst(before);
            yield return Simplified([.. line], off);
        }

        Point2? Next(Point2 from)
        {
            foreach (var other in ends[Key(from)])
            {
                if (used[other])
                    continue;
                used[other] = true;
                return Key(segments[other].A) == Key(from) ? segments[other].B : segments[other].A;
            }

            return null;
        }
    }

    private static (long, long) Key(Point2 p) => ((long)Math.Round(p.U / Same), (long)Math.Round(p.V / Same));

    private static ImmutableArray<Point2> Simplified(List<Point2> line, double off)
    {
        var kept = ImmutableArray.CreateBuilder<Point2>(line.Count);
        kept.Add(line[0]);
        var from = 0;
        for (var i = 1; i + 1 < line.Count; i++)
        {
            var along = line[i + 1] - line[from];
            var most = off * along.Length;
            // Few points at a time: what is left out is looked at again for each next one.
            var straight = i - from < 40 && along.Length > 1e-9;
            for (var k = from + 1; straight && k <= i; k++)
            {
                // A line that turns back on itself, as a circle seen from its edge, keeps its far end.
                straight = Math.Abs(along.Cross(line[k] - line[from])) < most
                    && along.Dot(line[k] - line[from]) > 0 && along.Dot(line[i + 1] - line[k]) > 0;
            }

            if (straight)
                continue;
            kept.Add(line[i]);
            from = i;
        }

        kept.Add(line[^1]);
        return kept.ToImmutable();
    }
}
