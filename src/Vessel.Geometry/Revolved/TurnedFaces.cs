using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>What is left out of a turned surface: the edges round it and the stretch of the profile that it takes up.</summary>
/// <param name="Edges">One closed edge, or a ring of open ones.</param>
/// <param name="Stations">Arc lengths of the profile, with whatever room is to be kept on both sides.</param>
/// <param name="Angle">About which it lies, radians; it covers less than half a turn to both sides, or a pole.</param>
public sealed record Opening(ImmutableArray<Edge3> Edges, Interval Stations, double Angle);

/// <summary>
/// The surface of a body of revolution, closed at both poles, less openings. It is parted into skins along circles that no
/// opening comes near: at the joints of the profile where that can be, so that each piece gets its own chart.
/// </summary>
public static class TurnedFaces
{
    /// <summary>
    /// Stations of the circles; null when openings leave none free between the poles. Joints that lie beside an opening are left
    /// out, so that a smooth one may be crossed; a corner may not.
    /// </summary>
    public static ImmutableArray<double>? Circles(Profile profile, ImmutableArray<Interval> taken)
    {
        bool IsFree(double station) => !taken.Any(stretch => stretch.Contains(station));
        var joints = profile.Joints.Where(IsFree).ToImmutableArray();
        if (!joints.IsEmpty)
            return joints;
        // Any level between the poles will do; the middle of the longest free stretch keeps furthest from all.
        var ends = taken.SelectMany(stretch => new[] { stretch.Start, stretch.End }).Append(0).Append(profile.Length)
            .Where(s => s >= 0 && s <= profile.Length).Order().ToList();
        var free = ends.Zip(ends.Skip(1)).Where(pair => pair.Second > pair.First && IsFree((pair.First + pair.Second) / 2))
            .OrderByDescending(pair => pair.Second - pair.First).ToList();
        return free.Count == 0 ? null : [(free[0].First + free[0].Second) / 2];
    }

    /// <param name="outward">Whether the metal lies inside; else the body is a room in it.</param>
    /// <exception cref="ArgumentException">No circle is free.</exception>
    public static ImmutableArray<Face> Of(Profile profile, ImmutableArray<Opening> openings, bool outward)
    {
        var circles = Circles(profile, [.. openings.Select(opening => opening.Stations)])
            ?? throw new ArgumentException("openings leave no free circle round the body");
        var edges = circles.Select(station => Edge3.Circle(profile.At(station).U, profile.At(station).V)).ToList();
        var faces = ImmutableArray.CreateBuilder<Face>(circles.Length + 1);
        for (var i = 0; i <= circles.Length; i++)
        {
            var along = new Interval(i == 0 ? 0 : circles[i - 1], i == circles.Length ? profile.Length : circles[i]);
            var zone = ProfileZone.Of(profile.Part(along));
            var bounds = ImmutableArray.CreateBuilder<Bound>();
            if (i > 0)
                bounds.Add(Round(edges[i - 1], zone));
            if (i < circles.Length)
                bounds.Add(Round(edges[i], zone));
            foreach (var opening in openings.Where(opening => along.Contains((opening.Stations.Start + opening.Stations.End) / 2)))
                bounds.AddRange(opening.Edges.Select(edge => new Bound(edge, t => zone.ChartOf(edge.At(t), opening.Angle))));
            faces.Add(new Skin(zone.On, bounds.ToImmutable(), zone.Outward == outward));
        }

        return faces.MoveToImmutable();
    }

    /// <summary>A whole circle; its parameter is the angle.</summary>
    private static Bound Round(Edge3 circle, ProfileZone zone) => new(
        circle, t => zone.ChartOf(circle.At(t), Math.PI), zone.On.Period is null ? 0 : 1);
}
