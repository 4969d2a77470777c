using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Parts;

namespace Vessel.Members.Saddles;

/// <summary>Where the bracket stands, and the sizes that follow from its design and the shell's outside.</summary>
/// <remarks>
/// Both ears are bent a quarter turn towards the shell. Cut square through their thickness, ears at the sides touch the
/// shell along the edge nearer to its axis; those at the ends lie level and touch all through.
/// </remarks>
/// <param name="ShellRadius">Radius of the shell's outside, mm.</param>
/// <param name="BoreRadius">Radius of its inside, mm.</param>
public sealed record SaddleSite(SaddleDesign Bracket, double ShellRadius, double BoreRadius)
{
    /// <summary>A quarter turn away from the viewer of the flat, who sees the outside.</summary>
    private const double Turn = -Math.PI / 2;

    public static SaddleSite Of(SaddleDesign bracket, VesselDesign vessel) =>
        new(bracket, vessel.Shell.OuterAt(bracket.Height), vessel.Shell.InnerAt(bracket.Height));

    public ImmutableArray<ShellTab> Tabs => ShellTab.Of(Bracket);

    /// <summary>How far the tabs stand out of an ear's end where that lies furthest in, mm; nothing without tabs.</summary>
    public double TabDepth => Tabs.Select(tab => EarEnd - tab.EndLevel(BoreRadius)).Append(0).Max();

    /// <summary>Over the bent ears, across the bend lines, mm.</summary>
    public double Overall => AtSides ? Bracket.Width : Bracket.PlateHeight;

    /// <summary>Length of the bend lines, mm.</summary>
    public double BendLength => AtSides ? Bracket.PlateHeight : Bracket.Width;

    public bool AtSides => Bracket.Ears == SaddleEars.Sides;

    /// <summary>Distance from the vessel's axis to the plate's back, mm.</summary>
    public double BackLevel => ShellRadius + Bracket.StandOff;

    /// <summary>Half the angle that the bracket's whole width covers on the shell's outside, radians.</summary>
    public double HalfAngle => Math.Asin(Bracket.Width / 2 / ShellRadius);

    /// <summary>
    /// Angles on either side of the bracket's middle that an ear covers on the shell's outside, radians; ears at the ends start in the
    /// middle.
    /// </summary>
    public Interval Covered => new(AtSides ? Math.Asin(((Bracket.Width / 2) - Bracket.Thickness) / ShellRadius) : -HalfAngle, HalfAngle);

    /// <summary>
    /// Distance from the vessel's axis, measured along the bracket's middle plane, to where an ear's end lies furthest in, mm.
    /// </summary>
    public double EarEnd => AtSides ? ShellLevel((Bracket.Width / 2) - Bracket.Thickness) : ShellLevel(Bracket.Width / 2);

    /// <summary>Straight length of an ear beyond its bend, at its longest, mm.</summary>
    public double Ear => BackLevel - Bracket.InsideRadius - EarEnd;

    /// <summary>Straight length of an ear at its shortest: in the middle where its end follows the shell, mm.</summary>
    public double ShortestEar => AtSides ? Ear : Bracket.StandOff - Bracket.InsideRadius;

    /// <summary>Straight length of the plate between its bends, mm.</summary>
    public double Straight => Overall - (2 * (Bracket.InsideRadius + Bracket.Thickness));

    /// <summary>Length of the flat across its bend lines: legs and allowances, mm.</summary>
    public double Developed => (2 * Ear) + (2 * Allowance) + Straight;

    /// <summary>Allowance of one bend, mm.</summary>
    public double Allowance => Math.Abs(Turn) * (Bracket.InsideRadius + (Bracket.K * Bracket.Thickness));

    public double FlatWidth => AtSides ? Developed : Bracket.Width;

    public double FlatHeight => AtSides ? Bracket.PlateHeight : Developed;

    /// <summary>Width and height of the flat over its tabs, mm.</summary>
    public Point2 OverTabs => new(FlatWidth + (AtSides ? 2 * TabDepth : 0), FlatHeight + (AtSides ? 0 : 2 * TabDepth));

    /// <summary>Middle of the flat, and of the plate once bent, mm.</summary>
    public Point2 Middle => new(FlatWidth / 2, FlatHeight / 2);

    /// <summary>The flat starts at its lower left corner; the plate is held still when it is folded.</summary>
    public FoldedSheet Sheet => new(
        Bracket.Thickness,
        AtSides ? new(1, 0) : new(0, 1),
        [Bent(Ear + (Allowance / 2)), Bent(Developed - Ear - (Allowance / 2))],
        1);

    /// <summary>The flat's place: X towards increasing angle, Y up, Z out of the vessel, the plate's outer face in z = 0.</summary>
    public Frame3 Frame
    {
        get
        {
            var way = Way;
            return way with
            {
                Origin = way.ToOuter(new(-Middle.U, -Middle.V, BackLevel + Bracket.Thickness)),
            };
        }
    }

    /// <summary>The bracket's directions on the vessel's axis, at the height of its middle: X sideways, Y up, Z outward.</summary>
    public Frame3 Way
    {
        get
        {
            var (sin, cos) = Math.SinCos(Bracket.Angle);
            return new(new(0, 0, Bracket.Height), new(-sin, cos, 0), Vector3.UnitZ, new(cos, sin, 0));
        }
    }

    /// <summary>The cut outline, counter-clockwise.</summary>
    public Loop2 Outline
    {
        get
        {
            var length = AtSides ? FlatHeight : FlatWidth;
            var (there, back) = (Edge(1, 0, length), Edge(0, length, 0));
            return new(
                [.. there, new Line2(there[^1].End, back[0].Start), .. back, new Line2(back[^1].End, there[0].Start)]);
        }
    }

    /// <summary>Middles of the bolt holes on the flat, row by row from the lower left.</summary>
    public ImmutableArray<Point2> BoltPlaces => BoltHole.Places(Bracket.Bolts, Middle);

    /// <summary>Bodies of its plate and ears as boxes, which keep a torch away.</summary>
    internal IEnumerable<Body> Bodies
    {
        get
        {
            var id = Slug.Of(Bracket.Name);
            var (w, h, t) = (Bracket.Width / 2, Bracket.PlateHeight / 2, Bracket.Thickness);
            yield return new BoxBody(id, Way, new(-w, -h, BackLevel), new(w, h, BackLevel + t));
            foreach (var side in new[] { -1, 1 })
            {
                var (near, far) = AtSides ? (w - t, w) : (h - t, h);
                var (low, high) = (Math.Min(side * near, side * far), Math.Max(side * near, side * far));
                yield return AtSides
                    ? new BoxBody(id, Way, new(low, -h, EarEnd), new(high, h, BackLevel))
                    : new BoxBody(id, Way, new(-w, low, EarEnd), new(w, high, BackLevel));
            }
        }
    }

    /// <summary>Distance from the axis to the shell's outside at so much to the side of the bracket's middle plane, mm.</summary>
    public double ShellLevel(double aside) => Math.Sqrt((ShellRadius - aside) * (ShellRadius + aside));

    /// <summary>
    /// The end of an ear, from one corner of the flat to another, with its tabs; straight, or of the shell's circle in the
    /// plane of the ear, whose centre lies on the vessel's axis, beyond the ear's end.
    /// </summary>
    /// <param name="ear">Left and right, or upper and lower.</param>
    private ImmutableArray<Curve2> Edge(int ear, double from, double to)
    {
        var middle = AtSides ? Middle.V : Middle.U;
        return new TabbedEdge(Between, ShellRadius, BoreRadius)
            .Walk(from - middle, to - middle, Tabs.Where(tab => tab.Edge == ear));

        Point2 At(double along, double level) => (AtSides, ear) switch
        {
            (true, 0) => new(level - EarEnd, middle + along),
            (true, _) => new(FlatWidth + EarEnd - level, middle + along),
            (_, 0) => new(middle + along, FlatHeight + EarEnd - level),
            _ => new(middle + along, level - EarEnd),
        };

        IEnumerable<Curve2> Between(double radius, double a, double b)
        {
            if (AtSides)
                return [new Line2(At(a, Bracket.EdgeLevel(a, radius)), At(b, Bracket.EdgeLevel(b, radius)))];
            var (start, sweep) = (Math.Asin(a / radius), Math.Asin(b / radius) - Math.Asin(a / radius));
            return [ear == 0
                ? new Arc2(At(0, 0), radius, (-Math.PI / 2) + start, sweep)
                : new Arc2(At(0, 0), radius, (Math.PI / 2) - start, -sweep)];
        }
    }

    private Bend Bent(double line) => new(line, Turn, Bracket.InsideRadius, Bracket.K);
}
