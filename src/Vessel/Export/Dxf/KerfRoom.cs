using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Export.Drawing;
using Vessel.Function;
using Vessel.Geometry;

namespace Vessel.Export.Dxf;

/// <summary>A sheet part whose narrowest hole or inside corner a cut of the build's width would close up.</summary>
/// <param name="Most">The width at which it closes up, mm, within 0.001 below.</param>
/// <param name="At">The part's place in the design file.</param>
public sealed record KerfRoom(string Part, double Most, Span? At)
{
    // Halvings between no cut and the one asked for, at most 5 mm: to 0.001 mm.
    private const int Halvings = 13;

    /// <summary>Every such part; none without a kerf.</summary>
    public static ImmutableArray<KerfRoom> TooNarrow(Build build) => build.Options.Kerf <= 0 ? [] :
    [
        .. from built in build.Parts
           where PartFiles.Of(built.Part).Any(file => file.Role == "flat")
           let chains = Chains(built, build.Options)
           where !Takes(built.Fitted!, chains, build.Options.Kerf)
           select new KerfRoom(
               built.Part.Name, Widest(built.Fitted!, chains, build.Options.Kerf), build.Assembly.Design.PlaceOf(built.Part.Path).Span),
    ];

    private static ImmutableArray<ImmutableArray<Bulge>> Chains(BuiltPart built, BuildOptions options)
    {
        var fitted = built.Fitted!;
        var own = fitted.Metal.Outlines.OfType<Stroke>().Select(outline => outline.Vertices);
        return CutFrame.IsFor(fitted, options.FrameBelow, built.Part.Thickness)
            ? [.. own, .. CutFrame.Of(fitted, built.Part.Thickness)!.Slots, CutFrame.Of(fitted, built.Part.Thickness)!.Frame]
            : [.. own];
    }

    private static bool Takes(FittedFlat fitted, ImmutableArray<ImmutableArray<Bulge>> chains, double kerf) =>
        fitted.Flat.Cut.Fields.All(field => 2 * field.HoleRadius > kerf)
        && fitted.Metal.Outlines.SkipLast(1).OfType<Circle>().All(hole => 2 * hole.Radius > kerf)
        && chains.All(chain => KerfOffset.Right(chain, kerf / 2) is not null);

    private static double Widest(FittedFlat fitted, ImmutableArray<ImmutableArray<Bulge>> chains, double kerf)
    {
        var (low, high) = (0.0, kerf);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Takes(fitted, chains, middle) ? (middle, high) : (low, middle);
        }

        return low;
    }
}
