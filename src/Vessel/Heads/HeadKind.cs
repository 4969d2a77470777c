using Vessel.Design;

namespace Vessel.Heads;

/// <summary>One kind of head: how the file writes it, and how it is read.</summary>
internal abstract class HeadKind
{
    /// <summary>The word after <c>shape</c> that asks for it.</summary>
    public abstract string Shape { get; }

    /// <summary>Keys of this kind beside the shape.</summary>
    public abstract KeyMap Keys { get; }

    /// <summary>What the file asks for. A number at fault is NaN and breaks no limit.</summary>
    /// <param name="whole">The shell, of which the head sees the end that it closes.</param>
    public abstract HeadDesign Read(Section section, ShellDesign whole, VesselEnd end);

    /// <summary>
    /// What the parts of one are called that have not the name of its end, each with what it is; all that there may be.
    /// </summary>
    /// <param name="end">Name of the end.</param>
    public virtual IEnumerable<(string Name, string What)> PartsOf(Section section, string end) => [];
}
