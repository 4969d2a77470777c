using System.Collections.Immutable;

namespace Vessel.Export.Drawing;

/// <summary>A page is a drawing on a sheet of known size; mm from its lower left corner.</summary>
public sealed record Page(double Width, double Height, ImmutableArray<Item> Items);
