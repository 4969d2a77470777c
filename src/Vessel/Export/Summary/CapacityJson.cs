using Vessel.Function;

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
        json.List("events", capacity.Events, e => json.Object(() =>
        {
            json.Put("what", e.What);
            json.Put("lean_deg", 0);
            json.Put("toward_deg", 0);
            json.Put("height_mm", e.Height);
            json.Put("volume_ml", e.Volume * MillilitresPerCubicMillimetre);
        }));
        json.List("levels", capacity.Levels, level => json.Object(() =>
        {
            json.Put("height_mm", level.Height);
            json.Put("volume_ml", level.Volume * MillilitresPerCubicMillimetre);
        }));
    }
}
