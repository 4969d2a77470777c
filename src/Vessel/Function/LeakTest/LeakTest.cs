using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>Shell and ends at the test's pressure and the suction in use; MPa and mm.</summary>
internal sealed record LeakTest(VesselDesign Design, ImmutableArray<Head> Heads, double Volume)
{
    /// <summary>Pa: beyond it the European directive 2014/68/EU may apply.</summary>
    public const double Directive = 50_000;

    /// <summary>Pa: 15 psi, up to which ASME VIII-1 U-1 leaves a vessel out.</summary>
    public const double Code = 103_421;

    /// <summary>Share of what a perfect shell bears that a real one does.</summary>
    private static readonly Amount _imperfect = new(0.2, 0.5, 1);

    public static LeakTest Of(Assembly assembly) => new(assembly.Design, assembly.Chamber.Heads, assembly.Capacity.Brim * 1e-9);

    private ShellDesign Shell => Design.Shell;

    private static double Megapascals(double pascals) => pascals * 1e-6;

    public double TestPressure => Megapascals(Design.LeakTest.Pressure);

    /// <summary>Mean diameter of the shell's widest part, mm.</summary>
    public double MeanDiameter => (2 * Shell.WidestRadius) - Shell.Wall;

    /// <summary>Factor of stress at an open hole over what is away from it: 1 where it has no port.</summary>
    /// <param name="end">Null for the shell.</param>
    public double HoleFactor(VesselEnd? end) => Design.Ports.All(port => port.End != end) ? 1
        : Heads.FirstOrDefault(head => head.End == end)?.IsStressedAsCylinder ?? true ? ThinWalls.HoleInCylinder : ThinWalls.HoleEvenly;

    /// <summary>Stress of the shell, at the edge of a port where it has one.</summary>
    public double ShellStress => HoleFactor(null) * HoopStress;

    /// <summary>Away from ports, the greatest of its parts.</summary>
    public double HoopStress => Shell.Courses.Max(course => ThinWalls.Cone(
        TestPressure, (2 * Math.Max(course.Low, course.High)) - course.Wall, course.Wall, course.IsCone ? course.HalfAngle : 0));

    /// <summary>Half of the bore that an end closes, mm.</summary>
    public double Free(Head head) => Rim(head).InnerRadius;

    /// <summary>The shell where a head closes it.</summary>
    public ShellSection Rim(Head head) => Shell.AtEnd(head.End);

    /// <summary>The largest in an end: at the edge of a port where it has one.</summary>
    public double EndStress(Head head) => head.Stress(TestPressure, HoleFactor(head.End));

    /// <summary>MPa: the largest of shell and ends with nothing inside and the air outside.</summary>
    public double VacuumStress =>
        Heads.Select(EndStress).Append(ShellStress).Max() * Air.Atmosphere / Design.LeakTest.Pressure;

    /// <summary>mm, of a flat end, with a flange or without; null for a dome.</summary>
    public Amount? EndDeflection(Head head) => head.Bulge(TestPressure) is var (clamped, supported)
        ? new(clamped, (clamped + supported) / 2, supported)
        : null;

    /// <summary>Whether no suction that there can be folds the shell, however badly it is rolled.</summary>
    public bool BearsVacuum => ShellCollapse.Low >= Air.Atmosphere;

    /// <summary>Pa of suction; more than there can be where it does not fold.</summary>
    public Amount ShellCollapse
    {
        get
        {
            var metal = Strengths.Of(Shell.Material);
            return 1e6 * ThinWalls.CylinderCollapse(MeanDiameter, Shell.Wall, Shell.Height, metal.Elasticity, metal.Poisson) * _imperfect;
        }
    }

    /// <summary>The largest stress of shell and ends, and what the metal next to a weld bears.</summary>
    public IEnumerable<(string What, string Path, double Stress, double Bears)> Margins() => Heads
        .Select(head => (head.Name, head.Path, EndStress(head), Strengths.Of(head.Material).Yield))
        .Prepend((Names.Shell, Shell.Path, ShellStress, Strengths.Of(Shell.Material).Yield));
}
