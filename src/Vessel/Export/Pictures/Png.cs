using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Vessel.Export.Pictures;

/// <summary>
/// PNG (W3C Recommendation, "Portable Network Graphics", third edition): eight bits each of red, green and blue, no more
/// chunks than it needs, no time.
/// </summary>
internal static class Png
{
    private const int Depth = 3;

    private static readonly byte[] _signature = [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    private static readonly uint[] _table = Table();

    /// <param name="pixels">Row by row from the top, three bytes each.</param>
    public static byte[] Of(byte[] pixels, int width, int height)
    {
        using var stream = new MemoryStream();
        stream.Write(_signature);
        var head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, width);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), height);
        (head[8], head[9]) = (8, 2);
        Chunk(stream, "IHDR", head);
        Chunk(stream, "IDAT", Packed(pixels, width, height));
        Chunk(stream, "IEND", []);
        return stream.ToArray();
    }

    private static byte[] Packed(byte[] pixels, int width, int height)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            var stride = Depth * width;
            var line = new byte[stride + 1];
            ReadOnlySpan<byte> above = new byte[stride];
            for (var row = 0; row < height; row++)
            {
                var here = pixels.AsSpan(row * stride, stride);
                Filter(here, above, line);
                zlib.Write(line);
                above = here;
            }
        }

        return packed.ToArray();
    }

    /// <summary>Told from the pixel above or the one to the left, whichever leaves less (the specification's own advice).</summary>
    private static void Filter(ReadOnlySpan<byte> here, ReadOnlySpan<byte> above, byte[] line)
    {
        var (fromLeft, fromAbove) = (0L, 0L);
        for (var i = 0; i < here.Length; i++)
        {
            fromLeft += Math.Abs((int)(sbyte)(here[i] - (i < Depth ? 0 : here[i - Depth])));
            fromAbove += Math.Abs((int)(sbyte)(here[i] - above[i]));
        }

        var isUp = fromAbove <= fromLeft;
        line[0] = (byte)(isUp ? 2 : 1);
        for (var i = 0; i < here.Length; i++)
            line[i + 1] = (byte)(here[i] - (isUp ? above[i] : i < Depth ? 0 : here[i - Depth]));
    }

    private static void Chunk(MemoryStream to, string kind, byte[] content)
    {
        Span<byte> number = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, content.Length);
        to.Write(number);
        var name = Encoding.ASCII.GetBytes(kind);
        to.Write(name);
        to.Write(content);
        BinaryPrimitives.WriteUInt32BigEndian(number, ~Sum(Sum(uint.MaxValue, name), content));
        to.Write(number);
    }

    /// <summary>The specification's cyclic redundancy code, its annex D.</summary>
    private static uint Sum(uint sum, byte[] content)
    {
        foreach (var octet in content)
            sum = _table[(sum ^ octet) & 0xFF] ^ (sum >> 8);
        return sum;
    }

    private static uint[] Table()
    {
        var table = new uint[256];
        for (var i = 0u; i < table.Length; i++)
        {
            var c = i;
            for (var k = 0; k < 8; k++)
                c = (c & 1) != 0 ? 0xEDB88320 ^ (c >> 1) : c >> 1;
            table[i] = c;
        }

        return table;
    }
}
