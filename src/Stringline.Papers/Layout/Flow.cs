namespace Stringline.Papers.Layout;

/// <summary>A strip with its place on a page.</summary>
/// <param name="Strip">The strip.</param>
/// <param name="Top">Its top in points from the top of the page.</param>
internal sealed record Placed(Strip Strip, double Top);

/// <summary>
/// Lays strips onto pages from top to bottom. Runs of strips that cling together go to the next page as one
/// if they do not fit; a group that no page can hold is let go and only what clings fast stays together.
/// </summary>
internal static class Flow
{
    /// <summary>Lays out the strips.</summary>
    /// <param name="strips">All strips of the paper in order.</param>
    /// <param name="firstTop">Top of the text on the first page, points.</param>
    /// <param name="top">Top of the text on every other page, points.</param>
    /// <param name="bottom">Bottom of the text on every page, points.</param>
    public static IReadOnlyList<IReadOnlyList<Placed>> OntoPages(IReadOnlyList<Strip> strips, double firstTop, double top, double bottom)
    {
        var pages = new List<List<Placed>> { new() };
        var y = firstTop;
        foreach (var run in Runs(strips, Glue.Group))
        {
            if (run[0].OnNewPage && pages[^1].Count > 0)
                NewPage();
            if (HeightAtTop(run) <= bottom - top || run.Count == 1)
                Place(run);
            else
                foreach (var part in Runs(run, Glue.Fast))
                    Place(part);
        }

        return pages;

        void Place(IReadOnlyList<Strip> run)
        {
            if (pages[^1].Count > 0 && y + Height(run) > bottom)
                NewPage();
            foreach (var strip in run)
            {
                if (pages[^1].Count > 0 && y + strip.Before + strip.Height > bottom + 0.01)
                    NewPage();
                y += pages[^1].Count == 0 ? 0 : strip.Before;
                pages[^1].Add(new Placed(strip, y));
                y += strip.Height;
            }
        }

        void NewPage()
        {
            pages.Add([]);
            y = top;
        }
    }

    private static double Height(IReadOnlyList<Strip> run)
    {
        var height = 0.0;
        foreach (var strip in run)
            height += strip.Before + strip.Height;
        return height;
    }

    private static double HeightAtTop(IReadOnlyList<Strip> run) => Height(run) - run[0].Before;

    private static IEnumerable<IReadOnlyList<Strip>> Runs(IReadOnlyList<Strip> strips, Glue least)
    {
        var run = new List<Strip>();
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
