using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;

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
        .. BreatherCautions.Of(assembly.Design),
        .. IsSeparator(assembly.Design) ? [] : FuelCautions.All,
    ];

    /// <summary>
    /// Whether gas from a machine surely passes through the vessel: a file that gives neither flow nor internals may be of a breather or of
    /// a tank, and is warned of both.
    /// </summary>
    private static bool IsSeparator(VesselDesign design) =>
        design.Flow.BlowBy is not null || design.Flow.Engine is not null || design.Capacity.Rule is not null
            || design.DrainBack != DrainDesign.Unknown
            || design.Members.Any(member => member is InsideSpec or PackingDesign);
}
