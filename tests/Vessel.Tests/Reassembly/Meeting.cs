namespace Vessel.Tests.Reassembly;

/// <summary>Where a cut edge comes to lie against the part that it is joined to.</summary>
/// <param name="What">The joint, in words.</param>
/// <param name="Off">How far it is from where the tool says, mm.</param>
/// <param name="Allowed">By the deviations that the tool reports for the flats.</param>
internal readonly record struct Meeting(string What, double Off, double Allowed)
{
    /// <summary>Zero between the two, else by how much it lies outside.</summary>
    public static double Outside(double value, double low, double high) => Math.Max(0, Math.Max(low - value, value - high));
}
