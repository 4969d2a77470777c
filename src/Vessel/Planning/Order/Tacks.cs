using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Joints;

namespace Vessel.Planning;

/// <summary>The tacks of a joint.</summary>
/// <param name="Length">Length of each, mm.</param>
/// <param name="Places">Places in the order in which they are set: degrees round a round joint, mm along a straight one.</param>
public sealed record Tacks(double Length, ImmutableArray<double> Places)
{
    /// <summary>
    /// Evenly, about every 20 walls, at least every 60 mm; round joints have an even number of four or more, opposite ones
    /// after each other, straight ones both ends. Three walls long. Common practice for thin sheet, no source; short,
    /// balanced tacks: TWI, tack welding to minimise distortion. A joint that is only tacked has its own beads.
    /// </summary>
    public static Tacks Of(WeldFigures weld)
    {
        var joint = weld.Joint;
        if (joint.IsTacked)
            return new(0, []);
        var wide = Math.Clamp(20 * joint.Wall, 20, 60);
        var length = Math.Clamp(3 * joint.Wall, 3, 15);
        var spaces = (int)Math.Min(1000, Math.Ceiling((weld.Length / wide) - 1e-9));
        if (joint.IsRound)
        {
            var pairs = Math.Max(2, (spaces + 1) / 2);
            var places = Spread(pairs).SelectMany(i => new[] { i, i + pairs }).Select(i => 360.0 * i / (2 * pairs));
            return new(length, [.. places.Where(place => joint.Welded.Any(run => run.Contains(place * Math.PI / 180)))]);
        }

        var count = Math.Max(1, spaces);
        return new(length, [.. Spread(count + 1).Select(i => joint.Domain.Start + (joint.Domain.Length * i / count))]);
    }

    /// <summary>0 to n - 1 so that each lies far from those before it: ends first, then halves.</summary>
    private static IEnumerable<int> Spread(int n)
    {
        var done = new bool[n];
        for (var step = Math.Max(1, n - 1); ; step = (step + 1) / 2)
        {
            for (var i = 0; i < n; i += step)
            {
                if (!done[i])
                {
                    done[i] = true;
                    yield return i;
                }
            }

            if (step == 1)
                yield break;
        }
    }

    public string Text(Joint joint)
    {
        if (Places.IsEmpty)
            return "the beads are short enough to be their own tacks";
        var unit = joint.IsRound ? "deg" : "mm";
        var places = string.Join(", ", Places.Select(place => FormattableString.Invariant($"{place:0}")));
        return FormattableString.Invariant($"{Places.Length} tacks of {Length:0} mm at {places} {unit}, in this order");
    }
}
