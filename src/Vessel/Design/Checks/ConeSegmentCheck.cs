namespace Vessel.Design;

/// <summary>Segments of a cone that are too narrow at their tips.</summary>
internal static class ConeSegmentCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design) => new[] { PortHost.Top, PortHost.Bottom }.Select(end =>
        design.Head(end) is ConeHead { Segments: > 1 } cone ? Narrow(new(design.Units), design, end, cone) : null).OfType<Fault>();

    /// <summary>A segment keeps at least one wall across its tip, on the middle of the wall.</summary>
    private static Fault? Narrow(Shown shown, VesselDesign design, PortHost end, ConeHead cone)
    {
        if (HeadShape.Of(end, design) is not { Tip: > 0 } shape || !double.IsFinite(cone.RootGap))
            return null;
        var wide = (shape.Tip * cone.Pitch) - cone.RootGap;
        return wide >= cone.Wall ? null : new Fault(
            FaultCodes.SegmentsDoNotFit, $"{cone.Path}.segments",
            $"The segments of the {cone.Path} cone are less than one wall wide at their tips.", shown.Length(Math.Max(0, wide)),
            $"at least {shown.LengthUp(cone.Wall)}", "Use fewer segments, or a wider port at the pole.");
    }
}
