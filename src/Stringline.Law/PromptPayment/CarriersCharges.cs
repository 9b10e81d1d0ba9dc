using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// The charges of a motor carrier in dump truck equipment, which a licensed contractor pays on a day of the month after the haul.
/// </summary>
internal static class CarriersCharges
{
    private const string Section = "Bus. & Prof. Code § 7108.6";
    private const string Id = "prompt-payment.carrier";
    private const string Title = "Charges of a dump-truck carrier";

    /// <summary>
    /// A finding <c>prompt-payment.carrier</c> for each submission of charges, and <c>prompt-payment.charges-last-day</c> while none is
    /// entered for the last month hauled in.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="calendar">The calendar.</param>
    public static IReadOnlyList<Finding> Findings(FactsAsOf facts, OpenDays calendar)
    {
        if (facts.Job.Claimant is not { DumpTrucks: true, Role: not ClaimantRole.DirectContractor })
            return [];
        var charges = new List<Charges>();
        var sums = new List<SumDue>();
        foreach (var submitted in facts.All<PaymentDemanded>())
        {
            if (DaySpan.Of(submitted.On) is not { } on)
                continue;
            var month = MonthOf(facts, on, out var isSure);
            charges.Add(new Charges(month, on, isSure));
            var due = calendar.RollForwardOnAnyList(ToPay(facts, month).InNextMonth(month));
            sums.Add(new SumDue(submitted, on.Earliest, due, submitted.Amount, LateLaw.Charges.On(facts, due)));
        }

        SumDue.Receive(sums, facts.All<Paid>());
        Disputes.Assign(facts, sums, static _ => false);
        var findings = new List<Finding>(sums.Count + 1);
        for (var i = 0; i < sums.Count; i++)
            findings.Add(Due(facts, sums[i], charges[i]).Finding(MoneyDue.Numbered(Id, i + 1), Title));
        if (NotSubmitted(facts, charges, calendar) is { } missing)
            findings.Add(missing);
        return findings;
    }

    private sealed record Charges(YearMonth Month, DaySpan On, bool MonthIsSure);

    // By the law of the month that was hauled in.
    private static NumberRow ToSubmit(FactsAsOf facts, YearMonth month) => facts.Numbers.On(Number.ChargesSubmitted, month.OnDayOfMonth(1));

    private static NumberRow ToPay(FactsAsOf facts, YearMonth month) => facts.Numbers.On(Number.ChargesPaid, month.OnDayOfMonth(1));

    private static LocalDate FirstOfNext(YearMonth month) => month.OnDayOfMonth(1).PlusMonths(1);

    /// <summary>
    /// The month that charges are for, which a submission does not name: by the fifth that before it if anything was hauled in it, else the
    /// last in which anything was hauled.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7108.6", Sure = Sure.OurReading)]
    private static YearMonth MonthOf(FactsAsOf facts, DaySpan on, out bool isSure)
    {
        var own = on.Latest.ToYearMonth();
        var before = own.OnDayOfMonth(1).PlusMonths(-1).ToYearMonth();
        var (inOwn, inBefore) = (IsHauledIn(facts, own, on.Latest), IsHauledIn(facts, before, on.Latest));
        isSure = inOwn != inBefore;
        if (inBefore && (on.Latest.Day <= ToSubmit(facts, before).Count || !inOwn))
            return before;
        return inOwn ? own : LastMonth(facts, on.Latest) ?? own;
    }

    private static bool IsHauledIn(FactsAsOf facts, YearMonth month, LocalDate by)
    {
        foreach (var hauled in facts.Furnished)
        {
            if (hauled.On.Earliest is { } from && from <= by && from.ToYearMonth().CompareTo(month) <= 0
                && LastDay(hauled, by).ToYearMonth().CompareTo(month) >= 0)
                return true;
        }

        return false;
    }

    private static YearMonth? LastMonth(FactsAsOf facts, LocalDate by)
    {
        YearMonth? last = null;
        foreach (var hauled in facts.Furnished)
        {
            if (hauled.On.Earliest <= by && LastDay(hauled, by).ToYearMonth() is var month && !(last?.CompareTo(month) > 0))
                last = month;
        }

        return last;
    }

    private static LocalDate LastDay(Furnished hauled, LocalDate by) => LocalDate.Min(hauled.Until.Latest ?? by, by);

    /// <summary>
    /// By the 20th of the next month what was submitted by the fifth; penalty 2 percent a month; 150 percent of what is disputed may be
    /// held.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7108.6")]
    private static SumOwed Due(FactsAsOf facts, SumDue sum, Charges charges)
    {
        var (submitted, paid) = (ToSubmit(facts, charges.Month), ToPay(facts, charges.Month));
        var by = submitted.InNextMonth(charges.Month);
        var owed = MoneyDue.Owed(facts, sum, Section, Reason.Of(Section,
            $"What was hauled in a month is paid by the {paid} of the next, {sum.Due}, if the charges with all documents were submitted by "
                + $"the {submitted}, {by}; they were submitted {charges.On}. Penalty {sum.Terms.PerMonth} of the amount a month, and the "
                + $"fees of the action to the one who prevails. Another agreement in writing goes before. Where a section gives the same "
                + $"money a day of its own, its penalty is not had twice.", [sum.Fact]));
        if (owed.Standing is Standing.Done)
            return owed;
        List<Question> questions = [.. owed.Questions];
        if (charges.On.Latest > by)
            questions.Add(new Question($"Were the charges, with all their documents, submitted by {by}? For charges submitted later the "
                + $"section sets no day.{MoneyKinds.PaymentDemanded.At("on"):aside}") { Corrects = sum.Fact });
        if (!charges.MonthIsSure)
            questions.Add(new Question($"In which month was hauled what the charges of {charges.On} are for? They are taken to be for the "
                + $"month that ended before {FirstOfNext(charges.Month)}.") { Corrects = sum.Fact });
        AskOfTheHirer(facts, questions);
        return questions.Count == owed.Questions.Count ? owed : owed with
        {
            Standing = owed.Standing == Standing.Open ? Standing.InDoubt : owed.Standing,
            Questions = questions,
        };
    }

    // The section binds a licensed contractor.
    private static void AskOfTheHirer(FactsAsOf facts, List<Question> questions)
    {
        if (facts.Hirer is null)
            questions.Add(
                new Question($"Who hired the claimant? The section binds a licensed contractor.{HeadField.ClaimantHiredBy:aside}"));
        else if (facts.Hirer.Capacity is not (PartyCapacity.DirectContractor or PartyCapacity.Subcontractor))
            questions.Add(new Question($"Is {facts.Hirer.Name} a licensed contractor? The section binds no one else."));
    }

    /// <summary>
    /// Hauled in a month of which no charges are entered: by the fifth of the next they are submitted, or the 20th binds nobody.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7108.6")]
    private static Finding? NotSubmitted(FactsAsOf facts, List<Charges> charges, OpenDays calendar)
    {
        if (facts.LastFurnished is not { } last)
            return null;
        var month = LocalDate.Min(last.Latest, facts.AsOf).ToYearMonth();
        if (charges.Exists(c => c.Month == month))
            return null;
        var (submitted, paid) = (ToSubmit(facts, month), ToPay(facts, month));
        var late = facts.Numbers.On(Number.ChargesPenalty, paid.InNextMonth(month));
        List<Reading> readings =
            [Deadline.Own($"charges submitted by the {submitted.Text} of the next month", submitted.InNextMonth(month), calendar)];
        var questions =
            new List<Question> { new($"Were the charges for what was hauled last submitted, and on which day? With all their documents "
                + $"by {readings[0].Day}, they are due by {paid.InNextMonth(month)}.{MoneyKinds.PaymentDemanded:aside}") };
        AskOfTheHirer(facts, questions);
        return Deadline.Of(facts.AsOf <= readings[0].Day ? Standing.Open : Standing.InDoubt, readings, calendar)
            .Finding("prompt-payment.charges-last-day", "Charges of a dump-truck carrier: submit them",
            [Reason.Of(Section, $"Submit the charges for what was hauled until {last}, with all their documents, by "
                + $"the {submitted} of the next month: then a licensed contractor owes them by the {paid}, with {late} a month after "
                + $"it.")], questions);
    }
}
