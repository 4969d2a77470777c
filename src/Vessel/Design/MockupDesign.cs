using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>How the mock-up is printed, and the room that hoses and spanners want round the ports.</summary>
/// <param name="IsSolid">Filled through; else with the room inside, so that bores are open.</param>
/// <param name="Wall">Least thickness of a printed wall, mm of the print; thicker walls stay as they are.</param>
/// <param name="Scale">Scale of the print to the vessel.</param>
/// <param name="Clearance">For what is slipped on or in: taken off tubes' outsides all round, and left round threads in bungs, mm of the
/// print; zero prints tubes as they are and bungs with their tap drill.</param>
/// <param name="Bed">Size of the bed of the printer.</param>
/// <param name="Splits">Into pieces where it is larger than the bed.</param>
/// <param name="Stand">Clear height that a ring to stand it in leaves under its lowest place, mm of the print; zero for no stand.</param>
/// <param name="DrainHoles">Upright through the bottom, for resin or powder.</param>
/// <param name="HoseWall">Thickness of a hose, mm.</param>
/// <param name="HoseStraight">Length that a hose runs straight beyond a port, in outside diameters of the port.</param>
public sealed record MockupDesign(
    string Path,
    bool IsSolid,
    double Wall,
    double Scale,
    double Clearance,
    BedDesign Bed,
    bool Splits,
    double Stand,
    ImmutableArray<DrainHoleDesign> DrainHoles,
    double HoseWall,
    double HoseStraight)
{
    /// <summary>Whether what stands inside is printed beside it.</summary>
    public bool KeepsInternals { get; init; }

    /// <summary>Whether ports' names and the long seams stand on it.</summary>
    public PrintNames Names { get; init; }

    /// <summary>Height of a capital, where there is room for it, mm of the print.</summary>
    public double LetterHeight { get; init; } = 7;

    /// <summary>How far letters stand out or in, mm of the print.</summary>
    public double LetterDepth { get; init; } = 0.6;

    /// <summary>What holds where the file says nothing.</summary>
    public static MockupDesign Usual { get; } = new("mockup", false, 1.2, 1, 0, new(220, 220, 250), true, 0, [], 5, 1);

    /// <summary>Least thickness of a wall, mm of the vessel.</summary>
    public double LeastWall => Wall / Scale;
}

/// <summary>How letters stand on a print.</summary>
public enum PrintNames
{
    None,
    Raised,
    Sunk,
}

/// <summary>What a printer takes, mm.</summary>
public sealed record BedDesign(double Width, double Depth, double Height);

/// <param name="Diameter">mm of the print.</param>
/// <param name="Radius">Distance of its axis from the vessel's, mm.</param>
/// <param name="Angle">Radians.</param>
public sealed record DrainHoleDesign(string Path, double Diameter, double Radius, double Angle);
