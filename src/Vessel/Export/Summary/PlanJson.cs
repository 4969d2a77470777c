using Vessel.Function;
using Vessel.Planning;

namespace Vessel.Export.Summary;

/// <summary>summary.json's <c>plan</c>.</summary>
internal static class PlanJson
{
    public static void Write(Plan plan, SummaryWriter json)
    {
        json.Object("purge", () =>
        {
            json.Put("volume_l", plan.Purge.Volume);
            json.Put("flow_l_per_min", plan.Purge.Flow);
            json.Put("changes", plan.Purge.Changes);
            json.Put("gas_l", plan.Purge.Gas);
            json.Put("min", plan.Purge.Minutes);
        });
        json.List("order", plan.Order.Links, link => json.Object(() =>
        {
            json.Put("before", link.Before);
            json.Put("after", link.After);
            json.Put("why", link.Why);
        }));
        json.Object("time", () =>
        {
            json.Put("hand_min", plan.Timing.Hand);
            json.Put("laser_min", plan.Timing.Laser);
        });
        if (Quote.Of(plan) is { } quote)
        {
            json.Object("quote", () =>
            {
                json.Put("currency", quote.Currency);
                json.Put("hand", quote.Hand);
                json.Put("laser", quote.Laser);
                json.Put("vessels", quote.Vessels);
                json.Put("paid_over_cost", quote.PaidOverCost);
                json.List("not_priced", quote.NotPriced, json.Value);
            });
        }

        json.List("nests", plan.Sheets, sheet => json.Object(() =>
        {
            var nest = sheet.Nest;
            json.Put("material", nest.Material.Name);
            json.Put("thickness_mm", nest.Thickness);
            json.Put("sheets", nest.UsedLength.Length);
            json.List("used_length_mm", nest.UsedLength, json.Value);
            json.Put("utilisation", nest.Utilisation);
            json.List("too_large", nest.TooLarge, json.Value);
            if (sheet.Rectangle is { } rectangle)
            {
                json.Object("smallest_rectangle", () =>
                {
                    json.Put("length_mm", rectangle.Sheet.Length);
                    json.Put("width_mm", rectangle.Sheet.Width);
                    json.Put("utilisation", rectangle.Utilisation);
                });
            }
        }));
        json.List("bars", plan.Bars, bar => json.Object(() =>
        {
            json.Put("form", bar.Form);
            json.Put("material", bar.Material.Name);
            json.Put("diameter_mm", bar.Diameter);
            json.Put("wall_mm", bar.Wall);
            json.Put("stock_length_mm", bar.StockLength);
            json.List("lengths", bar.Packing.Bars, one => json.List(one, i => json.Object(() =>
            {
                json.Put("name", bar.Pieces[i].Name);
                json.Put("length_mm", bar.Pieces[i].Length);
            })));
            json.Put("used_mm", bar.Used);
            json.Put("utilisation", bar.Utilisation);
            json.Put("whole_utilisation", bar.WholeUtilisation);
            json.Put("least_lengths", bar.Packing.Bound);
            json.List("too_long", bar.Packing.TooLong.Select(i => bar.Pieces[i].Name), json.Value);
        }));
        json.Object("leak_test", () =>
        {
            json.Put("pressure_mbar", plan.LeakKit.Test.Pressure / 100);
            json.Put("with", LeakWords.Medium(plan.LeakKit.Test));
            json.List("blanks", plan.LeakKit.Blanks, blank => json.Object(() =>
            {
                json.Put("port", blank.Port);
                json.Put("blank", blank.Blank);
            }));
            json.List("points", plan.LeakKit.Points, point => json.Object(() =>
            {
                json.Put("where", point.Where);
                json.Put("what", point.What);
            }));
        });
        json.List("set_up", SetUp.Of(plan.Assembly), row => json.Object(() =>
        {
            json.Put("what", row.What);
            json.List("welds", row.Welds, json.Value);
            json.Put("datum", row.Datum);
            json.Put("height_mm", row.Height);
            json.Put("clock_deg", row.Clock);
            json.Put("arc_mm", row.Arc);
            json.Put("from_axis_mm", row.FromAxis);
            json.Put("depth_mm", row.Depth);
            json.Put("remark", row.Remark);
        }));
        json.List("access", plan.Access, access => json.Object(() =>
        {
            json.Put("weld", access.Joint.Number);
            json.Put("free_share", access.FreeShare);
            json.Put("reached_share", access.ReachedShare);
            json.Put("in_the_way", access.InTheWay);
        }));
        json.List("steps", plan.Steps, step => json.Object(() =>
        {
            json.Put("step", step.Number);
            json.Put("do", step.Kind.ToString().ToLowerInvariant());
            json.Put("task", step.Task.Id);
            json.Put("weld", step.Task.Welds);
            json.List("parts", step.Task.Parts, json.Value);
            json.Put("what", step.What);
            var (hand, laser) = plan.Timing.Of(step);
            json.Put("hand_min", hand.Likely);
            json.Put("laser_min", laser.Likely);
        }));
    }
}
