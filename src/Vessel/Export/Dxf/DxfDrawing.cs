using Vessel.Geometry;

namespace Vessel.Export.Dxf;

/// <summary>What stands in model space. The entities of a hole field are made one by one while they are written.</summary>
/// <param name="Count">Of the entities: the header tells it before they come.</param>
internal sealed record DxfDrawing(IEnumerable<DxfEntity> Entities, int Count, Box2 Bounds)
{
    public static DxfDrawing Of(IReadOnlyCollection<DxfEntity> entities) =>
        new(entities, entities.Count, entities.Aggregate(Box2.Empty, (box, entity) => box.Join(entity.Bounds)));

    /// <summary>The same number of entities for each hole.</summary>
    public static DxfDrawing Of(Lattice2 field, int perHole, Func<Point2, IEnumerable<DxfEntity>> drawn)
    {
        var reach = new Point2(field.HoleRadius, field.HoleRadius);
        return new(
            field.Centers().SelectMany(drawn),
            perHole * field.Count,
            field.Centers().Aggregate(Box2.Empty, (box, center) => box.Join(center - reach).Join(center + reach)));
    }

    public DxfDrawing Then(DxfDrawing next) =>
        new(Entities.Concat(next.Entities), Count + next.Count, Bounds.Join(next.Bounds));
}
