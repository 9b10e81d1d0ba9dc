namespace Stringline.Tables.JobFiles.Reading;

/// <summary>
/// Which entry replaces which, itself or through others. Each has its place on one walk through all of them, from what is replaced to what
/// replaces it; all that replace an entry stand between its place and its end. So no chain is walked twice, however many entries hang on
/// it.
/// </summary>
internal sealed class Corrections
{
    private readonly Dictionary<string, (int Place, int End)> spans = new(StringComparer.Ordinal);

    /// <summary>Walks through all. Those in a circle, and what hangs on one, have no place: such a file is refused.</summary>
    /// <param name="replacements">By the id of an entry, the id of the one it replaces.</param>
    public Corrections(Dictionary<string, string> replacements)
    {
        var later = replacements.ToLookup(pair => pair.Value, pair => pair.Key, StringComparer.Ordinal);
        var open = new Stack<(string Entry, bool IsEnd)>(later.Select(older => older.Key).Where(older => !replacements.ContainsKey(older))
            .Select(older => (older, false)));
        var place = 0;
        while (open.TryPop(out var step))
        {
            if (step.IsEnd)
            {
                spans[step.Entry] = (spans[step.Entry].Place, place);
                continue;
            }

            spans[step.Entry] = (++place, place);
            open.Push((step.Entry, true));
            foreach (var one in later[step.Entry])
                open.Push((one, false));
        }

        IsInCircle = entry => replacements.ContainsKey(entry) && !spans.ContainsKey(entry);
    }

    private Func<string, bool> IsInCircle { get; }

    /// <summary>Entries that were met, to ask of each further one whether it replaces one of them or is replaced by one.</summary>
    /// <param name="corrections">Which replaces which.</param>
    public sealed class Related(Corrections corrections)
    {
        // Of the entries met those that replace none of the others: by their places, their ends. What replaces one of them lies within it.
        private readonly SortedList<int, int> outermost = [];
        private bool any;

        /// <summary>
        /// Takes an entry in. False where others were met, none of which replaces it or is replaced by it, itself or through others.
        /// </summary>
        public bool AddsOne(string entry)
        {
            var isFirst = !any;
            any = true;
            if (corrections.IsInCircle(entry))
                return true;
            // One that neither replaces nor is replaced.
            if (!corrections.spans.TryGetValue(entry, out var span))
                return isFirst;
            var next = FirstFrom(span.Place);
            if (next > 0 && outermost.Values[next - 1] >= span.Place)
                return true;
            var replaced = false;
            while (next < outermost.Count && outermost.Keys[next] <= span.End)
            {
                outermost.RemoveAt(next);
                replaced = true;
            }

            outermost.Add(span.Place, span.End);
            return isFirst || replaced;
        }

        private int FirstFrom(int place)
        {
            var (low, high) = (0, outermost.Count);
            while (low < high)
            {
                var middle = (low + high) / 2;
                if (outermost.Keys[middle] >= place)
                    high = middle;
                else
                    low = middle + 1;
            }

            return low;
        }
    }
}
