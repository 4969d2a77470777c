using System.Collections.Frozen;

namespace Vessel.Stock;

/// <summary>Letters with an accent: a plain letter and a sign over, under or beside it, on the grid of the drawing letters.</summary>
internal static class AccentTable
{
    /// <summary>A sign with the letters that bear it: each pair is the plain letter and the accented one.</summary>
    private static readonly Accent[] _accents =
    [
        new("09 17", AccentPlace.Over, "AÀEÈIÌNǸOÒUÙaàeèıìnǹoòuù"),
        new("07 19", AccentPlace.Over, "AÁCĆEÉIÍLĹNŃOÓRŔSŚUÚYÝZŹaácćeéıínńoórŕsśuúyýzź"),
        new("07 19 27", AccentPlace.Over, "AÂCĈEÊGĜHĤIÎJĴOÔSŜUÛWŴYŶaâcĉeêgĝhĥıîjĵoôsŝuûwŵyŷ"),
        new("07 18 27 28", AccentPlace.Over, "AÃIĨNÑOÕUŨaãıĩnñoõuũ"),
        new("07 08|27 28", AccentPlace.Over, "AÄEËIÏOÖUÜYŸaäeëıïoöuüyÿ"),
        new("07 09 29 27 07", AccentPlace.Over, "AÅUŮaåuů"),
        new("08 28", AccentPlace.Over, "AĀEĒIĪOŌUŪaāeēıīoōuū"),
        new("09 17 29", AccentPlace.Over, "CČDĎEĚNŇRŘSŠTŤZŽAǍaǎcčeěnňrřsšzž"),
        new("09 07 27 29", AccentPlace.Over, "AĂEĔGĞIĬOŎUŬaăeĕgğıĭoŏuŭ"),
        new("17 18", AccentPlace.Over, "CĊEĖGĠIİZŻcċeėgġzż"),
        new("18 09", AccentPlace.Over, "gģ"),
        new("09 1:", AccentPlace.Over, "lĺ"),
        new("07 09|17 29", AccentPlace.Over, "OŐUŰoőuű"),
        new("12 11 00", AccentPlace.Under, "CÇGĢKĶLĻNŅRŖSŞTŢcçkķlļnņrŗsştţ"),
        new("11 00", AccentPlace.Under, "SȘTȚsștț"),
        new("22 11 20", AccentPlace.Under, "AĄEĘIĮUŲaąeęiįuų"),
        new("08 06", AccentPlace.Beside, "dďlľtťLĽ"),
    ];

    public static FrozenDictionary<char, (char Plain, Accent Accent)> Letters { get; } = _accents
        .SelectMany(accent => accent.Pairs.Chunk(2).Select(pair => (Letter: pair[1], Parts: (pair[0], accent))))
        .ToFrozenDictionary(letter => letter.Letter, letter => letter.Parts);
}

/// <param name="Code">Strokes, two units wide, as they stand at a small letter.</param>
/// <param name="Pairs">Plain letter, accented letter, and so on.</param>
internal sealed record Accent(string Code, AccentPlace Place, string Pairs);

internal enum AccentPlace
{
    Over,
    Under,
    Beside,
}
