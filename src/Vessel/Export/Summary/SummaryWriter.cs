using System.Text.Encodings.Web;
using System.Text.Json;

namespace Vessel.Export.Summary;

/// <summary>
/// A JSON writer that knows our figures: rounded to 1e-6 of their unit, shortest, never NaN or -0.
/// </summary>
internal sealed class SummaryWriter(Stream to) : IDisposable
{
    private readonly Utf8JsonWriter _json = new(to, new()
    {
        Indented = true,
        NewLine = "\n",
        // Other scripts' letters stay readable; the file is not put into a web page as it is.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    public void Dispose() => _json.Dispose();

    public void Object(Action content)
    {
        _json.WriteStartObject();
        content();
        _json.WriteEndObject();
    }

    public void Named(string name, Action value)
    {
        _json.WritePropertyName(name);
        value();
    }

    public void List<T>(IEnumerable<T> items, Action<T> each)
    {
        _json.WriteStartArray();
        foreach (var item in items)
            each(item);
        _json.WriteEndArray();
    }

    public void Value(string text) => _json.WriteStringValue(text);

    public void Value(double figure) => _json.WriteRawValue(Numbers.Text(figure));

    public void Value(double? figure)
    {
        if (figure is { } value)
            Value(value);
        else
            _json.WriteNullValue();
    }

    public void Put(string name, string? text) => _json.WriteString(name, text);

    public void Put(string name, bool flag) => _json.WriteBoolean(name, flag);

    public void Put(string name, int count) => _json.WriteNumber(name, count);

    public void Put(string name, double figure)
    {
        _json.WritePropertyName(name);
        Value(figure);
    }

    public void Put(string name, double? figure)
    {
        if (figure is { } value)
            Put(name, value);
        else
            _json.WriteNull(name);
    }
}
