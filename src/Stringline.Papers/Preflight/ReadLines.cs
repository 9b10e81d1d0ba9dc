namespace Stringline.Papers.Preflight;

/// <summary>The lines and words that letters make.</summary>
internal static class ReadLines
{
    /// <summary>Upright letters by baseline, to half a point, from top to bottom and left to right.</summary>
    public static List<IReadOnlyList<ReadWord>> Of(List<ReadLetter> letters, int page)
    {
        var lines = new List<Line>();
        Line? last = null;
        foreach (var letter in letters)
        {
            if (!letter.Upright)
                continue;
            var baseline = (int)Math.Round(letter.Baseline * 2);
            if (last?.Baseline != baseline)
                last = LineAt(lines, baseline);
            last.Letters.Add(letter);
        }

        Sorted.ByNearlySorted(lines, line => line.Baseline);
        var read = new List<IReadOnlyList<ReadWord>>(lines.Count);
        var word = new List<ReadLetter>();
        foreach (var line in lines)
        {
            // A loose accent stays after the letter it stands on.
            Sorted.ByNearlySorted(line.Letters, letter => letter.Left);
            if (Words(line.Letters, page, word) is { Count: > 0 } words)
                read.Add(words);
        }

        return read;
    }

    // Lines are drawn from top to bottom: the one sought is among the last.
    private static Line LineAt(List<Line> lines, int baseline)
    {
        for (var i = lines.Count - 1; i >= 0; i--)
        {
            if (lines[i].Baseline == baseline)
                return lines[i];
        }

        lines.Add(new Line(baseline));
        return lines[^1];
    }

    private static List<ReadWord> Words(List<ReadLetter> line, int page, List<ReadLetter> word)
    {
        var words = new List<ReadWord>(16);
        void End()
        {
            if (word.Count > 0)
                words.Add(new ReadWord([.. word], page));
            word.Clear();
        }

        foreach (var letter in line)
        {
            var blank = letter.Blank;
            if (blank || (word.Count > 0 && letter.Left - word[^1].Right > 0.2 * letter.Points))
                End();
            if (!blank)
                word.Add(letter);
        }

        End();
        return words;
    }

    private sealed class Line(int baseline)
    {
        public int Baseline => baseline;

        public List<ReadLetter> Letters { get; } = new(64);
    }
}
