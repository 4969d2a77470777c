using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Function;

/// <summary>How much the vessel holds; mm3 and mm.</summary>
/// <param name="Brim">The inside less internals.</param>
/// <param name="Fillable">Upright, less the air that stays shut in as the oil rises.</param>
/// <param name="Upright">Events as it fills upright.</param>
/// <param name="Leaning">The same for each lean and direction, least lean first; then for the sideways acceleration.</param>
/// <param name="Levels">Height in the vessel's frame against volume, upright.</param>
public sealed record Capacity(
    double Brim,
    double Fillable,
    Filling Upright,
    ImmutableArray<Filling> Leaning,
    ImmutableArray<(double Height, double Volume)> Levels)
{
    /// <summary>Upright, up to the first spill or seal of the gas path.</summary>
    public double Usable => Upright.Usable;

    /// <summary>What happens there, in words.</summary>
    public string LimitedBy => Upright.LimitedBy;

    /// <summary>Upright, from the bottom up.</summary>
    public ImmutableArray<LevelEvent> Events => Upright.Events;

    /// <summary>The lean that leaves least; upright where nothing leans.</summary>
    public Filling Worst => Leaning.Append(Upright).MinBy(filling => filling.Usable)!;

    /// <param name="upright">The cavity as the vessel stands in use.</param>
    /// <param name="liquid">Name of the liquid in a word: <c>oil</c>.</param>
    public static Capacity Of(Attitude upright, CapacityDesign design, string liquid)
    {
        var cavity = upright.Cavity;
        return new(
            upright.VolumeBelow(upright.Depth.End),
            cavity.Rooms.Sum(room => upright.VolumeBelow(room, LastBreath(upright, room))),
            Filling.Of(upright, "", liquid),
            [.. Leans(design).Select(lean => Filling.Of(new(cavity, lean.Position), lean.Because, liquid))],
            Table(upright, design.TableStep));
    }

    private static IEnumerable<(Position Position, string Because)> Leans(CapacityDesign design)
    {
        var steps = (int)Math.Ceiling(design.GreatestLean / design.LeanStep - 1e-9);
        var leans = Enumerable.Range(1, Math.Max(0, steps))
            .Select(i => (Angle: Math.Min(i * design.LeanStep, design.GreatestLean), Because: ""));
        if (design.Sideways > 0)
        {
            leans = leans.Append((
                Position.OfSideways(design.Sideways, 0).Angle,
                FormattableString.Invariant($"{design.Sideways:0.###} g sideways")));
        }

        return from lean in leans
               from i in Enumerable.Range(0, design.Directions)
               select (new Position(lean.Angle, Turns.Full * i / design.Directions), lean.Because);
    }

    /// <summary>The level from which on air in a room cannot leave; minus infinity when it never can.</summary>
    private static double LastBreath(Attitude attitude, Room room)
    {
        if (!GasPath.At(attitude, double.NegativeInfinity).Breathes(room))
            return double.NegativeInfinity;
        return GasPath.Seals(attitude).First(level => !GasPath.At(attitude, level).Breathes(room));
    }

    private static ImmutableArray<(double Height, double Volume)> Table(Attitude attitude, double step)
    {
        var (floor, ceiling) = (attitude.Depth.Start, attitude.Depth.End);
        var steps = (int)Math.Floor((ceiling - floor) / step);
        return
        [
            .. Enumerable.Range(0, steps + 1)
                .Select(i => floor + (i * step))
                .Append(ceiling)
                .Distinct()
                .Select(height => (height, attitude.VolumeBelow(height))),
        ];
    }
}
