using System.Collections.Immutable;

namespace Vessel.Export.Pdf;

/// <summary>One page; sizes in mm.</summary>
public sealed record PdfPage(double Width, double Height, ImmutableArray<PdfItem> Items);
