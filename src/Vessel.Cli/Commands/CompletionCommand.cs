using System.CommandLine;

namespace Vessel.Cli.Commands;

/// <summary><c>completion</c>: prints a script by which a shell completes commands and options.</summary>
internal static class CompletionCommand
{
    // The tool itself answers with the words that fit: vessel "[suggest:<place>]" "<line>".
    private const string Bash = """
        # Put this into ~/.bashrc:  source <(vessel completion bash)
        _vessel() {
            local word="${COMP_WORDS[COMP_CWORD]}" line="${COMP_LINE#* }"
            local at=$((COMP_POINT - ${#COMP_LINE} + ${#line}))
            mapfile -t COMPREPLY < <(compgen -W "$(vessel "[suggest:$at]" "$line" 2>/dev/null)" -- "$word")
        }
        complete -o default -F _vessel vessel
        """;

    private const string Zsh = """
        # Put this into ~/.zshrc, after compinit:  source <(vessel completion zsh)
        _vessel() {
            local line="${BUFFER#* }"
            local at=$((CURSOR - ${#BUFFER} + ${#line}))
            local -a found
            found=("${(@f)$(vessel "[suggest:$at]" "$line" 2>/dev/null)}")
            compadd -- $found
            _files
        }
        compdef _vessel vessel
        """;

    private const string Fish = """
        # Save as ~/.config/fish/completions/vessel.fish
        function __vessel_words
            set -l line (commandline -cp | string replace -r '^\S+\s*' '')
            vessel "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null
        end
        complete -c vessel -a '(__vessel_words)'
        """;

    private const string PowerShell = """
        # Put this into $PROFILE:  vessel completion pwsh | Out-String | Invoke-Expression
        Register-ArgumentCompleter -Native -CommandName vessel -ScriptBlock {
            param($word, $tree, $cursor)
            $all = $tree.ToString()
            $line = $all -replace '^\S+\s*', ''
            $at = [Math]::Max(0, [Math]::Min($line.Length, $cursor - $all.Length + $line.Length))
            vessel "[suggest:$at]" "$line" 2>$null | Where-Object { $_ -like "$word*" } |
                ForEach-Object { [System.Management.Automation.CompletionResult]::new($_) }
        }
        """;

    public static Command Create(CommandConsole console)
    {
        var shell = new Argument<string>("shell") { Description = "bash, zsh, fish or pwsh." };
        shell.AcceptOnlyFromAmong("bash", "zsh", "fish", "pwsh");
        var command = new Command("completion", "Print a script that lets a shell complete commands and options.") { shell };
        command.SetAction(parsed =>
        {
            console.Output.WriteLine((parsed.GetValue(shell) switch
            {
                "bash" => Bash,
                "zsh" => Zsh,
                "fish" => Fish,
                _ => PowerShell,
            }).ReplaceLineEndings("\n"));
            return ExitCodes.Good;
        });
        return command;
    }
}
