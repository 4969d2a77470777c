namespace Vessel.Design;

/// <summary>A row of equal windows, evenly round a tube or skirt: rectangles with round corners, slots, or round holes.</summary>
/// <param name="Width">Along the girth, measured on the outside, mm; of a round one its diameter.</param>
/// <param name="Corner">Radius of the corners, at most half of the smaller side, mm: that half makes a slot, or a round window.</param>
/// <param name="Up">Height of the lower edge above the plate, mm; of a sleeve above its lower end, of a port's tube from its inner end
/// along it.</param>
/// <param name="Angle">Direction of the first window's middle, radians; of a port's tube round its axis, as its elbow's direction.</param>
public sealed record WindowsDesign(string Path, int Count, double Width, double Height, double Corner, double Up, double Angle)
{
    /// <summary>A circle on what is cut: the flat of a rolled skirt, the outside of a tube.</summary>
    public bool IsRound { get; init; }

    /// <summary>Open area of one, as it is cut, mm2.</summary>
    public double AreaOfOne => (Width * Height) - ((4 - Math.PI) * Corner * Corner);

    /// <summary>Height of one window at a distance round the girth from its middle, mm.</summary>
    public double HeightAt(double aside)
    {
        var past = Math.Max(0, Math.Abs(aside) - (Width / 2) + Corner);
        return Height - (2 * Corner) + (2 * Math.Sqrt(Math.Max(0, (Corner - past) * (Corner + past))));
    }

    /// <summary>Length of the edge of one, mm.</summary>
    public double EdgeOfOne => (2 * (Width + Height)) - ((8 - (2 * Math.PI)) * Corner);
}
