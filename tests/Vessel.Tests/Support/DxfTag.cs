using System.Globalization;
using System.Text;
using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Support;

/// <summary>A pair of group code and value, as a strict reader sees it.</summary>
internal readonly record struct DxfTag(int Code, string Value)
{
    /// <summary>Demands ASCII, CR LF throughout, and numbers in plain notation.</summary>
    public static List<DxfTag> Read(byte[] file)
    {
        Assert.All(file, b => Assert.True(b is (>= 32 and < 127) or 13 or 10));
        var text = Encoding.ASCII.GetString(file);
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        var lines = text.Split("\r\n")[..^1];
        Assert.All(lines, line => Assert.Equal(-1, line.AsSpan().IndexOfAny('\r', '\n')));
        Assert.Equal(0, lines.Length % 2);
        List<DxfTag> tags = [.. lines.Chunk(2).Select(pair => new DxfTag(int.Parse(pair[0], CultureInfo.InvariantCulture), pair[1]))];
        Assert.All(tags.Where(tag => tag.IsReal), tag => Assert.Matches(@"^(0|-?([1-9]\d*|0(?=\.))(\.\d*[1-9])?)$", tag.Value));
        Assert.DoesNotContain(tags, tag => tag.Value == "-0");
        return tags;
    }

    public bool IsReal => Code is >= 10 and <= 59;

    public double AsReal() => double.Parse(Value, CultureInfo.InvariantCulture);

    public int AsHandle() => int.Parse(Value, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
}

/// <summary>An object of the file: its type and the pairs up to the next code 0.</summary>
internal sealed record DxfNode(string Type, List<DxfTag> Tags)
{
    public string? this[int code] => Tags.Where(tag => tag.Code == code).Select(tag => tag.Value).FirstOrDefault();

    public List<string> All(int code) => [.. Tags.Where(tag => tag.Code == code).Select(tag => tag.Value)];

    public double Real(int code) => Tags.First(tag => tag.Code == code).AsReal();

    public int Handle(int code) => Tags.Single(tag => tag.Code == code).AsHandle();

    public Point2 Point(int code) => new(Real(code), Real(code + 10));

    public static List<DxfNode> Split(IEnumerable<DxfTag> tags)
    {
        var nodes = new List<DxfNode>();
        foreach (var tag in tags)
        {
            if (tag.Code == 0)
                nodes.Add(new(tag.Value, []));
            else
                nodes[^1].Tags.Add(tag);
        }

        return nodes;
    }
}
