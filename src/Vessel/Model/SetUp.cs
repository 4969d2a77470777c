using System.Collections.Immutable;

namespace Vessel.Model;

/// <summary>One measured position for the bench; mm and degrees, null where it does not apply.</summary>
/// <param name="What">Part or port.</param>
/// <param name="Datum">Datum of the heights.</param>
/// <param name="Height">Height from the datum.</param>
/// <param name="Clock">Direction of the place where it meets the outside: counter-clockwise from the front, seen from above.</param>
/// <param name="Arc">Along the shell's outside from the front line, towards increasing angle.</param>
/// <param name="FromAxis">Distance from the vessel's axis: sideways offset of a port's axis in the shell, radius of one in a head.</param>
/// <param name="Depth">Depth of the inner end inside its host, or of an internal part from the rim of the open end.</param>
public sealed record SetUp(
    string What, string Datum, double Height, double? Clock, double? Arc, double? FromAxis, double? Depth, string Remark)
{
    /// <summary>Numbers of the welds that hold it.</summary>
    public ImmutableArray<string> Welds { get; init; } = [];
}
