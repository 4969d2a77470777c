using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Model;

/// <summary>
/// A wall of the vessel, built: what parts the inside from the air, and everything that a later stage takes from it. What a kind does not
/// have, it leaves empty.
/// </summary>
/// <param name="path">The mapping in the file that asks for it.</param>
/// <param name="name">What the welder calls it.</param>
/// <param name="thickness">mm.</param>
internal abstract class Wall(string path, string name, Material material, double thickness)
{
    public string Path { get; } = path;

    public string Name { get; } = name;

    public Material Material { get; } = material;

    public double Thickness { get; } = thickness;

    /// <summary>Welds of the wall in the order of their numbers, which are given later.</summary>
    public virtual IEnumerable<Joint> Joints => [];

    /// <summary>Pieces of metal, each with its centre of mass.</summary>
    /// <param name="welds">All of the vessel's, numbered: a flat bears the numbers of its welds.</param>
    public virtual IEnumerable<Part> Parts(Welds welds) => [];

    /// <summary>Where it is to go into another wall with a given clearance.</summary>
    public virtual IEnumerable<SlipFit> Fits => [];

    /// <summary>What keeps a torch away.</summary>
    public virtual IEnumerable<Body> Bodies => [];

    /// <summary>What is bought for it finished.</summary>
    public virtual IEnumerable<BoughtItem> Bought => [];

    /// <summary>Tasks beside making its parts and laying its welds.</summary>
    public virtual IEnumerable<WorkTask> Tasks => [];

    /// <summary>What must come before and after its tasks, beside what holds for every wall of its place.</summary>
    /// <param name="welds">All of the vessel's, numbered.</param>
    public virtual IEnumerable<WorkLink> Links(Welds welds) => [];

    /// <summary>What its figures rest on.</summary>
    public virtual IEnumerable<Assumption> Assumptions => [];

    /// <summary>What rules look at where it meets other walls.</summary>
    public virtual IEnumerable<Measure> Measures => [];

    /// <summary>What they look at in rolling it.</summary>
    public virtual IEnumerable<Measure> RollingMeasures => [];

    /// <summary>What they look at in spinning or dishing it, and in the pieces that it is put together from.</summary>
    public virtual IEnumerable<Measure> FormingMeasures => [];

    /// <summary>
    /// The key that puts it together from more sheets, and the least number of them whose flats all fit; null where none does.
    /// </summary>
    public virtual (string Key, int Count)? Divided(Cuttable fits) => null;

    /// <summary>Whether a part is one of the wall's own.</summary>
    public virtual bool Holds(Part part) => part.Path == Path;
}

/// <summary>Whether a flat is cut from one sheet of the shop.</summary>
/// <param name="outline">Outline of the flat.</param>
/// <param name="mayTurn">Whether it may lie on the sheet any way round; else its x runs along it.</param>
internal delegate bool Cuttable(Geometry.Loop2 outline, bool mayTurn);

/// <summary>A sentence on what figures rest on.</summary>
/// <param name="Place">Among those of all walls, low first; members' sentences stand before the last, <see cref="Last"/>.</param>
internal sealed record Assumption(int Place, string Text)
{
    public const int Last = 100;
}
