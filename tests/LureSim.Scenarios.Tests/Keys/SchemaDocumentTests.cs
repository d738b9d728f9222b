using LureSim.Scenarios.Keys;

namespace LureSim.Scenarios.Tests.Keys;

public class SchemaDocumentTests
{
    private const string Begin = "<!-- keys: begin (made from the schema) -->\n";
    private const string End = "<!-- keys: end -->";

    private static string Page => Path.Combine(Folder.Repository, "docs", "scenario-files.md");

    /// <summary>Set LURESIM_WRITE_DOCS=1 to write the table anew.</summary>
    [Fact]
    public void The_page_holds_the_table_of_the_schema()
    {
        string page = File.ReadAllText(Page);
        int from = page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int to = page.IndexOf(End, StringComparison.Ordinal);
        Assert.True(from >= Begin.Length && to >= from, "the page has lost its marks");
        string table = SchemaDocument.Markdown() + "\n";
        if (Environment.GetEnvironmentVariable("LURESIM_WRITE_DOCS") == "1")
        {
            File.WriteAllText(Page, page[..from] + table + page[to..]);
        }
        else
        {
            Assert.Equal(table, page[from..to]);
        }
    }

    [Fact]
    public void Every_key_stands_in_the_table()
    {
        string table = SchemaDocument.Markdown();
        foreach (KeySpec key in ScenarioSchema.Keys)
        {
            string name = key.Table.Length == 0 ? key.Path : key.Path[(key.Table.Length + 1)..];
            Assert.Contains($"| `{name}` | {key.Meaning} |", table, StringComparison.Ordinal);
        }
    }
}
