using Stringline.Law.Bankruptcy;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>What is left where the lien is lost: the debt itself (Civ. Code § 8468).</summary>
internal static class DebtDays
{
    /// <summary>
    /// The finding <c>debt.last-day</c>: four years on a written contract, two on any other, from when the money fell due. That day is not
    /// in the file, so it is counted from the first work, before which nothing can have fallen due, and shown from the last beside it. Null
    /// while the lien is not lost.
    /// </summary>
    [Rule("Civ. Code § 8468(a)")]
    [Rule("Code Civ. Proc. § 337")]
    [Rule("Code Civ. Proc. § 339")]
    public static Finding? Finding(FactsAsOf facts, Standing right, OpenDays calendar)
    {
        if (right != Standing.Lost || facts.FirstFurnished is not { } first || facts.LastFurnished is not { } last)
            return null;
        return OnceLost(facts, first, last, calendar);
    }

    private static Finding OnceLost(FactsAsOf facts, DaySpan first, DaySpan last, OpenDays calendar)
    {
        var readings = new List<Reading>();
        if (facts.Job.Contract.Written != true)
            Add(Number.DebtNotInWriting, "by no written contract");
        if (facts.Job.Contract.Written != false)
            Add(Number.DebtInWriting, "by a written contract");

        void Add(Number years, string contract)
        {
            var ofFirst = facts.Numbers.On(years, first.Earliest);
            readings.Add(Deadline.Own($"{ofFirst.Spelled}, {contract}, from the first work", ofFirst.LastDay(first.Earliest), calendar));
            if (last.Latest == first.Earliest)
                return;
            var ofLast = facts.Numbers.On(years, last.Latest);
            readings.Add(Deadline.Own($"{ofLast.Spelled}, {contract}, from the last work", ofLast.LastDay(last.Latest), calendar));
        }

        var inWriting = facts.Numbers.On(Number.DebtInWriting, first.Earliest);
        var notInWriting = facts.Numbers.On(Number.DebtNotInWriting, first.Earliest);

        return Deadline.Of(Deadline.StandingOf(facts.AsOf, readings, Filed(facts), endFirm: false), readings, calendar, endKnown: false)
            .Finding("debt.last-day", "Action on the debt itself",
            () =>
            [
                Reason.Of("Civ. Code § 8468(a)", $"The lien is lost, the debt is not: the one who owes it may be sued on it. An "
                    + $"application for a writ of attachment refers to this section."),
                facts.Job.Contract.Written != false
                    ? Reason.Of("Code Civ. Proc. § 337", $"On a written contract, a book account or an account stated: "
                        + $"within {inWriting.Spelled}.")
                        : Reason.NotApplied("Code Civ. Proc. § 337",
                            $"The contract is not in writing; a book account would still give {inWriting.Spelled}."),
                facts.Job.Contract.Written != true
                    ? Reason.Of("Code Civ. Proc. § 339", $"On a contract that is not in writing: within {notInWriting.Spelled}.")
                    : Reason.NotApplied("Code Civ. Proc. § 339", $"The contract is in writing."),
                .. Stay.OfParty(facts, facts.Hirer, LocalDate.MinIsoValue, facts.AsOf) is { } stay
                    ? [Reason.Of("11 U.S.C. § 362(a)", $"{stay.Debtor.Name} is or was in bankruptcy ({stay.Since}): file a claim there, "
                        + $"and do not sue while the stay lasts.")] : Array.Empty<Reason>(),
            ],
            facts.Job.Contract.Written is null
                ? () => [new Question($"Is the contract in writing?{HeadField.ContractWritten:aside}")] : null);
    }

    private static DaySpan? Filed(FactsAsOf facts)
    {
        foreach (var action in facts.All<ActionFiled>())
        {
            if (ClaimAction.IsOn(action, ActionOn.Debt) && DaySpan.Of(action.On) is { } filed)
                return filed;
        }

        return null;
    }
}
