using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>The whole vessel, less what is attached to it, as one profile turned about its axis: in its frame, upward.</summary>
public static class VesselProfiles
{
    /// <summary>What is touched from outside: heads, shell, and the faces of the welds between where edges stand apart.</summary>
    /// <exception cref="ArgumentException">A size of the design is at fault.</exception>
    public static Profile Outside(VesselDesign design)
    {
        var shell = design.Shell;
        var radius = shell.OuterRadius;
        return new([
            .. Linked(OutsideOf(PortHost.Bottom, design), new(radius, 0)).Pieces,
            new LinePiece(new(radius, 0), new(radius, shell.Height)),
            .. Linked(OutsideOf(PortHost.Top, design), new(radius, 0)).Flipped().Moved(shell.Height).Pieces,
        ]);
    }

    /// <summary>What holds the oil: heads and shell.</summary>
    /// <exception cref="ArgumentException">A size of the design is at fault.</exception>
    public static Profile Inside(VesselDesign design)
    {
        var (shell, radius) = (design.Shell, design.Shell.InnerRadius);
        var (bottom, top) = (LidCheck.Depth(design.Bottom), LidCheck.Depth(design.Top));
        return new([
            .. Linked(InsideOf(PortHost.Bottom, design), new(radius, bottom)).Pieces,
            new LinePiece(new(radius, bottom), new(radius, shell.Height - top)),
            .. Linked(InsideOf(PortHost.Top, design), new(radius, top)).Flipped().Moved(shell.Height).Pieces,
        ]);
    }

    /// <summary>As if it were the bottom, up to where the shell's outside begins or near it.</summary>
    private static Profile OutsideOf(PortHost end, VesselDesign design)
    {
        if (design.Head(end) is not FlatHead flat)
            return (HeadShape.Of(end, design) ?? throw new ArgumentException("a head without a shape", nameof(design))).Outer;
        if (flat.Seat == Seat.Overlay)
        {
            var (wide, under) = (flat.OutsideDiameter / 2, -flat.Wall);
            return new(
                new LinePiece(new(0, under), new(wide, under)), new LinePiece(new(wide, under), new(wide, 0)));
        }

        var (bore, level) = (design.Shell.InnerRadius, flat.Recess);
        var face = new LinePiece(new(0, level), new(bore, level));
        return level == 0 ? new(face) : new(face, new LinePiece(face.B, new(bore, 0)));
    }

    private static Profile InsideOf(PortHost end, VesselDesign design)
    {
        if (design.Head(end) is not FlatHead flat)
            return (HeadShape.Of(end, design) ?? throw new ArgumentException("a head without a shape", nameof(design))).Inner;
        var level = LidCheck.Depth(flat);
        return new(new LinePiece(new(0, level), new(design.Shell.InnerRadius, level)));
    }

    private static Profile Linked(Profile head, Point2 to) =>
        (head.End - to).Length < 1e-9 ? head : new([.. head.Pieces, new LinePiece(head.End, to)]);
}
