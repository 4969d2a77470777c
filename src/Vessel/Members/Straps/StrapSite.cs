using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Members.Straps;

/// <summary>Half of a strap: where it lies, and the sizes that follow from its design and the shell's outside.</summary>
/// <remarks>
/// In the section across the vessel's axis the ears lie parallel to the plane between the halves. An ear's bend touches the band's outside
/// and the ear's outer face, so that its centre lies on a circle round the axis and at a level over that plane: one right-angled triangle
/// gives where the band ends and how far the ear is bent.
/// </remarks>
/// <param name="ShellRadius">Radius of the shell's outside, mm.</param>
/// <param name="IsBack">The half with the feet.</param>
public sealed record StrapSite(StrapDesign Strap, double ShellRadius, bool IsBack)
{
    /// <summary>A rolled band keeps its length in the middle of the sheet.</summary>
    private const double MiddleK = 0.5;

    public string Name => IsBack ? StrapDesign.BackOf(Strap.Name) : StrapDesign.FrontOf(Strap.Name);

    /// <summary>Radius of the band's inside, mm.</summary>
    public double InnerRadius => ShellRadius + Strap.Liner;

    public double OuterRadius => InnerRadius + Strap.Thickness;

    /// <summary>Level of an ear's outer face over the plane between the halves, mm.</summary>
    public double EarLevel => (Strap.Gap / 2) + Strap.Thickness;

    /// <summary>Level of the centres of the ears' bends over the plane between the halves, mm.</summary>
    public double BendLevel => EarLevel + Strap.InsideRadius;

    /// <summary>Half the angle that the band reaches round the shell, radians.</summary>
    public double HalfBand => (Math.PI / 2) - Math.Asin(BendLevel / (OuterRadius + Strap.InsideRadius));

    /// <summary>Angle of the middle of this half, round the vessel, radians.</summary>
    public double Middle => Strap.Angle + (IsBack ? 0 : Math.PI);

    /// <summary>
    /// From the ears' outer faces to the plane that the feet are bolted to, mm; null where they carry the ears straight on.
    /// </summary>
    public double? Rise => IsBack && Strap.Feet.StandOff is { } standOff ? ShellRadius + standOff - EarLevel : null;

    /// <summary>Straight length of a leg between its two bends, mm.</summary>
    public double Leg => Rise is { } rise ? rise - (2 * Strap.InsideRadius) - Strap.Thickness : 0;

    /// <summary>Straight length at the end of the strip, mm: foot, ear, or both in one.</summary>
    public double LastStraight => Rise is not null ? Strap.Feet.Length : Strap.Ear + (IsBack ? Strap.Feet.Length : 0);

    /// <summary>Bend allowance of a quarter turn, mm.</summary>
    private double Quarter => new Bend(0, Math.PI / 2, Strap.InsideRadius, Strap.K).Allowance(Strap.Thickness);

    /// <summary>Length from the end of the strip to where the ear's bend begins, mm.</summary>
    private double ToBend => Rise is null ? LastStraight : Strap.Feet.Length + Quarter + Leg + Quarter + Strap.Ear;

    private double EarAllowance => new Bend(0, HalfBand, Strap.InsideRadius, Strap.K).Allowance(Strap.Thickness);

    /// <summary>Length from the end of the strip to where the rolled band begins, mm.</summary>
    public double BandFrom => ToBend + EarAllowance;

    /// <summary>Length of the rolled band on its neutral line, mm.</summary>
    public double Band => 2 * HalfBand * (InnerRadius + (MiddleK * Strap.Thickness));

    /// <summary>Length of the flat strip, mm.</summary>
    public double Developed => (2 * BandFrom) + Band;

    public Box2 Box => new(default, new(Developed, Strap.Width));

    /// <summary>
    /// The flat starts at its lower left corner. The strip of no length where the band begins is held still: its outer face is square to
    /// the line outward from the axis there.
    /// </summary>
    public FoldedSheet Sheet
    {
        get
        {
            var before = Before.ToList();
            return new(
                Strap.Thickness,
                new(1, 0),
                [
                    .. before,
                    new(Developed / 2, -2 * HalfBand, InnerRadius, MiddleK),
                    .. before.AsEnumerable().Reverse().Select(bend => bend with { Line = Developed - bend.Line }),
                ],
                before.Count);
        }
    }

    /// <summary>Number of the band among the sheet's bends.</summary>
    public int BandNumber => Before.Count();

    /// <summary>Bends of the left end, towards the band.</summary>
    private IEnumerable<Bend> Before
    {
        get
        {
            if (Rise is not null)
            {
                yield return new(Strap.Feet.Length + (Quarter / 2), -Math.PI / 2, Strap.InsideRadius, Strap.K);
                yield return new(Strap.Feet.Length + Quarter + Leg + (Quarter / 2), Math.PI / 2, Strap.InsideRadius, Strap.K);
            }

            yield return new(BandFrom - (EarAllowance / 2), HalfBand, Strap.InsideRadius, Strap.K);
        }
    }

    /// <summary>
    /// Straight lengths beside its bends, each from a bend line to the end of the strip or to the next bend line, mm, and the key that sets
    /// it.
    /// </summary>
    public ImmutableArray<(string What, double Leg, string Key)> Flanges => Rise is null
        ? [("an ear", LastStraight + (EarAllowance / 2), "ear")]
        :
        [
            ("a foot", Strap.Feet.Length + (Quarter / 2), "feet.length"),
            ("a leg", Leg + Quarter, "feet.stand_off"),
            ("an ear", Strap.Ear + (Quarter / 2) + (EarAllowance / 2), "ear"),
        ];

    /// <summary>The flat's place: X towards increasing angle and Y up where the band begins.</summary>
    public Frame3 Frame
    {
        get
        {
            var (sin, cos) = Math.SinCos(Middle - HalfBand);
            var (along, outward) = (new Vector3(-sin, cos, 0), new Vector3(cos, sin, 0));
            return new(
                new Vector3(0, 0, Strap.Low) + (OuterRadius * outward) - (BandFrom * along), along, Vector3.UnitZ, outward);
        }
    }

    /// <summary>This half's directions on the vessel's axis, at the height of its middle: X sideways, Y up, Z outward.</summary>
    public Frame3 Way
    {
        get
        {
            var (sin, cos) = Math.SinCos(Middle);
            return new(new(0, 0, Strap.Height), new(-sin, cos, 0), Vector3.UnitZ, new(cos, sin, 0));
        }
    }

    /// <summary>Middles of the holes in the ears, from the left.</summary>
    public ImmutableArray<Point2> EarBolts => Places(Strap.Bolts, ToBend - (Strap.Ear / 2));

    /// <summary>Middles of the holes in the feet; none on the front half.</summary>
    public ImmutableArray<Point2> FootBolts => IsBack ? Places(Strap.Feet.Bolts, Strap.Feet.Length / 2) : [];

    public Region2 Cut => new(
        Loop2.Polygon([default, new(Developed, 0), new(Developed, Strap.Width), new(0, Strap.Width)]),
        [
            .. EarBolts.Select(at => BoltHole.Outline(Strap.Bolts, at, new(1, 0))),
            .. FootBolts.Select(at => BoltHole.Outline(Strap.Feet.Bolts, at, new(1, 0))),
        ]);

    private ImmutableArray<Point2> Places(BoltsDesign bolts, double fromEnd) =>
    [
        .. new[] { fromEnd, Developed - fromEnd }.SelectMany(x => BoltHole.Places(bolts, new(x, Strap.Width / 2))),
    ];
}
