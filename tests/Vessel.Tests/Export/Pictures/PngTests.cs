using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using Vessel.Export.Pictures;
using Xunit;

namespace Vessel.Tests.Export.Pictures;

/// <summary>A picture read back by the rules of the format.</summary>
public sealed class PngTests
{
    [Theory]
    [InlineData(1, 1)]
    [InlineData(7, 3)]
    [InlineData(64, 40)]
    public void Pixels_come_back_as_they_were(int width, int height)
    {
        var pixels = new byte[3 * width * height];
        new Random(width).NextBytes(pixels);

        Assert.Equal(pixels, Unpacked(Png.Of(pixels, width, height), width, height));
    }

    private static byte[] Unpacked(byte[] png, int width, int height)
    {
        Assert.Equal([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A], png[..8]);
        var (at, kinds, data) = (8, new List<string>(), new MemoryStream());
        while (at < png.Length)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            var kind = Encoding.ASCII.GetString(png, at + 4, 4);
            var content = png.AsSpan(at + 8, length);
            // Bit by bit, as the code is defined: the table of the writer is not used.
            Assert.Equal(Code(png.AsSpan(at + 4, length + 4)), BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(at + 8 + length)));
            if (kind == "IHDR")
                Assert.Equal((width, height, 8, 2), (BinaryPrimitives.ReadInt32BigEndian(content),
                    BinaryPrimitives.ReadInt32BigEndian(content[4..]), content[8], content[9]));
            if (kind == "IDAT")
                data.Write(content);
            kinds.Add(kind);
            at += length + 12;
        }

        Assert.Equal(["IHDR", "IDAT", "IEND"], kinds);
        data.Position = 0;
        using var plain = new MemoryStream();
        using (var zlib = new ZLibStream(data, CompressionMode.Decompress))
            zlib.CopyTo(plain);
        return Unfiltered(plain.ToArray(), 3 * width, height);
    }

    private static byte[] Unfiltered(byte[] lines, int stride, int height)
    {
        Assert.Equal((stride + 1) * height, lines.Length);
        var pixels = new byte[stride * height];
        for (var row = 0; row < height; row++)
        {
            var filter = lines[row * (stride + 1)];
            for (var i = 0; i < stride; i++)
            {
                var guess = filter switch
                {
                    0 => 0,
                    1 => i < 3 ? 0 : pixels[(row * stride) + i - 3],
                    2 => row == 0 ? 0 : pixels[((row - 1) * stride) + i],
                    _ => throw new FormatException($"filter {filter}"),
                };
                pixels[(row * stride) + i] = (byte)(lines[(row * (stride + 1)) + 1 + i] + guess);
            }
        }

        return pixels;
    }

    private static uint Code(ReadOnlySpan<byte> content)
    {
        var sum = uint.MaxValue;
        foreach (var octet in content)
        {
            for (var bit = 0; bit < 8; bit++)
                sum = (sum >> 1) ^ (((sum ^ (uint)(octet >> bit)) & 1) != 0 ? 0xEDB88320 : 0);
        }

        return ~sum;
    }
}
