using Vessel.Design;

namespace Vessel.Heads.Dishes;

/// <summary>Dished heads of one shape, spun or of gores.</summary>
/// <param name="shape">Word for it in the file.</param>
/// <param name="read">Function that reads the head from its section and the shell at the end that it closes.</param>
internal sealed class DishKind(string shape, KeyMap keys, Func<Section, ShellSection, DishedHead> read) : HeadKind
{
    public override string Shape => shape;

    public override KeyMap Keys => keys;

    public override HeadDesign Read(Section section, ShellDesign whole, VesselEnd end) => read(section, whole.AtEnd(end));

    public override IEnumerable<(string Name, string What)> PartsOf(Section section, string end) =>
        section.Text("made_from") != "gores" ? []
        : SheetSeams.NamesOf(GoreDesign.GoreOf(end), SheetSeams.Most).Select(name => (name, $"a gore of the {end}"))
            .Append((GoreDesign.CapOf(end), $"the polar cap of the {end}"));
}
