using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>The keys of a port.</summary>
internal static class PortKeys
{
    public static KeyMap Bung { get; } = new("a bung",
    [
        new("thread", KeyKind.Thread, "Thread, as 'M14x1.5', 'dash 8' or '1/4 NPT'") { IsRequired = true },
        new("outside_diameter", KeyKind.Length, "Outside diameter") { IsRequired = true, Range = new(5, 200) },
        new("length", KeyKind.Length, "Of the whole bung") { IsRequired = true, Range = new(3, 200) },
    ]);

    public static KeyMap PlaceOnShell { get; } = new("the place of a port in the shell",
    [
        new("height", KeyKind.Length, "Where the port's axis meets the shell's outside, above its lower edge")
        {
            IsRequired = true, Range = CommonKeys.FromZero,
        },
        CommonKeys.Angle,
        new("offset", KeyKind.Length, "Of the port's axis sideways from the vessel's axis, towards increasing angle")
        {
            Default = "0 mm", Range = new(-10_000, 10_000),
        },
        new("tilt", KeyKind.Angle, "Of the port's axis above the horizontal, outward")
        {
            Default = "0 deg", Range = new(-75, 75),
        },
    ]);

    public static KeyMap PlaceOnHead { get; } = new("the place of a port in a head",
    [
        new("radius", KeyKind.Length, "Of the port's axis from the vessel's axis")
        {
            IsRequired = true, Range = CommonKeys.FromZero,
        },
        CommonKeys.Angle,
        new("square_to_surface", KeyKind.Choice, "Whether its axis stands square to the head's surface, not upright")
        {
            Choices = CommonKeys.TruthValues, Default = "false",
        },
    ]);

    public static KeyMap Port { get; } = new("a port",
    [
        new("name", KeyKind.Text, "Its name; also part of file names") { IsRequired = true },
        new("in", KeyKind.Choice, "Host: the shell or a head") { IsRequired = true, Choices = ["shell", "top", "bottom"] },
        new("purpose", KeyKind.Choice, "Its use, which decides what is open to gas, and how full the vessel may be")
        {
            Choices = PortPurposes.Words, DefaultRule = "a tube is open to gas, the highest one its vent; a bung is plugged",
        },
        new("at", KeyKind.Mapping, "Where its axis meets the outside")
        {
            IsRequired = true,
            Switch = new("in", true, ImmutableDictionary<string, KeyMap>.Empty
                .Add("shell", PlaceOnShell).Add("top", PlaceOnHead).Add("bottom", PlaceOnHead)),
        },
        new("tube", KeyKind.Mapping, "A tube, cut from stock") { Map = CommonKeys.Tube },
        new("bung", KeyKind.Mapping, "A turned piece with a thread") { Map = Bung },
        new("length", KeyKind.Length, "Of a tube, along its axis from the outside of its host to its free end or elbow")
        {
            IsRequired = true, Range = CommonKeys.LengthOfPart, AppliesWhen = new("tube", null),
        },
        new("elbow", KeyKind.Mapping, "Mitred, so that a hose leaves another way; 'length' ends where it begins")
        {
            Map = ElbowKeys.Elbow, DefaultRule = "none", AppliesWhen = new("tube", null),
        },
        new("inside_length", KeyKind.Length, "Along the axis from the inside of its host to the inner end")
        {
            DefaultRule = "so that the end comes through all round; none where it is flush", Range = CommonKeys.FromZero,
            AppliesWhen = new("joint", "set_in"),
        },
        new("inner_height", KeyKind.Length, "Of the middle of its inner end above the shell's lower edge, for a tube that ends on a level")
        {
            DefaultRule = "by inside_length", Range = new(-10_000, 10_000), AppliesWhen = new("joint", "set_in"),
        },
        new("inner_end", KeyKind.Choice, "Square to the axis, or flush with the inside of its host")
        {
            Choices = ["square", "flush"], Default = "square", AppliesWhen = new("joint", "set_in"),
        },
        new("windows", KeyKind.OneOrList, "Openings in the length of its tube that stands free inside, a row or several")
        {
            DefaultRule = "none", Map = InsideKeys.Windows, Items = new(0, InsideKeys.MostRows), AppliesWhen = new("tube", null),
        },
        new("joint", KeyKind.Choice, "Stands on the outside, or passes through a hole")
        {
            Choices = ["set_on", "set_in"], DefaultWhen = [new("tube", "set_on"), new("bung", "set_in")],
        },
        new("cut", KeyKind.Choice, "Cut of the end that meets the vessel")
        {
            Choices = ["square", "ground", "hole_saw"], Default = "square", AppliesWhen = new("joint", "set_on"),
        },
        new("clearance", KeyKind.Length, "Between port and hole, all round")
        {
            Default = "0.2 mm", Range = CommonKeys.Gap, AppliesWhen = new("joint", "set_in"),
        },
        new("fitting", KeyKind.Thread, "Bought fitting for the free end of a tube, as 'dash 20'")
        {
            DefaultRule = "none", AppliesWhen = new("tube", null),
        },
        CommonKeys.Material,
    ])
    {
        OneOf = [["tube", "bung"]],
        AtMostOneOf = [["inside_length", "inner_height"]],
    };
}
