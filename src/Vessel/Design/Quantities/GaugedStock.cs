using Vessel.Stock;

namespace Vessel.Design;

/// <summary>What a gauge is the thickness of.</summary>
/// <param name="Family">Family of a sheet; null where the metal is not known.</param>
/// <param name="IsTube">Tube goes by one gauge of its own, whatever its metal.</param>
internal readonly record struct GaugedStock(MaterialFamily? Family, bool IsTube);
