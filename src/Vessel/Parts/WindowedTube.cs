using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Parts;

/// <summary>
/// A straight tube with square ends and rows of windows whose walls are radial: a sleeve, or a cap's skirt. Rolled from
/// sheet it has a long seam, else it is cut from tube. Its frame has the lower end at z = 0.
/// </summary>
/// <param name="Id">Id of the part.</param>
/// <param name="Name">Name as the welder says it.</param>
/// <param name="Word">The part's kind, for lists.</param>
/// <param name="Rows">Rows of windows, with the heights of their lower edges.</param>
internal sealed record WindowedTube(
    string Id,
    string Name,
    string Word,
    Material Material,
    double OuterRadius,
    double Wall,
    double Length,
    StockForm MadeFrom,
    double SeamAngle,
    ImmutableArray<WindowRow> Rows,
    Frame3 Placement,
    string Title,
    string Path)
{
    private const double LetterHeight = 4;

    /// <summary>Rolls that the tube is rolled on where it is made from sheet.</summary>
    public RollsShop Rolls { get; init; } = RollsShop.Unknown;

    private double InnerRadius => OuterRadius - Wall;

    private double MidRadius => OuterRadius - (Wall / 2);

    private TubeWindows Windows => new(Rows, OuterRadius, Wall, MadeFrom == StockForm.Sheet ? MidRadius : OuterRadius);

    public Part ToPart()
    {
        var rolled = MadeFrom == StockForm.Sheet;
        var blank =
            new RolledDevelopment(OuterRadius, Wall, RolledDevelopment.MeanLine, SeamAngle, Rolls.BlankGap(0)) { Trim = Rolls.Trim };
        Development development = rolled ? blank : Wrapped;
        var radius = rolled ? MidRadius : OuterRadius;
        var holes = Windows.Outlines(development, radius);
        var flat = Flat(development, rolled ? blank.Width : (Turns.Full * radius) + Wrapped.Lap, holes);
        return new(
            Id,
            Name,
            PartKind.Member,
            Material,
            Wall,
            rolled
                ? StockPieces.Rectangle(blank.Width, Length, Wall, Material)
                : StockPieces.Tube(2 * OuterRadius, Wall, Length, Material),
            [Placement],
            Solid(development, holes),
            (Turns.Full * MidRadius * Length * Wall) - Windows.Removed(holes, radius),
            flat,
            Windows.Table(holes),
            Path)
        {
            Word = Word,
            Forming = rolled ? Forming.Rolled : Forming.None,
            IsInside = true,
            Wrap = rolled && !holes.IsEmpty ? Around() : null,
        };
    }

    /// <summary>What is wrapped round the tube once it is rolled.</summary>
    private Flat Around() => Flat(Wrapped, Turns.Full * OuterRadius, Windows.Outlines(Wrapped, OuterRadius));

    /// <summary>Development from the seam on, or from where the outside of a tube is free of windows, if anywhere.</summary>
    private WrappedDevelopment Wrapped => new(OuterRadius, SeamAngle, 0)
    {
        Lap = OuterRadius * WindowRows.Lap([.. Rows.Select(row => row.Design)], OuterRadius, Wall, SeamAngle),
    };

    private Solid Solid(Development development, ImmutableArray<Loop2> holes)
    {
        var (outer, inner) = (new CylinderSurface(OuterRadius), new CylinderSurface(InnerRadius));
        return ThickSolid.Of(outer, inner, true,
        [
            Rim.SquareEnd(outer, inner, 0),
            Rim.SquareEnd(outer, inner, Length),
            .. Windows.Rims(development, holes),
        ]);
    }

    private Flat Flat(Development development, double width, ImmutableArray<Loop2> holes)
    {
        var trim = development is RolledDevelopment { Trim: var added } ? added : 0;
        var cut = new Region2(
            Loop2.Polygon(new(0, 0), new(width, 0), new(width, Length), new(0, Length)), holes);
        var marks = new FlatMarks(width, Length, holes);
        for (var quarter = 0; quarter < 4; quarter++)
            marks.AddVertical(development.Flatten(new(quarter * Math.PI / 2, 0)).U, $"{90 * quarter}", LetterHeight);
        if (trim > 0)
        {
            marks.AddVertical(trim, "trim", LetterHeight);
            marks.AddVertical(width - trim, "trim", LetterHeight);
        }

        marks.AddTitle(Title, LetterHeight);
        return development is WrappedDevelopment wrapped
            ? Wraps.Lapping(
                new(FlatKind.Wrap, cut, marks.ToImmutable(), [], Notes(development), development, "outside diameter"), wrapped.Lap * Length)
            : new(FlatKind.Sheet, cut, marks.ToImmutable(), [], Notes(development), development, "mean diameter");
    }

    private ImmutableArray<string> Notes(Development development) =>
        development is RolledDevelopment { Trim: var trim } ? Notes(true, ShellWords.Rolling(Rolls, trim)) : Notes(false, []);

    private ImmutableArray<string> Notes(bool rolled, IEnumerable<string> rolling) =>
    [
        $"{Name.ToUpperInvariant()}, {Material.Name}, outside {NoteText.Length(2 * OuterRadius)} mm, wall {NoteText.Length(Wall)} mm, "
            + $"length {NoteText.Length(Length)} mm",
        rolled
            ? "OUTSIDE FACE UP. x runs with increasing angle, y up. Millimetres. Blank on the mean diameter."
            : "WRAP FOR THE OUTSIDE OF THE TUBE, OUTSIDE FACE UP. x runs with increasing angle, y up. Millimetres. Do not cut from sheet.",
        rolled
            ? $"Roll about the vertical, marks outside. Long seam at {NoteText.Degrees(SeamAngle)} deg."
            : $"Left edge on {NoteText.Degrees(SeamAngle)} deg.",
        .. rolling,
    ];
}
