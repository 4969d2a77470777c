using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;

namespace Vessel.Parts;

/// <summary>
/// The welds of a design in the order in which they are numbered: W1, W2... The same numbers stand on the flats, in the
/// tables and on the joints.
/// </summary>
public sealed record WeldNumbers(ImmutableArray<string> Paths)
{
    /// <summary>The paths that stand for the long seams of all its rolled courses.</summary>
    public static IEnumerable<string> LongSeams(ShellDesign shell) => shell.Courses.SelectMany(course => course.SeamPaths);

    /// <summary>The key that turns a long seam and, of several, all those beside it.</summary>
    public static string Turning(string seam) => seam.EndsWith(']') ? seam[..seam.LastIndexOf('[')] : seam;

    public static WeldNumbers Of(VesselDesign vessel) => new(
    [
        .. LongSeams(vessel.Shell),
        .. vessel.Shell.Reducer?.GirthPaths ?? [],
        .. OfHead(vessel.Top),
        vessel.Top.Path,
        .. OfHead(vessel.Bottom),
        vessel.Bottom.Path,
        .. vessel.Ports.SelectMany(OfPort),
        .. vessel.Inside.Sleeves.Where(sleeve => sleeve.Fixed == Design.Fixing.Weld).Select(sleeve => Fixing(sleeve.Path)),
        .. vessel.Inside.Caps.SelectMany(OfCap),
        .. vessel.Inside.Discs.Where(disc => disc.Fixed is Design.Fixing.Weld or Design.Fixing.Tabs).Select(disc => Fixing(disc.Path)),
        .. vessel.Brackets.SelectMany(bracket => OfBracket(bracket)),
    ]);

    /// <summary>The weld that holds an internal part.</summary>
    public static string Fixing(string path) => $"{path}.fixed";

    /// <summary>The weld between a cap's plate and skirt.</summary>
    public static string Rim(string path) => $"{path}.skirt";

    /// <summary>The long seam of a rolled skirt.</summary>
    public static string Seam(string path) => $"{path}.seam_angle";

    /// <summary>The path that stands for an elbow's mitre; the one next to the host is number 0.</summary>
    public static string Mitre(ElbowDesign elbow, int number) => string.Create(CultureInfo.InvariantCulture, $"{elbow.Path}.pieces[{number}]");

    /// <summary>An elbow is whole before it goes on.</summary>
    public static IEnumerable<string> OfPort(PortDesign port) =>
        [.. Enumerable.Range(0, port.Elbow?.Mitres ?? 0).Select(i => Mitre(port.Elbow!, i)), port.Path];

    private static IEnumerable<string> OfCap(CapDesign cap) =>
    [
        .. cap.MadeFrom == StockForm.Sheet ? new[] { Seam(cap.Path) } : [],
        Rim(cap.Path),
        .. cap.Fixed == Design.Fixing.Weld ? new[] { Fixing(cap.Path) } : [],
    ];

    /// <summary>
    /// The paths that stand for a bracket's welds, as seen from outside: of a saddle's two ears; of the two sides of a plate, that
    /// which its flat shows first.
    /// </summary>
    public static ImmutableArray<string> OfBracket(BracketDesign bracket) => bracket switch
    {
        SaddleBracket { Ears: BracketEars.Sides } => [$"{bracket.Path}.ears.left", $"{bracket.Path}.ears.right"],
        SaddleBracket => [$"{bracket.Path}.ears.upper", $"{bracket.Path}.ears.lower"],
        PlateBracket => [$"{bracket.Path}.width.face", $"{bracket.Path}.width.back"],
        _ => throw new ArgumentOutOfRangeException(nameof(bracket)),
    };

    /// <summary>The path that stands for a seam between two gores; the first is number 0.</summary>
    public static string GoreSeam(GoreDesign gores, int number) =>
        string.Create(CultureInfo.InvariantCulture, $"{gores.Path}.seam_angle[{number}]");

    /// <summary>The path that stands for the seam between gores and polar cap.</summary>
    public static string CapSeam(GoreDesign gores) => $"{gores.Path}.cap_diameter";

    /// <summary>The path that stands for a cone's own seam, of several for one; the first is number 0.</summary>
    public static string ConeSeam(ConeHead cone, int number) => cone.Segments == 1
        ? $"{cone.Path}.seam_angle"
        : string.Create(CultureInfo.InvariantCulture, $"{cone.Path}.seam_angle[{number}]");

    /// <summary>A head's own seams, which are welded before it goes on the shell.</summary>
    public static IEnumerable<string> OfHead(HeadDesign head) => head switch
    {
        DishedHead { Gores: { } gores } =>
            Enumerable.Range(0, gores.Count).Select(i => GoreSeam(gores, i)).Append(CapSeam(gores)),
        ConeHead cone => Enumerable.Range(0, cone.Segments).Select(i => ConeSeam(cone, i)),
        _ => [],
    };

    /// <summary>The number of the weld that the design's mapping at this path asks for: <c>W3</c>.</summary>
    public string this[string path] => Paths.Contains(path)
        ? $"W{Paths.IndexOf(path) + 1}"
        : throw new ArgumentException($"no weld stands at {path}");

    /// <summary>The same, or nothing where there is no such weld.</summary>
    public string Or(string path) => Paths.Contains(path) ? this[path] : string.Empty;
}
