using Vessel.Design;
using Vessel.Joints;
using Vessel.Members.Brackets;
using Vessel.Members.Plates;
using Vessel.Members.Saddles;
using Vessel.Parts;
using Vessel.Stock;
using Vessel.Tests.Design;
using Vessel.Tests.Support;
using Vessel.Tests.Reading;

namespace Vessel.Tests.Members.Brackets;

/// <summary>Brackets on a plain vessel of 110 mm outside, or whatever a test asks for.</summary>
internal static class BracketDesigns
{
    public static SaddleDesign Narrow { get; } = new(
        "bracket", "bracket", Materials.Find("aluminium 5052-H32")!, 90, 1.3, 3, 70, 90, 25, SaddleEars.Sides, 5, 0.42,
        new("bracket.bolts", 8, 24, 60, 4, 9, 16));

    public static SaddleDesign Level { get; } = Narrow with
    {
        Ears = SaddleEars.Ends,
        Width = 60,
        PlateHeight = 80,
        Bolts = Narrow.Bolts with { Across = 36, Up = 0 },
    };

    /// <summary>Metal that can be welded to it, and a height that holds it.</summary>
    public static VesselDesign On(BracketDesign bracket, double outsideDiameter = 110)
    {
        var design = DesignTexts.Good(DesignTexts.WithHeight("180", metal: "aluminium 5052"));
        return design with
        {
            Shell = design.Shell with { OutsideDiameter = outsideDiameter },
            Members = [bracket],
        };
    }

    public static Part Part(VesselDesign design) => design.Bracket().Build(design).Parts(Compiler.Assemble(design).Joints).Single();

    /// <summary>The first bracket of a design.</summary>
    public static BracketDesign Bracket(this VesselDesign design) => design.All<BracketDesign>().First();

    /// <summary>The same vessel on another bracket.</summary>
    public static VesselDesign With(this VesselDesign design, BracketDesign bracket) =>
        design with { Members = [.. design.Members.Where(member => member is not BracketDesign), bracket] };

    /// <summary>The saddle that a design of these has.</summary>
    public static SaddleDesign Saddle(this VesselDesign design) => (SaddleDesign)design.Bracket();

    /// <summary>Of any shape that there is, with holes wherever they come to lie on the metal: over the bends, too.</summary>
    public static VesselDesign Random(int seed)
    {
        var random = new Random(seed);
        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
        var radius = Between(25, 160);
        var thickness = Between(1, 5);
        var inside = Between(0.3, 3) * thickness;
        var ears = seed % 2 == 0 ? SaddleEars.Sides : SaddleEars.Ends;
        var corner = 2 * (inside + thickness);
        var width = ears == SaddleEars.Sides ? Between(corner + 20, Math.Max(corner + 20, 1.9 * radius)) : Between(20, 1.9 * radius);
        width = Math.Min(width, 1.95 * radius);
        var height = Between(corner + 20, 160);
        var hole = Between(3, 10);
        var slot = seed % 3 == 0 ? 0 : Between(0.5, 6);
        return On(
            Narrow with
            {
                Angle = Between(0, 6.28),
                Thickness = thickness,
                InsideRadius = inside,
                K = Between(0.3, 0.5),
                Width = width,
                PlateHeight = height,
                StandOff = inside + Between(2, 40),
                Ears = ears,
                Bolts = new("bracket.bolts", hole - 1, Between(hole + 1, Math.Max(hole + 1, width - hole - 2)),
                    Between(hole + slot + 1, Math.Max(hole + slot + 1, height - hole - slot - 2)), slot, hole, 2 * hole),
            },
            2 * radius);
    }

    public static PlateDesign Plate { get; } = new(
        "bracket", "bracket", Materials.Find("aluminium 5052-H32")!, 90, 1.3, 12, 0, 5, 60, 40, 45, 8, 25,
        new("bracket.bolts", 8, 16, 0, 3, 9, 16));

    /// <summary>A plate of any roll and offset, as wide as the shell at times.</summary>
    public static VesselDesign RandomPlate(int seed)
    {
        var random = new Random(seed);
        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
        var (radius, thickness) = (Between(25, 160), Between(1.5, 8));
        var roll = (seed % 4) switch
        {
            0 => 0,
            1 => Math.PI / 2 * (seed % 8 == 1 ? 1 : -1),
            _ => Between(-1.5, 1.5),
        };
        // The most that its width may be where it stands askew; the shell is 180 high.
        var room = 0.97 * radius;
        var offset = seed % 3 == 0 ? 0 : Between(-0.6, 0.6) * room;
        var most = Math.Min(2 * (room - Math.Abs(offset) - (thickness / 2)) / Math.Max(0.05, Math.Cos(roll)), 150);
        var width = Between(0.3, 1) * most;
        var plate = Plate with
        {
            Angle = Between(0, 6.28),
            Offset = offset,
            Roll = roll,
            Thickness = thickness,
            Width = width,
            FreeWidth = seed % 2 == 0 ? width : Between(0.4, 1.2) * width,
            Depth = radius + Between(10, 60),
            Corner = seed % 5 == 0 ? 0 : 0.15 * width,
            BoltsAt = 0.7 * radius,
            Bolts = new("bracket.bolts", 3, 0, 0, seed % 3, 3.4, 7),
        };
        return On(plate, 2 * radius);
    }
}
