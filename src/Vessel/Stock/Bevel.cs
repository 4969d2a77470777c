namespace Vessel.Stock;

/// <summary>
/// Square edges to 1/8 in (the limit of a square butt that is welded from one side), from there a V of 60 degrees that leaves a root face
/// of 1.5 mm and is held open by 1.6 mm. Common practice, no source; the opening is that of the example of a V in weld tables.
/// </summary>
public static class Bevel
{
    /// <summary>The thickest wall with square edges, mm.</summary>
    public const double SquareTo = 3.2;

    /// <summary>mm.</summary>
    public const double RootFace = 1.5;

    /// <summary>Half of the V's angle, radians.</summary>
    public const double HalfAngle = Math.PI / 6;

    /// <summary>Root opening of a bevelled butt, mm.</summary>
    public const double Opening = 1.6;

    /// <summary>How far the edges of a butt in such a wall are held apart unless the design says otherwise, mm.</summary>
    public static double UsualGap(double wall) => wall > SquareTo ? Opening : 0;
}
