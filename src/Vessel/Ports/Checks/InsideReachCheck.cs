using Vessel.Design;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>Tubes that reach in through the shell's wall, or slanted through a head's, and run into what stands inside.</summary>
internal static class InsideReachCheck
{
    public static IEnumerable<Fault> Find(PortSites sites)
    {
        var shown = new UnitFormat(sites.Design.Units);
        var bodies = InsideSpec.BodiesIn(sites.Design).ToList();
        return sites.Found
            .Where(site => site.Port.InsideLength > 0 && site.Leans)
            .SelectMany(site => new TubeLines(site) is var lines
                ? bodies.Select(body => Find(shown, site.Port, lines, body)).OfType<Fault>().Take(1) : []);
    }

    private static Fault? Find(UnitFormat shown, PortDesign port, TubeLines lines, InsideBody body) =>
        lines.FirstMeeting(body) is not { } reach
            ? null
            : new Fault(FaultCodes.PartsCollide, port.DepthKey,
                $"The inner end of '{port.Name}' runs into '{body.Name}'.", shown.Length(port.InsideLength),
                $"at most {shown.LengthDown(reach)}", "Make its inside length smaller.");
}
