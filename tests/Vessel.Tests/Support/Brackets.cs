using Vessel.Design;
using Vessel.Parts;
using Vessel.Stock;
using Vessel.Tests.Design;

namespace Vessel.Tests.Support;

/// <summary>Brackets on a plain vessel of 110 mm outside, or whatever a test asks for.</summary>
internal static class Brackets
{
    public static BracketDesign Narrow { get; } = new(
        "bracket", "bracket", Materials.Find("aluminium 5052-H32")!, 90, 1.3, 3, 70, 90, 25, BracketEars.Sides, 5, 0.42,
        new("bracket.bolts", 8, 24, 60, 4, 9, 16));

    public static BracketDesign Level { get; } = Narrow with
    {
        Ears = BracketEars.Ends,
        Width = 60,
        PlateHeight = 80,
        Bolts = Narrow.Bolts with { Across = 36, Up = 0 },
    };

    /// <summary>Metal that can be welded to it, and a height that holds it.</summary>
    public static VesselDesign On(BracketDesign? bracket, double outsideDiameter = 110)
    {
        var design = Vessel.Tests.Design.Designs.Good(Vessel.Tests.Design.Designs.WithHeight("180", metal: "aluminium 5052"));
        return design with
        {
            Shell = design.Shell with { OutsideDiameter = outsideDiameter },
            Bracket = bracket,
        };
    }

    public static Part Part(VesselDesign design) => BracketPart.Build(design.Bracket!, design, WeldNumbers.Of(design));

    /// <summary>Of any shape that there is, with holes wherever they come to lie on the metal: over the bends, too.</summary>
    public static VesselDesign Random(int seed)
    {
        var random = new Random(seed);
        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
        var radius = Between(25, 160);
        var thickness = Between(1, 5);
        var inside = Between(0.3, 3) * thickness;
        var ears = seed % 2 == 0 ? BracketEars.Sides : BracketEars.Ends;
        var corner = 2 * (inside + thickness);
        var width = ears == BracketEars.Sides ? Between(corner + 20, Math.Max(corner + 20, 1.9 * radius)) : Between(20, 1.9 * radius);
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
}
