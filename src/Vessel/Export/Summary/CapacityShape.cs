using Vessel.Function;
using Vessel.Geometry;

namespace Vessel.Export.Summary;

/// <summary>Layout of summary.json's <c>capacity</c>; a millilitre is 1000 mm3.</summary>
internal static class CapacityShape
{
    private const double MillilitresPerCubicMillimetre = 1e-3;

    public static Shape<Capacity> Entry { get; } = new RecordShape<Capacity>("Capacity")
        .Number("brim_ml", "Inside, less internals", capacity => capacity.Brim * MillilitresPerCubicMillimetre)
        .Number("fillable_ml", "Less trapped air", capacity => capacity.Fillable * MillilitresPerCubicMillimetre)
        .Number("usable_ml", "To the first seal or spill, upright", capacity => capacity.Usable * MillilitresPerCubicMillimetre)
        .Text("limited_by", "Limit of usable_ml", capacity => capacity.LimitedBy)
        .Number(
            "usable_leaning_ml", "The least of usable_ml upright and leaning",
            capacity => capacity.Worst.Usable * MillilitresPerCubicMillimetre)
        .List("leaning", "Each lean and direction", capacity => capacity.Leaning, "A way of standing", standing => standing
            .Number("lean_deg", "Of the vessel's axis from the plumb line", filling => Turns.ToDegrees(filling.Position.Angle))
            .Number("toward_deg", "Where its top tips to", filling => Turns.ToDegrees(filling.Position.Toward))
            .MaybeText(
                "because", "A sideways acceleration that acts like that lean",
                filling => filling.Because.Length == 0 ? null : filling.Because)
            .Number("usable_ml", "To the first seal or spill", filling => filling.Usable * MillilitresPerCubicMillimetre)
            .Text("limited_by", "Its limit", filling => filling.LimitedBy))
        .List("events", "Events as it fills", Events, "An event", one => one
            .Text("what", "Event", of => of.Event.What)
            .Number("lean_deg", "Of the vessel", of => Turns.ToDegrees(of.Position.Angle))
            .Number("toward_deg", "Direction of the lean", of => Turns.ToDegrees(of.Position.Toward))
            .Number(
                "height_mm",
                "Where the liquid's level crosses the vessel's axis, from the shell's lower edge; of a lean perhaps outside the vessel",
                of => of.Event.Height)
            .Number("volume_ml", "Held then", of => of.Event.Volume * MillilitresPerCubicMillimetre))
        .List("levels", "Gauge table", capacity => capacity.Levels, "A level", level => level
            .Number("height_mm", "Of the level", of => of.Height)
            .Number("volume_ml", "Held then", of => of.Volume * MillilitresPerCubicMillimetre));

    private static IEnumerable<(Position Position, LevelEvent Event)> Events(Capacity capacity) =>
        capacity.Leaning.Prepend(capacity.Upright).SelectMany(filling => filling.Events.Select(one => (filling.Position, one)));
}
