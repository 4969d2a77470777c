using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Loose fibres between two discs; bought.</summary>
/// <param name="Material">Name of the material as it is bought: <c>stainless wool</c>.</param>
/// <param name="Family">For what it may touch in the wet; null where the name does not say.</param>
/// <param name="Lower">Name of the disc below; null when there is none.</param>
/// <param name="Upper">Name of the disc above; null when there is none.</param>
/// <param name="Density">Density of the packing as stuffed, kg/m3.</param>
/// <param name="FibreDiameter">mm; null when not given.</param>
public sealed record PackingDesign(
    string Path,
    string Name,
    string Material,
    MaterialFamily? Family,
    string? Lower,
    string? Upper,
    double Density,
    double? FibreDiameter) : MemberSpec(Path, Name);
