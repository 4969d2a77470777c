namespace Vessel.Model;

/// <summary>Something that is bought finished.</summary>
/// <param name="What">Words to ask for it in the shop: <c>stainless wool, 60 kg/m3</c>.</param>
/// <param name="Mass">Mass of all together, grams; null where it is not known.</param>
/// <param name="Volume">Room that it fills, mm3; null where that says nothing.</param>
/// <param name="Path">The design's mapping that asks for it.</param>
public sealed record BoughtItem(string Name, int Quantity, string What, double? Mass, double? Volume, string Path);
