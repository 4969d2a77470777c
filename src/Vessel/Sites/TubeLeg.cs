using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Sites;

/// <summary>A straight stretch of a port's axis.</summary>
/// <param name="Frame">
/// At its start, Z along it. X and Y are carried round each mitre with the tube's wall, so that a line along the tube keeps its angle
/// from piece to piece.
/// </param>
/// <param name="Length">mm.</param>
public sealed record TubeLeg(Frame3 Frame, double Length)
{
    /// <summary>The frame where it ends.</summary>
    public Frame3 End => At(Length);

    public Frame3 At(double along) => Frame with { Origin = Frame.ToOuter(new(0, 0, along)) };

    /// <summary>Legs from the host outward: one, or one for each piece of an elbow.</summary>
    /// <param name="frame">The port's own.</param>
    public static ImmutableArray<TubeLeg> Of(PortDesign port, Frame3 frame)
    {
        var first = new TubeLeg(frame, port.FirstLength);
        if (port.Elbow is not { } elbow)
            return [first];
        var legs = ImmutableArray.CreateBuilder<TubeLeg>(elbow.Pieces);
        legs.Add(first);
        // The bend lies in the plane of the axis and this direction; what is square to both stays.
        var (sin, cos) = Math.SinCos(elbow.Direction);
        var (towards, across) = ((cos * frame.X) + (sin * frame.Y), (cos * frame.Y) - (sin * frame.X));
        for (var i = 1; i < elbow.Pieces; i++)
        {
            var (turned, along) = Math.SinCos(2 * i * elbow.Slant);
            var inward = (along * towards) - (turned * frame.Z);
            legs.Add(new(
                new(
                    legs[^1].End.Origin,
                    (cos * inward) - (sin * across),
                    (sin * inward) + (cos * across),
                    (along * frame.Z) + (turned * towards)),
                i < elbow.Mitres ? 2 * elbow.HalfPiece : elbow.HalfPiece + elbow.EndLength));
        }

        return legs.MoveToImmutable();
    }
}
