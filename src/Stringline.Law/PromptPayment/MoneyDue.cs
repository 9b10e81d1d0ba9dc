using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// When progress payments and retention are due on private work, and the penalty for holding them. Shown beside the claim of lien,
/// never part of it.
/// </summary>
public static class MoneyDue
{
    /// <summary>
    /// The findings <c>prompt-payment.*</c>, <c>retention.due</c> and <c>dispute-claim.undisputed-part</c>, where the file has their facts;
    /// a second one of a kind is numbered.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="completion">The readings of completion.</param>
    /// <param name="calendar">The calendar.</param>
    /// <param name="undisputed">What the owner does not dispute of a claim, with what was received for it; null where there is no such
    /// sum.</param>
    internal static IReadOnlyList<Finding> Findings(
        FactsAsOf facts, CompletionReadings completion, OpenDays calendar, out SumDue? undisputed)
    {
        undisputed = UndisputedPart.Of(facts, calendar);
        if (facts.Job.Claimant.Role == ClaimantRole.DirectContractor)
            return FromOwner(facts, completion, undisputed, calendar);
        List<Finding> findings = facts.All<HirerPaid>().Count > 0
            ? Findings(FromHirer(facts, calendar, ToPassOn, HirersProgress, HirersRetention))
            : WhetherTheHirerReceivedRetention(facts, completion, calendar) is { } asked ? [asked] : [];
        if (undisputed is not null)
        {
            SumDue.Receive([undisputed], facts.All<Paid>());
            findings.Add(UndisputedPart.Finding(facts, undisputed));
        }

        findings.AddRange(CarriersCharges.Findings(facts, calendar));
        return findings;
    }

    private static List<Finding> FromOwner(FactsAsOf facts, CompletionReadings completion, SumDue? undisputed, OpenDays calendar)
    {
        var inside = RetentionInside.Of(facts);
        var sums = inside.TakeOut(OwnersProgress.Demanded(facts, calendar));
        var retention = OwnersRetention(facts, completion, calendar);
        List<SumDue> all = retention is null ? sums : [.. sums, retention];
        SumDue.Receive(undisputed is null ? all : [.. all, undisputed], facts.All<Paid>());
        Disputes.Assign(facts, all, s => s == retention);
        var findings = new List<Finding>();
        foreach (var sum in sums)
            findings.Add(OwnersProgress.Finding(inside.Tell(OwnersProgress.Owed(facts, sum), sum), findings.Count + 1));
        findings.AddRange(OwnersProgress.NotGiven(facts, findings.Count + 1));
        if (retention is not null)
            findings.Add(OwnersRetention(facts, retention, completion).Finding("retention.due", "Retention from the owner"));
        if (undisputed is not null)
            findings.Add(UndisputedPart.Finding(facts, undisputed));
        return findings;
    }

    /// <summary>What the one who hired the claimant received for its work and must pass on, sum by sum.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="calendar">The calendar.</param>
    /// <param name="toPassOn">How soon after the receipt, and what it costs to be late.</param>
    /// <param name="progress">Where the sum of a progress payment stands.</param>
    /// <param name="retention">Where that of retention stands.</param>
    internal static List<(PaymentOf Of, SumOwed Owed)> FromHirer(
        FactsAsOf facts, OpenDays calendar, Func<PaymentOf, (Number Days, LateLaw Late)> toPassOn,
        Func<FactsAsOf, SumDue, SumOwed> progress, Func<FactsAsOf, SumDue, SumOwed> retention)
    {
        var sums = new List<SumDue>();
        var share = RetentionShare.Of(facts);
        foreach (var received in facts.All<HirerPaid>())
        {
            if (DaySpan.Of(received.On) is not { } on)
                continue;
            var (days, late) = toPassOn(received.Of);
            var due = calendar.RollForwardOnAnyList(facts.Numbers.LastDay(days, on.Latest));
            sums.Add(new SumDue(received, on.Earliest, due, share.Take(received), late.On(facts, due)));
        }

        SumDue.Receive(sums, facts.All<Paid>());
        Disputes.Assign(facts, sums, static s => ((HirerPaid)s.Fact).Of == PaymentOf.Retention);
        return sums.ConvertAll(sum => ((HirerPaid)sum.Fact).Of is PaymentOf.Progress and var of
            ? (of, progress(facts, sum)) : (PaymentOf.Retention, retention(facts, sum)));
    }

    /// <summary>The findings about them, numbered by their kind.</summary>
    internal static List<Finding> Findings(List<(PaymentOf Of, SumOwed Owed)> sums)
    {
        var findings = new List<Finding>();
        var (progresses, retentions) = (0, 0);
        foreach (var (of, owed) in sums)
        {
            findings.Add(of == PaymentOf.Progress
                ? owed.Finding(Numbered("prompt-payment.progress", ++progresses), "Progress payment from the one who hired us")
                : owed.Finding(Numbered("retention.due", ++retentions), "Retention from the one who hired us"));
        }

        return findings;
    }

    /// <summary>The last of the owner's days after a notice that demands payment (Civ. Code § 8800(a)), not rolled.</summary>
    /// <param name="numbers">The numbers of the law.</param>
    /// <param name="given">The day on which the notice is complete.</param>
    /// <returns>That day; a later one only where the contract says so in writing.</returns>
    public static LocalDate OwnersLastDay(NumberTable numbers, LocalDate given)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        return numbers.LastDay(Number.OwnersProgress, given);
    }

    /// <summary>
    /// What of a sum that is owed can be a progress payment: retention that was withheld falls due by its own sections and is no part of
    /// it. What was paid is taken to answer progress payments first, which fall due earlier.
    /// </summary>
    [Rule("Civ. Code § 8800(d)")]
    public static decimal WithoutRetention(FactsAsOf facts, decimal owed)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return Math.Max(0m, owed - Total.Of(facts.All<Retained>(), r => r.Amount));
    }

    /// <summary>What of a sum that is owed is retention, and no part of a progress payment.</summary>
    public static decimal RetentionIn(FactsAsOf facts, decimal owed) => owed - WithoutRetention(facts, owed);

    internal static string Numbered(string id, int number) => number == 1 ? id : $"{id}.{number}";

    private static (Number Days, LateLaw Late) ToPassOn(PaymentOf of) => of switch
    {
        PaymentOf.Progress => (Number.HirersProgress, LateLaw.HirersProgress),
        PaymentOf.Retention => (Number.HirersRetention, LateLaw.HirersRetention),
        _ => throw new InvalidOperationException($"No such payment: {of}."),
    };

    /// <summary>
    /// Contractor to subcontractor: seven days after receipt, unless agreed otherwise in writing. A supplier is not clearly within it.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7108.5")]
    private static SumOwed HirersProgress(FactsAsOf facts, SumDue sum)
    {
        var owed = Owed(facts, sum, "Bus. & Prof. Code § 7108.5",
            Reason.Of("Bus. & Prof. Code § 7108.5", $"Due within {facts.Numbers.On(Number.HirersProgress, sum.From)} after the hirer was "
                + $"paid {DaySpan.Of(sum.Fact.On)}, unless agreed otherwise in writing; penalty {sum.Terms.PerMonth} of the amount a "
                + $"month.", [sum.Fact], [.. OfAUtility(facts, sum.From)]));
        return ForSubcontractors(facts, owed);
    }

    /// <summary>
    /// Owed under a section that speaks of subcontractors: in doubt for a claimant in another role, unless it was paid in time.
    /// </summary>
    internal static SumOwed ForSubcontractors(FactsAsOf facts, SumOwed owed) => facts.Job.Claimant.Role == ClaimantRole.Subcontractor
        ? owed : owed.Doubted(new Question($"The section speaks of subcontractors; whether a claimant in this role may use it is open."));

    /// <summary>Where the owner is a public utility 21 days are set; the seven are not said to give way to them.</summary>
    [Rule("Civ. Code § 8802")]
    private static Reason[] OfAUtility(FactsAsOf facts, LocalDate received) =>
        facts.Job.Work is { PublicUtility: true, Kind: WorkKind.Private } && facts.Hirer is { Capacity: PartyCapacity.DirectContractor }
        ? [Reason.Of("Civ. Code § 8802", $"The owner is a public utility: its direct contractor "
            + $"has {facts.Numbers.On(Number.UtilityProgress, received)} from receipt under this section, and "
            + $"the {facts.Numbers.On(Number.HirersProgress, received).Spelled} of the other stand beside them.")]
        : [];

    /// <summary>
    /// Contractor to subcontractor: its share of retention within ten days after receipt (United Riggers &amp; Erectors v. Coast Iron &amp;
    /// Steel (2018) 4 Cal.5th 1082).
    /// </summary>
    [Rule("Civ. Code § 8814")]
    [Rule("Civ. Code § 8818")]
    private static SumOwed HirersRetention(FactsAsOf facts, SumDue sum)
    {
        var owed = WithinTheArticle(facts, RetentionShare.Warn(Owed(facts, sum, "Civ. Code § 8818",
            Reason.Of("Civ. Code § 8814",
                $"The share of retention is due within {facts.Numbers.On(Number.HirersRetention, sum.From)} after the hirer received "
                    + $"it {DaySpan.Of(sum.Fact.On)}; only a good-faith dispute about that very money excuses (United Riggers & Erectors "
                    + $"v. Coast Iron & Steel (2018) 4 Cal.5th 1082).", [sum.Fact])), sum, "Civ. Code § 8814(a)"));
        Disputed[] unsaid = [.. facts.All<Disputed>().Where(static d => d is { About: null, Demand: null })];
        if (owed.Standing is not (Standing.Open or Standing.InDoubt) || unsaid.Length == 0 || sum.Disputed == 0)
            return owed;
        var whole = sum.Penalty(disputed: 0m, facts.AsOf);
        return owed with
        {
            Standing = Standing.InDoubt,
            Why = [.. owed.Why,
                Reason.Of("Civ. Code § 8814", $"If the dispute is about other money, it excuses nothing: {whole.Withheld} is wrongly "
                    + $"withheld, and the penalty for {WholeMonths(whole.WholeMonths)} is {whole.ForMonths}.", unsaid)],
            Questions = [.. owed.Questions,
                new Question($"Is the dispute about that very retention? A dispute about other money does not excuse holding "
                    + $"it.{MoneyKinds.Disputed.At("about"):aside}", Dollars: whole.ForMonths - owed.Late) { Corrects = unsaid[0] }],
        };
    }

    /// <summary>
    /// The article speaks of what an owner holds from a direct contractor, and a direct contractor from a subcontractor; of nobody else.
    /// </summary>
    [Rule("Civ. Code § 8810")]
    private static SumOwed WithinTheArticle(FactsAsOf facts, SumOwed owed)
    {
        if (facts.Job.Claimant.Role == ClaimantRole.Subcontractor && facts.Hirer is { Capacity: PartyCapacity.DirectContractor })
            return owed;
        return owed with
        {
            Standing = owed.Standing == Standing.Open ? Standing.InDoubt : owed.Standing,
            Why = [Reason.Of("Civ. Code § 8810", $"The article governs retention that a direct contractor holds from a subcontractor. The "
                + $"claimant is not a subcontractor hired by a direct contractor, so only its contract, and for a progress payment Bus. & "
                + $"Prof. Code § 7108.5, may set a day."), .. owed.Why],
            Questions = facts.Hirer is null
                ? [.. owed.Questions, new Question($"Who hired the claimant?{HeadField.ClaimantHiredBy:aside}")] : owed.Questions,
        };
    }

    /// <summary>Retention is held and nobody says whether the contractor has received it: by its own day it was due to it.</summary>
    [Rule("Civ. Code § 8812")]
    private static Finding? WhetherTheHirerReceivedRetention(FactsAsOf facts, CompletionReadings completion, OpenDays calendar)
    {
        if (facts.Job.Claimant.Role != ClaimantRole.Subcontractor || facts.Hirer is not { Capacity: PartyCapacity.DirectContractor }
            || OwnersRetention(facts, completion, calendar) is not { } sum)
            return null;
        var reading = new Reading($"last day for the owner to pay the contractor", sum.Due);
        var days = facts.Numbers.On(Number.OwnersRetention, sum.From);
        var toPassOn = facts.Numbers.On(Number.HirersRetention, sum.Due);
        return new Finding
        {
            Id = "retention.due",
            Title = "Retention from the one who hired us",
            Standing = facts.AsOf <= sum.Due ? Standing.NotYet : Standing.InDoubt,
            Readings = [reading],
            Band = new Band(reading, reading),
            Why = [Reason.Of("Civ. Code § 8812", $"The owner pays the contractor its retention within {days} after completion, "
                + $"by {sum.Due}; within {toPassOn} after it receives it the contractor pays on the share of {sum.Unpaid} "
                + $"(Civ. Code § 8814).", [.. facts.All<Retained>()])],
            Questions = [
                new Question($"Has the contractor received retention, and when? It was due to it "
                    + $"by {sum.Due:iso}.{MoneyKinds.HirerPaid:aside}", Dollars: sum.Unpaid)],
        };
    }

    /// <summary>
    /// Owner to direct contractor: retention within 45 days after completion of the work, at the latest reading, so that the owner has the
    /// benefit of every doubt.
    /// </summary>
    [Rule("Civ. Code § 8812")]
    private static SumDue? OwnersRetention(FactsAsOf facts, CompletionReadings completion, OpenDays calendar)
    {
        var held = facts.All<Retained>();
        if (held.Count == 0)
            return null;
        LocalDate? first = null, last = null;
        foreach (var reading in completion.Open)
        {
            if (reading.Firmness is not (Firmness.Certain or Firmness.Asserted or Firmness.Contested))
                continue;
            first = first is { } f ? LocalDate.Min(f, reading.On.Earliest) : reading.On.Earliest;
            last = last is { } l ? LocalDate.Max(l, reading.On.Latest) : reading.On.Latest;
        }

        if (first is not { } from || last is not { } until)
            return null;
        var due = calendar.RollForwardOnAnyList(facts.Numbers.LastDay(Number.OwnersRetention, until));
        return new SumDue(held[^1], from, due, Total.Of(held, r => r.Amount), LateLaw.OwnersRetention.On(facts, due));
    }

    /// <summary>Money that came after completion and answers no demand is taken to be retention, which leaves the lower penalty.</summary>
    [Rule("Civ. Code § 8812", Sure = Sure.OurReading)]
    private static SumOwed OwnersRetention(FactsAsOf facts, SumDue sum, CompletionReadings completion)
    {
        var held = facts.All<Retained>();
        var owed = Owed(facts, sum, "Civ. Code § 8818",
            Reason.Of("Civ. Code § 8812", $"Due within {facts.Numbers.On(Number.OwnersRetention, sum.From)} after completion of the work, "
                + $"taken at its latest day: by {sum.Due}.", [.. held]));
        if (owed.Standing == Standing.Open && !completion.EndFirm)
        {
            owed = owed with
            {
                Standing = Standing.InDoubt,
                Why = [.. owed.Why,
                    Reason.Of("Civ. Code § 8812", $"Nothing in the file makes the work surely complete: if it is not, this retention is "
                        + $"not due yet.")],
            };
        }

        var whole = Total.Of(held, r => r.Amount);
        return sum.Unpaid == whole ? owed : owed with
        {
            Questions = [.. owed.Questions,
                new Question($"Was the money received after completion paid as retention? What answers no demand is taken to be.",
                    Dollars: whole - sum.Unpaid)],
        };
    }

    /// <summary>
    /// Where a sum stands that is due by a day. Until that day is past only the day is told: nothing is wrongly withheld before.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="sum">The sum.</param>
    /// <param name="penaltySection">The section of the penalty.</param>
    /// <param name="why">Why it falls due by then.</param>
    /// <param name="until">The day on which the penalty ended, such as that of the judgment; null while it runs.</param>
    internal static SumOwed Owed(FactsAsOf facts, SumDue sum, string penaltySection, Reason why, LocalDate? until = null)
    {
        var disputed = sum.Disputed ?? Total.Of(facts.All<Disputed>(), d => d.Amount);
        var penalty = sum.Penalty(disputed, LocalDate.Min(facts.AsOf, until ?? facts.AsOf));
        return new SumOwed(
            sum.Unpaid == 0 && penalty.ForMonths == 0 ? Standing.Done : facts.AsOf <= sum.Due ? Standing.NotYet : Standing.Open,
            [new Reading($"last day for the payer", sum.Due)],
            penalty.ForMonths,
            facts.AsOf <= sum.Due
                ? [why, Reason.Of(penaltySection, $"{sum.Unpaid} falls due by {sum.Due}.", [sum.Fact])]
                :
                [
                    why,
                    Reason.Of(penaltySection, $"{sum.Unpaid} is unpaid, {disputed} of it disputed in good faith; at "
                        + $"most {sum.Terms.MostHeld!.Text} of that may be held, so {penalty.Withheld} is wrongly withheld."),
                    sum.Unpaid == 0
                        ? Reason.Of(penaltySection, $"Paid since; what came later than {sum.Due} cost {penalty.ForMonths} for whole "
                            + $"months, {penalty.ByDays} day by day at {sum.Terms.ByTheYear}. It is no part of a claim of "
                            + $"lien.", [sum.Fact])
                        : Reason.Of(penaltySection,
                            $"Penalty for {WholeMonths(penalty.WholeMonths)} after {sum.Due}: {penalty.ForMonths}; day by day "
                                + $"to {until ?? facts.AsOf} at {sum.Terms.ByTheYear} it would be {penalty.ByDays}. It is no part of a "
                                + $"claim of lien.", [sum.Fact]),
                ],
            sum.Questions);
    }

    private static string WholeMonths(int months) =>
        months == 1 ? "1 whole month" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{months} whole months");
}
