namespace Vessel.Export;

/// <summary>Held by the one build that writes to a folder. One that a killed build left behind holds nothing.</summary>
internal sealed class FolderLock : IDisposable
{
    public const string Name = OutputPath.OwnPrefix + "lock";

    // A build that ends between our opening and our locking leaves a file without a name; a few in a row are a busy folder.
    private const int Tries = 5;

    private readonly FileStream _held;

    private readonly string _path;

    private FolderLock(FileStream held, string path) => (_held, _path) = (held, path);

    /// <exception cref="OutputException">Another build holds it.</exception>
    public static FolderLock Take(string root)
    {
        var path = Path.Combine(root, Name);
        OutputPath.RefuseLinkOut(root, path, Name);
        for (var i = 0; i < Tries; i++)
        {
            FileStream stream;
            try
            {
                // Windows removes it with the last handle; elsewhere it is removed by name while it is still held.
                stream = new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1,
                    OperatingSystem.IsWindows() ? FileOptions.DeleteOnClose : FileOptions.None);
            }
            catch (IOException e) when (IsHeld(e))
            {
                throw new OutputException($"another build is writing to '{root}': wait for it, or build to another folder", e);
            }

            if (IsStillThere(stream, path))
                return new(stream, path);
            stream.Dispose();
        }

        throw new OutputException($"other builds are writing to '{root}': wait for them, or build to another folder");
    }

    public void Dispose()
    {
        try
        {
            if (!OperatingSystem.IsWindows())
                File.Delete(_path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // An empty file that holds nothing stays behind.
        }

        _held.Dispose();
    }

    // EAGAIN of Linux and of macOS, ERROR_SHARING_VIOLATION of Windows: everything else is a trouble of the disk.
    private static bool IsHeld(IOException e) => e.HResult is 11 or 35 or unchecked((int)0x80070020);

    private static bool IsStillThere(FileStream stream, string path) => !OperatingSystem.IsLinux()
        || Linux.Look($"/proc/self/fd/{stream.SafeFileHandle.DangerousGetHandle()}", follow: true) is not { } held
        || Linux.Look(path)?.Inode == held.Inode;
}
