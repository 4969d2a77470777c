namespace Vessel.Design;

/// <summary>
/// What the file says of one thing that stands on or in the vessel. Its kind's folder under <c>Members</c> knows what it is.
/// </summary>
/// <param name="Path">Path of its mapping in the file.</param>
/// <param name="Name">What the welder calls it; unique in the vessel.</param>
public abstract record MemberSpec(string Path, string Name)
{
    /// <summary>Holes that it wants in a shell that is rolled from sheet; none for what only stands on it.</summary>
    public virtual IEnumerable<ShellSlot> Slots => [];
}
