using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export.Dxf;

/// <summary>Something drawn in model space. A closed set, to be matched by switch.</summary>
internal abstract record DxfEntity(string Layer)
{
    public abstract Box2 Bounds { get; }
}

internal sealed record DxfLine(string Layer, Point2 A, Point2 B) : DxfEntity(Layer)
{
    public override Box2 Bounds => new Box2(A, A).Join(B);
}

internal sealed record DxfCircle(string Layer, Point2 Center, double Radius) : DxfEntity(Layer)
{
    public override Box2 Bounds => CurveMeasures.Bounds(Loop2.Circle(Center, Radius));
}

internal sealed record DxfPolyline(string Layer, ImmutableArray<Bulge> Vertices, bool Closed) : DxfEntity(Layer)
{
    public override Box2 Bounds => Closed
        ? CurveMeasures.Bounds(new FittedLoop(Vertices, 0).ToLoop())
        : CurveMeasures.Bounds(new Loop2([.. Vertices.Zip(Vertices.Skip(1), (from, to) => from.To(to.At))]));
}

/// <param name="At">Left end of the base line.</param>
internal sealed record DxfText(string Layer, Point2 At, double Height, string Words) : DxfEntity(Layer)
{
    // Letters of the reader's own typeface: at most about as wide as high.
    public override Box2 Bounds => new(At, At + new Point2(Height * Words.Length, Height));
}
