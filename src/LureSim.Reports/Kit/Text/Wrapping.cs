using System.Text;

namespace LureSim.Reports.Kit.Text;

/// <summary>Paragraphs cut to the width of a terminal.</summary>
internal static class Wrapping
{
    /// <summary>Adds a paragraph in lines of at most <see cref="Closing.Width"/> characters, ended by a line feed.</summary>
    /// <param name="text">Receives it.</param>
    /// <param name="paragraph">Words between blanks.</param>
    /// <param name="indent">Blanks before every line.</param>
    public static void AppendWrapped(this StringBuilder text, string paragraph, string indent = "")
    {
        int column = 0;
        foreach (string word in paragraph.Split(' '))
        {
            if (column > 0 && indent.Length + column + 1 + word.Length > Closing.Width)
            {
                text.Append('\n');
                column = 0;
            }

            text.Append(column > 0 ? " " : indent).Append(word);
            column += (column > 0 ? 1 : 0) + word.Length;
        }

        text.Append('\n');
    }
}
