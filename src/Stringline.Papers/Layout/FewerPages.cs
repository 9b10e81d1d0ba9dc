namespace Stringline.Papers.Layout;

/// <summary>A sheet whose last page would hold a few lines only is set closer, where that spares the page.</summary>
internal static class FewerPages
{
    private const int Few = 12;

    /// <summary>The first of the plans, or the first of the others that spares its nearly empty last page.</summary>
    /// <param name="plans">The same sheet set from wide to close.</param>
    /// <param name="measure">The measure.</param>
    public static PaperPlan Of(IEnumerable<PaperPlan> plans, Measure measure)
    {
        PaperPlan? first = null;
        var pages = 0;
        foreach (var plan in plans)
        {
            var laid = Flow.OntoPages([.. plan.Blocks.SelectMany(b => b.Cut(measure, Sheet.TextWidth))], Sheet.Top, Sheet.Top,
                Sheet.Bottom);
            if (first is null && (laid.Count == 1 || laid[^1].Sum(p => p.Strip.Lines) > Few))
                return plan;
            if (first is not null && laid.Count < pages)
                return plan;
            if (first is null)
                (first, pages) = (plan, laid.Count);
        }

        return first ?? throw new ArgumentException("No plan is there.", nameof(plans));
    }
}
