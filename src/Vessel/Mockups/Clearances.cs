using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Mockups;

/// <summary>Whether everything that is attached meets the vessel cleanly and keeps clear of everything else.</summary>
internal static class Clearances
{
    /// <summary>A line that meets a surface more flatly grazes it, as a sine: below it facets of both would cross.</summary>
    private const double LeastSteepness = 0.05;

    public static IEnumerable<Obstacle> Of(MockupPlan plan)
    {
        var (outside, inside, ports) = (plan.Outside, plan.Inside, plan.Ports);
        List<Attached> attached =
        [
            .. ports.Select(Attached.Of),
            .. plan.Drains.Select(drain => Attached.Of(drain.Outside, drain)),
            .. plan.Members.Select(member => Attached.Of(member, outside)),
        ];
        var obstacles = attached.SelectMany(part => OnOutline(part, outside)).ToList();
        List<Attached> rooms =
        [
            .. ports.Where(port => port.Bore is not null).Select(Attached.BoreOf),
            .. plan.Drains.Select(drain => Attached.Of(drain.Inside, drain)),
        ];
        obstacles.AddRange(rooms.SelectMany(bore => OnOutline(bore, inside!)));
        obstacles.AddRange(
            ports.SelectMany(port => port.Site.Port.Elbow is null ? FittingOverVessel(port, outside) : ElbowOverVessel(port, outside)));
        // What does not lie properly has no distance to others.
        if (obstacles.Count > 0)
            return obstacles;
        obstacles.AddRange(Pairs(attached).SelectMany(pair => Apart(pair.A, pair.B)));
        obstacles.AddRange(Pairs(rooms).SelectMany(pair => FootprintsApart(pair.A, pair.B)));
        if (obstacles.Count == 0 && (!HasCircle(outside, attached) || (inside is not null && !HasCircle(inside, rooms))))
        {
            obstacles.Add(new(
                ["shell"], "between what is attached no level round the vessel is left free for its facets", null, "shell"));
        }

        return obstacles;
    }

    private static bool HasCircle(Profile profile, IEnumerable<Attached> parts) =>
        TurnedFaces.Circles(profile, [.. parts.SelectMany(part => part.Footprints).Select(print => print!.Taken)]) is not null;

    private static IEnumerable<Obstacle> OnOutline(Attached part, Profile profile)
    {
        foreach (var print in part.Footprints)
        {
            if (print is null)
            {
                yield return new([part.Id], $"{part.What} passes beside the vessel for a part of its width", null, part.Path);
            }
            else if (print.Steepness < LeastSteepness)
            {
                yield return new(
                    [part.Id],
                    $"{part.What} meets the vessel at {Math.Round(Turns.ToDegrees(Math.Asin(Math.Max(0, print.Steepness))), 1)} deg where "
                    + "it is "
                    + $"flattest: it grazes below {Math.Round(Turns.ToDegrees(Math.Asin(LeastSteepness)), 1)} deg",
                    null,
                    part.Path);
            }
            else if (Corners(profile, print) is var distance && distance < Obstacle.Least)
            {
                yield return new(
                    [part.Id],
                    distance == 0 ? $"{part.What} lies across an edge of the vessel's outline"
                        : $"{part.What} comes near to an edge of the vessel's outline",
                    distance,
                    part.Path);
            }
        }
    }

    /// <summary>
    /// Distance from the footprint, or that of all within reach of it, to the nearest corner of the profile; zero across one.
    /// </summary>
    private static double Corners(Profile profile, Footmark print)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i + 1 < profile.Pieces.Length; i++)
        {
            if (!profile.IsCorner(i))
                continue;
            var corner = profile.Joints[i];
            if (print.Wide.Contains(corner))
                return 0;
            least = Math.Min(least, Math.Max(print.Stations.Start - corner, corner - print.Stations.End));
        }

        return least;
    }

    /// <summary>Beyond the tube's end a fitting reaches wider than its footprint: there too the vessel must lie below it.</summary>
    private static IEnumerable<Obstacle> FittingOverVessel(PortForm port, Profile outside)
    {
        if (FittingEnvelope.Of(port.Site.Port) is not { } fitting)
            yield break;
        const int samples = 36;
        var own = port.Site.Port.OuterRadius;
        var greatest = double.NegativeInfinity;
        foreach (var share in (double[])[0.25, 0.5, 0.75, 1])
        {
            var radius = own + (share * (fitting.Radius + Obstacle.Least - own));
            for (var i = 0; i < samples && radius > own; i++)
            {
                var (x, y) = Point2.Polar(radius, Turns.Full * i / samples);
                if (outside.FirstHit(port.Site.Frame.ToOuter(new(x, y, 0)), -port.Site.Frame.Z) is { } hit)
                    greatest = Math.Max(greatest, (hit.At - port.Site.Frame.Origin).Dot(port.Site.Frame.Z));
            }
        }

        var gap = port.Site.Port.Length - greatest;
        if (gap < Obstacle.Least)
        {
            yield return new(
                [port.Id], $"the fitting of '{port.Site.Port.Name}' runs into the vessel beside its tube", Math.Max(0, gap),
                port.Site.Port.Path);
        }
    }

    private static IEnumerable<Obstacle> ElbowOverVessel(PortForm port, Profile outside)
    {
        var away = TubeBodies.ElbowFromVessel(outside, port.Site);
        return away >= Obstacle.Least
            ? []
            : [new([port.Id], $"the elbow of '{port.Site.Port.Name}' runs into the vessel", Math.Max(0, away), port.Site.Port.Path)];
    }

    private static IEnumerable<Obstacle> Apart(Attached a, Attached b)
    {
        // Most pairs are far from each other; yet on a steep cone a footprint may lie all round one that is far below it.
        var air = a.Around.DistanceTo(b.Around) > Obstacle.Least ? double.PositiveInfinity : a.DistanceInAir(b);
        return FootprintsApart(a, b).Concat(air >= Obstacle.Least
            ? []
            : [new Obstacle([a.Id, b.Id],
                air == 0 ? $"{a.What} and {b.What} run into each other" : $"{a.What} and {b.What} come close in the air", air, b.Path)]);
    }

    private static IEnumerable<Obstacle> FootprintsApart(Attached a, Attached b)
    {
        var distance = a.Footprints.Min(one => b.Footprints.Min(other => one!.DistanceTo(other!)));
        return distance >= Obstacle.Least
            ? []
            : [new([a.Id, b.Id], $"{a.What} and {b.What} come together on the vessel", distance, b.Path)];
    }

    private static IEnumerable<(Attached A, Attached B)> Pairs(List<Attached> parts) =>
        from later in Enumerable.Range(0, parts.Count)
        from earlier in Enumerable.Range(0, later)
        select (parts[earlier], parts[later]);
}
