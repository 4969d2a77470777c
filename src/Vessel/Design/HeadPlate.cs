namespace Vessel.Design;

/// <summary>A head that is a flat plate, as ports, what hangs inside and the mock-up meet it.</summary>
/// <param name="OutsideDiameter">mm.</param>
/// <param name="Wall">Thickness, mm.</param>
/// <param name="IsInset">Whether it stands in the shell's bore rather than over its end.</param>
/// <param name="Depth">How far its inner face lies inside the shell's end, mm.</param>
public sealed record HeadPlate(double OutsideDiameter, double Wall, bool IsInset, double Depth);
