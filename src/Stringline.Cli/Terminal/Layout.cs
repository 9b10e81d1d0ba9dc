using System.Text;

namespace Stringline.Cli.Terminal;

/// <summary>Plain text on lines of a fixed width.</summary>
internal static class Layout
{
    /// <summary>Characters on a line.</summary>
    public const int Width = 100;

    /// <summary>A blank at which no line is broken; printed as a plain one.</summary>
    public const char NoBreak = '\u00A0';

    /// <summary>The text in one piece, whatever its length.</summary>
    public static string Unbroken(string text) => text.Replace(' ', NoBreak);

    /// <summary>Breaks a text at blanks so that no line is longer than asked, unless one word is.</summary>
    public static IReadOnlyList<string> Wrap(string text, int width)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (var word in text.Split([' ', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            if (line.Length > 0)
                line.Append(' ');
            line.Append(word.Replace(NoBreak, ' '));
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

    /// <summary>Writes one row; each cell wraps within its column, and blanks at the line's end are dropped.</summary>
    public static void Row(this StringBuilder page, params Cell[] cells)
    {
        var columns = new List<IReadOnlyList<string>>();
        var height = 0;
        foreach (var cell in cells)
        {
            columns.Add(Wrap(cell.Text, cell.Width));
            height = Math.Max(height, columns[^1].Count);
        }

        for (var i = 0; i < height; i++)
        {
            var line = new StringBuilder();
            for (var column = 0; column < cells.Length; column++)
            {
                var text = i < columns[column].Count ? columns[column][i] : "";
                var cell = cells[column];
                line.Append(cell.FlushRight ? text.PadLeft(cell.Width) : text.PadRight(cell.Width)).Append("  ");
            }

            page.Append(line.ToString().TrimEnd()).Append('\n');
        }
    }
}

/// <summary>A cell of a row.</summary>
/// <param name="Text">What it holds.</param>
/// <param name="Width">Characters of its column.</param>
/// <param name="FlushRight">Whether it is set to the right of its column, as money is.</param>
internal sealed record Cell(string Text, int Width, bool FlushRight = false);
