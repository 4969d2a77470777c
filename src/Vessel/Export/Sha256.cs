using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Numerics;

namespace Vessel.Export;

/// <summary>
/// SHA-256 (NIST, FIPS 180-4, section 6.2) of what is added piece by piece. Our own, since the platform's calls for a TLS library
/// that the native tool would need for nothing else.
/// </summary>
public sealed class Sha256
{
    public const int Length = 32;

    private const int Block = 64;

    /// <summary>First 32 bits of the fractional parts of the cube roots of the first 64 primes (section 4.2.2).</summary>
    private static readonly ImmutableArray<uint> _constants = [.. Primes().Take(Block).Select(prime => Fraction(prime, 3))];

    /// <summary>First 32 bits of the fractional parts of the square roots of the first eight primes (section 5.3.3).</summary>
    private readonly uint[] _state = [.. Primes().Take(8).Select(prime => Fraction(prime, 2))];

    private readonly uint[] _schedule = new uint[Block];

    private readonly byte[] _rest = new byte[Block];

    private ulong _count;

    public static byte[] Of(ReadOnlySpan<byte> bytes)
    {
        var hash = new Sha256();
        hash.Add(bytes);
        return hash.Finished();
    }

    public static byte[] Of(Stream stream)
    {
        var (hash, buffer) = (new Sha256(), new byte[1 << 16]);
        for (var read = stream.Read(buffer); read > 0; read = stream.Read(buffer))
            hash.Add(buffer.AsSpan(0, read));
        return hash.Finished();
    }

    public void Add(ReadOnlySpan<byte> bytes)
    {
        var filled = (int)(_count % Block);
        _count += (ulong)bytes.Length;
        if (filled > 0)
        {
            var taken = Math.Min(Block - filled, bytes.Length);
            bytes[..taken].CopyTo(_rest.AsSpan(filled));
            bytes = bytes[taken..];
            if (filled + taken < Block)
                return;
            Mix(_rest);
        }

        for (; bytes.Length >= Block; bytes = bytes[Block..])
            Mix(bytes[..Block]);
        bytes.CopyTo(_rest);
    }

    /// <summary>Hash of all that was added; nothing can be added afterwards.</summary>
    public byte[] Finished()
    {
        var bits = _count * 8;
        // A one, zeros, and the length in bits as the last eight bytes of a block (section 5.1.1).
        var padding = new byte[1 + (int)((Block + Block - 9 - (_count % Block)) % Block) + 8];
        padding[0] = 0x80;
        BinaryPrimitives.WriteUInt64BigEndian(padding.AsSpan(padding.Length - 8), bits);
        Add(padding);
        var hash = new byte[Length];
        for (var i = 0; i < _state.Length; i++)
            BinaryPrimitives.WriteUInt32BigEndian(hash.AsSpan(4 * i), _state[i]);
        return hash;
    }

    private void Mix(ReadOnlySpan<byte> block)
    {
        var w = _schedule;
        for (var t = 0; t < 16; t++)
            w[t] = BinaryPrimitives.ReadUInt32BigEndian(block[(4 * t)..]);
        for (var t = 16; t < Block; t++)
        {
            var (x, y) = (w[t - 15], w[t - 2]);
            w[t] = w[t - 16] + w[t - 7]
                + (BitOperations.RotateRight(x, 7) ^ BitOperations.RotateRight(x, 18) ^ (x >> 3))
                + (BitOperations.RotateRight(y, 17) ^ BitOperations.RotateRight(y, 19) ^ (y >> 10));
        }

        uint a = _state[0], b = _state[1], c = _state[2], d = _state[3], e = _state[4], f = _state[5], g = _state[6], h = _state[7];
        var constants = _constants.AsSpan();
        for (var t = 0; t < Block; t++)
        {
            var one = h + (BitOperations.RotateRight(e, 6) ^ BitOperations.RotateRight(e, 11) ^ BitOperations.RotateRight(e, 25))
                + ((e & f) ^ (~e & g)) + constants[t] + w[t];
            var two = (BitOperations.RotateRight(a, 2) ^ BitOperations.RotateRight(a, 13) ^ BitOperations.RotateRight(a, 22))
                + ((a & b) ^ (a & c) ^ (b & c));
            (h, g, f, e, d, c, b, a) = (g, f, e, d + one, c, b, a, one + two);
        }

        _state[0] += a;
        _state[1] += b;
        _state[2] += c;
        _state[3] += d;
        _state[4] += e;
        _state[5] += f;
        _state[6] += g;
        _state[7] += h;
    }

    private static IEnumerable<int> Primes() =>
        Enumerable.Range(2, 400).Where(n => Enumerable.Range(2, n - 2).All(divisor => n % divisor != 0));

    /// <summary>Exact: the whole root of the number times 2 to the 32nd, in integers.</summary>
    private static uint Fraction(int number, int power)
    {
        var wanted = new BigInteger(number) << (32 * power);
        BigInteger low = 0, high = BigInteger.One << 40;
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = BigInteger.Pow(middle, power) <= wanted ? (middle, high) : (low, middle);
        }

        return (uint)(low & uint.MaxValue);
    }
}
