using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>Shell and ends at the test's pressure and the suction in use; MPa and mm.</summary>
internal sealed record LeakTest(VesselDesign Design, double Volume)
{
    /// <summary>Pa: beyond it the European directive 2014/68/EU may apply.</summary>
    public const double Directive = 50_000;

    /// <summary>Pa: 15 psi, up to which ASME VIII-1 U-1 leaves a vessel out.</summary>
    public const double Code = 103_421;

    /// <summary>Share of what a perfect shell bears that a real one does.</summary>
    private static readonly Amount _imperfect = new(0.2, 0.5, 1);

    public static LeakTest Of(Assembly assembly) => new(assembly.Design, assembly.Capacity.Brim * 1e-9);

    private ShellDesign Shell => Design.Shell;

    private static double Megapascals(double pascals) => pascals * 1e-6;

    public double TestPressure => Megapascals(Design.LeakTest.Pressure);

    /// <summary>Mean diameter of the shell's widest part, mm.</summary>
    public double MeanDiameter => (2 * Shell.WidestRadius) - Shell.Wall;

    /// <summary>At an open hole over what is away from it: 1 where an end or the shell has no port.</summary>
    public double HoleFactor(PortHost host) => Design.Ports.All(port => port.Host != host) ? 1
        : host == PortHost.Shell || Design.Head(host) is ConeHead or ToriconeHead ? ThinWalls.HoleInCylinder : ThinWalls.HoleEvenly;

    /// <summary>At the edge of a port where it has one.</summary>
    public double ShellStress => HoleFactor(PortHost.Shell) * HoopStress;

    /// <summary>Away from ports, the greatest of its parts.</summary>
    public double HoopStress => Shell.Courses.Max(course => ThinWalls.Cone(
        TestPressure, (2 * Math.Max(course.Low, course.High)) - course.Wall, course.Wall, course.IsCone ? course.HalfAngle : 0));

    /// <summary>Each end once, as the design has it.</summary>
    public ImmutableArray<(string Name, HeadDesign Head)> Ends =>
        [(Names.Of(PortHost.Top), Design.Top), (Names.Of(PortHost.Bottom), Design.Bottom)];

    /// <summary>Half of the bore that an end closes, mm.</summary>
    public double Free(HeadDesign head) => Rim(head).InnerRadius;

    /// <summary>The shell where a head closes it.</summary>
    public ShellSection Rim(HeadDesign head) => Shell.AtEnd(End(head));

    private PortHost End(HeadDesign head) => head.Path == Design.Top.Path ? PortHost.Top : PortHost.Bottom;

    /// <summary>
    /// The largest in an end: at the edge of a port where it has one, and of a flat end the more of a rim that is clamped and a middle
    /// whose rim is free to turn.
    /// </summary>
    public double EndStress(HeadDesign head)
    {
        var (across, hole) = (Rim(head).OutsideDiameter - head.Wall, HoleFactor(End(head)));
        switch (head)
        {
            case EllipsoidHead:
                return hole * ThinWalls.Hoop(TestPressure, across, head.Wall);
            case TorisphereHead dish:
                return hole * ThinWalls.Torisphere(TestPressure, dish.Crown, dish.Knuckle, dish.Wall);
            case ConeHead cone:
                return hole * ThinWalls.Cone(TestPressure, across, cone.Wall, cone.HalfAngle);
            case ToriconeHead cone:
                // The knuckle as one of a torisphere whose crown touches the cone there (ASME VIII-1, 1-4(e), from memory).
                var crown = Free(head) / Math.Cos(cone.HalfAngle);
                return hole * Math.Max(
                    ThinWalls.Cone(TestPressure, across, cone.Wall, cone.HalfAngle),
                    ThinWalls.Torisphere(TestPressure, crown, cone.Knuckle, cone.Wall));
            case not (FlatHead or PanHead):
                return hole * ThinWalls.Lengthwise(TestPressure, across, head.Wall);
        }

        return Math.Max(
            ThinWalls.ClampedStress(TestPressure, Free(head), head.Wall),
            hole * ThinWalls.SupportedStress(TestPressure, Free(head), head.Wall, Strengths.Of(head.Material).Poisson));
    }

    /// <summary>MPa: the largest of shell and ends with nothing inside and the air outside.</summary>
    public double VacuumStress =>
        Ends.Select(end => EndStress(end.Head)).Append(ShellStress).Max() * Air.Atmosphere / Design.LeakTest.Pressure;

    /// <summary>mm, of a flat end, with a flange or without.</summary>
    public Amount EndDeflection(HeadDesign head)
    {
        var metal = Strengths.Of(head.Material);
        var stiffness = ThinWalls.Stiffness(metal.Elasticity, metal.Poisson, head.Wall);
        var (clamped, supported) = (
            ThinWalls.ClampedDeflection(TestPressure, Free(head), stiffness),
            ThinWalls.SupportedDeflection(TestPressure, Free(head), stiffness, metal.Poisson));
        return new(clamped, (clamped + supported) / 2, supported);
    }

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
    public IEnumerable<(string What, string Path, double Stress, double Bears)> Margins() => Ends
        .Select(end => (end.Name, end.Head.Path, EndStress(end.Head), Strengths.Of(end.Head.Material).Yield))
        .Prepend((Names.Shell, Shell.Path, ShellStress, Strengths.Of(Shell.Material).Yield));
}
