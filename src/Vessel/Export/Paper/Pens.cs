using Vessel.Export.Pdf;

namespace Vessel.Export.Paper;

/// <summary>Kinds of line after ISO 128: wide for edges, narrow for the rest.</summary>
internal static class Pens
{
    public static Pen Edge { get; } = new(0.35);

    public static Pen Thin { get; } = new(0.18);

    public static Pen Hidden { get; } = new(0.18, 0, new(2, 1));

    /// <summary>Bend lines.</summary>
    public static Pen LongDashes { get; } = new(0.25, 0, new(10, 2.5));

    /// <summary>Centre lines.</summary>
    public static Pen Chain { get; } = new(0.18, 0, new(8, 1.2, 0.8));

    public static Pen Pale { get; } = new(0.18, 0.6);

    public static Pen PaleDashes { get; } = new(0.18, 0.6, new(3, 2));
}
