using System.Text;

namespace Vessel.Export.Solids;

/// <summary>Text as bytes straight into a stream, since there are millions of numbers.</summary>
internal sealed class XmlText(Stream to)
{
    /// <summary>Lengths are written to 1e-5 mm, finer than single precision holds at 150 mm.</summary>
    private const int Decimals = 5;

    private const double UnitsToOne = 1e5;

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

    public void Put(double length)
    {
        var units = (long)Math.Round(length * UnitsToOne);
        if (units < 0)
            Put("-"u8);
        Put((ulong)Math.Abs(units), Decimals);
    }

    public void Put(int number) => Put((ulong)number, 0);

    public void Flush()
    {
        to.Write(_buffer, 0, _filled);
        _filled = 0;
    }

    /// <summary>From the last digit back; zeros behind the point are left out.</summary>
    private void Put(ulong units, int decimals)
    {
        Span<byte> digits = stackalloc byte[Longest];
        var at = Longest;
        for (; decimals > 0 && units % 10 == 0; decimals--)
            units /= 10;
        for (var i = 0; i < decimals; i++, units /= 10)
            digits[--at] = (byte)('0' + (units % 10));
        if (decimals > 0)
            digits[--at] = (byte)'.';
        do
        {
            digits[--at] = (byte)('0' + (units % 10));
            units /= 10;
        }
        while (units > 0);
        Put(digits[at..]);
    }
}
