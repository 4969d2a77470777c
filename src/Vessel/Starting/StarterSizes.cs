namespace Vessel.Starting;

/// <summary>What is put inside: the more, the better it separates and the more room it needs.</summary>
internal enum StarterInside
{
    Full,
    Sleeve,
    Nothing,
}

/// <summary>One try at a starter design; mm.</summary>
/// <param name="Hose">Outside diameter of the stubs.</param>
/// <param name="Body">Outside diameter.</param>
/// <param name="Height">Height of the shell.</param>
/// <param name="IsDomed">Hemisphere below; else flat.</param>
/// <param name="OffsetShare">Share of the way from the axis to the wall by which the inlet stands off centre.</param>
internal sealed record StarterSizes(
    StarterWish Wish, double Hose, double Body, double Height, bool IsDomed, StarterInside Inside, double OffsetShare)
{
    public const double StubAbove = 45;

    // From the lid's inner face: cap 40, free 20, packing between screens 25, rim below 7.
    public const double SleeveLength = 92;

    // How much farther down than the inlet's lower edge the sleeve reaches.
    private const double SleeveBelowInlet = 12;

    // A stub's weld must keep clear of the lid's.
    private const double InletBelowLid = 20;

    private bool IsAluminium => Wish.Material.Family == Stock.MaterialFamily.Aluminium;

    /// <summary>What can be welded by hand without burning through.</summary>
    public double Wall => IsAluminium ? 3 : 2;

    public double Lid => IsAluminium ? 4 : 3;

    public double Inlet => Inside == StarterInside.Nothing
        ? Height - Lid - InletBelowLid - (Hose / 2)
        : Height - Lid - SleeveLength + SleeveBelowInlet + (Hose / 2);

    public double Offset => Math.Floor(OffsetShare * ((Body / 2) - Wall - (Hose / 2)));

    /// <summary>A little more than half-way from the stub to the shell, so that both ways are about as wide.</summary>
    public double Sleeve => Math.Round(Hose + ((Body - Hose) * 0.57));

    public double Cap => Math.Round((Hose + Sleeve) / 2) + 2;

    public (string Thread, double Diameter, double Length) Drain => Body >= 90 ? ("M18x1.5", 26, 16) : ("M14x1.5", 22, 14);

    /// <summary>Length of the drain inside: in a dome the bung's end must come through all round.</summary>
    public double DrainInside
    {
        get
        {
            var (inner, bung) = ((Body / 2) - Wall, Drain.Diameter / 2);
            return IsDomed ? Math.Ceiling(2 * (inner - Math.Sqrt((inner * inner) - (bung * bung)))) / 2 : 0;
        }
    }

    public double OverAll => StubAbove + Height + (IsDomed ? Body / 2 : 0) + Drain.Length;

    /// <summary>How fast the gas rises through the empty body, m/s.</summary>
    public double Rise => Wish.BlowBy / 60_000 / (Math.PI / 4 * Math.Pow((Body - (2 * Wall)) / 1000, 2));
}
