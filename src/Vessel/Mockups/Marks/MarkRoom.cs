using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>Where marks may still stand: inside their ground and away from all that is attached and from each other.</summary>
/// <param name="scale">Scale of the print to the vessel.</param>
/// <param name="rise">Height of the marks, mm of the vessel; below zero they are sunk.</param>
internal sealed class MarkRoom(MockupPlan plan, double scale, double rise)
{
    /// <summary>Chart points along each side of a box.</summary>
    private const int Samples = 12;

    /// <summary>A mark goes round no more than so much of the girth to either side, or it cannot be read.</summary>
    private const double Widest = 0.35 * Math.PI;

    private readonly List<MarkBlock> _blocks =
    [
        .. plan.Ports.Select(port => MarkBlock.Of(Attached.Of(port), port.Angle)),
        .. plan.Drains.Select(drain => MarkBlock.Of(Attached.Of(drain.Outside, drain), drain.Angle)),
        .. plan.Members.Select(member => MarkBlock.Of(Attached.Of(member, plan.Outside), member.Angle)),
    ];

    /// <summary>Whether some corner or joint of the outline is left free, so that marks move no circle between its facets.</summary>
    public bool HasCircle => plan.Outside.Joints.Any(joint => !_blocks.Any(block =>
        joint >= block.Stations.Start - Obstacle.Least && joint <= block.Stations.End + Obstacle.Least));

    /// <summary>
    /// Distance to keep from footprints and other marks, mm of the vessel: more than the least distance of footprints, which are sampled.
    /// </summary>
    public double Clear { get; } = Math.Max(1 / scale, 2.5 * Obstacle.Least);

    /// <summary>Distance to keep from the ground's own edges; what is sunk stays away from the wall beyond.</summary>
    public double Edge { get; } = Math.Max(1.5 / scale, 2.5 * Obstacle.Least) + Math.Max(0, -rise);

    public MarkBlock Of(PortForm port) => _blocks[plan.Ports.IndexOf(port)];

    public bool Holds(MarkChart chart, Box2 box)
    {
        var ground = chart.Ground;
        if (ground.IsFlat)
        {
            if (Corners(box).Max(corner => corner.Length) > ground.Radius - Edge)
                return false;
        }
        else if (box.Min.V < ground.Stations.Start + Edge || box.Max.V > ground.Stations.End - Edge
            || Math.Max(-box.Min.U, box.Max.U) > Widest * chart.Radius)
        {
            return false;
        }

        return _blocks.All(block => chart.BoxOf(block.Points, block.Stations, block.Angle) is not { } other || Apart(box, other))
            && IsFreeInAir(chart, box);
    }

    /// <summary>Stations of a ground that a strip about the chart's angle leaves free, upward.</summary>
    public IEnumerable<Interval> Free(MarkChart chart, double width)
    {
        var from = chart.Ground.Stations.Start + Edge;
        var taken = _blocks.Select(block => chart.BoxOf(block.Points, block.Stations, block.Angle))
            .OfType<Box2>()
            .Where(box => box.Min.U < (width / 2) + Clear && box.Max.U > (-width / 2) - Clear)
            .OrderBy(box => box.Min.V);
        foreach (var box in taken)
        {
            if (box.Min.V - Clear > from)
                yield return new(from, box.Min.V - Clear);
            from = Math.Max(from, box.Max.V + Clear);
        }

        if (chart.Ground.Stations.End - Edge > from)
            yield return new(from, chart.Ground.Stations.End - Edge);
    }

    /// <summary>What stands there is in the way of what comes later.</summary>
    public void Take(MarkChart chart, Box2 box) =>
        _blocks.Add(new([.. Rim(box).Select(p => chart.At(p, 0))], chart.StationsOf(Corners(box)), chart.Angle, null));

    /// <summary>
    /// Nothing that leans over it comes near, so that it can be read; what is flat enough lies inside the hull of its corners.
    /// </summary>
    public bool IsFreeInAir(MarkChart chart, Box2 box)
    {
        var hull = new Hull([.. Rim(box).Select(p => chart.At(p, Math.Max(0, rise)))]);
        var around = Ball.Round([hull]);
        return _blocks.All(block => block.Body is not { } body
            || body.Around.DistanceTo(around) > Clear
            || body.Bodies.All(other => ConvexDistance.Between(hull, other).Start >= Clear));
    }

    private bool Apart(Box2 a, Box2 b) =>
        a.Min.U > b.Max.U + Clear || b.Min.U > a.Max.U + Clear || a.Min.V > b.Max.V + Clear || b.Min.V > a.Max.V + Clear;

    private static ImmutableArray<Point2> Corners(Box2 box) =>
        [box.Min, new(box.Max.U, box.Min.V), box.Max, new(box.Min.U, box.Max.V)];

    private static IEnumerable<Point2> Rim(Box2 box)
    {
        var corners = Corners(box);
        return from side in Enumerable.Range(0, 4)
               from i in Enumerable.Range(0, Samples)
               select corners[side] + ((double)i / Samples * (corners[(side + 1) % 4] - corners[side]));
    }
}
