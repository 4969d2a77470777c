using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.General;

/// <summary>The four views of a vessel: three from outside, one cut through its axis.</summary>
internal sealed record DrawnVessel(DrawnView Front, DrawnView Side, DrawnView Top, DrawnView Section)
{
    /// <summary>An edge is sharp when it turns by more than facets of a smooth surface do.</summary>
    private const double LeastSharp = 0.6;

    public IEnumerable<DrawnView> All => [Front, Side, Top, Section];

    /// <param name="thirdAngle">The side view is that from the right, else that from the left.</param>
    public static DrawnVessel Of(Build build, bool thirdAngle)
    {
        var sharp = Math.Max(LeastSharp, 1.3 * build.Options.Solids.Angle);
        var before = 3 * build.Options.Solids.Chord;
        var pieces = build.Parts.SelectMany((built, i) => built.Part.IsInside ? [] : Piece.Of(i, built, sharp)).ToList();
        var jobs = new Func<DrawnView>[]
        {
            () => DrawnView.Whole(View.Front, pieces, before),
            () => DrawnView.Whole(thirdAngle ? View.FromRight : View.FromLeft, pieces, before),
            () => DrawnView.Whole(View.Top, pieces, before),
            () => Cut(build, sharp, before),
        };
        var views = jobs.AsParallel().AsOrdered().Select(job => job()).ToList();
        return new(views[0], views[1], views[2], views[3]);
    }

    private static DrawnView Cut(Build build, double sharp, double before)
    {
        var numbers = build.Parts.Select((built, i) => (built.Part.Id, i)).ToDictionary(pair => pair.Id, pair => pair.i);
        var section = build.Section;
        var view = View.Section(section.Angle);
        return DrawnView.Half(
            view,
            [.. section.Pieces.Select(piece => Piece.Of(numbers[piece.Of.Part.Id], piece, view, sharp))],
            before,
            [.. section.Pieces.Select(piece => (numbers[piece.Of.Part.Id], piece.Outlines.ToImmutableArray()))]);
    }
}
