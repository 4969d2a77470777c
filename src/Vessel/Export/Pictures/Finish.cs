using System.Collections.Immutable;
using Vessel.Export.Solids;

namespace Vessel.Export.Pictures;

/// <summary>From samples to pixels: tints, hatching, dark lines at edges; four samples make a pixel.</summary>
internal static class Finish
{
    /// <summary>Samples a pixel, each way.</summary>
    public const int Fine = 2;

    /// <summary>Depth may change by so many samples from one to the next on a slanting face: more is a step.</summary>
    private const float Step = 9;

    /// <summary>A change of light that is no longer that of a round wall.</summary>
    private const int Crease = 26;

    private const int LightStep = 4;

    private const int HatchPeriod = 12;
    private const int HatchWidth = 4;

    /// <summary>Three bytes a pixel.</summary>
    public static byte[] Of(Raster raster, ImmutableArray<Colour> tints)
    {
        var (width, height) = (raster.Outlook.Width, raster.Outlook.Height);
        var pixels = new byte[3 * (width / Fine) * (height / Fine)];
        Parallel.For(0, height / Fine, row =>
        {
            for (var column = 0; column < width / Fine; column++)
            {
                var (red, green, blue) = (0, 0, 0);
                for (var k = 0; k < Fine * Fine; k++)
                {
                    var colour = Sample(raster, tints, (Fine * column) + (k % Fine), (Fine * row) + (k / Fine));
                    (red, green, blue) = (red + colour.Red, green + colour.Green, blue + colour.Blue);
                }

                var place = 3 * ((row * (width / Fine)) + column);
                (pixels[place], pixels[place + 1], pixels[place + 2]) = (Mean(red), Mean(green), Mean(blue));
            }
        });
        return pixels;
    }

    private static byte Mean(int sum) => (byte)(sum / (Fine * Fine));

    private static Colour Sample(Raster raster, ImmutableArray<Colour> tints, int x, int y)
    {
        var place = (y * raster.Outlook.Width) + x;
        if (IsEdge(raster, x, y, place))
            return new(0x22, 0x28, 0x2C);
        var body = raster.Body[place];
        if (body == 0)
            return new(0xFF, 0xFF, 0xFF);
        // In steps that nobody sees: the file is half as long.
        var (tint, light) = (tints[body - 1], raster.Light[place] / LightStep * LightStep / 252.0);
        if (raster.Light[place] == Raster.Cut)
            light = (body % 2 == 0 ? x + y : x - y + raster.Outlook.Height) % HatchPeriod < HatchWidth ? 0.5 : 0.95;
        return new((byte)(tint.Red * light), (byte)(tint.Green * light), (byte)(tint.Blue * light));
    }

    /// <summary>Against the sample to the right and the one below.</summary>
    private static bool IsEdge(Raster raster, int x, int y, int place)
    {
        var width = raster.Outlook.Width;
        return (x + 1 < width && Differ(raster, place, place + 1))
            || (y + 1 < raster.Outlook.Height && Differ(raster, place, place + width));
    }

    private static bool Differ(Raster raster, int a, int b)
    {
        if (raster.Body[a] != raster.Body[b])
            return true;
        if (raster.Body[a] == 0)
            return false;
        return Math.Abs(raster.DepthAt(a) - raster.DepthAt(b)) > Step || Math.Abs(raster.Light[a] - raster.Light[b]) > Crease;
    }
}
