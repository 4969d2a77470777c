using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>What takes up room on the outside.</summary>
/// <param name="Points">Points of its footprints.</param>
/// <param name="Stations">Arc lengths that it takes up; of several feet, with what lies between them.</param>
/// <param name="Angle">Angle from which it lies within half a turn.</param>
/// <param name="Body">Null where nothing stands out.</param>
internal sealed record MarkBlock(ImmutableArray<Vector3> Points, Interval Stations, double Angle, Attached? Body)
{
    public static MarkBlock Of(Attached part, double angle)
    {
        var marks = part.Footprints.Select(mark => mark!.Place).ToList();
        return new(
            [.. marks.SelectMany(mark => mark.Points)],
            new(marks.Min(mark => mark.Stations.Start), marks.Max(mark => mark.Stations.End)),
            angle,
            part);
    }
}
