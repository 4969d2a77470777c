using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace Vessel.Cli;

/// <summary>
/// A file whose name is not UTF-8. The platform hands arguments over with U+FFFD for what it cannot read, and finds no such file; Linux
/// keeps the bytes as they were typed (man page proc_pid_cmdline(5)) and opens any (open(2)).
/// </summary>
internal static partial class RawName
{
    // Read only, and not handed on to other processes.
    private const int ReadOnly = 0x80000;

    /// <summary>Null where this is not Linux, no such argument was given, two were that look alike, or there is no such file.</summary>
    /// <param name="shown">The argument as the platform hands it over.</param>
    public static FileStream? Open(string shown)
    {
        if (!OperatingSystem.IsLinux() || Typed(shown) is not { } path || Open([.. path, 0], ReadOnly) is not (>= 0 and var opened))
            return null;
        return new(new SafeFileHandle(opened, ownsHandle: true), FileAccess.Read);
    }

    [SupportedOSPlatform("linux")]
    private static byte[]? Typed(string shown)
    {
        var all = File.ReadAllBytes("/proc/self/cmdline");
        var found = new List<byte[]>();
        for (var at = 0; at < all.Length;)
        {
            var rest = all.AsSpan(at);
            var argument = rest[..(rest.IndexOf((byte)0) is >= 0 and var end ? end : rest.Length)];
            at += argument.Length + 1;
            // As a word of its own or in --option=word.
            var value = argument[(argument.IndexOf((byte)'=') + 1)..];
            foreach (var word in new[] { argument.ToArray(), value.ToArray() })
            {
                if (Encoding.UTF8.GetString(word) == shown && !found.Exists(other => other.AsSpan().SequenceEqual(word)))
                    found.Add(word);
            }
        }

        return found is [var only] ? only : null;
    }

    [LibraryImport("libc", EntryPoint = "open", SetLastError = true)]
    private static partial int Open(byte[] path, int how);
}
