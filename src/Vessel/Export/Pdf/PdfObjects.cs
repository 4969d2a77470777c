using System.Globalization;
using System.Text;

namespace Vessel.Export.Pdf;

/// <summary>The numbered objects of a file with the table that says where each begins.</summary>
internal sealed class PdfObjects : IDisposable
{
    private readonly MemoryStream _file = new();

    private readonly List<long> _starts = [];

    /// <summary>The second line's high bytes tell transfer programs that the file is binary.</summary>
    public PdfObjects() => _file.Write("%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n"u8);

    public void Add(string body)
    {
        Begin();
        Put($"{body}\nendobj\n");
    }

    public void AddStream(string keys, byte[] data)
    {
        Begin();
        Put($"<< /Length {data.Length.ToString(CultureInfo.InvariantCulture)} {keys} >>\nstream\n");
        _file.Write(data);
        Put("\nendstream\nendobj\n");
    }

    /// <summary>Object 1 is the catalogue, object 3 the information. The file's name is taken from its content.</summary>
    public void WriteTo(Stream to)
    {
        var id = Convert.ToHexString(Sha256.Of(_file.GetBuffer().AsSpan(0, (int)_file.Length)).AsSpan(0, 16));
        var table = _file.Length;
        Put($"xref\n0 {_starts.Count + 1}\n0000000000 65535 f \n");
        foreach (var start in _starts)
            Put($"{start.ToString("D10", CultureInfo.InvariantCulture)} 00000 n \n");
        Put($"trailer\n<< /Size {_starts.Count + 1} /Root 1 0 R /Info 3 0 R /ID [<{id}> <{id}>] >>\nstartxref\n{table}\n%%EOF\n");
        _file.WriteTo(to);
    }

    public void Dispose() => _file.Dispose();

    private void Begin()
    {
        _starts.Add(_file.Length);
        Put($"{_starts.Count} 0 obj\n");
    }

    private void Put(string text) => _file.Write(Encoding.ASCII.GetBytes(text));
}
