using System.Globalization;
using System.Text;

namespace Vessel.Export;

/// <summary>Text as bytes straight into a stream, since there are millions of numbers.</summary>
/// <param name="decimals">Decimals of lengths, at most 6.</param>
internal sealed class TextBytes(Stream to, int decimals)
{
    private readonly ulong _unitsToOne = (ulong)Math.Pow(10, decimals);

    /// <summary>No number takes more bytes.</summary>
    private const int Longest = 32;

    private readonly byte[] _buffer = new byte[1 << 16];
    private int _filled;

    public void Put(string text) => Put(Encoding.UTF8.GetBytes(text));

    public void Line(string text)
    {
        Put(text);
        Put("\n"u8);
    }

    public void Put(ReadOnlySpan<byte> text)
    {
        while (_buffer.Length - _filled is var room && text.Length > room)
        {
            text[..room].CopyTo(_buffer.AsSpan(_filled));
            _filled += room;
            Flush();
            text = text[room..];
        }

        text.CopyTo(_buffer.AsSpan(_filled));
        _filled += text.Length;
    }

    /// <summary>Zeros behind the point are left out.</summary>
    /// <exception cref="OverflowException">The length is no number, or larger than any thing.</exception>
    public void Put(double length)
    {
        MakeRoom();
        var units = checked((long)Math.Round(length * _unitsToOne));
        if (units < 0)
            _buffer[_filled++] = (byte)'-';
        var (whole, rest) = Math.DivRem((ulong)Math.Abs(units), _unitsToOne);
        Add(whole);
        if (rest == 0)
            return;
        var digits = _buffer.AsSpan(_filled, decimals + 1);
        digits[0] = (byte)'.';
        for (var i = decimals; i > 0; i--, rest /= 10)
            digits[i] = (byte)('0' + (rest % 10));
        _filled += digits.TrimEnd((byte)'0').Length;
    }

    public void Flush()
    {
        to.Write(_buffer, 0, _filled);
        _filled = 0;
    }

    private void Add(ulong number)
    {
        number.TryFormat(_buffer.AsSpan(_filled), out var written, default, CultureInfo.InvariantCulture);
        _filled += written;
    }

    private void MakeRoom()
    {
        if (_buffer.Length - _filled < Longest)
            Flush();
    }
}
