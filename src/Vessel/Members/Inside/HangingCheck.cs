using Vessel.Design;

namespace Vessel.Members.Inside;

/// <summary>Whether what hangs inside fits the vessel.</summary>
internal static class HangingCheck
{
    /// <param name="sizePath">Path of the mapping that holds its outside diameter and wall.</param>
    /// <param name="lengthPath">Path of the key that sets how far it reaches down.</param>
    public static IEnumerable<Fault> Find(VesselDesign design, HangingSpec hanging, string sizePath, string lengthPath)
    {
        var (shown, body, outside, wall) = (new UnitFormat(design.Units), hanging.Body(design), hanging.OutsideDiameter, hanging.Wall);
        if (design.Top.Plate is null)
        {
            yield return new Fault(FaultCodes.HangsFromDome, $"{hanging.Path}.hangs_from",
                $"'{body.Name}' hangs from the top, which is not flat.", null, null,
                "Use 'top: { shape: flat, ... }'.");
        }

        if (wall >= outside / 2)
            yield return WallCheck.TooThick(shown, $"{sizePath}.wall", body.Name, wall, outside / 2);
        // It goes in from the end that it hangs from.
        var bore = 2 * design.Shell.LeastInner(body.Rings.Min(r => r.Low), design.Shell.Height);
        if (bore > 0 && outside >= bore)
        {
            yield return new Fault(FaultCodes.TooWideInside, $"{sizePath}.outside_diameter",
                $"'{body.Name}' does not enter the shell's bore.", shown.Length(outside), $"less than {shown.LengthDown(bore)}",
                "Make it narrower.");
            yield break;
        }

        var floor = InsideRoom.Floor(design, outside / 2);
        var low = body.Rings.Min(r => r.Low);
        if (floor < InsideRoom.Ceiling(design) && low <= floor)
        {
            yield return new Fault(FaultCodes.OutsideTheInside, lengthPath,
                $"'{body.Name}' reaches down to the bottom of the vessel.",
                $"lower end at {shown.Length(low)}", $"more than {shown.LengthUp(floor)}",
                $"Make it shorter by more than {shown.LengthUp(floor - low)}.");
        }
    }
}
