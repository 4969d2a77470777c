using Vessel.Export.Drawing;
using Vessel.Geometry;

namespace Vessel.Export.Report.Drawing;

/// <summary>Brings millimetres of a model to units of the page; the model's upper left corner is the picture's origin.</summary>
internal sealed record PageScale(Box2 Model)
{
    /// <summary>Greatest width and height of what is drawn, page units.</summary>
    private const double Most = 520;

    /// <summary>The whole picture is at least so wide, so that letters are not blown up.</summary>
    private const double LeastWidth = 420;

    /// <summary>Page units of a millimetre.</summary>
    public double Factor { get; } = Most / Math.Max(Math.Max(Model.Width, Model.Height), 1e-9);

    public Point2 On(Point2 p) => new(Factor * (p.U - Model.Min.U), Factor * (p.V - Model.Max.V));

    public Item On(Item item) => Placing.Placed(item, On, Factor);

    /// <summary>Round the model and what stands beside it.</summary>
    public Box2 Frame(double left, double below, double right, double above)
    {
        var (width, height) = (Factor * Model.Width, Factor * Model.Height);
        var spare = Math.Max(0, LeastWidth - width - left - right) / 2;
        return new(new(-left - spare, -height - below), new(width + right + spare, above));
    }
}
