using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Export.Drawing;
using Vessel.Export.General;
using Vessel.Export.Dxf;
using Vessel.Export.Paper;
using Vessel.Export.Solids;
using Vessel.Findings;
using Vessel.Fixtures;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Planning;

namespace Vessel.Export;

/// <summary>How a build is to be written.</summary>
/// <param name="Drawing">DXF release and tolerance.</param>
/// <param name="CutOnly">Whether each flat also comes as a file of its cut lines alone.</param>
/// <param name="DesignHash">SHA-256 of the design file's bytes, lower-case hexadecimal.</param>
public sealed record BuildOptions(
    DrawingOptions Drawing, bool CutOnly, Accuracy Solids, string ToolVersion, string DesignHash)
{
    /// <summary>What was set from outside the design file.</summary>
    public DesignSettings Settings { get; init; } = DesignSettings.None;

    /// <summary>SHA-256 of the shop file's bytes, lower-case hexadecimal; null without one.</summary>
    public string? ShopHash { get; init; }

    /// <summary>Width of the cut, mm, for which each sheet's flat also comes with its lines moved; zero for none.</summary>
    public double Kerf { get; init; }

    /// <summary>Parts of sheet that are smaller both ways also come in a frame that holds them by tabs, mm; zero for none.</summary>
    public double FrameBelow { get; init; }

    /// <summary>Angle of the section through the vessel's axis, radians round it.</summary>
    public double SectionAngle { get; init; }

    /// <summary>For templates and drawings.</summary>
    public PaperOptions Paper { get; init; } = new(PaperSize.A4);

    /// <summary>Kind of weld symbols on the drawing sheet; with those of AWS its views stand in third angle, else in first.</summary>
    public WeldSymbols WeldSymbols { get; init; }
}

/// <summary>A part with what is worked out once for several files.</summary>
/// <param name="Fitted">Flat of the part as it is drawn; null when it has none.</param>
/// <param name="Figures">Figures of its flat; null when it has none.</param>
public sealed record BuiltPart(
    Part Part, Mesh Mesh, FittedFlat? Fitted, FlatFigures? Figures, double Tolerance, double Chord)
{
    public static BuiltPart Of(Part part, BuildOptions options)
    {
        var fitted = part.Flat is { } flat ? FittedFlat.Of(flat, options.Drawing.Tolerance) : null;
        return new(
            part,
            Mesher.Flatten(part.Solid, options.Solids),
            fitted,
            fitted is null ? null : FlatFigures.Of(fitted),
            options.Drawing.Tolerance,
            options.Solids.Chord);
    }
}

/// <summary>Everything that the files of one build are written from.</summary>
public sealed class Build(
    Assembly assembly,
    ImmutableArray<BuiltPart> parts,
    ImmutableArray<(WeldFigures Figures, WeldCost Cost)> welds,
    ImmutableArray<Measure> measures,
    BuildOptions options,
    Plan plan)
{
    public Assembly Assembly { get; } = assembly;

    public ImmutableArray<BuiltPart> Parts { get; } = parts;

    public ImmutableArray<(WeldFigures Figures, WeldCost Cost)> Welds { get; } = welds;

    /// <summary>The measures that do not hold, those that the design accepts marked.</summary>
    public ImmutableArray<Measure> Findings { get; } = Acceptance.Mark(Assessment.Findings(measures), assembly.Design);

    /// <summary>How far figures are from their limits, whether or not they keep them.</summary>
    public ImmutableArray<Measure> Margins { get; } = [.. measures.Where(measure => measure.Of is not null)];

    public BuildOptions Options { get; } = options;

    public Plan Plan { get; } = plan;

    private readonly Lazy<AxialSection> _section = new(() => AxialSection.Of(parts, options.SectionAngle));

    private readonly Lazy<Mockup?> _mockup = new(() => assembly.Mockup is { Obstacles: [] } free ? Mockups.Mockup.Printed(free) : null);

    private readonly Lazy<ImmutableArray<MockupInternal>> _internals =
        new(() => Mockups.MockupInternals.Of(assembly.Design.Mockup, assembly.Members, assembly.Joints));

    private readonly Lazy<ImmutableArray<FigureGroup>> _function = new(() => FunctionFigures.Of(assembly));

    /// <summary>Whether the vessel does its work; worked out when first asked for.</summary>
    public ImmutableArray<FigureGroup> Function => _function.Value;

    /// <summary>Cut when the first of its files is written.</summary>
    public AxialSection Section => _section.Value;

    /// <summary>Meshed when the first of its files is written; null where something stands in its way.</summary>
    public Mockup? Mockup => _mockup.Value;

    /// <summary>Parts inside to print beside the mock-up, where the design asks for them.</summary>
    public ImmutableArray<MockupInternal> MockupInternals => _internals.Value;

    private readonly Lazy<ImmutableArray<PortFixture>> _fixtures = new(() => PortFixture.Of(plan));

    /// <summary>One for each port where the design asks for them.</summary>
    public ImmutableArray<PortFixture> Fixtures => _fixtures.Value;

    public static Build Of(Assembly assembly, ImmutableArray<Measure> measures, BuildOptions options) =>
        Of(Plan.Of(assembly, options.Kerf), measures, options);

    public static Build Of(Plan plan, ImmutableArray<Measure> measures, BuildOptions options)
    {
        var assembly = plan.Assembly;
        ImmutableArray<BuiltPart> parts =
            [.. assembly.Parts.AsParallel().AsOrdered().Select(part => BuiltPart.Of(part, options))];
        return new(
            assembly,
            parts,
            [.. assembly.Welds.Select(weld => (weld, WeldCost.Of(weld, assembly.MetalsOf(weld.Joint), assembly.Design)))],
            measures,
            options,
            plan);
    }
}
