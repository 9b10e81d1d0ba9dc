using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.PromptPayment;

/// <summary>When progress payments and retention are due on public work. Shown beside the other remedies, never part of their amounts.</summary>
/// <remarks>Not modelled: the shorter or longer days that a contract may set, and the return of an improper request within seven days.</remarks>
public static class PublicMoneyDue
{
    /// <summary>Days from a proper request to the public entity.</summary>
    public const int EntityProgressDays = 30;

    /// <summary>Days from the hirer's receipt, of a progress payment and of retention alike.</summary>
    public const int PassOnDays = 7;

    /// <summary>Days from completion for the entity's retention.</summary>
    public const int EntityRetentionDays = 60;

    /// <summary>Days in which the entity answers a claim.</summary>
    public const int StatementDays = 45;

    /// <summary>The findings <c>prompt-payment.progress</c>, <c>retention.due</c> and <c>dispute-claim.entitys-statement</c>, where the file has their facts; a second one of a kind is numbered.</summary>
    public static IReadOnlyList<Finding> Findings(FactsAsOf facts, CompletionReadings completion, OpenDays calendar)
    {
        if (facts.Job.Claimant.Role != ClaimantRole.DirectContractor)
            return MoneyDue.FromHirer(facts, calendar, static _ => PassOnDays, HirersProgress, HirersRetention);
        var findings = FromEntity(facts, completion, calendar);
        if (EntitysStatement(facts, calendar) is { } statement)
            findings.Add(statement);
        return findings;
    }

    /// <summary>Prime contractor or subcontractor to the one below it: seven days after receipt.</summary>
    [Rule("Pub. Contract Code § 10262.5")]
    [Rule("Bus. & Prof. Code § 7108.5", Since = "2010-01-01")]
    private static Finding HirersProgress(FactsAsOf facts, SumDue sum, string id) => ForSubcontractors(facts,
        MoneyDue.Owed(facts, id, "Progress payment from the one who hired us", sum, "Pub. Contract Code § 10262.5",
            Reason.Of("Pub. Contract Code § 10262.5", $"Due within 7 days after the hirer was paid {Days.Of(sum.Fact.On)}, on State work and, unless agreed otherwise in writing, on other public work (Bus. & Prof. Code § 7108.5); penalty 2 percent of the amount a month.", [sum.Fact])));

    /// <summary>Contractor to subcontractor: its share of retention within seven days after receipt.</summary>
    [Rule("Pub. Contract Code § 7107(d)", Sure = Sure.FromMemory)]
    private static Finding HirersRetention(FactsAsOf facts, SumDue sum, string id) => ForSubcontractors(facts,
        MoneyDue.Owed(facts, id, "Retention from the one who hired us", sum, "Pub. Contract Code § 7107(f)",
            Reason.Of("Pub. Contract Code § 7107(d)", $"The share of retention is due within 7 days after the hirer received it {Days.Of(sum.Fact.On)} (from memory).", [sum.Fact])));

    private static Finding ForSubcontractors(FactsAsOf facts, Finding finding) => facts.Job.Claimant.Role == ClaimantRole.Subcontractor
        ? finding
        : finding with
        {
            Standing = Standing.InDoubt,
            Questions = [new Question("The section speaks of subcontractors; whether a claimant in this role may use it is open.")],
        };

    private static List<Finding> FromEntity(FactsAsOf facts, CompletionReadings completion, OpenDays calendar)
    {
        var sums = MoneyDue.Demanded(facts, calendar);
        var retention = EntitysRetention(facts, completion, calendar);
        SumDue.Receive(retention is null ? sums : [.. sums, retention], facts.All<Paid>());
        var findings = new List<Finding>();
        foreach (var sum in sums)
            findings.Add(EntitysProgress(facts, sum, MoneyDue.Number("prompt-payment.progress", findings.Count + 1)));
        if (retention is not null)
        {
            findings.Add(MoneyDue.Owed(facts, "retention.due", "Retention from the public entity", retention, "Pub. Contract Code § 7107(f)",
                Reason.Of("Pub. Contract Code § 7107(c)", $"Due within 60 days after completion of the work, taken at its latest day: by {retention.Due}. Completion is wider here than for a stop payment notice: use with cessation of labor, or 100 idle days, may complete the work earlier (Pub. Contract Code § 7107(b), from memory).", [.. facts.All<Retained>()])));
        }

        return findings;
    }

    /// <summary>Public entity to contractor: 30 days after an undisputed and proper request; late money bears 10 percent a year, and no penalty by the month.</summary>
    [Rule("Pub. Contract Code § 20104.50(b)")]
    [Rule("Pub. Contract Code § 10261.5")]
    private static Finding EntitysProgress(FactsAsOf facts, SumDue sum, string id)
    {
        var reading = new Reading("last day for the payer", sum.Due);
        return new Finding
        {
            Id = id,
            Title = "Progress payment from the public entity",
            Standing = sum.Unpaid == 0 ? Standing.Done : facts.AsOf <= sum.Due ? Standing.NotYet : Standing.Open,
            Readings = [reading],
            Band = new Band(reading, reading),
            Amount = sum.Unpaid,
            Why = [Reason.Of("Pub. Contract Code § 20104.50(b)", $"{sum.Unpaid} is unpaid. Due within 30 days after an undisputed and proper request of {Days.Of(sum.Fact.On)}; a State agency likewise (Pub. Contract Code § 10261.5). Late money bears interest at the legal rate of Code Civ. Proc. § 685.010(a), 10 percent a year.", [sum.Fact])],
        };
    }

    [Rule("Pub. Contract Code § 7107(c)")]
    private static SumDue? EntitysRetention(FactsAsOf facts, CompletionReadings completion, OpenDays calendar)
    {
        var held = facts.All<Retained>();
        if (held.Count == 0 || completion.Open.Count == 0 || !completion.SaidComplete)
            return null;
        var last = completion.Open.Max(r => r.On.Latest);
        return new SumDue(held[^1], completion.Open.Min(r => r.On.Earliest), calendar.RollForwardOnAnyList(Period.LastDay(last, EntityRetentionDays)), Total.Of(held, r => r.Amount));
    }

    /// <summary>A direct contractor's claim: the entity answers in writing within 45 days; silence rejects it. In force until 1 January 2027, unless that was moved.</summary>
    [Rule("Pub. Contract Code § 9204", Since = "2017-01-01", Until = "2026-12-31")]
    private static Finding? EntitysStatement(FactsAsOf facts, OpenDays calendar)
    {
        var claims = facts.All<DisputeClaimSent>();
        if (claims.Count == 0 || (claims[^1].Received ?? claims[^1].On.Latest) is not { } day)
            return null;
        var last = calendar.RollForwardOnAnyList(Period.LastDay(day, StatementDays));
        var reading = new Reading("entity's statement, 45 days after receipt", last);
        return new Finding
        {
            Id = "dispute-claim.entitys-statement",
            Title = "Claim against the public entity: its statement",
            Standing = facts.AsOf > Sunset ? Standing.InDoubt : facts.AsOf <= last ? Standing.NotYet : Standing.Open,
            Readings = [reading],
            Band = new Band(reading, reading),
            Why =
            [
                Reason.Of("Pub. Contract Code § 9204", $"The entity states in writing, within 45 days of receipt on {day}, what is disputed and what is not, and pays the undisputed part within 60 days after; silence rejects the whole. Some State departments are outside the section.", [claims[^1]]),
                Reason.Of("Pub. Contract Code § 9204", $"The section as read ends with {Sunset}; whether a bill of 2026 (SB 339) took that end away was not known when this was written: check."),
            ],
        };
    }

    private static readonly LocalDate Sunset = new(2026, 12, 31);
}
