using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Planning;

namespace Vessel.Members.Straps;

/// <summary>A strap on its shell.</summary>
internal sealed class Strap(StrapDesign spec, VesselDesign vessel) : Member(spec.Path, spec.Name), IAssessed
{
    private readonly StrapSite _back = new(spec, vessel.Shell.OuterAt(spec.Height), true);

    private readonly StrapSite _front = new(spec, vessel.Shell.OuterAt(spec.Height), false);

    public StrapDesign Spec { get; } = spec;

    /// <summary>The back one first.</summary>
    public ImmutableArray<StrapSite> Halves => [_back, _front];

    public override IEnumerable<Part> Parts(Welds welds) => Halves.Select(StrapParts.Half);

    /// <summary>The bolts that draw it together, and its liner as one strip for each half.</summary>
    public override IEnumerable<BoughtItem> Bought
    {
        get
        {
            yield return new(
                $"bolts of {Name}",
                _back.EarBolts.Length,
                $"bolt of {NoteText.Length(Spec.Bolts.Diameter)} mm with two washers and a locking nut, to grip "
                    + $"{NoteText.Length((2 * Spec.Thickness) + Spec.Gap)} mm and be drawn up by {NoteText.Length(Spec.Gap)} mm",
                null,
                null,
                Path);
            if (Spec.Liner > 0)
            {
                var length = 2 * _back.HalfBand * (_back.ShellRadius + (Spec.Liner / 2));
                yield return new(
                    $"liner of {Name}",
                    2,
                    $"strip of rubber that bears oil (nitrile), {NoteText.Length(Spec.Liner)} x {NoteText.Length(Spec.Width)} x "
                        + $"{NoteText.Length(length)} mm",
                    null,
                    length * Spec.Width * Spec.Liner,
                    Path);
            }
        }
    }

    public override IEnumerable<Flange> Flanges =>
        from half in Halves
        from flange in half.Flanges
        select new Flange(half.Name, $"{flange.What} of {half.Name}", flange.Leg, Spec.Thickness, $"{Path}.{flange.Key}");

    public override OutsideBody Outside => StrapForm.Of(this);

    public override SetUp SetUp =>
        SetUpTable.OnShell(Name, vessel.Shell, (Spec.Height, Spec.Angle), null, Spec.Feet.StandOff, FormattableString.Invariant(
        $"middle of its back half, {Spec.Low:0.##} to {Spec.High:0.##} mm up; clamped, not welded{(Spec.Feet.StandOff is null ? "" : "; depth is its feet's stand-off from the shell")}"));

    private string Clamping => WorkTask.Fitting(Path);

    public override IEnumerable<WorkTask> Tasks =>
    [
        new(
            Clamping, WorkKind.Fit,
            FormattableString.Invariant(
                $"clamp {Name} round the shell at {Spec.Height:0.##} mm, its back half at {Turns.ToDegrees(Spec.Angle):0.##} deg")
            + $"{(Spec.Liner > 0 ? ", on its liner" : "")}; draw both sides up evenly and lock the nuts: the gap must stay open. Look "
            + "again after the first run",
            WorkRank.PutOn, [.. Halves.Select(half => Slug.Of(half.Name))]),
    ];

    public override IEnumerable<WorkLink> Links(Welds welds) =>
    [
        new(WorkTask.Testing, Clamping, "soap film must reach the metal under it"),
        new(WorkTask.Finishing, Clamping, "it is clamped on the finished shell"),
    ];

    public override IEnumerable<string> MountingWords =>
    [
        $"'{Name}' holds by friction, which depends on the tension of its bolts, on oil and on the liner: neither that nor its band, ears, "
            + "feet "
            + "and bolts are calculated here. Try it with more than it will meet, or let something under the vessel bear its weight.",
    ];

    public override IEnumerable<string> Assumptions =>
    [
        "Strap flat: the band rolled on the middle of its sheet, bends with the K given; drawn with its gap open. It comes off the vessel "
            + "and is "
            + "left off the mock-up's print: its halves can be printed from solids/. Its clamping force is not calculated.",
    ];

    public override bool IsBolted => true;

    public IEnumerable<Measure> Measures(Assembly assembly) => StrapRules.Of(this, assembly);
}
