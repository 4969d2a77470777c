using System.Collections.Immutable;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Model;

public enum WorkKind
{
    /// <summary>Mark, cut, roll, bend, drill one part.</summary>
    Make,

    /// <summary>A weld with its fit-up, tacks, cooling and check; without the first two where it was tacked with others.</summary>
    Weld,

    /// <summary>Fit-up and tacks of welds that are all tacked before one of them is welded.</summary>
    Tack,

    /// <summary>Round a rolled part over a former.</summary>
    Round,

    /// <summary>Bring in what is not welded.</summary>
    Fit,

    /// <summary>Shut a thread against heat and spatter.</summary>
    Plug,

    /// <summary>Run the tap through a thread again, and face what seals.</summary>
    Chase,

    /// <summary>Take down a bead or lip that would be out of reach later.</summary>
    Dress,

    /// <summary>Clean everything that closing shuts in.</summary>
    Clean,

    /// <summary>Find leaks.</summary>
    Test,

    /// <summary>Passivate, paint and the like.</summary>
    Finish,
}

/// <summary>One thing to be done, before it has its place in the day.</summary>
/// <param name="Id">Unique: <c>weld W3</c>, <c>make shell</c>.</param>
/// <param name="What">One line for the bench.</param>
/// <param name="Rank">Which comes first of those that could be done next; low first.</param>
/// <param name="Parts">Ids of the parts that it touches.</param>
/// <param name="Weld">Null for all but welds.</param>
public sealed record WorkTask(
    string Id, WorkKind Kind, string What, int Rank, ImmutableArray<string> Parts, Joint? Weld = null)
{
    /// <summary>The welds that are tacked together; empty for all but <see cref="WorkKind.Tack"/>.</summary>
    public ImmutableArray<Joint> Tacked { get; init; } = [];

    /// <summary>Numbers of the welds that it is about: <c>W7 W8</c>; null for none.</summary>
    public string? Welds => Weld?.Number ?? (Tacked.IsEmpty ? null : string.Join(' ', Tacked.Select(joint => joint.Number)));

    /// <summary>Whether its parts hold together from then on.</summary>
    public bool Joins => Kind is WorkKind.Weld or WorkKind.Tack or WorkKind.Fit;

    /// <summary>Id of the task that brings in what is not welded.</summary>
    public static string Fitting(string path) => $"fit {path}";

    /// <summary>Id of the task that joins a bought fitting to the free end of a port.</summary>
    internal static string Joining(string port) => $"fitting {port}";

    /// <summary>Id of the task that shuts the thread of a port against heat.</summary>
    internal static string Plugging(string port) => $"plug {port}";

    /// <summary>Id of the task that runs the tap through the thread of a port again.</summary>
    internal static string Chasing(string port) => $"chase {port}";

    /// <summary>Id of the task that takes down the lip in the bore of a port.</summary>
    internal static string Dressing(string port) => $"dress {port}";

    public const string Cleaning = "clean";

    public const string Testing = "leak test";

    public const string Finishing = "finish";

    internal static string Making(Part part) => $"make {part.Id}";

    internal static string Welding(string number) => $"weld {number}";
}

/// <summary>One task must be done before another.</summary>
public sealed record WorkLink(string Before, string After, string Why);
