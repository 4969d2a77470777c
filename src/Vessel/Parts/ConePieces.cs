using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Parts;

/// <summary>Sheets of a cone that are alike in all: those that nothing is drilled in, or a single one with its ports.</summary>
/// <param name="Segments">Numbers of the segments; see <see cref="ConeHead.Seams"/>.</param>
/// <param name="Ports">Drilled in it; not the one that closes the tip.</param>
public sealed record ConePiece(string Name, ImmutableArray<int> Segments, ImmutableArray<PortDesign> Ports)
{
    public string Id => Slug.Of(Name);

    /// <summary>What its edges are welded to, and by which welds.</summary>
    public string Ends { get; init; } = string.Empty;

    /// <summary>What its flat says of its edges.</summary>
    public ImmutableArray<string> EdgeNotes { get; init; } = [];

    /// <summary>The plain ones first.</summary>
    public static ImmutableArray<ConePiece> Of(PortHost end, ConeHead cone, VesselDesign vessel)
    {
        var drilled = vessel.Ports.Where(port => port.Host == end && port.Place.Radius > 0).ToImmutableArray();
        if (cone.Segments == 1)
            return [new(Names.Of(end), [0], drilled)];
        var own = drilled.ToLookup(port => cone.SegmentAt(port.Place.Angle));
        var plain = Enumerable.Range(0, cone.Segments).Where(i => !own.Contains(i)).ToImmutableArray();
        return
        [
            .. plain.IsEmpty ? [] : new[] { new ConePiece(ConeHead.SegmentOf(Names.Of(end)), plain, []) },
            .. own.OrderBy(ports => ports.Key)
                .Select(ports => new ConePiece(ConeHead.SegmentOf(Names.Of(end), ports.Key), [ports.Key], [.. ports])),
        ];
    }

    /// <summary>Id of the part that a segment is.</summary>
    public static string IdOf(int segment, PortHost end, ConeHead cone, VesselDesign vessel) =>
        Of(end, cone, vessel).Single(piece => piece.Segments.Contains(segment)).Id;
}
