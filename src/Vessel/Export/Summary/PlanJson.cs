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
            json.Put("weld", step.Task.Weld?.Joint.Number);
            json.List("parts", step.Task.Parts, json.Value);
            json.Put("what", step.What);
            var (hand, laser) = plan.Timing.Of(step);
            json.Put("hand_min", hand.Likely);
            json.Put("laser_min", laser.Likely);
        }));
    }
}
