namespace Stringline.Papers.Layout;

/// <summary>
/// A label in running text with its value after it on the same line, as prescribed forms have them; without a value a rule to
/// be written on runs to the right edge. A value that does not fit hangs under its own beginning.
/// </summary>
/// <param name="Label">The words before the blank, such as <c>Name of Claimant: </c> or <c>Amount of Check: $</c>.</param>
/// <param name="Value">The value; null leaves the rule.</param>
/// <param name="Style">Type of the label.</param>
internal sealed record LabeledBlank(string Label, string? Value, TypeStyle Style) : Block
{
    /// <summary>Least length of a rule to be written on, points.</summary>
    private const double LeastRule = 130;

    /// <summary>Most of the width that a label may take with its value beside it on every line.</summary>
    private const double MostBeside = 0.6;

    /// <summary>White above in points.</summary>
    public double Before { get; init; } = 3;

    /// <summary>Room above the rule for handwriting, added to the line's own height, points.</summary>
    public double Room { get; init; } = 5;

    /// <summary>Type of the value.</summary>
    public TypeStyle ValueStyle { get; init; } = TypeStyle.BodyBold;

    /// <summary>Whether it clings to what follows.</summary>
    public bool WithNext { get; init; }

    /// <inheritdoc/>
    protected override IEnumerable<LayoutRow> Slices(Measure measure, double width) =>
        (Value is { } value ? Written(measure, width, value) : Ruled(measure, width))
            .Select((s, i) => i == 0 ? s with { Before = Before } : s);

    private IEnumerable<LayoutRow> Written(Measure measure, double width, string value)
    {
        // The sign of dollars at the label's end belongs to the figures: it is set as they are.
        var dollars = Label.EndsWith('$');
        var (label, filled) = dollars ? (Label[..^1], "$" + value) : (Label, value);
        var lead = Wide(measure, label);
        if (lead <= width * MostBeside)
            return Beside(measure, width, label, lead, filled);
        var lines = measure.Lines(label, Style, width).ToList();
        var last = Wide(measure, lines[^1] + (label.EndsWith(' ') ? " " : ""));
        return last + measure.Width(filled, ValueStyle) > width
            ? [.. Above(lines), .. Beside(measure, width, "", 0, filled)]
            : [.. Above([.. lines.SkipLast(1)]), .. Beside(measure, width, lines[^1] + (label.EndsWith(' ') ? " " : ""), last, filled)];
    }

    private double Wide(Measure measure, string label) =>
        measure.Width(label.TrimEnd(' '), Style) + (label.EndsWith(' ') ? measure.Width(" ", Style) : 0);

    // The lines of a label that stand above the one with the value.
    private IEnumerable<LayoutRow> Above(List<string> lines) => lines.Select((line, i) => new LayoutRow
    {
        Height = Style.Pitch,
        ToNext = KeepRules.Line(i, lines.Count, mayPart: true) || i == lines.Count - 1 ? KeepTogether.Fast : KeepTogether.None,
        Draw = (ink, x, y) => ink.Text(line, x, y + KeepRules.Baseline(Style), Style),
    });

    private IEnumerable<LayoutRow> Beside(Measure measure, double width, string label, double lead, string value)
    {
        var lines = measure.Lines(value, ValueStyle, width - lead);
        for (var i = 0; i < lines.Count; i++)
        {
            var (line, first) = (lines[i], i == 0);
            yield return new LayoutRow
            {
                Height = Style.Pitch,
                ToNext = KeepRules.Line(i, lines.Count) || (WithNext && i == lines.Count - 1) ? KeepTogether.Fast : KeepTogether.None,
                Draw = (ink, x, y) =>
                {
                    if (first && label.Length > 0)
                        ink.Exactly(label, x, y + KeepRules.Baseline(Style), Style);
                    ink.Text(line, x + lead, y + KeepRules.Baseline(Style), ValueStyle);
                },
            };
        }
    }

    private IEnumerable<LayoutRow> Ruled(Measure measure, double width)
    {
        var lines = measure.Lines(Label, Style, width).ToList();
        if (measure.Width(lines[^1], Style) > width - LeastRule)
            lines.Add("");
        for (var i = 0; i < lines.Count; i++)
        {
            var line = lines[i];
            var last = i == lines.Count - 1;
            var above = last ? Room : 0;
            var from = line.Length == 0 ? 0 : measure.Width(line, Style) + (Label.EndsWith('$') ? 2 : 5);
            yield return new LayoutRow
            {
                Height = Style.Pitch + above,
                ToNext = KeepRules.Line(i, lines.Count, mayPart: true) || (last && WithNext) ? KeepTogether.Fast : KeepTogether.None,
                Draw = (ink, x, y) =>
                {
                    ink.Text(line, x, y + above + KeepRules.Baseline(Style), Style);
                    if (last)
                        ink.Rule(x + from, x + width, y + above + KeepRules.Baseline(Style) + 2);
                },
            };
        }
    }
}
