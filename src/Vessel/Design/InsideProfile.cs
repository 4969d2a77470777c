using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>What holds the oil, heads and shell, as one profile turned about the vessel's axis: in its frame, upward.</summary>
internal static class InsideProfile
{
    /// <exception cref="ArgumentException">A size of the design is at fault.</exception>
    public static Profile Of(VesselDesign design)
    {
        var (shell, radius) = (design.Shell, design.Shell.InnerRadius);
        var (bottom, top) = (LidCheck.Depth(design.Bottom), LidCheck.Depth(design.Top));
        return new([
            .. Linked(OfHead(PortHost.Bottom, design), new(radius, bottom)).Pieces,
            new LinePiece(new(radius, bottom), new(radius, shell.Height - top)),
            .. Linked(OfHead(PortHost.Top, design), new(radius, top)).Flipped().Moved(shell.Height).Pieces,
        ]);
    }

    /// <summary>As if it were the bottom, up to where the shell's bore begins or near it.</summary>
    private static Profile OfHead(PortHost end, VesselDesign design)
    {
        if (design.Head(end) is not FlatHead flat)
            return (HeadShape.Of(end, design) ?? throw new ArgumentException("a head without a shape", nameof(design))).Inner;
        var level = LidCheck.Depth(flat);
        return new(new LinePiece(new(0, level), new(design.Shell.InnerRadius, level)));
    }

    private static Profile Linked(Profile head, Point2 to) =>
        (head.End - to).Length < 1e-9 ? head : new([.. head.Pieces, new LinePiece(head.End, to)]);
}
