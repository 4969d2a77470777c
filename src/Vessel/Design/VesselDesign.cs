using System.Collections.Immutable;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>
/// A checked design: millimetres and radians, every default filled in, every name resolved. Each record carries the
/// path of its mapping in the file, so that a fault or finding of a later stage can name its line.
/// </summary>
public sealed record VesselDesign(
    string Name,
    string Revision,
    UserUnits Units,
    ShellDesign Shell,
    HeadDesign Top,
    HeadDesign Bottom,
    ImmutableArray<PortDesign> Ports,
    FlowDesign Flow,
    ImmutableDictionary<string, Span> Places)
{

    /// <summary>What stands on or in it: kind by kind, each in the order of the file.</summary>
    public ImmutableArray<MemberSpec> Members { get; init; } = [];

    public Finish Finish { get; init; }

    public CapacityDesign Capacity { get; init; } = CapacityDesign.Usual;

    /// <summary>How many are made at once: bought, nested, sawn and priced together.</summary>
    public int Quantity { get; init; } = 1;

    /// <summary>Whether fixtures to print are wanted, that hold the ports for tacking.</summary>
    public bool Fixtures { get; init; }

    public MockupDesign Mockup { get; init; } = MockupDesign.Usual;

    /// <summary>Who makes it, with what.</summary>
    public Shop Shop { get; init; } = Shop.Usual;

    public MountingDesign Mounting { get; init; } = MountingDesign.Usual;

    public LeakTestDesign LeakTest { get; init; } = LeakTestDesign.Usual;

    public DrainDesign DrainBack { get; init; } = DrainDesign.Unknown;

    /// <summary>Findings that the file's author takes.</summary>
    public ImmutableArray<AcceptedCode> Accepted { get; init; } = [];

    /// <summary>All members of a kind, in the order of the file.</summary>
    public IEnumerable<T> All<T>()
        where T : MemberSpec => Members.OfType<T>();

    /// <summary>The head at that end of the shell.</summary>
    public HeadDesign Head(VesselEnd end) => end == VesselEnd.Top ? Top : Bottom;

    /// <summary>The head that a port stands in, which is not one of the shell's.</summary>
    public HeadDesign Head(PortDesign port) => Head(port.End!.Value);

    /// <summary>A key of the design, and where it stands in the file: itself, or where it is left out the nearest key above it.</summary>
    /// <param name="path">Path of a key that the file may have.</param>
    public KeyPlace PlaceOf(string path) => new(path, Places.Nearest(path));
}

/// <summary>The unit of bare lengths in the file, and of lengths shown to the user.</summary>
public enum UserUnits
{
    Millimetres,
    Inches,
}

/// <summary>Surface finish after welding.</summary>
public enum Finish
{
    None,
    Painted,
    PowderCoated,
    Anodised,
    Passivated,
}

/// <summary>Rolled from sheet with a long seam, or cut from tube.</summary>
public enum StockForm
{
    Sheet,
    Tube,
}

/// <summary>An end of the shell, which a head closes.</summary>
public enum VesselEnd
{
    Top,
    Bottom,
}
