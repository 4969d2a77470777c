using System.Collections.Immutable;

namespace Vessel.Export.Drawing;

/// <summary>
/// The table of pens. Kinds of line after ISO 128: wide for edges, narrow for the rest. A DXF has those of a flat as layers; the report's
/// style sheet knows each by its name.
/// </summary>
internal static class Pens
{
    /// <summary>What is cut.</summary>
    public static Pen Cut { get; } = new("cut", 0.35);

    /// <summary>Middles of bends.</summary>
    public static Pen Bend { get; } = new("bend", 0.25, 0, new(10, 2.5));

    /// <summary>What is scribed or punched, names among it.</summary>
    public static Pen Mark { get; } = new("mark", 0.18);

    /// <summary>For the reader alone.</summary>
    public static Pen Note { get; } = new("note", 0.18);
    public static Pen Edge { get; } = new("edge", 0.35);

    public static Pen Thin { get; } = new("thin", 0.18);
    public static Pen Hidden { get; } = new("hidden", 0.18, 0, new(2, 1));

    /// <summary>Centre lines.</summary>
    public static Pen Chain { get; } = new("chain", 0.18, 0, new(8, 1.2, 0.8));
    public static Pen Pale { get; } = new("pale", 0.18, 0.6);

    public static Pen PaleDashes { get; } = new("pale-dashes", 0.18, 0.6, new(3, 2));

    /// <summary>Marks of the scales that are measured before anything else is believed.</summary>
    public static Pen Scale { get; } = new("scale", 0.15);

    /// <summary>Border of a drawing, ends of a cutting plane.</summary>
    public static Pen Border { get; } = new("border", 0.5);

    /// <summary>Beside the reference line of a weld symbol (ISO 2553).</summary>
    public static Pen WeldDashes { get; } = new("weld-dashes", 0.18, 0, new(1.6, 0.9));

    /// <summary>Arrow heads and dots.</summary>
    public static Pen Arrow { get; } = new("arrow") { Fill = 0 };

    /// <summary>Metal that is cut through.</summary>
    public static Pen Face { get; } = new("face") { Fill = 0.78 };
    public static Pen Dimension { get; } = new("dimension", 0.18);

    /// <summary>Figures of dimensions and axes.</summary>
    public static Pen Figure { get; } = new("figure");
    public static Pen Name { get; } = new("name");

    /// <summary>Pen for a line from a name to what it names.</summary>
    public static Pen Leader { get; } = new("leader", 0.18);

    /// <summary>Numbers at holes and events.</summary>
    public static Pen Hole { get; } = new("hole");

    /// <summary>Holes of a field on filled metal.</summary>
    public static Pen Dots { get; } = new("dots");

    /// <summary>Where a flat's lengths begin.</summary>
    public static Pen Origin { get; } = new("origin");
    public static Pen Axis { get; } = new("axis");

    public static Pen Grid { get; } = new("grid");
    public static Pen Curve { get; } = new("curve");

    /// <summary>Between the least and the most of a range.</summary>
    public static Pen Band { get; } = new("band");
    public static Pen Event { get; } = new("event");

    public static Pen Seam { get; } = new("seam");
    public static Pen HiddenSeam { get; } = new("seam hidden");

    /// <summary>Numbers on a shaded picture.</summary>
    public static Pen Number { get; } = new("number");

    /// <summary>
    /// Cut faces of neighbours, four kinds of lines, so that they differ without colour (ISO 128-3: 45 degrees, spacing, direction).
    /// </summary>
    public static ImmutableArray<Pen> Hatched { get; } =
        [new("face hatch-0"), new("face hatch-1"), new("face hatch-2"), new("face hatch-3")];
}
