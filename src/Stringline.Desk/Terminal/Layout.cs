using System.Text;

namespace Stringline.Desk.Terminal;

/// <summary>Plain text on lines of a fixed width.</summary>
internal static class Layout
{
    /// <summary>Characters on a line.</summary>
    public const int Width = 100;

    /// <summary>Breaks a text at blanks so that no line is longer than asked, unless one word is.</summary>
    public static IReadOnlyList<string> Wrap(string text, int width)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (var word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            if (line.Length > 0)
                line.Append(' ');
            line.Append(word);
        }

        if (line.Length > 0 || lines.Count == 0)
            lines.Add(line.ToString());
        return lines;
    }

    /// <summary>Writes a text, wrapped, with a lead before its first line and another before the rest.</summary>
    public static void Wrapped(this StringBuilder page, string text, string first, string rest)
    {
        var lead = first;
        foreach (var line in Wrap(text, Width - first.Length))
        {
            page.Append(lead).Append(line).Append('\n');
            lead = rest;
        }
    }

    /// <summary>Writes a heading with a rule under it and a blank line before.</summary>
    public static void Heading(this StringBuilder page, string text) =>
        page.Append('\n').Append(text).Append('\n').Append('─', text.Length).Append('\n');

    /// <summary>Writes one row; each cell wraps within its column, and blanks at the line's end are dropped. A negative width sets the cell flush right.</summary>
    public static void Row(this StringBuilder page, params (string Text, int Width)[] cells)
    {
        var columns = cells.Select(cell => Wrap(cell.Text, Math.Abs(cell.Width))).ToArray();
        for (var i = 0; i < columns.Max(lines => lines.Count); i++)
        {
            var line = new StringBuilder();
            for (var column = 0; column < cells.Length; column++)
            {
                var text = i < columns[column].Count ? columns[column][i] : "";
                var width = cells[column].Width;
                line.Append(width < 0 ? text.PadLeft(-width) : text.PadRight(width)).Append("  ");
            }

            page.Append(line.ToString().TrimEnd()).Append('\n');
        }
    }
}
