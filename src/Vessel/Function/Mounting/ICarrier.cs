using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>A member that the vessel is bolted up by and of which this stage works out how stiff and how strong it is.</summary>
internal interface ICarrier
{
    MountSpring Spring(Assembly assembly);
}

/// <summary>What the mounting's figures say of a carrier.</summary>
/// <param name="Path">Path of its mapping in the file.</param>
/// <param name="Name">What the welder calls it.</param>
/// <param name="Material">Metal that it is made of.</param>
/// <param name="Height">Height of its middle in the vessel's frame, mm.</param>
/// <param name="Bolts">The bolts that hold it.</param>
internal sealed record Carrier(string Path, string Name, Material Material, double Height, BoltsDesign Bolts);
