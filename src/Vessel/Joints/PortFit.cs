using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>How a port's hole and tube go together.</summary>
public static class PortFit
{
    private const int Samples = 720;

    /// <summary>
    /// How far the wall of the hole stands into the bore of a set-on tube at most, mm. In a rolled shell the outline is
    /// taken on the outer face and the wall is radial, so the lip is greatest on the inner face; a drilled hole has none.
    /// </summary>
    public static double Lip(PortSite site, VesselDesign vessel)
    {
        if (site.Port.Joint == PortJoint.SetIn || vessel.Shell.MadeFrom == StockForm.Tube
            || site.Outside is not CylinderFootprint outside)
        {
            return 0;
        }

        var (bore, inner) = (site.Port.BoreRadius, vessel.Shell.InnerRadius);
        return Enumerable.Range(0, Samples).Max(i =>
        {
            // The same angle and height on the inner face, back in the port's frame.
            var place = outside.Place(bore, Turns.Full * i / Samples);
            var angle = site.Port.Place.Angle + place.U;
            var local = site.Frame.ToLocal(new(
                inner * Math.Cos(angle), inner * Math.Sin(angle), site.Port.Place.Height + place.V));
            return Math.Max(0, bore - Math.Sqrt((local.X * local.X) + (local.Y * local.Y)));
        });
    }
}
