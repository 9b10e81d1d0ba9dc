using System.Globalization;
using Stringline.Law.Counting;

namespace Stringline.Tables.Sheets.Cells;

/// <summary>What a cell holds, as its file keeps it. CSV knows texts only.</summary>
public enum CellKind
{
    /// <summary>Nothing, or blanks only.</summary>
    Empty,

    /// <summary>A text.</summary>
    Text,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A day.</summary>
    Day,
}

/// <summary>One cell of a sheet. A text is without blanks at its ends and on one line.</summary>
public readonly record struct Cell
{
    private readonly string? text;
    private readonly decimal number;
    private readonly LocalDate day;

    private Cell(CellKind kind, string? text, decimal number, LocalDate day) =>
        (Kind, this.text, this.number, this.day) = (kind, text, number, day);

    /// <summary>What it holds.</summary>
    public CellKind Kind { get; }

    /// <summary>The number of a number cell; else zero.</summary>
    public decimal Number => number;

    /// <summary>The day of a day cell.</summary>
    public LocalDate Day => day;

    /// <summary>Whether there is nothing in it.</summary>
    public bool IsEmpty => Kind == CellKind.Empty;

    /// <summary>A cell with a text; empty where the text is blank.</summary>
    public static Cell Of(string? text) => OneLine(text) is { Length: > 0 } line ? new(CellKind.Text, line, 0m, default) : default;

    /// <summary>A cell with a number.</summary>
    public static Cell Of(decimal number) => new(CellKind.Number, null, number, default);

    /// <summary>A cell with a day.</summary>
    public static Cell Of(LocalDate day) => new(CellKind.Day, null, 0m, day);

    /// <summary>
    /// A spreadsheet's binary number: brought back to the decimal that was typed, 15 digits at most as spreadsheets show them.
    /// </summary>
    public static Cell OfBinary(double value) =>
        double.IsFinite(value) && Math.Abs(value) < 1e15 ? Of((decimal)value) : Of(value.ToString("R", CultureInfo.InvariantCulture));

    /// <summary>The cell as a person reads it: days as 2026-03-02, numbers with a point; empty for an empty cell.</summary>
    public override string ToString() => Kind switch
    {
        CellKind.Empty => "",
        CellKind.Text => text!,
        CellKind.Number => number.ToString("0.############", CultureInfo.InvariantCulture),
        CellKind.Day => LawText.IsoDay(day),
        _ => throw new InvalidOperationException($"No such kind of cell: {Kind}."),
    };

    // Line breaks, tabs and the no-break space of exported reports become one blank each run.
    private static string? OneLine(string? text)
    {
        if (text is null)
            return null;
        var plain = text.AsSpan().Trim();
        if (plain.Length == text.Length && !plain.ContainsAny('\n', '\r', '\t') && !plain.Contains('\u00A0')
            && !plain.Contains("  ", StringComparison.Ordinal))
            return text;
        return string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
    }
}
