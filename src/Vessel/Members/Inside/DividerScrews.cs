using Vessel.Design;

namespace Vessel.Members.Inside;

/// <summary>The screws that hold a level plate inside.</summary>
internal static class DividerScrews
{
    /// <summary>For M4, mm: the medium fit of ISO 273, from memory.</summary>
    public const double Hole = 4.5;

    private const int Count = 3;

    public static BoughtItem Of(DividerSpec disc) => new(
        $"screws of {disc.Name}",
        Count,
        $"M4 screw with nut; {NoteText.Length(Hole)} mm holes at 60, 180 and 300 deg",
        null,
        null,
        disc.Path);
}
