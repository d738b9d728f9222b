using LureSim.Cli.Tests.Support;

namespace LureSim.Cli.Tests.Completion;

/// <summary>What the tabulator key brings: the words, and the script of a real bash that asks for them.</summary>
public sealed class CompletionTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("luresim-").FullName;

    public CompletionTests()
    {
        File.WriteAllText(Path.Combine(_folder, "walker one.toml"), "");
        File.WriteAllText(Path.Combine(_folder, "walker-two.toml"), "");
        File.WriteAllText(Path.Combine(_folder, "walks.txt"), "");
        Directory.CreateDirectory(Path.Combine(_folder, "water"));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("re", "retrieve")]
    [InlineData("retrieve --pl", "--plots")]
    [InlineData("retrieve --plots p", "png")]
    [InlineData("retrieve --units ", "both", "metric", "trade")]
    [InlineData("retrieve x.toml --set retrieve.cad", "retrieve.cadence=")]
    [InlineData("start --rod medium-h", "medium-heavy-fast", "medium-heavy-moderate-fast")]
    [InlineData("start up", "upright")]
    [InlineData("list rod", "rods")]
    [InlineData("completion ", "bash", "fish", "powershell", "zsh")]
    public void A_word_that_was_begun_is_ended(string line, params string[] expected)
    {
        string[] words = Words(line);
        Assert.Equal(expected, words.Where(w => expected.Contains(w)));
        Assert.DoesNotContain("-?", words);
    }

    [Fact]
    public void Files_and_folders_of_the_folder_that_is_typed_come_as_they_must_be_typed()
    {
        string[] words = Words($"retrieve {_folder}/wa");
        Assert.Equal(["walker one.toml", "walker-two.toml", "water/"], words.Select(w => w[(_folder.Length + 1)..]).Order(StringComparer.Ordinal));
        Assert.Empty(Words($"retrieve {_folder}/no-such-folder/wa"));
    }

    [Fact]
    public void The_place_of_the_cursor_counts_and_a_damaged_question_is_no_crash()
    {
        Assert.Contains("retrieve", Session.Run("[suggest:2]", "retr --plots").Out, StringComparison.Ordinal);
        Assert.All((string[][])[["[suggest"], ["[suggest:]", "re"], ["[suggest:99999999999]", "re"], ["[suggest:-1]", "\"re"]], args => Assert.Equal(ExitCode.Done, Session.Run(args).Exit));
    }

    [Fact]
    public void Every_shell_has_a_script_and_another_one_is_told_which()
    {
        foreach (string shell in (string[])["bash", "zsh", "fish", "powershell"])
        {
            Session session = Session.Run("completion", shell);
            Assert.Equal((ExitCode.Done, ""), (session.Exit, session.Error));
            Assert.Contains($"luresim completion {shell}", session.Out, StringComparison.Ordinal);
            Assert.Contains("[suggest:", session.Out, StringComparison.Ordinal);
        }

        Assert.Equal("completion: \"tcsh\" is no shell known here; shells: bash, zsh, fish, powershell\n", Session.Run("completion", "tcsh").Error);
        Assert.Equal((ExitCode.BadInput, "completion: a shell is due: bash, zsh, fish, powershell\n"), (Session.Run("completion").Exit, Session.Run("completion").Error));
    }

    [Theory]
    [InlineData("luresim retrieve --pl", "--plots")]
    [InlineData("luresim retrieve walker-", "walker-two.toml")]
    [InlineData("luresim retrieve walker", "walker\\ one.toml|walker-two.toml")]
    [InlineData("luresim cad", "cadence")]
    [InlineData("luresim nothing-begins-so", "")]
    public void Bash_asks_the_program(string line, string expected)
    {
        string words = line.EndsWith(' ') ? line + "''" : line;
        Session session = BuiltProgram.Shell($$"""
            luresim() { {{BuiltProgram.Line}} "$@"; }
            eval "$(luresim completion bash)"
            complete -p luresim >&2
            COMP_LINE='{{line}}' COMP_POINT={{line.Length}} COMP_WORDS=({{words}}) COMP_CWORD=$((${#COMP_WORDS[@]} - 1))
            _luresim
            IFS='|'; echo "${COMPREPLY[*]}"
            """, _folder);
        Assert.Equal((expected + "\n", "complete -o default -F _luresim luresim\n"), (session.Out, session.Error));
    }

    private static string[] Words(string line) => Session.Run($"[suggest:{line.Length}]", line).Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
