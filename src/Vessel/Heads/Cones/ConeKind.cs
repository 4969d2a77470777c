using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Heads.Cones;

/// <summary>Cones. One that is spun is read by what spins it.</summary>
internal sealed class ConeKind(Func<Section, ShellSection, HeadDesign> spun) : HeadKind
{
    public override string Shape => "cone";

    public override KeyMap Keys => ConeKeys.All;

    public override HeadDesign Read(Section section, ShellDesign whole, VesselEnd end) =>
        section.Text("made_from") == "spinning" ? spun(section, whole.AtEnd(end)) : Cone(section, whole.AtEnd(end));

    public override IEnumerable<(string Name, string What)> PartsOf(Section section, string end) =>
        SheetSeams.NamesOf(ConeHead.SegmentOf(end), section.Has("segments") ? section.Number("segments") : 1)
            .Select(name => (name, $"a segment of the {end}"));

    private static ConeHead Cone(Section section, ShellSection shell)
    {
        var wall = section.NumberOr("wall", shell.Course.Wall);
        // A number at fault stays out of the other figures' way: NaN has no whole number.
        var segments = section.Has("segments") ? (int)section.Number("segments") : 1;
        // One seam lies opposite the shell's one; more of either as far apart as may be.
        var usual = shell.Seams.Between(segments);
        return new(
            section.Path, section.Metal, wall, section.Number("angle") / 2,
            Turns.From(section.NumberOr("seam_angle", usual), 0), section.NumberOr("root_gap", Bevel.UsualGap(wall)))
        {
            Segments = segments,
        };
    }
}
