namespace Vessel.Model;

/// <summary>A flat length beside a bend, which a press brake has to hold.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="What">Words for what it is: <c>an ear of 'bracket'</c>.</param>
/// <param name="Leg">Length from its bend line on the flat to the edge, or to the next bend line, where it is shortest, mm.</param>
/// <param name="Thickness">Thickness of the sheet, mm.</param>
/// <param name="Key">Path of the key that sets the length.</param>
internal sealed record Flange(string Part, string What, double Leg, double Thickness, string Key);
