using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Export.Summary;

/// <summary>
/// A JSON object as a list of fields, each added by one call that gives its name, what it is, and where its value comes from. A
/// field called "maybe" is written as null where there is none, one called "optional" is left out.
/// </summary>
internal sealed class RecordShape<T> : Shape<T>
{
    private readonly string _description;

    private readonly ImmutableArray<Field> _fields;

    public RecordShape(string description)
        : this(description, [])
    {
    }

    private RecordShape(string description, ImmutableArray<Field> fields)
    {
        _description = description;
        _fields = fields;
    }

    private sealed record Field(string Name, Func<JsonObject> Schema, Action<SummaryWriter, T> Write, bool IsOptional);

    public override JsonObject Schema() =>
        JsonSchemas.Object(_description, _fields.Select(field => (field.Name, field.Schema(), field.IsOptional)));

    public override void Write(SummaryWriter json, T value) => json.Object(() =>
    {
        foreach (var field in _fields)
            field.Write(json, value);
    });

    /// <summary>A field of any shape.</summary>
    public RecordShape<T> Of<TValue>(string name, Func<T, TValue> value, Shape<TValue> shape) =>
        With(name, shape.Schema, (json, whole) => json.Named(name, () => shape.Write(json, value(whole))));

    /// <summary>A field of any shape that is left out where it has no value.</summary>
    public RecordShape<T> Optional<TValue>(string name, Func<T, TValue?> value, Shape<TValue> shape)
        where TValue : class => With(name, shape.Schema, (json, whole) =>
        {
            if (value(whole) is { } there)
                json.Named(name, () => shape.Write(json, there));
        }, isOptional: true);

    /// <summary>A field of a plain value that is left out where there is none.</summary>
    public RecordShape<T> OptionalValue<TValue>(string name, Func<T, TValue?> value, Shape<TValue> shape)
        where TValue : struct => With(name, shape.Schema, (json, whole) =>
        {
            if (value(whole) is { } there)
                json.Named(name, () => shape.Write(json, there));
        }, isOptional: true);

    public RecordShape<T> Object<TValue>(string name, string description, Func<T, TValue> value, Fields<TValue> fields) =>
        Of(name, value, fields(new(description)));

    public RecordShape<T> List<TItem>(string name, string description, Func<T, IEnumerable<TItem>> items, Shape<TItem> item) =>
        Of(name, items, Items.List(description, item));

    public RecordShape<T> List<TItem>(
        string name, string description, Func<T, IEnumerable<TItem>> items, string itemDescription, Fields<TItem> fields) =>
        List(name, description, items, fields(new(itemDescription)));

    public RecordShape<T> Texts(string name, string description, string itemDescription, Func<T, IEnumerable<string>> items) =>
        List(name, description, items, Items.Text(itemDescription));

    public RecordShape<T> Text(string name, string description, Func<T, string> value) =>
        With(name, () => JsonSchemas.Text(description), (json, whole) => json.Put(name, value(whole)));

    public RecordShape<T> MaybeText(string name, string description, Func<T, string?> value) =>
        With(name, () => JsonSchemas.Nullable(JsonSchemas.Text(description)), (json, whole) => json.Put(name, value(whole)));

    public RecordShape<T> OptionalText(string name, string description, Func<T, string?> value) =>
        Optional(name, value, Items.Text(description));

    public RecordShape<T> Choice(string name, string description, Func<T, string> value, params string[] words) =>
        With(name, () => JsonSchemas.Choice(description, words), (json, whole) => json.Put(name, value(whole)));

    public RecordShape<T> OptionalChoice(string name, string description, Func<T, string?> value, params string[] words) =>
        Optional(name, value, new ItemShape<string>(() => JsonSchemas.Choice(description, words), (json, word) => json.Value(word)));

    public RecordShape<T> Number(string name, string description, Func<T, double> value) =>
        With(name, () => JsonSchemas.Number(description), (json, whole) => json.Put(name, value(whole)));

    public RecordShape<T> MaybeNumber(string name, string description, Func<T, double?> value) =>
        With(name, () => JsonSchemas.Nullable(JsonSchemas.Number(description)), (json, whole) => json.Put(name, value(whole)));

    public RecordShape<T> OptionalNumber(string name, string description, Func<T, double?> value) =>
        OptionalValue(name, value, Items.Number(description));

    public RecordShape<T> Count(string name, string description, Func<T, int> value) =>
        With(name, () => JsonSchemas.Count(description), (json, whole) => json.Put(name, value(whole)));

    public RecordShape<T> MaybeCount(string name, string description, Func<T, int?> value) =>
        With(name, () => JsonSchemas.Nullable(JsonSchemas.Count(description)), (json, whole) => json.Put(name, (double?)value(whole)));

    public RecordShape<T> OptionalCount(string name, string description, Func<T, int?> value) =>
        OptionalValue(name, value, new ItemShape<int>(() => JsonSchemas.Count(description), (json, count) => json.Value(count)));

    public RecordShape<T> Flag(string name, string description, Func<T, bool> value) =>
        With(name, () => JsonSchemas.Flag(description), (json, whole) => json.Put(name, value(whole)));

    /// <summary>A flag that is written only where it is true.</summary>
    public RecordShape<T> FlagIfSo(string name, string description, Func<T, bool> value) =>
        With(name, () => JsonSchemas.Flag(description), (json, whole) =>
        {
            if (value(whole))
                json.Put(name, true);
        }, isOptional: true);

    public RecordShape<T> MinMax(string name, string description, Func<T, Interval> value) => Of(name, value, Limits(description));

    public RecordShape<T> OptionalMinMax(string name, string description, Func<T, Interval?> value) =>
        OptionalValue(name, value, Limits(description));

    /// <summary>The likely value under the name, and its range beside it.</summary>
    public RecordShape<T> Likely(string name, string description, Func<T, Estimate> value) =>
        Number(name, description, whole => value(whole).Likely).Range($"{name}_range", $"Of {name}", value);

    public RecordShape<T> Range(string name, string description, Func<T, Estimate> value) => Object(name, description, value, range => range
        .Number("low", "At least", estimate => estimate.Low)
        .Number("likely", "Likely", estimate => estimate.Likely)
        .Number("high", "At most", estimate => estimate.High)
        .Text("basis", "Where the range comes from", estimate => estimate.Basis));

    private static RecordShape<Interval> Limits(string description) => new RecordShape<Interval>(description)
        .Number("min", "Least", limits => limits.Start)
        .Number("max", "Greatest", limits => limits.End);

    private RecordShape<T> With(string name, Func<JsonObject> schema, Action<SummaryWriter, T> write, bool isOptional = false) =>
        new(_description, _fields.Add(new(name, schema, write, isOptional)));
}

/// <summary>Adds the fields of an object that stands inside another.</summary>
internal delegate RecordShape<T> Fields<T>(RecordShape<T> shape);
