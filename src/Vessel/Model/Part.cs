using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Model;

/// <summary>What a part is to the vessel's wall and ports; what a member's part is, its member knows.</summary>
public enum PartKind
{
    Shell,
    Lid,
    Head,
    Branch,
    Bung,
    Gore,

    /// <summary>The polar cap of a head of gores.</summary>
    Crown,
    Cone,

    /// <summary>A further piece of a port's tube, beyond a mitre.</summary>
    Elbow,

    /// <summary>A piece of a member.</summary>
    Member,
}

/// <summary>How a part is given its form, beside being cut and bent.</summary>
public enum Forming
{
    /// <summary>Not at all.</summary>
    None,
    Rolled,
    Dished,

    /// <summary>Made by a spinner, from a blank.</summary>
    Spun,

    /// <summary>Made on a lathe.</summary>
    Turned,
}

/// <summary>One piece of metal, whole: what is cut, what it becomes, what is drilled in it and where it goes.</summary>
/// <param name="Id">The file-name slug of <paramref name="Name"/>; unique in the vessel.</param>
/// <param name="Name">What the welder calls it: <c>shell</c>, <c>inlet</c>.</param>
/// <param name="Thickness">Wall or plate, mm.</param>
/// <param name="Stock">What is taken off the rack for one piece.</param>
/// <param name="Placements">Where each piece stands in the vessel; one frame a piece.</param>
/// <param name="Solid">The finished piece in its own frame.</param>
/// <param name="Volume">Volume of one finished piece, mm3: closed form or quadrature, not the mesh.</param>
/// <param name="Flat">Cut outlines; null for a piece that is only sawn or turned.</param>
/// <param name="Path">The part's mapping in the design file.</param>
public sealed record Part(
    string Id,
    string Name,
    PartKind Kind,
    Material Material,
    double Thickness,
    StockPiece Stock,
    ImmutableArray<Frame3> Placements,
    Solid Solid,
    double Volume,
    Flat? Flat,
    ImmutableArray<Hole> Holes,
    string Path)
{
    /// <summary>Word for its kind, for lists.</summary>
    public string Word { get; init; } = Kind.ToString().ToLowerInvariant();

    public Forming Forming { get; init; }

    /// <summary>What the bench does to it once it is cut and deburred; null where its bends and <see cref="Forming"/> say all.</summary>
    public string? Shaping { get; init; }

    /// <summary>All that the bench does to make it, as one line; null where cutting, bending and <see cref="Shaping"/> say it.</summary>
    public string? Making { get; init; }

    /// <summary>What the cut list says of a piece that is not cut to its finished size; null for others.</summary>
    public string? StockNote { get; init; }

    /// <summary>Whether it stands inside: it hides nothing on a view from outside and is hidden there.</summary>
    public bool IsInside { get; init; }

    /// <summary>Patterns of holes, on the flat; each counts its holes after <see cref="Holes"/>.</summary>
    public ImmutableArray<HoleField> Fields { get; init; } = [];

    /// <summary>Where the mass of all its pieces together acts, mm in the vessel's frame; null while nobody has said so.</summary>
    public Vector3? Centre { get; init; }

    /// <summary>How its ends are sawn, for the cut list; null where they are square or coped.</summary>
    public string? SawNote { get; init; }

    /// <summary>Laid round a finished part that is rolled from sheet, to mark its holes; null for others.</summary>
    public Flat? Wrap { get; init; }

    /// <summary>What is laid round the outside: of a tube its flat itself; null for what is not round.</summary>
    public Flat? OnOutside => Flat is { Kind: FlatKind.Wrap } ? Flat : Wrap;

    public int Quantity => Placements.Length;

    /// <summary>Mass of one piece, grams.</summary>
    public double Mass => Volume * Material.Density / 1000;
}

/// <summary>A line of the cut list for one piece; mm.</summary>
/// <param name="Form">sheet, tube or bar.</param>
/// <param name="Length">Along the tube or bar, or the greater side of the sheet piece.</param>
/// <param name="Width">The smaller side of a sheet piece; outside diameter of tube or bar.</param>
/// <param name="Wall">Sheet thickness or tube wall; zero for bar.</param>
/// <param name="Mass">Mass of the piece as taken off the rack, grams.</param>
public sealed record StockPiece(string Form, double Length, double Width, double Wall, double Mass);
