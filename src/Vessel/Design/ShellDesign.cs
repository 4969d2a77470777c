using System.Collections.Immutable;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>
/// The shell: a cylinder, a frustum, or two cylinders with a cone between them. Its lower edge is z = 0, and every edge is level. The
/// sizes here are those of its lower end; what is told of a place asks for <see cref="At"/>, <see cref="AtEnd"/> or a course.
/// </summary>
/// <param name="OutsideDiameter">Outside diameter at the lower edge, mm.</param>
/// <param name="SeamAngle">Where the long seam of a rolled shell lies, of several the first, radians in [0, 2 pi).</param>
/// <param name="RootGap">Gap left open along a long seam before welding, mm.</param>
public sealed record ShellDesign(
    string Path,
    Material Material,
    double OutsideDiameter,
    double Wall,
    double Height,
    StockForm MadeFrom,
    double SeamAngle,
    double RootGap)
{
    public double OuterRadius => OutsideDiameter / 2;

    public double InnerRadius => OuterRadius - Wall;

    public double MidRadius => OuterRadius - (Wall / 2);

    /// <summary>Equal sheets that go round it, with a long seam between each two; 1 from tube.</summary>
    public int Sheets { get; init; } = 1;

    /// <summary>The long seams of a shell that is rolled.</summary>
    public SheetSeams Seams => new(SeamAngle, Sheets);

    /// <summary>Rolls that the shell is rolled on.</summary>
    public RollsShop Rolls { get; init; } = RollsShop.Unknown;

    /// <summary>What is done about holes over a quarter of the diameter in the flat of a rolled shell.</summary>
    public LargeHoles LargeHoles { get; init; }

    /// <summary>Outside, at the upper edge of a frustum, mm; null for a shell that is none.</summary>
    public double? TopDiameter { get; init; }

    /// <summary>Null for a shell of one diameter, and for a frustum.</summary>
    public ReducerDesign? Reducer { get; init; }

    /// <summary>Whether it is one cylinder.</summary>
    public bool IsPlain => TopDiameter is null && Reducer is null;

    /// <summary>Names of the parts of a shell with a reducer, upward.</summary>
    public static ImmutableArray<string> NamesOfThree { get; } = ["lower shell", "reducer", "upper shell"];

    /// <summary>Courses from the lower edge up; never empty.</summary>
    public ImmutableArray<ShellCourse> Courses
    {
        get
        {
            var own = new ShellCourse(this, "shell", 0, Height, OuterRadius, (TopDiameter / 2) ?? OuterRadius, MadeFrom, Seams, RootGap)
            {
                Path = Path,
                SeamPath = $"{Path}.seam_angle",
                RootGapPath = $"{Path}.root_gap",
                SheetsPath = $"{Path}.sheets",
            };
            if (Reducer is not { } cone)
                return [own];
            var (low, high) = (cone.From, cone.From + cone.Length);
            return
            [
                own with { Name = NamesOfThree[0], End = low },
                new(this, NamesOfThree[1], low, high, OuterRadius, cone.Diameter / 2, StockForm.Sheet, new(cone.SeamAngle, cone.Sheets),
                    cone.RootGap)
                {
                    Path = cone.Path,
                    SeamPath = $"{cone.Path}.seam_angle",
                    RootGapPath = $"{cone.Path}.root_gap",
                    SheetsPath = $"{cone.Path}.sheets",
                },
                new(this, NamesOfThree[2], high, Height, cone.Diameter / 2, cone.Diameter / 2, cone.Above,
                    new(cone.AboveSeamAngle, cone.AboveSheets), RootGap)
                {
                    Path = cone.Path,
                    SeamPath = $"{cone.Path}.above_seam_angle",
                    RootGapPath = $"{Path}.root_gap",
                    SheetsPath = $"{cone.Path}.above_sheets",
                },
            ];
        }
    }

    /// <summary>The lower one where two meet.</summary>
    public ShellCourse CourseAt(double height)
    {
        var courses = Courses;
        foreach (var course in courses)
        {
            // Written so that a height at fault is the first one's.
            if (!(height > course.End))
                return course;
        }

        return courses[^1];
    }

    public ShellCourse CourseOf(VesselEnd end) => end == VesselEnd.Top ? Courses[^1] : Courses[0];

    /// <summary>The level section at a height; of the lower course where two meet.</summary>
    public ShellSection At(double height) => CourseAt(height).At(height);

    /// <summary>The level section at the end that a head closes.</summary>
    public ShellSection AtEnd(VesselEnd end) => end == VesselEnd.Top ? Courses[^1].At(Height) : Courses[0].At(0);

    public double OuterAt(double height) => IsPlain ? OuterRadius : CourseAt(height).OuterAt(height);

    /// <summary>Where an axis meets the outside that runs beside the vessel's own, radians.</summary>
    /// <param name="angle">Angle of the line from the vessel's axis to which it is parallel, seen from above.</param>
    /// <param name="offset">Distance from that line, towards increasing angle, mm.</param>
    public double ClockAt(double height, double angle, double offset) => angle + Math.Asin(offset / OuterAt(height));

    /// <summary>Inner radius at a height, mm: of the narrower one where two courses meet.</summary>
    public double InnerAt(double height) => IsPlain ? InnerRadius : LeastInner(height, height);

    /// <summary>The narrowest of the bore between two heights, mm.</summary>
    public double LeastInner(double low, double high)
    {
        if (IsPlain)
            return InnerRadius;
        var least = double.PositiveInfinity;
        foreach (var course in Courses)
        {
            var (from, to) = (Math.Clamp(low, 0, Height) is var a && a < course.Start ? course.Start : a,
                Math.Clamp(high, 0, Height) is var b && b > course.End ? course.End : b);
            if (!(from > to))
                least = Math.Min(least, Math.Min(course.InnerAt(from), course.InnerAt(to)));
        }

        return least;
    }

    public double WidestRadius => Courses.Max(course => Math.Max(course.Low, course.High));

    /// <summary>Heights of the seams round it where two courses meet.</summary>
    public ImmutableArray<double> Girths => [.. Courses.Skip(1).Select(course => course.Start)];

    /// <summary>Area of the outside, mm2.</summary>
    public double OutsideArea => Courses.Sum(course => course.Outer.Area);
}

/// <summary>When the large holes of a rolled shell are cut.</summary>
public enum LargeHoles
{
    /// <summary>Cutting in the flat, like all others.</summary>
    BeforeRolling,

    /// <summary>Cutting in the flat but for tabs, which hold what is cut out until the sheet is rolled.</summary>
    OnTabs,

    /// <summary>When it is rolled; they are scribed on the flat.</summary>
    AfterRolling,
}

/// <summary>The cone between the two cylinders of a shell, always rolled, and the cylinder above it.</summary>
/// <param name="From">Height of its lower edge, mm.</param>
/// <param name="Length">Along the shell's axis, mm.</param>
/// <param name="Diameter">Outside, of the shell above it, mm.</param>
/// <param name="Above">How the cylinder above it is made.</param>
/// <param name="AboveSeamAngle">Where that one's long seam lies, where it is rolled.</param>
public sealed record ReducerDesign(
    string Path,
    double From,
    double Length,
    double Diameter,
    double SeamAngle,
    double RootGap,
    StockForm Above,
    double AboveSeamAngle)
{
    /// <summary>Equal sheets round the cone.</summary>
    public int Sheets { get; init; } = 1;

    /// <summary>Round the cylinder above it; 1 from tube.</summary>
    public int AboveSheets { get; init; } = 1;

    /// <summary>The paths that stand for the seams round its lower and its upper edge.</summary>
    public ImmutableArray<string> GirthPaths => [$"{Path}.from", $"{Path}.length"];
}
