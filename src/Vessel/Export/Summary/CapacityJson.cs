using Vessel.Function;
using Vessel.Geometry;

namespace Vessel.Export.Summary;

/// <summary>summary.json's <c>capacity</c>; a millilitre is 1000 mm3.</summary>
internal static class CapacityJson
{
    private const double MillilitresPerCubicMillimetre = 1e-3;

    public static void Write(Capacity capacity, SummaryWriter json)
    {
        json.Put("brim_ml", capacity.Brim * MillilitresPerCubicMillimetre);
        json.Put("fillable_ml", capacity.Fillable * MillilitresPerCubicMillimetre);
        json.Put("usable_ml", capacity.Usable * MillilitresPerCubicMillimetre);
        json.Put("limited_by", capacity.LimitedBy);
        json.Put("usable_leaning_ml", capacity.Worst.Usable * MillilitresPerCubicMillimetre);
        json.List("leaning", capacity.Leaning, filling => json.Object(() =>
        {
            WriteLean(filling, json);
            json.Put("because", filling.Because.Length == 0 ? null : filling.Because);
            json.Put("usable_ml", filling.Usable * MillilitresPerCubicMillimetre);
            json.Put("limited_by", filling.LimitedBy);
        }));
        json.Named("events", () => json.List(
            capacity.Leaning.Prepend(capacity.Upright).SelectMany(filling => filling.Events.Select(e => (filling, e))),
            at => json.Object(() =>
            {
                json.Put("what", at.e.What);
                WriteLean(at.filling, json);
                json.Put("height_mm", at.e.Height);
                json.Put("volume_ml", at.e.Volume * MillilitresPerCubicMillimetre);
            })));
        json.List("levels", capacity.Levels, level => json.Object(() =>
        {
            json.Put("height_mm", level.Height);
            json.Put("volume_ml", level.Volume * MillilitresPerCubicMillimetre);
        }));
    }

    private static void WriteLean(Filling filling, SummaryWriter json)
    {
        json.Put("lean_deg", Turns.ToDegrees(filling.Lean.Angle));
        json.Put("toward_deg", Turns.ToDegrees(filling.Lean.Toward));
    }
}
