using Vessel.Design;
using Vessel.Heads;
using Vessel.Members;
using Vessel.Ports;
using Vessel.Sites;

namespace Vessel.Reading;

/// <summary>Every key of the file: the one place that says what may be written.</summary>
public static class KeyTable
{
    public static KeyMap Accept { get; } = new("an accepted finding",
    [
        new("code", KeyKind.Text, "Of a warning or note, as it is reported") { IsRequired = true },
        new("reason", KeyKind.Text, "Why it is good enough") { IsRequired = true, Longest = Limits.TextLength },
    ]);

    public static KeyMap Inside { get; } = new("the parts inside", [.. Members(MemberKind.UnderInside)])
    {
        MayBeEmpty = true,
    };

    public static KeyMap File { get; } = new("the file",
    [
        new("vessel", KeyKind.Text, "Name of the vessel") { IsRequired = true },
        new("revision", KeyKind.Text, "Revision of the design") { Default = "A" },
        new("quantity", KeyKind.Count,
            "Vessels that are made at once: bought, nested and priced together") { Default = "1", Range = new(1, 50) },
        new("units", KeyKind.Choice, "Of bare lengths") { Choices = ["mm", "in"], Default = "mm" },
        new("material", KeyKind.Material, "Metal of every part that names none")
        {
            DefaultRule = "none: each part names its own",
        },
        new("dimensions", KeyKind.Sizes, "Named sizes, for use in any value"),
        new("shell", KeyKind.Mapping,
            "The cylinder, frustum, or cylinders with a reducer between them") { IsRequired = true, Map = ShellKeys.Shell },
        Head("top", "Upper end"),
        Head("bottom", "Lower end"),
        new("ports", KeyKind.List, "Tubes and bungs") { DefaultRule = "none", Map = PortKeys.Port },
        new("inside", KeyKind.Mapping, "Parts inside") { DefaultRule = "nothing", Map = Inside },
        .. Members(null),
        new("finish", KeyKind.Choice, "Surface finish after welding")
        {
            Choices = ["none", "painted", "powder_coated", "anodised", "passivated"], Default = "none",
        },
        new("fixtures", KeyKind.Choice, "Sleeves to print that hold each port in its place while it is tacked")
        {
            Choices = ["none", "printed"], Default = "none",
        },
        new("flow", KeyKind.Mapping, "Gas that flows through") { DefaultRule = "its own defaults", Map = FlowKeys.Flow },
        new("engine", KeyKind.Mapping, "The engine whose crankcase breathes; its blow-by is estimated")
        {
            DefaultRule = "not known", Map = FlowKeys.Engine,
        },
        new("capacity", KeyKind.Mapping, "Leans and steps for which the capacity is worked out")
        {
            DefaultRule = "its own defaults",
                Map = CapacityKeys.Capacity with { Keys = [.. CapacityKeys.Capacity.Keys, .. Members(MemberKind.UnderCapacity)] },
        },
        new("mockup", KeyKind.Mapping, "The mock-up from the 3D printer, and the room for hoses")
        {
            DefaultRule = "its own defaults", Map = MockupKeys.Mockup,
        },
        new("mounting", KeyKind.Mapping, "Load on the mounting") { DefaultRule = "its own defaults", Map = DutyKeys.Mounting },
        new("leak_test", KeyKind.Mapping, "The leak test, and the suction in use")
        {
            DefaultRule = "its own defaults", Map = DutyKeys.LeakTest,
        },
        new("drain_back", KeyKind.Mapping, "The way of the oil back to the sump")
        {
            DefaultRule = "not known", Map = DutyKeys.DrainBack,
        },
        new("variants", KeyKind.Variants, "Named variants: for each the values that differ, by their paths")
        {
            DefaultRule = "none",
        },
        new("accept", KeyKind.List, "Warnings and notes that are known and taken")
        {
            DefaultRule = "none", Map = Accept,
        },
    ]);

    /// <summary>Keys of the members that stand under a key of the file, or in the file itself.</summary>
    private static IEnumerable<Key> Members(string? under) => MemberKinds.All.Where(kind => kind.Under == under).Select(kind => kind.Key);

    private static Key Head(string name, string description) => new(name, KeyKind.Mapping, description)
    {
        IsRequired = true,
        Switch = new("shape", false, HeadKinds.Keys),
    };
}
