using System.CommandLine;
using Vessel.Design;

namespace Vessel.Cli.Commands;

/// <summary>The arguments by which a command is told which design is meant.</summary>
internal sealed class DesignInput
{
    private const string ShopName = "shop.yaml";

    private readonly Argument<string> _file = new("file") { Description = "The design file (YAML)." };

    private readonly Option<string[]> _with = new("--with")
    {
        Description = "Set a value of the file, as shell.height=220 or ports.inlet.length=60; may be given several times.",
        HelpName = "PATH=VALUE",
        DefaultValueFactory = _ => [],
    };

    private readonly Option<string?> _variant = new("--variant")
    {
        Description = "Build this variant of the file.",
        HelpName = "NAME",
    };

    private readonly Option<string?> _shop = new("--shop")
    {
        Description = $"The shop's rates, stock and prices ({ShopName} beside the design file unless given, where there is one).",
        HelpName = "FILE",
    };

    private readonly Option<bool> _allFaults = new("--all-faults")
    {
        Description = $"Show every fault, not only the first {FaultText.Most}.",
    };

    public DesignInput() => _with.Validators.Add(result =>
    {
        foreach (var token in result.Tokens.Where(t => t.Value.IndexOf('=', StringComparison.Ordinal) < 1))
            result.AddError($"--with takes PATH=VALUE, as shell.height=220, not '{token.Value}'");
    });

    public void AddTo(Command command)
    {
        command.Add(_file);
        command.Add(_with);
        command.Add(_variant);
        command.Add(_shop);
        command.Add(_allFaults);
    }

    /// <summary>Null, with a complaint written, when it or its shop file cannot be read.</summary>
    public DesignFile? Open(ParseResult parsed, CommandConsole console)
    {
        if (DesignFile.Open(parsed.GetValue(_file)!, console) is not { } design)
            return null;
        var named = parsed.GetValue(_shop);
        var shown = named ?? Beside(design.Shown, console);
        var shop = shown is null ? null : DesignFile.Open(shown, console);
        if (shown is not null && shop is null)
            return null;
        return design with
        {
            Settings = new(parsed.GetValue(_variant), [.. parsed.GetValue(_with)!]) { Shop = shop?.Text },
            Shop = shop,
            AllFaults = parsed.GetValue(_allFaults),
        };
    }

    /// <summary>The path of the shop file in the design's folder; null when there is none.</summary>
    private static string? Beside(string design, CommandConsole console)
    {
        var path = Path.Combine(Path.GetDirectoryName(design) ?? "", ShopName);
        return Path.GetFileName(design) != ShopName && File.Exists(console.FullPath(path)) ? path : null;
    }
}
