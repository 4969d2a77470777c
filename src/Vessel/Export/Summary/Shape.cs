using System.Text.Json.Nodes;

namespace Vessel.Export.Summary;

/// <summary>
/// How a value stands in summary.json: one declaration both writes it and describes it in the file's JSON Schema, so that the two
/// cannot disagree.
/// </summary>
internal abstract class Shape<T>
{
    /// <summary>A new JSON Schema (2020-12) of the value; new, since a node has one parent.</summary>
    public abstract JsonObject Schema();

    /// <summary>Writes the value; its name, if it has one, has been written.</summary>
    public abstract void Write(SummaryWriter json, T value);
}

/// <summary>A shape that is given as its two sides.</summary>
internal sealed class ItemShape<T>(Func<JsonObject> schema, Action<SummaryWriter, T> write) : Shape<T>
{
    public override JsonObject Schema() => schema();

    public override void Write(SummaryWriter json, T value) => write(json, value);
}

/// <summary>The shapes of what lists hold.</summary>
internal static class Items
{
    public static Shape<string> Text(string description) =>
        new ItemShape<string>(() => JsonSchemas.Text(description), (json, value) => json.Value(value));

    public static Shape<double> Number(string description) =>
        new ItemShape<double>(() => JsonSchemas.Number(description), (json, value) => json.Value(value));

    /// <summary>A number, or null where there is none.</summary>
    public static Shape<double?> MaybeNumber(string description) =>
        new ItemShape<double?>(() => JsonSchemas.Nullable(JsonSchemas.Number(description)), (json, value) => json.Value(value));

    public static Shape<IEnumerable<T>> List<T>(string description, Shape<T> item) =>
        new ItemShape<IEnumerable<T>>(
            () => JsonSchemas.List(description, item.Schema()), (json, values) => json.List(values, value => item.Write(json, value)));
}
