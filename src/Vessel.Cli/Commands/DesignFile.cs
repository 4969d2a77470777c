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

    /// <summary>Of its output unless the user names another: variants must not overwrite each other.</summary>
    public string FolderName => Path.GetFileNameWithoutExtension(Shown)
        + (Settings.Variant is { } variant && Slug.Of(variant) is { Length: > 0 } slug ? $"-{slug}" : string.Empty);

    /// <summary>A place as compilers write it.</summary>
    public string Place(Span at) => at.Setting <= 0
        ? $"{Holder(at).Shown}:{at.Line}:{at.Column}:"
        : $"--with '{Settings.With[at.Setting - 1]}':{at.Column}:";

    /// <summary>The file that a place in a file is in.</summary>
    public DesignFile Holder(Span at) => at.Setting == Span.InShop && Shop is { } shop ? shop : this;

    /// <summary>The text that a place is in, by lines.</summary>
    public string[] Lines(Span at) => at.Setting > 0
        ? [Settings.With[at.Setting - 1]]
        : Holder(at).Text.ReplaceLineEndings("\n").Split('\n');

    /// <summary>Null, with a complaint written, when it cannot be read.</summary>
    public static DesignFile? Open(string shown, CommandConsole console)
    {
        var file = new FileInfo(console.FullPath(shown));
        try
        {
            if (Directory.Exists(file.FullName))
                return Complain($"'{shown}' is a folder; name a file in it");
            if (!file.Exists)
                return Complain($"there is no file '{shown}'");
            if (file.Length > Limits.FileBytes)
                return Complain($"'{shown}' is {file.Length} bytes long; such a file may have {Limits.FileBytes}");
            using var reader = new StreamReader(file.FullName, new UTF8Encoding(false, throwOnInvalidBytes: true));
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
            console.Error.WriteLine($"error: {what}");
            return null;
        }
    }

    /// <summary>The checked design; null, with every fault written, when there is none.</summary>
    public VesselDesign? Check(CommandConsole console)
    {
        var outcome = Compiler.Read(Text, Settings);
        FaultText.Write(this, outcome.Faults, console);
        return outcome.Value;
    }
}
