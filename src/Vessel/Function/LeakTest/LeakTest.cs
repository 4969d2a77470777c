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

    /// <summary>Of what a perfect shell bears.</summary>
    private static readonly Amount _imperfect = new(0.2, 0.5, 1);

    public static LeakTest Of(Assembly assembly) => new(assembly.Design, assembly.Capacity.Brim * 1e-9);

    private ShellDesign Shell => Design.Shell;

    private static double Megapascals(double pascals) => pascals * 1e-6;

    public double TestPressure => Megapascals(Design.LeakTest.Pressure);

    /// <summary>Of its widest part.</summary>
    public double MeanDiameter => (2 * Shell.WidestRadius) - Shell.Wall;

    /// <summary>The greatest of its parts.</summary>
    public double HoopStress => Shell.Courses.Max(course => ThinWalls.Cone(
        TestPressure, (2 * Math.Max(course.Low, course.High)) - course.Wall, course.Wall, course.IsCone ? course.HalfAngle : 0));

    /// <summary>Each end once, as the design has it.</summary>
    public ImmutableArray<(string Name, HeadDesign Head)> Ends =>
        [(Names.Of(PortHost.Top), Design.Top), (Names.Of(PortHost.Bottom), Design.Bottom)];

    /// <summary>Half of the bore that an end closes, mm.</summary>
    public double Free(HeadDesign head) => Rim(head).InnerRadius;

    /// <summary>The shell where a head closes it.</summary>
    public ShellDesign Rim(HeadDesign head) => Shell.AtEnd(head == Design.Top ? PortHost.Top : PortHost.Bottom);

    /// <summary>Clamped, between, simply supported; of a dish or cone the one value.</summary>
    public Amount EndStress(HeadDesign head)
    {
        var across = Rim(head).OutsideDiameter - head.Wall;
        switch (head)
        {
            case EllipsoidHead:
                return ThinWalls.Hoop(TestPressure, across, head.Wall);
            case TorisphereHead dish:
                return ThinWalls.Torisphere(TestPressure, dish.Crown, dish.Knuckle, dish.Wall);
            case ConeHead cone:
                return ThinWalls.Cone(TestPressure, across, cone.Wall, cone.HalfAngle);
            case ToriconeHead cone:
                // The knuckle as one of a torisphere whose crown touches the cone there (ASME VIII-1, 1-4(e), from memory).
                var crown = Free(head) / Math.Cos(cone.HalfAngle);
                return Math.Max(
                    ThinWalls.Cone(TestPressure, across, cone.Wall, cone.HalfAngle), ThinWalls.Torisphere(TestPressure, crown, cone.Knuckle, cone.Wall));
            case not (FlatHead or PanHead):
                return ThinWalls.Lengthwise(TestPressure, across, head.Wall);
        }

        var poisson = Strengths.Of(head.Material).Poisson;
        var (clamped, supported) = (
            ThinWalls.ClampedStress(TestPressure, Free(head), head.Wall), ThinWalls.SupportedStress(TestPressure, Free(head), head.Wall, poisson));
        return new(clamped, (clamped + supported) / 2, supported);
    }

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

    /// <summary>Pa of suction.</summary>
    public Amount ShellCollapse
    {
        get
        {
            var metal = Strengths.Of(Shell.Material);
            return 1e6 * ThinWalls.CylinderCollapse(MeanDiameter, Shell.Wall, Shell.Height, metal.Elasticity, metal.Poisson) * _imperfect;
        }
    }

    /// <summary>What the metal next to a weld bears over the greatest likely stress: of shell and ends.</summary>
    public IEnumerable<(string What, string Path, double Stress, double Bears)> Margins() => Ends
        .Select(end => (end.Name, end.Head.Path, EndStress(end.Head).Likely, Strengths.Of(end.Head.Material).Yield))
        .Prepend((Names.Shell, Shell.Path, HoopStress, Strengths.Of(Shell.Material).Yield));
}
