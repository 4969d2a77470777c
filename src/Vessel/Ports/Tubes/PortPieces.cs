using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>One kind of piece that a port's tube is made of.</summary>
/// <param name="Name">Name of its part.</param>
/// <param name="Placements">Z from the host to the free end. X is the port's own for the first piece, for others the inside of the
/// bend.</param>
internal sealed record PortPiece(string Name, TubePiece Shape, ImmutableArray<Frame3> Placements)
{
    public string Id => Slug.Of(Name);
}

/// <summary>A port's tube from its host outward: whole, or the pieces of its elbow.</summary>
internal static class PortPieces
{
    public static ImmutableArray<PortPiece> Of(PortSite site)
    {
        var port = site.Port;
        var (foot, accuracy) = (TubeEnd.Of(site), port.IsFlush ? site.Inside.Accuracy : site.Outside.Accuracy);
        TubePiece Between(TubeEnd lower, TubeEnd upper) => new(port.OuterRadius, port.BoreRadius, lower, upper, accuracy);
        TubePiece First(TubeEnd upper) =>
            Between(foot, upper) with { Rows = [.. port.Windows.Select(row => new WindowRow(row, site.InnerEnd + row.Up))] };
        if (port.Elbow is not { } elbow)
            return [new(port.Name, First(TubeEnd.Plain(port.Length)), [site.Frame])];
        var legs = site.Legs;
        var (middle, end) = (legs[1..^1], legs[^1]);
        var begin = TubeEnd.Mitre(port, elbow, 0, 0, isUpper: false);
        Frame3 Placed(TubeLeg leg) => leg.Frame.TurnedAboutZ(elbow.Direction);
        return
        [
            new(port.Name, First(TubeEnd.Mitre(port, elbow, port.FirstLength, elbow.Direction, isUpper: true)), [site.Frame]),
            .. middle.IsEmpty ? [] : new PortPiece[]
            {
                new(
                    ElbowDesign.PieceOf(port.Name),
                    Between(begin, TubeEnd.Mitre(port, elbow, middle[0].Length, 0, isUpper: true)),
                    [.. middle.Select(Placed)]),
            },
            new(ElbowDesign.EndOf(port.Name), Between(begin, TubeEnd.Plain(end.Length)), [Placed(end)]),
        ];
    }

    /// <summary>Ids of the parts of each stretch of a port's tube, from the host outward.</summary>
    public static ImmutableArray<string> Ids(PortDesign port) => port.Elbow is not { } elbow
        ? [Slug.Of(port.Name)]
        : [
            Slug.Of(port.Name),
            .. Enumerable.Repeat(Slug.Of(ElbowDesign.PieceOf(port.Name)), elbow.Mitres - 1),
            Slug.Of(ElbowDesign.EndOf(port.Name)),
        ];
}
