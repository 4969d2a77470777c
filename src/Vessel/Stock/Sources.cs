using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>A document behind figures, and the short mark that stands for it wherever they are printed.</summary>
/// <param name="Mark">Mark in square brackets.</param>
/// <param name="Publisher">Who answers for it; a dash where nobody does.</param>
public sealed record SourceMark(string Mark, string Document, string Publisher);

/// <summary>Documents that would be long to name beside every figure, each named once here.</summary>
public static class Sources
{
    /// <summary>Stands behind figures that shops know and no publication that we have read states.</summary>
    public const string Practice = "[practice]";

    public const string TigManual = "[TIG manual]";

    public const string TorchTables = "[torch tables]";

    public const string SteelManual = "[steel TIG manual]";

    public const string LaserChart = "[laser chart]";

    public const string LaserClass = "[laser class]";

    public const string StainlessTube = "[stainless tube]";

    public const string AluminiumTube = "[aluminium tube]";

    public static ImmutableArray<SourceMark> All { get; } =
    [
        new(Practice, "common practice of shops; no published source", "-"),
        new(TigManual, "manual of the TIG machine YC-300BZ3, appendix: stainless T joints", "Panasonic"),
        new(TorchTables, "Technical Specifications for TIG Welding, Form 116", "CK Worldwide"),
        new(SteelManual, "manual of the TIG machine ET 201i: TIG parameters for steel", "ESAB"),
        new(LaserChart, "speed chart of fibre lasers by power, metal and thickness", "machinemfg.com"),
        new(LaserClass, "ISO 9013:2017, tolerances of class 1 by thickness, as a cutting shop prints them", "modulusmetal.com"),
        new(StainlessTube, "ASTM A269, tolerances of stainless tube, as a tube dealer prints them", "krystalgeltd.com"),
        new(AluminiumTube, "ANSI H35.2, tolerances of extruded aluminium tube, as a tube dealer prints them", "chicagotube.com"),
    ];

    /// <summary>What the marks in those texts stand for, in the order of the table.</summary>
    public static ImmutableArray<string> Legend(IEnumerable<string> texts)
    {
        var printed = texts.ToList();
        return
        [
            .. All.Where(source => printed.Any(text => text.Contains(source.Mark, StringComparison.Ordinal)))
                .Select(source => $"{source.Mark} {source.Document}{(source.Publisher == "-" ? "" : $" ({source.Publisher})")}"),
        ];
    }
}
