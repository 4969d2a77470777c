namespace Vessel.Stock;

/// <summary>What a press brake needs to hold a sheet while it bends it.</summary>
/// <remarks>
/// The sheet lies across a V whose opening is 8 thicknesses as a rule and 6 at least; a flange shorter than half the opening slips off its
/// shoulder. Worcreate, "Engineering sheet: Sheet metal bending guidelines", table 2, read as a web page.
/// </remarks>
public static class BrakeDies
{
    /// <summary>Narrowest usual opening of a die over the sheet's thickness.</summary>
    private const double LeastOpening = 6;

    /// <summary>Shortest flange that the narrowest usual die holds, mm from the bend line on the flat.</summary>
    /// <param name="thickness">mm.</param>
    public static Datum LeastFlange(double thickness) =>
        new(LeastOpening * thickness / 2, "half of a die's opening of 6 thicknesses: bending guidelines of a sheet-metal shop");
}
