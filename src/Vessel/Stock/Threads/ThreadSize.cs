namespace Vessel.Stock;

/// <summary>How the joint of a thread is made tight.</summary>
public enum ThreadSeal
{
    /// <summary>On a machined face round the thread, by a bonded or soft washer.</summary>
    Washer,

    /// <summary>By an O-ring in a chamfer at the mouth of the thread, on a machined face.</summary>
    ORing,

    /// <summary>In its own taper, with tape or paste.</summary>
    Taper,
}

/// <summary>A thread of a bung or fitting, with its hole.</summary>
/// <param name="Name">Name by which the file calls it: <c>M14x1.5</c>, <c>G 1/2</c>, <c>dash 20</c>, <c>1/4 NPT</c>.</param>
/// <param name="Thread">The thread itself, as stamped on a tap: <c>1 5/8-12 UN</c>.</param>
/// <param name="MajorDiameter">Of the basic profile; of a taper thread at its gauge plane, mm.</param>
/// <param name="Pitch">mm.</param>
/// <param name="TapDrill">Drill before tapping, mm.</param>
/// <param name="Source">Where the figures come from, in words for the report.</param>
public sealed record ThreadSize(string Name, string Thread, double MajorDiameter, double Pitch, double TapDrill, string Source)
{
    /// <summary>Through bore of the usual male fitting, mm; null where no figure is known.</summary>
    public double? Bore { get; init; }

    public ThreadSeal Seal { get; init; }

    /// <summary>It seals by its own taper, without a face.</summary>
    public bool IsTaper => Seal == ThreadSeal.Taper;

    /// <summary>Diameter of the face that is machined round it, mm; null where no figure is known, or none is wanted.</summary>
    public double? Face { get; init; }
}
