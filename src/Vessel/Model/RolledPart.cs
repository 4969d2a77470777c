using System.Collections.Immutable;

namespace Vessel.Model;

/// <summary>Something that is rolled from sheet, for what the shop's rolls can make.</summary>
/// <param name="Ids">Ids of its parts.</param>
/// <param name="Name">Name in words: <c>skirt of 'cap'</c>.</param>
/// <param name="Bore">Inside diameter where it is narrowest, mm.</param>
/// <param name="Path">The key that says that it is rolled.</param>
internal sealed record RolledPart(ImmutableArray<string> Ids, string Name, double Bore, string Path);
