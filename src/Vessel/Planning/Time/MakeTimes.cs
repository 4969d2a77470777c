using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>What it takes to make one part: by hand, and when its flat comes from a laser.</summary>
internal sealed class MakeTimes(Shop shop, Part part)
{
    /// <summary>A stocked pattern stands for one that is drawn where hole and pitch lie so near. Common practice, no source.</summary>
    private const double NearPattern = 0.15;

    public IEnumerable<TimeItem> Items()
    {
        var all = part.Flat is { } flat && part.Forming != Forming.Turned
            ? flat.Kind == FlatKind.Wrap ? Tube(flat) : Sheet(flat)
            : Unflat();
        return all.Append(Both(HandRates.CleanPart, 1));
    }

    private IEnumerable<TimeItem> Sheet(Flat flat)
    {
        yield return Hand(HandRates.Mark, 1);
        var straight = flat.Cut.Outer.Edges.Count(edge => edge is Line2);
        if (straight > 0)
            yield return Hand(HandRates.CutStraight, straight);
        var curved = flat.Cut.Outer.Edges.Where(edge => edge is not Line2).Sum(CurveMeasures.Length);
        if (curved > 0)
            yield return Hand(HandRates.CutCurve, curved);
        foreach (var item in Holes())
            yield return item;
        foreach (var field in part.Fields)
            yield return Field(field);
        foreach (var item in Cut(flat))
            yield return item;
        if (part.Forming == Forming.Rolled)
            yield return Both(HandRates.Roll, 1);
        if (part.Forming == Forming.Spun)
            yield return Both(HandRates.SendOut, 1);
        if (part.Forming == Forming.Dished)
            yield return Both(HandRates.Dish, 1);
        if (!flat.Bends.IsEmpty)
            yield return Both(HandRates.Bend, flat.Bends.Length);
    }

    private IEnumerable<TimeItem> Tube(Flat flat)
    {
        yield return Hand(HandRates.Saw, 1);
        if (WorkTasks.IsCoped(part))
            yield return Hand(HandRates.Cope, 1);
        foreach (var item in Holes())
            yield return item;
        foreach (var item in Cut(flat))
            yield return item;
    }

    /// <summary>Turned, or only sawn: the same with or without a laser.</summary>
    private IEnumerable<TimeItem> Unflat()
    {
        if (part.Forming == Forming.Turned)
        {
            yield return Both(HandRates.Turn, 1);
            yield break;
        }

        yield return Both(HandRates.Saw, 1);
        yield return Both(HandRates.Deburr, 2 * Math.PI * part.Stock.Width);
    }

    private IEnumerable<TimeItem> Holes()
    {
        if (part.Holes.IsEmpty)
            yield break;
        yield return Hand(HandRates.MarkHole, part.Holes.Length);
        foreach (var made in part.Holes.GroupBy(hole => hole.Made).OrderBy(group => group.Key))
        {
            yield return made.Key == HoleMethod.DrillAndTap
                ? Both(HandRates.Tap, made.Count())
                : Hand(RateOf(made.Key), made.Count());
        }
    }

    private static WorkRate RateOf(HoleMethod made) => made switch
    {
        HoleMethod.Drill => HandRates.Drill,
        HoleMethod.StepDrill => HandRates.StepDrill,
        HoleMethod.HoleSaw => HandRates.HoleSaw,
        _ => HandRates.FileOpening,
    };

    /// <summary>A shop without a laser cuts a screen from perforated sheet where one is sold with that pattern or nearly.</summary>
    private TimeItem Field(HoleField field)
    {
        var holes = field.Lattice.Count;
        var isStaggered = field.Lattice is GridLattice2 { Kind: GridKind.Staggered60 };
        bool Near(double sold, double drawn) => Math.Abs(sold - drawn) <= NearPattern * drawn;
        var sold = !isStaggered ? null : SheetPatterns.All
            .Where(p => Near(p.HoleDiameter, field.Diameter) && Near(p.Pitch, field.Lattice.Pitch))
            .MinBy(p => Math.Abs(p.HoleDiameter - field.Diameter) + Math.Abs(p.Pitch - field.Lattice.Pitch));
        if (sold is null)
            return Hand(HandRates.FieldHole, holes);
        return Hand(HandRates.FieldHole, 0) with
        {
            Basis = FormattableString.Invariant(
                $"none: cut from perforated sheet {sold.Name}, the stocked pattern next to {field.Diameter:0.##} on {field.Lattice.Pitch:0.##} mm ({holes} holes)"),
        };
    }

    private IEnumerable<TimeItem> Cut(Flat flat)
    {
        // Edges of bought perforated sheet need no deburring; drilled fields are deburred with their drilling.
        var edges = CurveMeasures.Length(flat.Cut.Outer) + flat.Cut.Holes.Sum(CurveMeasures.Length);
        yield return Hand(HandRates.Deburr, edges);
        yield return Laser(HandRates.DeburrLaser, edges);
        yield return Laser(HandRates.Handle, 1);
        var speed = LaserSpeeds.Of(part.Material.Family, part.Thickness);
        var minutes = part.Quantity * ((CurveMeasures.Length(flat.Cut) / speed.Value)
            + (LaserSpeeds.Pierce * (1 + flat.Cut.Holes.Length + flat.Cut.FieldHoles)));
        // Charts and machines differ by a third either way.
        yield return new(
            WorkTask.Making(part), StepKind.Make, "laser", CurveMeasures.Length(flat.Cut), null,
            new(minutes / 1.33, minutes, minutes * 1.33, speed.Source), speed.Source);
    }

    private TimeItem Hand(WorkRate rate, double quantity) => Item(rate, quantity) is var item ? item with { Laser = null } : item;

    private TimeItem Laser(WorkRate rate, double quantity) => Item(rate, quantity) is var item ? item with { Hand = null } : item;

    private TimeItem Both(WorkRate rate, double quantity) => Item(rate, quantity);

    private TimeItem Item(WorkRate rate, double quantity) =>
        Timing.Item(shop, WorkTask.Making(part), StepKind.Make, rate, part.Quantity * quantity);
}
