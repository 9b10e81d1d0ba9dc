using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Enforcement;

/// <summary>Of which action it is that summons were served, that a trial began, or that it ended.</summary>
internal static class OwnAction
{
    /// <summary>
    /// Whether what happened is of an action: not of one filed after it, nor of another that it names. Where it names none of several filed
    /// by then, it may be of any.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="happened">What happened.</param>
    /// <param name="of">The id of the action that it names; null where it names none.</param>
    /// <param name="action">The action.</param>
    public static Verdict Is(FactsAsOf facts, Entry happened, string? of, ActionFiled action)
    {
        if (happened.On.Latest < action.On.Earliest)
            return Verdict.No;
        if (of is not null)
            return facts.Names(of, action) ? Verdict.Yes : Verdict.No;
        foreach (var other in facts.All<ActionFiled>())
        {
            if (!ReferenceEquals(other, action) && !(happened.On.Latest < other.On.Earliest))
                return Verdict.Open;
        }

        return Verdict.Yes;
    }

    /// <summary>How an action ended, the last word counting; null where the file does not show that it did.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="action">The action.</param>
    /// <param name="orders">Whether an order that releases the claim of lien is an end too.</param>
    /// <param name="surely">Whether it is surely this action that ended.</param>
    public static ActionEnded? EndOf(FactsAsOf facts, ActionFiled action, bool orders, out bool surely)
    {
        ActionEnded? end = null;
        surely = true;
        foreach (var ended in facts.All<ActionEnded>())
        {
            if ((orders || ended.How != ActionEnd.ReleaseOrdered) && Is(facts, ended, ended.Of, action) is not Verdict.No and var its)
                (end, surely) = (ended, its == Verdict.Yes);
        }

        return end;
    }

    /// <summary>The first day on which its trial began, or that its summons were served, as far as any may be of it.</summary>
    /// <param name="Surely">The first that is surely of it; null where none is.</param>
    /// <param name="Perhaps">The first that may be of it; null where none may.</param>
    /// <param name="Unnamed">One that may be of it and names no action.</param>
    internal readonly record struct First(DaySpan? Surely, DaySpan? Perhaps, Entry? Unnamed)
    {
        /// <summary>Where a deadline stands that such a day would keep: in doubt where that hangs on whose day it is.</summary>
        public Standing Standing(LocalDate asOf, IReadOnlyList<Reading> readings, bool endFirm)
        {
            var sure = Deadline.StandingOf(asOf, readings, Surely, endFirm);
            return Perhaps is null || Perhaps == Surely
                || Deadline.StandingOf(asOf, readings, Perhaps, endFirm) == sure ? sure : Reasoning.Standing.InDoubt;
        }
    }

    /// <summary>The first day of trial of an action.</summary>
    public static First Trial(FactsAsOf facts, ActionFiled action)
    {
        var first = new First();
        foreach (var trial in facts.All<TrialBegun>())
            first = With(first, trial, Is(facts, trial, trial.Of, action));
        return first;
    }

    /// <summary>The first day on which an action was served.</summary>
    public static First Served(FactsAsOf facts, ActionFiled action)
    {
        var first = new First();
        foreach (var served in facts.All<ActionServed>())
            first = With(first, served, Is(facts, served, served.Of, action));
        return first;
    }

    // One on a day that nobody knows may have been in time, and may not.
    private static First With(First first, Entry entry, Verdict isOf)
    {
        if (isOf == Verdict.No)
            return first;
        if (DaySpan.Of(entry.On) is not { } on)
            return first with { Perhaps = first.Perhaps ?? new DaySpan(LocalDate.MinIsoValue, LocalDate.MinIsoValue) };
        return isOf == Verdict.Yes
            ? first with { Surely = first.Surely ?? on, Perhaps = first.Perhaps ?? on }
            : first with { Perhaps = first.Perhaps ?? on, Unnamed = first.Unnamed ?? entry };
    }

    /// <summary>Asks of which action it is.</summary>
    public static IEnumerable<Question> Ask(First first, string what, EntryKind kind) => first.Unnamed is { } entry
        ? [new Question($"Of which action was it that {what}?{kind.At("of"):aside}") { Corrects = entry }]
        : [];
}
