using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Parts;
using Vessel.Sites;
using static Vessel.Model.Allowed;

namespace Vessel.Members.Dipsticks;

/// <summary>A dipstick in its port.</summary>
internal sealed class Dipstick(DipstickDesign spec, VesselDesign vessel, ImmutableArray<PortSite> sites) : Member(spec.Path, spec.Name), IGauge, IAssessed
{
    /// <summary>Null where its port does not lead down into the vessel: none is made.</summary>
    private readonly DipstickSite? _site = DipstickSite.Of(spec, vessel, sites);

    public IEnumerable<Part> GaugeParts(Attitude attitude, Capacity capacity) => _site is null ? [] :
    [
        DipstickPart.Build(
            _site,
            GaugeScale.Of(attitude, capacity).Select(mark => (mark.Height, mark.Text)),
            capacity.Events.IsEmpty ? null : capacity.Events[0].Height),
    ];

    /// <summary>
    /// A stick that ends above the highest level of use shows nothing; one that ends above half of it, only when it is nearly full.
    /// </summary>
    public IEnumerable<Measure> Measures(Assembly assembly)
    {
        if (assembly.Capacity.Events.IsEmpty)
            yield break;
        var least = assembly.Attitude.VolumeBelow(_site?.Tip.Dot(assembly.Attitude.Position.Up) ?? assembly.Attitude.Depth.End);
        yield return new(
            FindingCodes.DipstickMissesOil,
            Severity.Warning,
            _site is null ? [] : [Name],
            () => _site is null
                ? $"no dipstick is made: '{spec.Port}' does not lead down into the vessel, or something stands right below it; use a port "
                    + "of the top with nothing below."
                : $"the dipstick in '{spec.Port}' ends on a part below it: it shows nothing below {FigureText.Of(least / 1e3)} ml, and "
                + $"only {FigureText.Of(assembly.Capacity.Usable / 1e3)} ml are of use: move its port clear of the internals.",
            [new("least shown", least / 1e3, AtMost(assembly.Capacity.Usable / 2e3), "ml")],
            assembly.Design.PlaceOf($"{Path}.in"),
            "least that the dipstick shows");
    }
}
