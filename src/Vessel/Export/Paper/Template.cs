using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Geometry;

namespace Vessel.Export.Paper;

/// <summary>A drawing at its true size, to be laid on metal, and what its user has to know.</summary>
/// <param name="Drawn">mm, in coordinates of its own.</param>
internal sealed record Template(string Title, ImmutableArray<Item> Drawn, ImmutableArray<string> Notes)
{
    public Box2 Bounds => Placing.Bounds(Drawn);
}
