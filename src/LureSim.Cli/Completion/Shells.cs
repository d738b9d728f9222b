namespace LureSim.Cli.Completion;

/// <summary>A shell that can be taught to complete what is typed.</summary>
/// <param name="Name">Name as typed.</param>
/// <param name="Where">How to keep the script, one line.</param>
/// <param name="Script">The script. It hands what stands before the cursor to the program, which answers a line for each word that may come; <see cref="Candidates"/>
/// has the words, so that no script knows a command.</param>
internal sealed record Shell(string Name, string Where, string Script);

/// <summary>All shells.</summary>
internal static class Shells
{
    /// <summary>In the order of help.</summary>
    public static IReadOnlyList<Shell> All { get; } =
    [
        new("bash", "luresim completion bash >> ~/.bashrc", Bash),
        new("zsh", "luresim completion zsh >> ~/.zshrc", Zsh),
        new("fish", "luresim completion fish > ~/.config/fish/completions/luresim.fish", Fish),
        new("powershell", "luresim completion powershell >> $PROFILE", PowerShell),
    ];

    // Words for the older bash of macOS, too: no mapfile there, and compopt fails in silence. Without an answer bash offers files.
    private const string Bash = """
        _luresim() {
            local line="${COMP_LINE:0:COMP_POINT}" word
            line="${line#"${COMP_WORDS[0]}"}"
            line="${line# }"
            COMPREPLY=()
            while IFS= read -r word; do
                case "$word" in
                    "${COMP_WORDS[COMP_CWORD]}"*) COMPREPLY+=("$(printf '%q' "$word")") ;;
                esac
            done < <("${COMP_WORDS[0]}" "[suggest:${#line}]" "$line" 2>/dev/null)
            case "${COMPREPLY[0]-}" in
                */ | *=) compopt -o nospace 2>/dev/null ;;
            esac
        }
        complete -o default -F _luresim luresim

        """;

    private const string Zsh = """
        (( $+functions[compdef] )) || { autoload -Uz compinit && compinit; }
        _luresim() {
            local line="${(j: :)words[2,CURRENT-1]}"
            (( CURRENT > 2 )) && line+=" "
            line+="$PREFIX"
            local -a found open
            found=("${(@f)$($words[1] "[suggest:${#line}]" "$line" 2>/dev/null)}")
            open=(${(M)found:#*[/=]})
            found=(${found:#*[/=]})
            (( $#found + $#open )) || { _files; return }
            (( $#found )) && compadd -- $found
            (( $#open )) && compadd -S '' -- $open
        }
        compdef _luresim luresim

        """;

    private const string Fish = """
        function __luresim_words
            set -l line (commandline -cp | string replace -r '^\s*\S+\s?' '')
            luresim "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null
        end
        complete -c luresim -a '(__luresim_words)'

        """;

    private const string PowerShell = """
        Register-ArgumentCompleter -Native -CommandName luresim -ScriptBlock {
            param($word, $ast, $position)
            $typed = $ast.ToString().PadRight($position - $ast.Extent.StartOffset)
            $line = $typed.Substring(0, $position - $ast.Extent.StartOffset) -replace '^\S+\s?', ''
            luresim "[suggest:$($line.Length)]" "$line" 2>$null | Where-Object { $_.StartsWith($word) } | ForEach-Object {
                $shown = if ($_ -match '\s') { "'$_'" } else { $_ }
                [System.Management.Automation.CompletionResult]::new($shown, $_, 'ParameterValue', $_)
            }
        }

        """;
}
