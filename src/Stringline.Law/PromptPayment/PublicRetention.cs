using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// When retention is due on public work (Pub. Contract Code § 7107): from the public entity, and passed on by the direct contractor.
/// </summary>
internal static class PublicRetention
{
    private const string Charge = "Pub. Contract Code § 7107(f)";

    /// <summary>
    /// The retention held by the entity, due 60 days after completion; null where nothing is retained or nothing completes the work.
    /// </summary>
    [Rule("Pub. Contract Code § 7107(c)")]
    public static SumDue? Held(FactsAsOf facts, CompletionReadings completion, OpenDays calendar, out RetentionCompletion? completed)
    {
        completed = null;
        var held = facts.All<Retained>();
        if (held.Count == 0 || (completed = RetentionCompletion.Of(facts, completion)) is not { } done)
            return null;
        var due = Due(facts, done, Number.PublicRetention, calendar);
        return new SumDue(held[^1], done.On.Earliest, due, Total.Of(held, static r => r.Amount), LateLaw.PublicRetention.On(facts, due));
    }

    private static LocalDate Due(FactsAsOf facts, RetentionCompletion completed, Number days, OpenDays calendar) =>
        calendar.RollForwardOnAnyList(facts.Numbers.LastDay(days, completed.On.Latest));

    /// <summary>Where the retention that the entity holds stands.</summary>
    public static SumOwed FromEntity(FactsAsOf facts, SumDue sum, RetentionCompletion completed, OpenDays calendar)
    {
        var owed = MoneyDue.Owed(facts, sum, Charge,
            Reason.Of("Pub. Contract Code § 7107(c)",
                $"Due within {facts.Numbers.On(Number.PublicRetention, completed.On.Latest)} after completion, taken at its latest day: "
                    + $"by {sum.Due}.", [.. facts.All<Retained>()], completed.Why),
            Judgment.Of(facts));
        if (PublicPayer.IsState(facts) == true)
            owed = OfStateAgency(facts, owed, sum, completed, Due(facts, completed, Number.StateRetention, calendar));
        return completed.IsSure || owed.Standing == Standing.Done ? owed : owed with
        {
            Standing = owed.Standing == Standing.NotYet ? Standing.NotYet : Standing.InDoubt,
            Questions = [.. owed.Questions, new Question(completed.Asks!)],
        };
    }

    /// <summary>
    /// A State agency that holds no more than 125 percent of the value of the work still to be done has 90 days: both charges are shown,
    /// the lower as the amount.
    /// </summary>
    [Rule("Pub. Contract Code § 7107(g)")]
    private static SumOwed OfStateAgency(FactsAsOf facts, SumOwed owed, SumDue sum, RetentionCompletion completed, LocalDate later)
    {
        var disputed = Total.Of(facts.All<Disputed>(), d => d.Amount);
        var penalty = sum.Penalty(disputed, LocalDate.Min(facts.AsOf, Judgment.Of(facts) ?? facts.AsOf), later);
        var day = completed.On.Latest;
        var (little, days) = (facts.Numbers.On(Number.StateRetentionLittle, day), facts.Numbers.On(Number.StateRetention, day));
        var own = facts.Numbers.On(Number.PublicRetention, day);
        var reading = new Reading($"last day for a State agency that holds no more than {little.Text} of the work still to be done", later);
        return owed with
        {
            Standing = owed.Standing == Standing.Open ? Standing.InDoubt : owed.Standing,
            Readings = [.. owed.Readings, reading],
            Late = penalty.ForMonths,
            Why = [.. owed.Why,
                Reason.Of("Pub. Contract Code § 7107(g)", $"A State agency that holds no more than {little} of the value of the work yet "
                    + $"to be completed has {days}, until {later}: then the charge is {penalty.ForMonths}.")],
            Questions =
            [
                .. owed.Questions,
                new Question($"How much work was still to be done when the retention was held? Above {little.Text} of its value the State "
                    + $"agency has {own.Text}, else {days.Count}.", Dollars: owed.Late - penalty.ForMonths),
            ],
        };
    }

    /// <summary>
    /// Direct contractor to its subcontractor: the share of retention within seven days after receipt. The charge is simple and ends with
    /// the judgment (S&amp;S Cummins v. West Bay Builders (2008) 159 Cal.App.4th 765).
    /// </summary>
    [Rule("Pub. Contract Code § 7107(d)")]
    [Rule("Pub. Contract Code § 7107(f)")]
    public static SumOwed FromHirer(FactsAsOf facts, SumDue sum)
    {
        var owed = RetentionShare.Warn(
            MoneyDue.Owed(facts, sum, Charge,
                Reason.Of("Pub. Contract Code § 7107(d)", $"The original contractor pays each of its subcontractors its share of retention "
                    + $"within {facts.Numbers.On(Number.PassOnPublicRetention, sum.From)} after receiving "
                    + $"it {DaySpan.Of(sum.Fact.On)}; what it received for one subcontractor by name goes to that one. The charge "
                    + $"of {sum.Terms.PerMonth} a month is simple and ends with a judgment (S&S Cummins v. West Bay Builders (2008) 159 "
                    + $"Cal.App.4th 765).", [sum.Fact]),
                Judgment.Of(facts)),
            sum, "Pub. Contract Code § 7107(d)");
        return facts.Job.Claimant.Role != ClaimantRole.Subcontractor || facts.Hirer is { Capacity: PartyCapacity.DirectContractor } or null
            || owed.Standing != Standing.Open ? owed : owed with
        {
            Standing = Standing.InDoubt,
            Questions = [.. owed.Questions,
                new Question($"The section binds the original contractor toward its own subcontractors; whether one hired by a "
                    + $"subcontractor may use it is open. Who hired the claimant?{HeadField.ClaimantHiredBy:aside}")],
        };
    }
}
