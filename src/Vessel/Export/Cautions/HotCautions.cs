using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Export;

/// <summary>The hazards of what is hot in use.</summary>
internal static class HotCautions
{
    /// <summary>What is hotter scalds at once, degC. Common practice, no source.</summary>
    private const double Scalds = 60;

    public static IEnumerable<string> Of(VesselDesign design)
    {
        if (design.Flow.Temperature >= Scalds && design.Ports.Any(port => port.Purpose == PortPurpose.Fill))
        {
            yield return $"Let it cool before the filler is opened: hot {design.Flow.Liquid.Word} scalds, and boils up when its cap lets the "
                + $"pressure go {Sources.Practice}.";
        }
    }
}
