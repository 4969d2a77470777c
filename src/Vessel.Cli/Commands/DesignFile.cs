using System.Text;
using Vessel.Design;

namespace Vessel.Cli.Commands;

/// <summary>A design file as the user named it, read.</summary>
/// <param name="Shown">The path as given, for messages.</param>
internal sealed record DesignFile(string Shown, string Text)
{
    public DesignSettings Settings { get; init; } = DesignSettings.None;

    /// <summary>Null for the usual shop.</summary>
    public DesignFile? Shop { get; init; }

    /// <summary>Whether every fault is shown, however many there are.</summary>
    public bool AllFaults { get; init; }

    /// <summary>Name of the output folder unless the user names another: variants must not overwrite each other.</summary>
    public string FolderName => Path.GetFileNameWithoutExtension(Shown)
        + (Settings.Variant is { } variant && Slug.OfFolder(variant) is { Length: > 0 } slug ? $"-{slug}" : string.Empty);

    /// <summary>A place as compilers write it.</summary>
    public string Place(Span at) => at.Setting <= 0
        ? $"{Holder(at).Shown}:{at.Line}:{at.Column}:"
        : $"--with '{Settings.With[at.Setting - 1]}':{at.Column}:";

    /// <summary>The file that a place in a file is in.</summary>
    public DesignFile Holder(Span at) => at.Setting == Span.InShop && Shop is { } shop ? shop : this;

    /// <summary>The text that a place is in, by lines.</summary>
    public string[] Lines(Span at) => at.Setting > 0
        ? [Settings.With[at.Setting - 1]]
        : Holder(at).OwnLines;

    // Once for all faults of the file.
    private string[] OwnLines => field ??= Text.ReplaceLineEndings("\n").Split('\n');

    /// <summary>Null, with a complaint written, when it cannot be read.</summary>
    public static DesignFile? Open(string shown, CommandConsole console)
    {
        var file = new FileInfo(console.FullPath(shown));
        try
        {
            if (Directory.Exists(file.FullName))
                return Complain($"'{shown}' is a folder; name a file in it");
            if (file.Exists && file.Length > Limits.FileBytes)
                return Complain($"'{shown}' has {file.Length} bytes; a design or shop file may have {Limits.FileBytes}");
            using var stream = file.Exists ? new(file.FullName, FileMode.Open, FileAccess.Read, FileShare.ReadWrite)
                : OddlyNamed(file, shown);
            if (stream is null && shown.Contains('\uFFFD', StringComparison.Ordinal))
                return Complain($"'{shown}' cannot be opened: the name of the file, or of a folder above it, is not UTF-8 text; rename it");
            if (stream is null)
                return Complain($"there is no file '{shown}'");
            if (Bytes(stream) is not { } bytes)
                return Complain($"'{shown}' has more than {Limits.FileBytes} bytes; a design or shop file may have no more");
            using var reader = new StreamReader(bytes, new UTF8Encoding(false, throwOnInvalidBytes: true));
            return new(shown, reader.ReadToEnd());
        }
        catch (DecoderFallbackException)
        {
            return Complain($"'{shown}' is not UTF-8 text; save it as UTF-8");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Complain($"could not read '{shown}': {e.Message}");
        }

        DesignFile? Complain(string what)
        {
            console.Complain(what);
            return null;
        }
    }

    /// <summary>Not in a folder with such a name: a shop file in it would be missed.</summary>
    private static FileStream? OddlyNamed(FileInfo file, string shown) =>
        file.Name.Contains('\uFFFD', StringComparison.Ordinal) && file.Directory is { Exists: true } ? RawName.Open(shown) : null;

    /// <summary>Null past the limit: a pipe or a device does not tell its length, and may have no end.</summary>
    private static MemoryStream? Bytes(FileStream stream)
    {
        var bytes = new byte[Limits.FileBytes + 1];
        var length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return length > Limits.FileBytes ? null : new(bytes, 0, length);
    }

    /// <summary>The checked design; null, with every fault written, when there is none.</summary>
    public VesselDesign? Check(CommandConsole console)
    {
        var outcome = Compiler.Read(Text, Settings);
        FaultText.Write(this, outcome.Faults, console);
        return outcome.Value;
    }
}
