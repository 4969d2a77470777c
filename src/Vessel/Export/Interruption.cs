using System.Runtime.InteropServices;

namespace Vessel.Export;

/// <summary>
/// What an interrupt (Ctrl-C, a closed terminal, a polite kill) does to a build: what is staged is thrown away, a commit that
/// has begun is carried to its end, and then the process ends as it would have anyway.
/// </summary>
internal sealed class Interruption : IDisposable
{
    private readonly PosixSignalRegistration[] _signals;

    /// <param name="throwAway">Removes all that the build has put beside the files of the folder.</param>
    public Interruption(Action throwAway) => _signals =
    [
        .. new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP }
            .Select(signal => PosixSignalRegistration.Create(signal, _ =>
        {
            // Never let go of again: nothing may be written between this and the end of the process.
            Gate.Enter();
            throwAway();
        })),
    ];

    /// <summary>Held while a file is begun, and during the whole of a commit.</summary>
    public Lock Gate { get; } = new();

    public void Dispose()
    {
        foreach (var signal in _signals)
            signal.Dispose();
    }
}
