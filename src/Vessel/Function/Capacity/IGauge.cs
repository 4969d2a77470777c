using Vessel.Parts;

namespace Vessel.Function;

/// <summary>A member that shows how much the vessel holds: it is marked, and so made, only when that is known.</summary>
internal interface IGauge
{
    /// <summary>The parts with such marks, beside those that the member has already; they take no room and bear no weld.</summary>
    IEnumerable<Part> GaugeParts(Attitude attitude, Capacity capacity);
}
