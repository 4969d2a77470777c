using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Mockups;

/// <summary>Room that must stay free at a port: a cylinder round its axis.</summary>
/// <param name="What">Words for what needs the room: <c>the hose on 'inlet'</c>.</param>
internal sealed record PortRoom(PortForm Port, string What, double Radius, double From, double To)
{
    public Bar Bar => Port.Round(Radius, From, To);

    /// <summary>
    /// A hose slipped over the tube, or screwed on beyond its fitting, as far as it runs straight; and a spanner that goes round the
    /// nut of a fitting or the head of a plug.
    /// </summary>
    /// <remarks>
    /// Greatest width of the head of an open-ended spanner: 2.1 x the width across flats + 7 mm (ISO 3318, from memory). A hose covers
    /// its tube over one diameter; plugs' heads are half as wide again as their threads and as long: common practice, no source.
    /// </remarks>
    public static IEnumerable<PortRoom> Of(PortForm form, MockupDesign options)
    {
        var (site, port) = (form.Site, form.Site.Port);
        var (straight, end) = (options.HoseStraight * port.OutsideDiameter, site.Run);
        if (FittingEnvelope.Of(port) is { } fitting)
        {
            yield return new(form, $"the spanner on '{port.Name}'", Spanner(fitting.AcrossFlats), end, end + fitting.Length);
            var beyond = end + fitting.Length;
            yield return new(form, $"the hose on '{port.Name}'", port.OuterRadius + options.HoseWall, beyond, beyond + straight);
        }
        else if (port.Thread is { } thread)
        {
            var flats = 1.5 * thread.MajorDiameter;
            yield return new(form, $"the spanner on '{port.Name}'", Spanner(flats), end, end + flats);
        }
        else
        {
            // No further than its last piece is whole all round.
            var whole = port.Elbow is { } elbow ? end - site.Legs[^1].Length + (elbow.Slope * port.OuterRadius) : end / 2;
            var covered = Math.Max(whole, end - port.OutsideDiameter);
            yield return new(form, $"the hose on '{port.Name}'", port.OuterRadius + options.HoseWall, covered, end + straight);
        }
    }

    private static double Spanner(double flats) => ((2.1 * flats) + 7) / 2;

    /// <summary>The cylinder as a solid in the vessel's frame.</summary>
    public Solid Solid()
    {
        var (near, far) = (Port.Ring(new(Radius, From)), Port.Ring(new(Radius, To)));
        Skin Disc(Edge3 edge, double at, bool outward)
        {
            var plane = Port.FrameAt(at);
            return new(new PlaneSurface(plane), [new(edge, t => plane.ToLocal(edge.At(t)) is var p ? new(p.X, p.Y) : default)], outward);
        }

        return new([Disc(near, From, false), Disc(far, To, true), new SideFace(near, far)]);
    }
}
