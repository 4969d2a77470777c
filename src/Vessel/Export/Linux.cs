using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Runtime.Versioning;

namespace Vessel.Export;

/// <summary>
/// The calls by which Linux swaps two folders at once (man pages renameat2(2), link(2), statx(2), access(2), getxattr(2)).
/// </summary>
[SupportedOSPlatform("linux")]
internal static partial class Linux
{
    private const int AtCurrentFolder = -100;

    private const uint Exchanging = 2;

    private const int NoFollow = 0x100;

    private const uint BasicStats = 0x7ff;

    // Immutable, append-only, the root of a mount.
    private const ulong Fixed = 0x10 | 0x20 | 0x2000;

    private const int WriteAndEnter = 2 | 1;

    /// <summary>Swaps two entries of one file system in one step: whoever looks sees both as before or both as after.</summary>
    public static bool Exchange(string one, string other) => Rename(AtCurrentFolder, one, AtCurrentFolder, other, Exchanging) == 0;

    /// <exception cref="IOException">The file system or the file's owner allows no second name.</exception>
    public static void Link(string from, string to)
    {
        if (HardLink(from, to) != 0)
            throw new IOException($"no second name for '{from}': {Marshal.GetLastPInvokeErrorMessage()}");
    }

    /// <summary>Whether this process may add and remove entries of the folder.</summary>
    public static bool MayChange(string folder) => Access(folder, WriteAndEnter) == 0;

    /// <summary>Whether the folder has rights beyond its mode bits, which a new folder would not have.</summary>
    public static bool HasRightsOfItsOwn(string folder) =>
        GetAttribute(folder, "system.posix_acl_access", 0, 0) > 0 || GetAttribute(folder, "system.posix_acl_default", 0, 0) > 0;

    /// <summary>Null when there is no such entry. A link at the end of the path is not followed unless asked for.</summary>
    public static Entry? Look(string path, bool follow = false)
    {
        // struct statx is the same on every processor: uid at 20, gid at 24, inode at 32, attributes at 8.
        var found = new byte[256];
        if (Stat(AtCurrentFolder, path, follow ? 0 : NoFollow, BasicStats, found) != 0)
            return null;
        return new(
            BinaryPrimitives.ReadUInt64LittleEndian(found.AsSpan(32)),
            BinaryPrimitives.ReadUInt32LittleEndian(found.AsSpan(20)),
            BinaryPrimitives.ReadUInt32LittleEndian(found.AsSpan(24)),
            (BinaryPrimitives.ReadUInt64LittleEndian(found.AsSpan(8)) & Fixed) != 0);
    }

    /// <summary>Whether a process stands in the folder or below it, as far as this one may see: it would be left in the old one.</summary>
    public static bool IsStoodIn(string folder)
    {
        foreach (var process in Directory.EnumerateDirectories("/proc").Where(name => char.IsAsciiDigit(Path.GetFileName(name)[0])))
        {
            try
            {
                if (new FileInfo(Path.Combine(process, "cwd")).LinkTarget is { } at
                    && (at == folder || at.StartsWith(folder + "/", StringComparison.Ordinal)))
                {
                    return true;
                }
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // It has ended, or is another user's.
            }
        }

        return false;
    }

    [LibraryImport("libc", EntryPoint = "renameat2", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Rename(int fromFolder, string from, int toFolder, string to, uint how);

    [LibraryImport("libc", EntryPoint = "link", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int HardLink(string from, string to);

    [LibraryImport("libc", EntryPoint = "access", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Access(string path, int how);

    [LibraryImport("libc", EntryPoint = "statx", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Stat(int folder, string path, int flags, uint wanted, byte[] found);

    [LibraryImport("libc", EntryPoint = "getxattr", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial nint GetAttribute(string path, string name, nint value, nuint size);

    /// <param name="IsFixed">Cannot be renamed or removed: immutable, append-only, or where a file system is mounted.</param>
    internal readonly record struct Entry(ulong Inode, uint User, uint Group, bool IsFixed);
}
