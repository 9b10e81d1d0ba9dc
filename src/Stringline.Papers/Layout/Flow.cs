namespace Stringline.Papers.Layout;

/// <summary>A strip with its place on a page.</summary>
/// <param name="Strip">The strip.</param>
/// <param name="Top">Its top in points from the top of the page.</param>
internal sealed record Placed(LayoutRow Strip, double Top);

/// <summary>
/// Lays strips onto pages from top to bottom. Runs of strips that cling together go to the next page as one
/// if they do not fit; a group that no page can hold is let go and only what clings fast stays together.
/// </summary>
internal static class Flow
{
    /// <summary>Fewer lines than these are not left alone on a page.</summary>
    private const int LeastLines = 3;

    /// <summary>Lays out the strips.</summary>
    /// <param name="strips">All strips of the paper in order.</param>
    /// <param name="firstTop">Top of the text on the first page, points.</param>
    /// <param name="top">Top of the text on every other page, points.</param>
    /// <param name="bottom">Bottom of the text on every page, points.</param>
    public static IReadOnlyList<IReadOnlyList<Placed>> OntoPages(IReadOnlyList<LayoutRow> strips, double firstTop, double top,
        double bottom)
    {
        var laid = Lay(strips, firstTop, top, bottom);
        // Each turn moves one break up, so there are no more turns than strips.
        for (var turns = strips.Count; turns > 0 && Fuller(strips, laid) is { } begin; turns--)
        {
            strips = [.. strips.Select((s, i) => i == begin ? s with { OnNewPage = true } : s)];
            laid = Lay(strips, firstTop, top, bottom);
        }

        return laid;
    }

    // The strip with which a nearly empty page would begin so that it has lines enough; null where no page is so empty, or none can be
    // helped by its page before.
    private static int? Fuller(IReadOnlyList<LayoutRow> strips, List<List<Placed>> pages)
    {
        var end = strips.Count;
        for (var page = pages.Count - 1; page > 0; page--)
        {
            var begin = end - pages[page].Count(p => !p.Strip.IsAgain);
            if (LinesOf(strips, begin, end) < LeastLines && !strips[begin].OnNewPage)
            {
                var first = begin - pages[page - 1].Count(p => !p.Strip.IsAgain);
                for (var at = begin - 1; at > first; at--)
                {
                    if (MayBreak(strips, at) && LinesOf(strips, at, end) >= LeastLines && LinesOf(strips, first, at) >= LeastLines)
                        return at;
                }
            }

            end = begin;
        }

        return null;
    }

    private static bool MayBreak(IReadOnlyList<LayoutRow> strips, int at) =>
        strips[at - 1].ToNext == KeepTogether.None && !strips[at].ToPrevious && !strips[at].OnNewPage;

    private static int LinesOf(IReadOnlyList<LayoutRow> strips, int from, int to)
    {
        var lines = 0;
        for (var i = from; i < to; i++)
            lines += strips[i].Lines;
        return lines;
    }

    private static List<List<Placed>> Lay(IReadOnlyList<LayoutRow> strips, double firstTop, double top, double bottom)
    {
        var pages = new List<List<Placed>> { new() };
        var y = firstTop;
        foreach (var run in Runs(strips, KeepTogether.Group))
        {
            if (run[0].OnNewPage && pages[^1].Count > 0)
                NewPage();
            if (HeightAtTop(run) <= bottom - top || run.Count == 1)
                Place(run);
            else
                foreach (var part in Runs(run, KeepTogether.Fast))
                    Place(part);
        }

        return pages;

        void Place(IReadOnlyList<LayoutRow> run)
        {
            if (pages[^1].Count > 0 && y + Height(run) > bottom)
                NewPage();
            foreach (var strip in run)
            {
                if (pages[^1].Count > 0 && y + strip.Before + strip.Height > bottom + 0.01)
                    NewPage();
                var isFirst = pages[^1].Count == 0;
                if (isFirst)
                {
                    foreach (var again in strip.Again)
                        Put(again with { IsAgain = true }, pages[^1].Count > 0);
                }

                Put(strip, !isFirst || strip.Again.Count > 0);
            }
        }

        void Put(LayoutRow strip, bool below)
        {
            y += below ? strip.Before : 0;
            pages[^1].Add(new Placed(strip, y));
            y += strip.Height;
        }

        void NewPage()
        {
            pages.Add([]);
            y = top;
        }
    }

    private static double Height(IReadOnlyList<LayoutRow> run)
    {
        var height = 0.0;
        foreach (var strip in run)
            height += strip.Before + strip.Height;
        return height;
    }

    private static double HeightAtTop(IReadOnlyList<LayoutRow> run) => Height(run) - run[0].Before;

    private static IEnumerable<IReadOnlyList<LayoutRow>> Runs(IReadOnlyList<LayoutRow> strips, KeepTogether least)
    {
        var run = new List<LayoutRow>();
        for (var i = 0; i < strips.Count; i++)
        {
            run.Add(strips[i]);
            var next = i + 1 < strips.Count ? strips[i + 1] : null;
            if (next is not null && !next.OnNewPage && (strips[i].ToNext >= least || next.ToPrevious))
                continue;
            yield return run;
            run = [];
        }
    }
}
