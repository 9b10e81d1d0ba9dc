namespace Stringline.Papers.Layout;

/// <summary>
/// Who asks for recording and where the paper goes back: the left 3½ inches of the top 2½ inches of a first page
/// (Gov. Code § 27361.6). The type shrinks before anything is cut off.
/// </summary>
/// <param name="Name">Name of the claimant.</param>
/// <param name="Address">Address, one line or several.</param>
internal sealed record ReturnBlock(string Name, string Address)
{
    private static readonly double Width = Sheet.ReturnBlockRight - Sheet.Left - 8;
    private static readonly double Room = Sheet.RecorderBand - Sheet.ReturnBlockTop - 2;

    /// <summary>The sizes tried, points. 7.5-point type is the smallest that stays clear of penalty print.</summary>
    private static readonly double[] Sizes = [10, 9.5, 9, 8.5, 8, 7.5];

    /// <summary>Whether name and address fit.</summary>
    public bool Fits(Measure measure) => Setting(measure) is not null;

    /// <summary>Draws it.</summary>
    /// <exception cref="InvalidOperationException">It does not fit; ask <see cref="Fits"/> first.</exception>
    public void Draw(PageCanvas ink, Measure measure)
    {
        var lines = Setting(measure) ?? throw new InvalidOperationException("Name and address do not fit in the return block.");
        var y = Sheet.ReturnBlockTop;
        foreach (var line in lines)
        {
            y += line.Before;
            ink.Text(line.Text, Sheet.Left, y + KeepRules.Baseline(line.Style), line.Style);
            y += line.Style.Pitch;
        }
    }

    private sealed record Line(string Text, TypeStyle Style, double Before);

    private List<Line>? Setting(Measure measure)
    {
        foreach (var together in (bool[])[false, true])
        {
            foreach (var size in Sizes)
            {
                var lines = Set(measure, size, together);
                var height = 0.0;
                foreach (var line in lines)
                    height += line.Before + line.Style.Pitch;
                if (height <= Room)
                    return lines;
            }
        }

        return null;
    }

    private List<Line> Set(Measure measure, double size, bool together)
    {
        var text = TypeStyle.Body.At(size) with { Pitch = Math.Max(9, size * 1.22) };
        var head = new TypeStyle(Face.SerifBold, Math.Min(8, size), 10.5);
        var lines = new List<Line>();
        void Add(string words, TypeStyle style, double before)
        {
            foreach (var line in measure.Lines(words, style, Width))
            {
                lines.Add(new Line(line, style, before));
                before = 0;
            }
        }

        if (together)
        {
            Add("RECORDING REQUESTED BY, AND WHEN RECORDED MAIL TO:", head, 0);
        }
        else
        {
            Add("RECORDING REQUESTED BY", head, 0);
            Add(Name, text, 1);
            Add("WHEN RECORDED MAIL TO", head, 7);
        }

        Add(Name, text, 1);
        Add(Address, text, 0);
        return lines;
    }
}
