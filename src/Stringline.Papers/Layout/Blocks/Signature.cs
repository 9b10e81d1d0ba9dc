namespace Stringline.Papers.Layout;

/// <summary>
/// Room to sign, with the name typed under the rule, and beside it the day and place of signing.
/// It is never cut and never stands at the head of a page without the text before it.
/// </summary>
/// <param name="Name">The signer's name as typed under the rule; null leaves a second rule to print it on.</param>
/// <param name="Under">What stands under the name: title, for whom. Without a name, the captions of further rules to write on.</param>
internal sealed record Signature(string? Name, params IReadOnlyList<string> Under) : Block
{
    /// <summary>Room above the rule for ink, points.</summary>
    private const double Room = 25;

    /// <summary>From the first rule to the second one, points.</summary>
    private const double ToSecond = 33;

    private const double RuleShare = 0.56;

    /// <summary>White above in points.</summary>
    public double Before { get; init; } = 8;

    /// <inheritdoc/>
    protected override IEnumerable<LayoutRow> Slices(Measure measure, double width)
    {
        var style = TypeStyle.Body;
        var small = TypeStyle.Small;
        var left = width * RuleShare;
        var names = Name is null ? [] : measure.Lines(Name, style, left);
        var under = Under.SelectMany(u => measure.Lines(u, style, left)).ToList();
        var leftHeight = Name is null
            ? Room + (ToSecond * (1 + Under.Count)) + 2 + small.Pitch
            : Room + ((names.Count + under.Count) * style.Pitch) + 3;
        yield return new LayoutRow
        {
            Height = Math.Max(leftHeight, Room + ToSecond + 2 + small.Pitch),
            Before = Before,
            Lines = 3,
            ToPrevious = true,
            Draw = (ink, x, y) =>
            {
                ink.Rule(x, x + left, y + Room);
                if (Name is null)
                {
                    string[] captions = ["Signature", "Name, printed", .. Under];
                    for (var i = 0; i < captions.Length; i++)
                    {
                        ink.Rule(x, x + left, y + Room + (i * ToSecond));
                        ink.Text(captions[i], x, y + Room + (i * ToSecond) + 2 + KeepRules.Baseline(small), small);
                    }
                }

                var top = y + Room + 3;
                foreach (var line in Name is null ? [] : names.Concat(under))
                {
                    ink.Text(line, x, top + KeepRules.Baseline(style), style);
                    top += style.Pitch;
                }

                var right = x + left + 22;
                ink.Rule(right, x + width, y + Room);
                ink.Text("Date of signing", right, y + Room + 2 + KeepRules.Baseline(small), small);
                var second = y + Room + ToSecond;
                ink.Rule(right, x + width, second);
                ink.Text("Signed at (city, state)", right, second + 2 + KeepRules.Baseline(small), small);
            },
        };
    }
}
