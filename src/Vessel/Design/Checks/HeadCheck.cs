namespace Vessel.Design;

/// <summary>Heads whose own shape is impossible, and two that leave no room between them.</summary>
internal static class HeadCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        foreach (var fault in new[] { VesselEnd.Top, VesselEnd.Bottom }.SelectMany(end => design.Head(end).Faults(end, design)))
            yield return fault;
        var (height, top, bottom) = (design.Shell.Height, design.Top.Depth, design.Bottom.Depth);
        if (top < height && bottom < height && top + bottom >= height)
        {
            yield return TooDeep(
                new(design.Units), design.Bottom.Path, "The two heads together take up the whole shell.", top + bottom, height);
        }
    }

    public static Fault TooDeep(UnitFormat shown, string path, string what, double depth, double height) => new(
        FaultCodes.LidTooDeep, path, $"{what} Recess and thickness together must be less than its height.",
        shown.Length(depth), $"less than {shown.LengthDown(height)}",
        "Make recess or thickness smaller, or the shell higher.");
}
