using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export.General;

/// <summary>What is seen in one view: lines of each piece, true size, and a question whether a point is seen.</summary>
/// <param name="Lines">Lines by the number of the part.</param>
/// <param name="Cut">Cut faces of each part; empty in a view that is not cut.</param>
internal sealed record DrawnView(
    View View,
    ImmutableArray<(int Part, ImmutableArray<Point2> Points)> Lines,
    ImmutableArray<(int Part, ImmutableArray<ImmutableArray<Point2>> Outlines)> Cut,
    HiddenLines Hidden)
{
    /// <summary>Points on the drawing may be left out where that moves a line by less, mm of the vessel.</summary>
    private const double Off = 0.02;

    public Box2 Bounds { get; } = Lines.SelectMany(line => line.Points).DefaultIfEmpty().Aggregate(Box2.Empty, (box, p) => box.Join(p));

    /// <summary>View from outside: parts that can be seen there, whole.</summary>
    public static DrawnView Whole(View view, IReadOnlyList<Piece> pieces, double before) =>
        Of(view, pieces, before, p => true, []);

    /// <summary>The half behind the plane through the axis.</summary>
    public static DrawnView Half(View view, IReadOnlyList<Piece> pieces, double before,
        ImmutableArray<(int, ImmutableArray<ImmutableArray<Point2>>)> cut) =>
        // Lines in the plane are edges of the cut faces, which are there already.
        Of(view, pieces, before, p => view.Depth(p) < -1e-6, cut);

    private static DrawnView Of(
        View view,
        IReadOnlyList<Piece> pieces,
        double before,
        Func<Vector3, bool> kept,
        ImmutableArray<(int, ImmutableArray<ImmutableArray<Point2>>)> cut)
    {
        var hidden = new HiddenLines(view, pieces.Select(piece => (piece.Mesh, piece.Frame)), before);
        var lines = ImmutableArray.CreateBuilder<(int, ImmutableArray<Point2>)>();
        foreach (var piece in pieces)
        {
            var seen = new List<(Point2, Point2)>();
            foreach (var (a, b) in piece.Edges)
                seen.AddRange(hidden.Visible(a, b));
            foreach (var curve in piece.Turns(view.Toward))
            {
                for (var i = 0; i + 1 < curve.Length; i++)
                {
                    var (a, b) = (curve[i], curve[i + 1]);
                    if (kept(a.At) && kept(b.At))
                        seen.AddRange(hidden.Visible(a.At, b.At, before * a.Normal, before * b.Normal));
                }
            }

            foreach (var line in Chains.Of(seen, Off))
                lines.Add((piece.Part, line));
        }

        return new(view, lines.ToImmutable(), cut, hidden);
    }
}
