using Vessel.Design;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>A mitred elbow in a port's tube.</summary>
internal static class ElbowKeys
{
    public static KeyMap Elbow { get; } = new("an elbow",
    [
        new("angle", KeyKind.Angle, "Total angle of turn") { IsRequired = true, Range = new(1, 180) },
        new("direction", KeyKind.Angle, "Side it turns to, counter-clockwise seen from outside; 0 is down on the shell, outward on a head")
        {
            IsRequired = true, Range = CommonKeys.Turn,
        },
        new("pieces", KeyKind.Count, "Straight pieces, mitred at equal slants") { Default = "2", Range = new(2, 24) },
        new("radius", KeyKind.Length, "Of the arc that the pieces' axes touch; it begins where the port's length ends")
        {
            Default = "0 mm", Range = CommonKeys.FromZero,
        },
        new("end_length", KeyKind.Length, "Straight, from the end of the arc to the free end")
        {
            IsRequired = true, Range = CommonKeys.LengthOfPart,
        },
        new("cut", KeyKind.Choice, "Cut of its mitres: in a plane, or square through the wall")
        {
            Choices = ["sawn", "square"], Default = "sawn",
        },
    ]);
}
