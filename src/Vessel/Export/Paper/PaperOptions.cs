namespace Vessel.Export.Paper;

/// <summary>What templates and drawings are printed on.</summary>
/// <param name="Thickness">Thickness of the paper, mm: what is wrapped round a tube lies half of it further out. Office paper of
/// 80 g/m2 is about 0.1 mm thick (common practice, no source).</param>
public sealed record PaperOptions(PaperSize Size, double Thickness = PaperOptions.OfficePaper)
{
    public const double OfficePaper = 0.1;
}

/// <summary>A sheet standing upright, mm.</summary>
public sealed record PaperSize(string Name, double Width, double Height)
{
    /// <summary>ISO 216.</summary>
    public static PaperSize A4 { get; } = new("A4", 210, 297);

    /// <summary>8 1/2 x 11 in (ANSI/ASME Y14.1, size A).</summary>
    public static PaperSize Letter { get; } = new("Letter", 215.9, 279.4);

    /// <summary>ISO 216.</summary>
    public static PaperSize A3 { get; } = new("A3", 297, 420);

    /// <summary>11 x 17 in (ANSI/ASME Y14.1, size B).</summary>
    public static PaperSize Tabloid { get; } = new("Tabloid", 279.4, 431.8);

    public PaperSize Lying => this with { Width = Height, Height = Width };
}
