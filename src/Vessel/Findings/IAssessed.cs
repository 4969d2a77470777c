using Vessel.Function;

namespace Vessel.Findings;

/// <summary>A member with rules of its own.</summary>
internal interface IAssessed
{
    /// <summary>The figures that its rules look at, whether or not they hold.</summary>
    IEnumerable<Measure> Measures(Assembly assembly);
}
