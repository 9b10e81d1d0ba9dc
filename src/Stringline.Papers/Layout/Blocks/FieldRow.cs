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

    /// <summary>So many lines that were written as lines, such as name and address, are never cut.</summary>
    private const int WholeLines = 8;

    /// <summary>A row of no more lines is never cut: a sum stays with what is said of it, a site with its description.</summary>
    private const int WholeRow = 10;

    private sealed record Line(string? Text, bool Begins, bool Clings);

    /// <inheritdoc/>
    protected override IEnumerable<LayoutRow> Slices(Measure measure, double width)
    {
        var gap = LabelWidth > 0 ? 12.0 : 0;
        var numberWidth = Number is null ? 0 : 18;
        var labels = measure.Lines(Label, LabelStyle, LabelWidth - numberWidth);
        var again = Again(measure, numberWidth);
        List<Line> values = [.. Values.SelectMany(value => Lines(measure, value, width - LabelWidth - gap))];
        var used = 0.0;
        for (var i = 0; i < values.Count; i++)
        {
            var (written, begins, clings) = values[i];
            var (first, blank) = (i == 0, written is null);
            var style = first ? FirstStyle ?? Style : Style;
            var lift = blank ? BlankHeight - Style.Pitch - 2 : 0;
            var height = blank ? BlankHeight : Style.Pitch;
            var before = first ? Before : begins ? Between : 0;
            used += (first ? 0 : before) + height;
            // The label is set line under line at its own pitch, whatever stands beside it: it all hangs on the first line.
            var labelled = (values[0].Text is null ? BlankHeight - Style.Pitch - 2 : 0) + (labels.Count * LabelStyle.Pitch);
            var last = i == values.Count - 1;
            yield return new LayoutRow
            {
                Height = last ? height + Math.Max(0, labelled - used) : height,
                Before = before,
                Again = first || again is null ? [] : [again],
                ToNext = !last && (clings || used < labelled || values.Count <= WholeRow) ? KeepTogether.Fast : KeepTogether.None,
                Draw = (ink, x, y) =>
                {
                    var baseline = y + KeepRules.Baseline(Style) + lift;
                    if (first && Number is not null)
                        ink.Text(Number, x, baseline, LabelStyle);
                    for (var line = 0; first && line < labels.Count; line++)
                        ink.Text(labels[line], x + numberWidth, baseline + (line * LabelStyle.Pitch), LabelStyle);
                    if (written is not null)
                        ink.Text(written, x + LabelWidth + gap, baseline, style);
                    else
                        ink.Rule(x + LabelWidth + gap, x + width, baseline + 2);
                },
            };
        }
    }

    // What goes on over a page says whose it is; a row without a label has nothing to say.
    private LayoutRow? Again(Measure measure, double numberWidth)
    {
        if (LabelWidth <= 0 || Label.Length == 0)
            return null;
        var lines = measure.Lines($"{Label}, continued", LabelStyle, LabelWidth - numberWidth);
        return new LayoutRow
        {
            Height = (lines.Count * LabelStyle.Pitch) + Between,
            ToNext = KeepTogether.Fast,
            Draw = (ink, x, y) =>
            {
                if (Number is not null)
                    ink.Text(Number, x, y + KeepRules.Baseline(LabelStyle), LabelStyle);
                for (var line = 0; line < lines.Count; line++)
                    ink.Text(lines[line], x + numberWidth, y + KeepRules.Baseline(LabelStyle) + (line * LabelStyle.Pitch), LabelStyle);
            },
        };
    }

    private IEnumerable<Line> Lines(Measure measure, string? value, double width)
    {
        if (value is null)
        {
            yield return new Line(null, true, false);
            yield break;
        }

        var lines = measure.Lines(value, Style, width);
        var isWhole = lines.Count <= WholeLines && value.Contains('\n', StringComparison.Ordinal);
        for (var i = 0; i < lines.Count; i++)
            yield return new Line(lines[i], i == 0, i < lines.Count - 1 && (isWhole || Layout.KeepRules.Line(i, lines.Count)));
    }
}
