using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Stock;

namespace Vessel.Export;

/// <summary>Everything about a design that can hurt someone; shown with every build, each caution with its source.</summary>
/// <remarks>Only the cautions that belong to the design's metals, finish, test and duty: a list that is too long is not read.</remarks>
internal static class Cautions
{
    public static ImmutableArray<string> Of(Assembly assembly) =>
    [
        "This is a vented vessel. Nothing here rates or certifies it for pressure; local codes and licensed practice decide, and no "
            + "caution is legal advice.",
        .. WeldingCautions.Of(assembly),
        .. FinishCautions.Of(assembly.Design),
        LeakWords.Caution(assembly),
        .. assembly.Flow is not null || !assembly.Design.Flow.IsLiquidGiven ? BreatherCautions.Of(assembly.Design) : [],
        .. MayHoldFuel(assembly.Design) ? FuelCautions.Of(assembly.Design.Flow) : [],
        .. HotCautions.Of(assembly.Design),
    ];

    /// <summary>Fuel by its name; where no liquid is named, what surely is no separator may be a tank.</summary>
    private static bool MayHoldFuel(VesselDesign design) => design.Flow.IsLiquidGiven
        ? design.Flow.Liquid.Kind is LiquidKind.Diesel or LiquidKind.Petrol
        : !IsSeparator(design);

    /// <summary>
    /// Whether gas from a machine surely passes through the vessel: a file that gives neither flow nor internals may be of a breather or of
    /// a tank, and is warned of both.
    /// </summary>
    private static bool IsSeparator(VesselDesign design) =>
        design.Flow.BlowBy is not null || design.Flow.Engine is not null || design.Capacity.Rule is not null
            || design.DrainBack != DrainDesign.Unknown
            || design.Members.Any(member => member is InsideSpec or PackingDesign);
}
