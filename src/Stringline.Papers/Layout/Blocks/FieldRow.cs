namespace Stringline.Papers.Layout;

/// <summary>
/// A label at the left and what is to be said at the right. A long value flows over the page's end.
/// </summary>
/// <param name="Label">The label.</param>
/// <param name="Values">The value in paragraphs; null leaves a ruled blank to be filled in by hand.</param>
internal sealed record FieldRow(string Label, params IReadOnlyList<string?> Values) : Block
{
    /// <summary>White between two paragraphs of one value, points.</summary>
    private const double Between = 2.5;

    /// <summary>Height of a blank in points: room for handwriting.</summary>
    private const double BlankHeight = 19;

    /// <summary>Width of the label column in points.</summary>
    public double LabelWidth { get; init; } = 142;

    /// <summary>Number before the label, or null.</summary>
    public string? Number { get; init; }

    /// <summary>White above in points.</summary>
    public double Before { get; init; } = 7;

    /// <summary>Type of the value's first line, where it differs from the rest.</summary>
    public TypeStyle? FirstStyle { get; init; }

    /// <summary>Type of the value.</summary>
    public TypeStyle Style { get; init; } = TypeStyle.Body;

    /// <summary>Type of the label.</summary>
    public TypeStyle LabelStyle { get; init; } = TypeStyle.BodyBold;

    private sealed record Line(string? Text, bool Begins);

    /// <inheritdoc/>
    protected override IEnumerable<Strip> Slices(Measure measure, double width)
    {
        var gap = LabelWidth > 0 ? 12.0 : 0;
        var numberWidth = Number is null ? 0 : 18;
        var labels = measure.Lines(Label, LabelStyle, LabelWidth - numberWidth);
        var values = new List<Line>();
        foreach (var value in Values)
        {
            if (value is null)
            {
                values.Add(new Line(null, true));
                continue;
            }

            var lines = measure.Lines(value, Style, width - LabelWidth - gap);
            for (var i = 0; i < lines.Count; i++)
                values.Add(new Line(lines[i], i == 0));
        }

        var count = Math.Max(labels.Count, values.Count);
        for (var i = 0; i < count; i++)
        {
            var label = i < labels.Count ? labels[i] : null;
            var number = i == 0 ? Number : null;
            var written = i < values.Count ? values[i].Text : null;
            var blank = i < values.Count && written is null;
            var apart = i > 0 && i < values.Count && (values[i].Begins || blank) ? Between : 0;
            var style = i == 0 ? FirstStyle ?? Style : Style;
            var height = blank ? BlankHeight : Style.Pitch;
            yield return new Strip
            {
                Height = height,
                Before = i == 0 ? Before : apart,
                ToNext = Clings.Line(i, count) || i < labels.Count - 1 ? Glue.Fast : Glue.None,
                Draw = (ink, x, y) =>
                {
                    var baseline = y + Clings.Baseline(Style) + (blank ? BlankHeight - Style.Pitch - 2 : 0);
                    if (number is not null)
                        ink.Text(number, x, baseline, LabelStyle);
                    if (label is not null)
                        ink.Text(label, x + numberWidth, baseline, LabelStyle);
                    if (written is not null)
                        ink.Text(written, x + LabelWidth + gap, baseline, style);
                    if (blank)
                        ink.Rule(x + LabelWidth + gap, x + width, baseline + 2);
                },
            };
        }
    }
}
