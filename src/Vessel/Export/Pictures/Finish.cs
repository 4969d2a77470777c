using System.Collections.Immutable;
using Vessel.Export.Solids;

namespace Vessel.Export.Pictures;

/// <summary>Last stage of a picture, from samples to pixels: tints, hatching, dark lines at edges; four samples make a pixel.</summary>
internal static class Finish
{
    /// <summary>Samples a pixel, each way.</summary>
    public const int Fine = 2;

    /// <summary>Depth may change by so many samples from one to the next on a slanting face: more is a step.</summary>
    private const float Step = 9;

    /// <summary>A change of light that is no longer that of a round wall.</summary>
    private const int Crease = 26;

    /// <summary>Light in steps that nobody sees: the file is half as long.</summary>
    private const int LightStep = 4;

    private const int Lights = 64;

    // Light of a cut face, in steps: on a line of its hatching and beside it.
    private const int OnHatch = 32;
    private const int OffHatch = 60;
    private const int HatchPeriod = 12;
    private const int HatchWidth = 4;

    private const byte White = 0xFF;

    private static readonly Colour _ink = new(0x22, 0x28, 0x2C);

    /// <summary>Three bytes a pixel.</summary>
    public static byte[] Of(Raster raster, ImmutableArray<Colour> tints)
    {
        var (width, height) = (raster.Outlook.Width / Fine, raster.Outlook.Height / Fine);
        var pixels = new byte[3 * width * height];
        var shades = Shades(tints);
        Array.Fill(pixels, White);
        // The outlook's margin keeps the last row and column free, whose samples have no neighbours.
        Parallel.For(0, height - 1, row =>
        {
            var line = pixels.AsSpan(3 * row * width, 3 * (width - 1));
            for (var column = 0; column < width - 1; column++)
                Mix(raster, shades, Fine * column, Fine * row, line.Slice(3 * column, 3));
        });
        return pixels;
    }

    /// <summary>Every tint in every light; the first for where nothing is.</summary>
    private static Colour[] Shades(ImmutableArray<Colour> tints)
    {
        var shades = new Colour[Lights * (tints.Length + 1)];
        Array.Fill(shades, new(White, White, White), 0, Lights);
        for (var i = Lights; i < shades.Length; i++)
        {
            var (tint, light) = (tints[(i / Lights) - 1], i % Lights / (Lights - 1.0));
            shades[i] = new((byte)(tint.Red * light), (byte)(tint.Green * light), (byte)(tint.Blue * light));
        }

        return shades;
    }

    /// <summary>The mean of a pixel's samples.</summary>
    private static void Mix(Raster raster, Colour[] shades, int x, int y, Span<byte> pixel)
    {
        var (body, width) = (raster.Body, raster.Outlook.Width);
        var first = (y * width) + x;
        if ((body[first] | body[first + 1] | body[first + 2]
            | body[first + width] | body[first + width + 1] | body[first + width + 2]
            | body[first + (2 * width)] | body[first + (2 * width) + 1]) == 0)
        {
            return;
        }

        var (red, green, blue) = (0, 0, 0);
        for (var k = 0; k < Fine * Fine; k++)
        {
            var place = first + (k / Fine * width) + (k % Fine);
            // Against the sample to the right and the one below.
            var colour = Differ(raster, place, place + 1) || Differ(raster, place, place + width)
                ? _ink
                : shades[(Lights * body[place]) + LightOf(raster, place, x + (k % Fine), y + (k / Fine))];
            (red, green, blue) = (red + colour.Red, green + colour.Green, blue + colour.Blue);
        }

        (pixel[0], pixel[1], pixel[2]) = ((byte)(red / (Fine * Fine)), (byte)(green / (Fine * Fine)), (byte)(blue / (Fine * Fine)));
    }

    private static int LightOf(Raster raster, int place, int x, int y)
    {
        var light = raster.Light[place];
        if (light != Raster.Cut)
            return light / LightStep;
        var along = raster.Body[place] % 2 == 0 ? x + y : x - y + raster.Outlook.Height;
        return along % HatchPeriod < HatchWidth ? OnHatch : OffHatch;
    }

    private static bool Differ(Raster raster, int a, int b)
    {
        var (body, light) = (raster.Body, raster.Light);
        if (body[a] != body[b])
            return true;
        return body[a] != 0
            && (Math.Abs(light[a] - light[b]) > Crease || Math.Abs(raster.DepthAt(a) - raster.DepthAt(b)) > Step);
    }
}
