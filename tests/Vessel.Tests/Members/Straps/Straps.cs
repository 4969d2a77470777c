using Vessel.Design;
using Vessel.Heads.FlatHeads;
using Vessel.Members.Straps;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Stock;
using Vessel.Tests.Reading;
using Vessel.Tests.Support;

namespace Vessel.Tests.Members.Straps;

/// <summary>Straps on a plain vessel of tube, 110 mm outside and 180 high, or whatever a test asks for.</summary>
internal static class Straps
{
    public static StrapDesign Usual { get; } = new(
        "strap", "strap", Materials.Find("aluminium 5052-H32")!, 90, 1.3, 3, 30, 4, 0, 30, 5, 0.42,
        new("strap.bolts", 8, 0, 0, 4, 9, 16),
        new("strap.feet", 40, 20, new("strap.feet.bolts", 8, 0, 0, 0, 9, 16)));

    public static VesselDesign On(StrapDesign strap, double outsideDiameter = 110)
    {
        var design = DesignTexts.Good(DesignTexts.WithHeight("180", metal: "aluminium 5052"));
        var shell = design.Shell with { OutsideDiameter = outsideDiameter };
        FlatHead Fitted(HeadDesign head) => (FlatHead)head with { OutsideDiameter = 2 * (shell.InnerRadius - ((FlatHead)head).Clearance) };
        return design with { Shell = shell, Top = Fitted(design.Top), Bottom = Fitted(design.Bottom), Members = [strap] };
    }

    /// <summary>The back half, then the front one.</summary>
    public static (StrapSite Site, Part Part)[] Halves(VesselDesign design) =>
        [.. new Strap(design.All<StrapDesign>().First(), design)
            .Halves.Zip(new Strap(design.All<StrapDesign>().First(), design).Parts(new([])))];

    /// <summary>Of every kind that its checks let through: narrow and wide gaps, with liner and without,
    /// feet straight on and on legs.</summary>
    public static VesselDesign Random(int seed)
    {
        var random = new Random(seed);
        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
        while (true)
        {
            var (radius, thickness) = (Between(20, 160), Between(1, 5));
            var (inside, hole) = (Between(0.3, 3) * thickness, Between(3, 10));
            var slot = seed % 3 == 0 ? 0 : Between(0.5, 6);
            var width = Between(2 * hole, 90);
            var up = width > 3.2 * hole && seed % 4 == 0 ? width - (2 * hole) : 0;
            BoltsDesign Bolts(string path) => new(path, hole - 1, 0, up, slot, hole, 2 * hole);
            var strap = Usual with
            {
                Angle = Between(0, 6.28),
                Thickness = thickness,
                Width = width,
                Gap = Between(0.5, 12),
                Liner = seed % 2 == 0 ? 0 : Between(0.5, 5),
                Ear = (2 * hole) + slot + Between(0, 20),
                InsideRadius = inside,
                K = Between(0.3, 0.5),
                Bolts = Bolts("strap.bolts"),
                Feet = new("strap.feet", (2 * hole) + slot + Between(0, 20),
                    seed % 5 < 2 ? null : Between(5, 80), Bolts("strap.feet.bolts")),
            };
            var design = On(strap, 2 * radius);
            if (!StrapCheck.Find(design, PortSites.Of(design)).Any())
                return design;
        }
    }
}
