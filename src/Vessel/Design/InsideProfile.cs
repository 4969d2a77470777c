using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>What holds the oil, heads and shell, as one profile turned about the vessel's axis: in its frame, upward.</summary>
internal static class InsideProfile
{
    /// <exception cref="ArgumentException">A size of the design is at fault.</exception>
    public static Profile Of(VesselDesign design)
    {
        var shell = design.Shell;
        var (low, high) = (design.Bottom.Depth, shell.Height - design.Top.Depth);
        var pieces = ImmutableArray.CreateBuilder<ProfilePiece>();
        pieces.AddRange(Head(VesselEnd.Bottom, design).Pieces);
        foreach (var course in shell.Courses)
        {
            var (from, to) = (Math.Max(low, course.Start), Math.Min(high, course.End));
            if (from < to)
                Link(pieces, new LinePiece(new(course.InnerAt(from), from), new(course.InnerAt(to), to)));
        }

        foreach (var piece in Head(VesselEnd.Top, design).Flipped().Moved(shell.Height).Pieces)
            Link(pieces, piece);
        return new(pieces.ToImmutable());
    }

    /// <summary>Inside of the head as if it were the bottom, up to where the shell's bore begins or near it.</summary>
    private static Profile Head(VesselEnd end, VesselDesign design)
    {
        if (design.Head(end).Plate is not { } plate)
            return (HeadShape.Of(end, design) ?? throw new ArgumentException("a head without a shape", nameof(design))).Inner;
        var level = plate.Depth;
        return new(
            new LinePiece(new(0, level), new(design.Shell.InnerAt(end == VesselEnd.Top ? design.Shell.Height - level : level), level)));
    }

    /// <summary>Links the next piece by a line from where the last piece ends, where that is not where the next begins.</summary>
    private static void Link(ImmutableArray<ProfilePiece>.Builder pieces, ProfilePiece next)
    {
        var (from, to) = (pieces[^1].At(pieces[^1].Length), next.At(0));
        if ((from - to).Length >= 1e-9)
            pieces.Add(new LinePiece(from, to));
        pieces.Add(next);
    }
}
