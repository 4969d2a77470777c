namespace Vessel.Design;

/// <summary>How the pieces of an elbow are cut where they meet.</summary>
public enum MitreCut
{
    /// <summary>Cut in one plane through the whole wall: sawn, or ground to the line.</summary>
    Sawn,

    /// <summary>Square through the wall, as a tube laser cuts: one edge of the wall touches, the other stands off.</summary>
    Square,
}

/// <summary>
/// A bend in a port's tube, mitred: straight pieces, each cut at the same slant, so that every mitre takes an equal share of the turn. The
/// first and the last piece reach half as far round the bend as those between them.
/// </summary>
/// <param name="Angle">The whole turn, radians.</param>
/// <param name="Radius">Radius of the arc that the pieces' axes touch, mm; zero puts the one mitre of two pieces where the straight
/// ends.</param>
/// <param name="Pieces">Two or more.</param>
/// <param name="Direction">
/// Side that the tube turns to, round the port's axis, counter-clockwise as seen from outside; 0 is down on a shell and away from
/// the vessel's axis on a head. Radians.
/// </param>
/// <param name="EndLength">Straight, from the end of the arc to the free end, mm.</param>
public sealed record ElbowDesign(
    string Path, double Angle, double Radius, int Pieces, double Direction, double EndLength, MitreCut Cut)
{
    /// <summary>What one mitre may turn, radians: beyond it a cut runs nearly along the tube. Common practice, no source.</summary>
    public const double MostTurn = Math.PI / 2;

    public int Mitres => Pieces - 1;

    /// <summary>But for the rounding of angles that come out of degrees.</summary>
    public bool IsTooSharp => 2 * Slant > MostTurn + 1e-9;

    /// <summary>Angle of each mitre's plane from square, radians: half of what it turns.</summary>
    public double Slant => Angle / 2 / Mitres;

    /// <summary>Tangent of <see cref="Slant"/>.</summary>
    public double Slope => Math.Tan(Slant);

    /// <summary>Along the axis from where the arc begins to the first mitre, mm; half of a piece between two mitres.</summary>
    public double HalfPiece => Radius * Slope;

    /// <summary>Name of the pieces between two mitres, which are all alike.</summary>
    public static string PieceOf(string port) => $"{port} elbow piece";

    /// <summary>Name of the piece with the free end.</summary>
    public static string EndOf(string port) => $"{port} elbow end";
}
