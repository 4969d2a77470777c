using Vessel.Design;

namespace Vessel.Members.Brackets;

/// <summary>Tabs on each edge of a bracket that meets the shell, for slots in the flat that the shell is rolled from.</summary>
/// <param name="Count">Number of tabs on each edge.</param>
/// <param name="Width">Along the edge, mm.</param>
/// <param name="Clearance">All round in the slot, mm.</param>
public sealed record TabsDesign(string Path, int Count, double Width, double Clearance);
