using Vessel.Stock;

namespace Vessel.Export.Solids;

/// <summary>An opaque colour of the sRGB space.</summary>
public readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    /// <summary>Colour of a printed mock-up.</summary>
    public static Colour Plastic { get; } = new(0xD9, 0x8C, 0x3C);

    /// <summary>Colour of room that must stay free.</summary>
    public static Colour Room { get; } = new(0x7C, 0xB3, 0x6A);

    public static Colour Of(MaterialFamily family) => family switch
    {
        MaterialFamily.Aluminium => new(0xD6, 0xDA, 0xDE),
        MaterialFamily.Stainless => new(0xA9, 0xB4, 0xBE),
        MaterialFamily.MildSteel => new(0x70, 0x78, 0x80),
        _ => throw new ArgumentOutOfRangeException(nameof(family)),
    };

    /// <summary><c>#RRGGBB</c>.</summary>
    public string Hex => $"#{Red:X2}{Green:X2}{Blue:X2}";

    /// <summary>
    /// The three shares of light in linear space, to four digits (IEC 61966-2-1: c / 12.92 up to 0.04045, else
    /// ((c + 0.055) / 1.055)^2.4).
    /// </summary>
    public double[] Linear => [OfLight(Red), OfLight(Green), OfLight(Blue)];

    private static double OfLight(byte value)
    {
        var c = value / 255.0;
        return Math.Round(c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4), 4);
    }
}
