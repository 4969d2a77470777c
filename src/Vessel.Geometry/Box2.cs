namespace Vessel.Geometry;

/// <summary>An axis-parallel rectangle; millimetres. <see cref="Empty"/> holds nothing and joins with anything.</summary>
public readonly record struct Box2(Point2 Min, Point2 Max)
{
    public static Box2 Empty { get; } = new(
        new(double.PositiveInfinity, double.PositiveInfinity), new(double.NegativeInfinity, double.NegativeInfinity));

    public bool IsEmpty => Min.U > Max.U;

    public double Width => Max.U - Min.U;

    public double Height => Max.V - Min.V;

    /// <summary>The smallest box that holds both.</summary>
    public Box2 Join(Box2 b) =>
        new(new(Math.Min(Min.U, b.Min.U), Math.Min(Min.V, b.Min.V)), new(Math.Max(Max.U, b.Max.U), Math.Max(Max.V, b.Max.V)));

    public Box2 Join(Point2 p) => Join(new Box2(p, p));
}
