namespace Vessel.Stock;

/// <summary>Hole saws that are sold, mm: bi-metal ones from 9/16 to 8 17/64 in (zenedy.com, "A guide to the bi-metal hole saw").</summary>
public static class HoleSaws
{
    public const double Least = 14;

    public const double Most = 210;
}
