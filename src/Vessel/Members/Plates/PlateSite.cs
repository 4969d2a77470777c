using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Parts;

namespace Vessel.Members.Plates;

/// <summary>Where a plate stands on the shell, and its outline.</summary>
/// <remarks>
/// The flat: x along the coped edge, y towards the vessel, from the free edge. A level plate is seen from above so, x towards
/// increasing angle; rolled upright x runs up.
/// </remarks>
/// <param name="ShellRadius">Radius of the shell's outside, mm.</param>
/// <param name="BoreRadius">Radius of its inside, mm.</param>
public sealed record PlateSite(PlateDesign Bracket, double ShellRadius, double BoreRadius)
{
    public static PlateSite Of(PlateDesign bracket, VesselDesign vessel) =>
        new(bracket, vessel.Shell.OuterAt(bracket.Height), vessel.Shell.InnerAt(bracket.Height));

    public ImmutableArray<ShellTab> Tabs => ShellTab.Of(Bracket);

    public PlateCope Cope => new(Bracket, ShellRadius);

    /// <summary>
    /// The plate's directions on the vessel's axis, in the middle of the thickness: X along the edge, Y inward, Z square to it.
    /// </summary>
    public Frame3 Way
    {
        get
        {
            var (side, outward) = (Sideways, Outward);
            var (sin, cos) = Math.SinCos(Bracket.Roll);
            var along = (cos * side) + (sin * Vector3.UnitZ);
            return new(
                (Bracket.Height * Vector3.UnitZ) + (Bracket.Offset * side), along, -outward, (cos * Vector3.UnitZ) - (sin * side));
        }
    }

    /// <summary>The flat's place; the plate lies between z = 0 and its thickness.</summary>
    public Frame3 Frame => Way is var way
        ? way with { Origin = way.ToOuter(new(-Across / 2, -Cope.FreeLevel, -Bracket.Thickness / 2)) }
        : default;

    public Vector3 Outward => new(Math.Cos(Bracket.Angle), Math.Sin(Bracket.Angle), 0);

    public Vector3 Sideways => new(-Math.Sin(Bracket.Angle), Math.Cos(Bracket.Angle), 0);

    /// <summary>Width of the flat, mm.</summary>
    public double Across => Math.Max(Bracket.Width, Bracket.FreeWidth);

    /// <summary>Height of the flat: from the free edge to the lowest place of the cope or the end of a tab, mm.</summary>
    public double Deepest => Cope.FreeLevel - Tabs.Select(tab => tab.EndLevel(BoreRadius))
        .Append(Cope.Level(-Bracket.Width / 2)).Append(Cope.Level(Bracket.Width / 2)).Min();

    /// <summary>The pattern's middle on the flat.</summary>
    public Point2 Middle => OnFlat(0, Cope.Level(0) + Bracket.BoltsAt);

    /// <summary>The cut outline, counter-clockwise, from the free edge's left end.</summary>
    public Loop2 Outline
    {
        get
        {
            var (half, free) = (Bracket.Width / 2, Bracket.FreeWidth / 2);
            var right = OnFlat(half, Cope.Level(half));
            var left = OnFlat(-half, Cope.Level(-half));
            var (freeLeft, freeRight) = (OnFlat(-free, Cope.FreeLevel), OnFlat(free, Cope.FreeLevel));
            if (Bracket.Corner == 0)
                return new([new Line2(freeLeft, freeRight), new Line2(freeRight, right), .. Edge(), new Line2(left, freeLeft)]);
            var (first, second) = (Rounded(left, freeLeft, freeRight), Rounded(freeLeft, freeRight, right));
            return new(
                [first, new Line2(first.End, second.Start), second, new Line2(second.End, right), .. Edge(), new Line2(left, first.Start)]);
        }
    }

    /// <summary>Middles of the bolt holes on the flat, row by row from the lower left.</summary>
    public ImmutableArray<Point2> BoltPlaces => BoltHole.Places(Bracket.Bolts, Middle);

    /// <summary>A place of the plate on the flat.</summary>
    /// <param name="u">Along the coped edge from its middle.</param>
    /// <param name="level">Distance from the vessel's axis outward.</param>
    public Point2 OnFlat(double u, double level) => new(u + (Across / 2), Cope.FreeLevel - level);

    /// <summary>The coped edge on the flat from its right end to its left one, with its tabs.</summary>
    private ImmutableArray<Curve2> Edge() =>
        new TabbedEdge(Between, ShellRadius, BoreRadius).Walk(Bracket.Width / 2, -Bracket.Width / 2, Tabs);

    /// <summary>The edge coped to a cylinder, from a place to one further left.</summary>
    private IEnumerable<Curve2> Between(double radius, double right, double left)
    {
        var cope = new PlateCope(Bracket, radius);
        if (Bracket.Roll == 0)
        {
            var (start, end) = (Math.Asin(cope.Aside(right) / radius), Math.Asin(cope.Aside(left) / radius));
            // Of the shell's circle, whose middle lies on its axis; on the flat outward is down.
            yield return new Arc2(OnFlat(-Bracket.Offset, 0), radius, (-Math.PI / 2) + start, end - start);
            yield break;
        }

        double[] ends = [right, .. cope.Breaks().Where(u => u < right && u > left).OrderDescending(), left];
        for (var i = 0; i + 1 < ends.Length; i++)
        {
            var (from, to) = (ends[i], ends[i + 1]);
            Point2 At(double u) => OnFlat(u, cope.Level(u));
            yield return Math.Abs(cope.Slope((from + to) / 2)) < 1e-12
                ? new Line2(At(from), At(to))
                : new GraphCurve2(t => At(from + (t * (to - from))),
                    t => (to - from) * new Point2(1, -cope.Slope(from + (t * (to - from)))), new(0, 1), []);
        }
    }

    /// <summary>The arc that rounds the corner at <paramref name="corner"/>, which turns to the left.</summary>
    private Arc2 Rounded(Point2 before, Point2 corner, Point2 after)
    {
        var (into, outOf) = ((corner - before).Angle, (after - corner).Angle);
        var turn = Turns.Signed(outOf - into);
        var foot = corner - (Bracket.Corner * Math.Tan(turn / 2) * Point2.Polar(1, into));
        return new(foot + (Bracket.Corner * Point2.Polar(1, into).Turned), Bracket.Corner, into - (Math.PI / 2), turn);
    }
}
