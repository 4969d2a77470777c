using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>Where a footprint lies on a profile.</summary>
/// <param name="Place">Arc lengths that it takes up, and how steep the profile is there.</param>
/// <param name="Wide">Arc lengths that a section wider all round by the least distance takes up, as far as it meets the body, mm.</param>
internal sealed record Footmark(Imprint Print, ImprintPlace Place, Interval Wide)
{
    /// <summary>A quarter of a turn is a whole number of steps, so that the flattest lines are among those looked at.</summary>
    private const int Coarse = 36;

    private const int Fine = 144;

    public Interval Stations => Place.Stations;

    public double Steepness => Place.Steepness;

    /// <summary>
    /// Range it takes, with room on both sides for facets that are not needles; what goes round a pole takes all up to it.
    /// </summary>
    public Interval Taken
    {
        get
        {
            var (start, end) = (Stations.Start - Obstacle.Least, Stations.End + Obstacle.Least);
            return !GoesRoundPole ? new(start, end)
                : Stations.At(0.5) < Print.On.Length / 2 ? new(-Obstacle.Least, end)
                : new(start, Print.On.Length + Obstacle.Least);
        }
    }

    private bool GoesRoundPole
    {
        get
        {
            var angles = Place.Points.Select(at => Math.Atan2(at.Y, at.X)).ToList();
            return Math.Abs(angles.Zip(angles.Skip(1).Append(angles[0]), (from, to) => Turns.Signed(to - from)).Sum()) > Math.PI;
        }
    }

    private ImprintPlace Closely => Print.Place(Fine) ?? Place;

    private Ball Around => Ball.Round([new Hull(Place.Points)]);

    public static Footmark? Of(Imprint print, Func<double, Imprint> widened)
    {
        if (print.Place(Coarse) is not { } place)
            return null;
        // Without inner corners a line beside the section meets what lies beside the footprint.
        var wide = print.On.HasInnerCorner && widened(Obstacle.Least).Place(Coarse) is { } found ? found.Stations : place.Stations;
        return new(print, place, new(Math.Min(place.Stations.Start, wide.Start), Math.Max(place.Stations.End, wide.End)));
    }

    /// <summary>
    /// Between two footprints, mm: zero where one lies within the other, no more than a lower bound where they are far apart.
    /// </summary>
    public double DistanceTo(Footmark other)
    {
        if (Print.Covers(other.Place.Points[0]) || other.Print.Covers(Place.Points[0]))
            return 0;
        var apart = Around.DistanceTo(other.Around);
        // A coarse polygon stays within a hundredth of its size of the curve.
        return apart > Obstacle.Least + (0.01 * (Around.Radius + other.Around.Radius))
            ? apart
            : Closely.DistanceTo(other.Closely);
    }
}

/// <summary>Something that stands on the vessel, for questions of distance.</summary>
/// <param name="Id">Id of its part.</param>
/// <param name="What">Words for what it is.</param>
/// <param name="Footprints">Null where a line misses the vessel.</param>
/// <param name="Bodies">Outside the vessel, but for what <paramref name="Strands"/> tell.</param>
/// <param name="Strands">Lines of its surface between footprint and bodies.</param>
/// <param name="Around">Holds all of it.</param>
internal sealed record Attached(
    string Id,
    string What,
    string Path,
    ImmutableArray<Footmark?> Footprints,
    ImmutableArray<ConvexBody> Bodies,
    ImmutableArray<Hull> Strands,
    Ball Around)
{
    public static Attached Of(PortForm port)
    {
        var site = port.Site;
        var print = Mark(port.Outside);
        var top = print?.Place.Reach.End ?? 0;
        var bodies = port.Bodies(top);
        return new(
            port.Id,
            site.Port.Name,
            site.Port.Path,
            [print],
            bodies,
            [
                .. (print?.Place.Points ?? []).Select(point => new Hull(
                    [point, point + ((top - (point - site.Frame.Origin).Dot(site.Frame.Z)) * site.Frame.Z)])),
            ],
            Ball.Round(port.Bodies(print?.Place.Reach.Start ?? 0)));
    }

    /// <summary>The bore where it meets the room inside.</summary>
    public static Attached BoreOf(PortForm port) => new(
        port.Id, $"the bore of '{port.Site.Port.Name}'", port.Site.Port.Path, [Mark(port.Bore!)], [], [], default);

    /// <summary>A drain hole on the outside or inside.</summary>
    public static Attached Of(Imprint print, DrainForm drain)
    {
        var mark = Mark(print);
        return new(
            "bottom", "a drain hole", drain.Hole.Path, [mark], [], [], mark is null ? default : Ball.Round([new Hull(mark.Place.Points)]));
    }

    public static Attached Of(PrintForm member, Profile outside)
    {
        var marks = member.Feet(outside).Select(foot => Footmark.Of(foot, _ => foot)).ToImmutableArray();
        var reach = marks.Min(mark => mark?.Place.Reach.Start ?? 0);
        ImmutableArray<ConvexBody> hulls = [.. member.Hulls(reach)];
        return new(member.Id, member.Name, member.Path, marks, hulls, [], Ball.Round(hulls));
    }

    /// <summary>Between the parts of both that stand outside the vessel, mm; zero when they meet.</summary>
    public double DistanceInAir(Attached other)
    {
        var (mine, theirs) = (Bodies.Concat(Strands).ToList(), other.Bodies.Concat(other.Strands).ToList());
        return mine.Count == 0 || theirs.Count == 0
            ? double.PositiveInfinity
            : mine.Min(a => theirs.Min(b => ConvexDistance.Between(a, b).Start));
    }

    /// <summary>Footmark of a round section, which may be widened.</summary>
    private static Footmark? Mark(Imprint print) => Footmark.Of(
        print,
        by =>
        {
            var radius = print.Section.At(print.Section.Domain.Start).Length + by;
            return print with { Section = LoopPath.Of(Loop2.Circle(default, radius)) };
        });
}
