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

    /// <summary>White above in points.</summary>
    public double Before { get; init; } = 3;

    /// <summary>Room above the rule for handwriting, added to the line's own height, points.</summary>
    public double Room { get; init; } = 5;

    /// <summary>Type of the value.</summary>
    public TypeStyle ValueStyle { get; init; } = TypeStyle.BodyBold;

    /// <summary>Whether it clings to what follows.</summary>
    public bool WithNext { get; init; }

    /// <inheritdoc/>
    protected override IEnumerable<Strip> Slices(Measure measure, double width) =>
        (Value is { } value ? Written(measure, width, value) : Ruled(measure, width))
            .Select((s, i) => i == 0 ? s with { Before = Before } : s);

    private IEnumerable<Strip> Written(Measure measure, double width, string value)
    {
        var lead = measure.Width(Label.TrimEnd(' '), Style) + (Label.EndsWith(' ') ? measure.Width(" ", Style) : 0);
        if (lead > width * 0.6)
        {
            foreach (var strip in new Paragraph(Label + value, Style) { Before = 0, WithNext = WithNext }.Cut(measure, width))
                yield return strip;
            yield break;
        }

        var lines = measure.Lines(value, ValueStyle, width - lead);
        for (var i = 0; i < lines.Count; i++)
        {
            var (line, first) = (lines[i], i == 0);
            yield return new Strip
            {
                Height = Style.Pitch,
                ToNext = Clings.Line(i, lines.Count) || (WithNext && i == lines.Count - 1) ? Glue.Fast : Glue.None,
                Draw = (ink, x, y) =>
                {
                    if (first)
                        ink.Exactly(Label, x, y + Clings.Baseline(Style), Style);
                    ink.Text(line, x + lead, y + Clings.Baseline(Style), ValueStyle);
                },
            };
        }
    }

    private IEnumerable<Strip> Ruled(Measure measure, double width)
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
            yield return new Strip
            {
                Height = Style.Pitch + above,
                ToNext = !last || WithNext ? Glue.Fast : Glue.None,
                Draw = (ink, x, y) =>
                {
                    ink.Text(line, x, y + above + Clings.Baseline(Style), Style);
                    if (last)
                        ink.Rule(x + from, x + width, y + above + Clings.Baseline(Style) + 2);
                },
            };
        }
    }
}
