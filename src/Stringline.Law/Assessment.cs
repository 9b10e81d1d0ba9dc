using Stringline.Law.ClaimOfLien;
using Stringline.Law.Completion;
using Stringline.Law.DesignLien;
using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.LargeProject;
using Stringline.Law.Licensing;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.PaymentBond;
using Stringline.Law.Plan;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.PromptPayment;
using Stringline.Law.Reasoning;
using Stringline.Law.StopPaymentNotice;
using Stringline.Law.Counting;
using Stringline.Law.Waiver;

namespace Stringline.Law;

/// <summary>What the law makes of a job file on a day.</summary>
public sealed record Assessment
{
    /// <summary>The day on which the question is asked.</summary>
    public required LocalDate AsOf { get; init; }

    /// <summary>The days on which offices and courts are closed, by which it was made.</summary>
    internal OpenDays Calendar => asked?.Calendar ?? OpenDays.Statutory;

    /// <summary>The facts from which it was made; null where it was not made from a job file.</summary>
    internal FactsAsOf? Facts => asked is var (job, _, _, numbers) ? new FactsAsOf(job, AsOf, numbers) : null;

    /// <summary>The numbers of the law by which it was made.</summary>
    public NumberTable Numbers => asked?.Numbers ?? NumberTable.Shipped;

    /// <summary>The job file's name.</summary>
    public required string Name { get; init; }

    /// <summary>The findings, in the order in which a person would ask.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>The amount by the remedy that is asked about first: the lien, or on other work what takes its place.</summary>
    public required Waterfall Amount { get; init; }

    /// <summary>What is owed under the contract, by any road: no limit of a remedy cuts it.</summary>
    public Waterfall Owed => AmountOf(Remedy.Debt) ?? Amount;

    /// <summary>The amount of a remedy; null where this claimant has no such remedy on this work. Worked out when first read.</summary>
    public Waterfall? AmountOf(Remedy remedy) => remedy == Amount.Remedy ? Amount : amounts?.Of(remedy);

    /// <summary>What must be mended before a claim of lien may be recorded; empty where nothing stands in the way.</summary>
    public IReadOnlyList<Reason> ClaimObstacles { get; init; } = [];

    /// <summary>What is to be done, nearest day first; worked out when first read.</summary>
    public IReadOnlyList<NextStep> Next => next ??= NextSteps.Of(Findings, amounts, noticeIsDue, AsOf);

    private IReadOnlyList<NextStep>? next;
    private Amounts? amounts;
    private bool noticeIsDue;

    /// <summary>Those to whom preliminary notice is due and was not given; empty where none is, or every one of them was reached.</summary>
    public IReadOnlyList<Recipient> NoticeDueTo { get; init; } = [];

    // Private work has some thirty findings; a list that grows would be copied four times.
    private const int MostFindings = 40;

    /// <summary>The caution that goes with every answer on a screen, a sheet or in JSON.</summary>
    public const string Caution =
        "Not legal advice. Confirm with the county recorder, the local rules and a California construction lawyer.";

    /// <summary>The finding with that id, or null.</summary>
    public Finding? Find(string id) => Findings.FirstOrDefault(f => f.Id == id);

    /// <summary>
    /// What would be found had something more happened by that day, by the same calendar and plan: what a paper would do before anybody signs it.
    /// </summary>
    /// <param name="more">What is supposed; their places in the file do not matter.</param>
    /// <exception cref="InvalidOperationException">The assessment was not made from a job file.</exception>
    public Assessment Supposing(params Entry[] more) => Supposing(job => job with { Entries = [.. job.Entries, .. more] });

    /// <summary>What would be found were the file another, on that day, by the same calendar and plan: what a paper is told and the file does not say.</summary>
    /// <param name="change">What is supposed of the file.</param>
    /// <exception cref="InvalidOperationException">The assessment was not made from a job file.</exception>
    public Assessment Supposing(Func<JobFile, JobFile> change) => asked is var (job, calendar, plan, numbers)
        ? Of((change ?? throw new ArgumentNullException(nameof(change)))(job), AsOf, calendar, plan, numbers)
        : throw new InvalidOperationException("This assessment was not made from a job file.");

    private (JobFile Job, OpenDays Calendar, PlanSettings Plan, NumberTable Numbers)? asked;

    /// <summary>Assesses a job file.</summary>
    /// <param name="job">The facts.</param>
    /// <param name="asOf">The day on which the question is asked. Entries that begin after it are left out, and a finding says so.</param>
    /// <param name="calendar">The days on which offices and courts are closed.</param>
    /// <param name="plan">What a plan reckons with; null for the defaults.</param>
    /// <param name="numbers">The numbers of the law; null for those that the program was built with.</param>
    public static Assessment Of(JobFile job, LocalDate asOf, OpenDays calendar, PlanSettings? plan = null, NumberTable? numbers = null)
    {
        var facts = new FactsAsOf(job, asOf, numbers);
        plan ??= PlanSettings.Default;
        var found = LienRight.NotOnThisWork(facts) is { } none ? WithoutLien(facts, none, calendar, plan) : PrivateWork(facts, calendar, plan);
        found.asked = (job, calendar, plan, facts.Numbers);
        return found;
    }

    private static Assessment WithoutLien(FactsAsOf facts, Finding right, OpenDays calendar, PlanSettings plan)
    {
        var isPublic = facts.Job.Work.Kind == WorkKind.Public;
        var owners = isPublic ? OwnersNotice.Of(facts, calendar) : [];
        var completion = isPublic ? PublicCompletion.Of(facts, owners) : null;
        var reach = completion is not null
            ? PublicNotice.ReachOf(facts) with { Complete = HasCeased.ByCompletion(facts, completion)?.OverBy }
            : Reach.Everything;
        var license = LicenseGate.Assess(facts);
        var amounts = new Amounts(facts, reach, license);
        var amount = amounts.Of(amounts.Main)!;
        var findings = new List<Finding> { right, license };
        var authorized = AuthorizedWork.Finding(facts, amount.Demand);
        if (authorized is not null)
            findings.Add(authorized);
        if (isPublic && EstimateDoubt.Finding(facts, amount) is { } estimate)
            findings.Add(estimate);
        if (AmountDoubt.Finding(amounts) is { } doubt)
            findings.Add(doubt);
        findings.AddRange(completion is not null ? PublicRemedies.Findings(facts, reach, completion, owners, amounts, calendar) : FederalBond.Findings(facts, amounts, calendar));
        WaiverFindings.AddTo(findings, facts, amount);
        Conditions.Apply(findings);
        if (isPublic)
            IndexWatch.AddTo(findings, facts, plan, calendar);
        NothingDue.Apply(findings, facts, amounts);
        PastSafeDay.Apply(findings, facts.AsOf);
        if (Assumptions.Of(facts) is { } assumed)
            findings.Add(assumed);
        return new Assessment
        {
            AsOf = facts.AsOf,
            Name = facts.Job.Name,
            Findings = findings,
            Amount = amount,
            amounts = amounts,
            noticeIsDue = !reach.GivenToAll,
            NoticeDueTo = reach.Missing,
            ClaimObstacles = LienRight.Obstacles(facts, right, null, null, null, amount),
        };
    }

    private static Assessment PrivateWork(FactsAsOf facts, OpenDays calendar, PlanSettings plan)
    {
        var license = LicenseGate.Assess(facts);
        var ownersNotices = OwnersNotice.Of(facts, calendar);
        var completion = CompletionDay.Of(facts, ownersNotices);
        var reach = PreliminaryNoticeDays.ReachOf(facts, calendar) with { Complete = HasCeased.ByCompletion(facts, completion)?.OverBy };
        var notice = PreliminaryNoticeDays.LastDay(facts, reach, calendar);
        var firstDay = FirstDay.Of(facts, completion, ownersNotices);
        var first = firstDay.Finding(facts);
        var lastDay = LastDay.Of(facts, completion, ownersNotices, calendar);
        var claim = RecordedClaim.ThatCounts(facts, firstDay, lastDay);
        var suits = ClaimSuits.Of(facts, claim, firstDay, lastDay, calendar);
        var credit = ActionDays.NoBetterThanItsClaim(facts, suits, Credit.ToSue(facts, suits, completion, calendar));
        var action = ActionDays.Finding(facts, suits, credit, calendar);
        var last = RecordedClaim.Finding(facts, firstDay, lastDay, suits, action.Standing, () => WhatWouldNarrow.Questions(facts, completion, ownersNotices, lastDay, calendar), calendar);
        var amounts = new Amounts(facts, reach, license);
        var amount = amounts.Of(Remedy.Lien)!;
        var authorized = AuthorizedWork.Finding(facts, amount.Demand);
        var estimate = EstimateDoubt.Finding(facts, amount);
        var design = DesignLienDays.Findings(facts, amounts, calendar);
        var bare = LienRight.Finding(facts, license, notice, last, action, authorized, estimate);
        var right = Conversion.WithConverted(bare, design);

        var findings = new List<Finding>(MostFindings) { right, license, notice };
        if (authorized is not null)
            findings.Add(authorized);
        if (estimate is not null)
            findings.Add(estimate);
        if (AmountDoubt.Finding(amounts) is { } doubt)
            findings.Add(doubt);
        if (PreliminaryNoticeDays.ReachesBackTo(facts, reach) is { } reaches)
            findings.Add(reaches);
        if (LaterLender.Finding(facts, reach, calendar) is { } laterLender)
            findings.Add(laterLender);
        findings.Add(CompletionDay.Finding(facts, completion));
        findings.Add(first);
        findings.Add(last);
        if (AmountByStructure.Finding(facts, amount.Demand) is { } byStructure)
            findings.Add(byStructure);
        BackPlan.AddTo(findings, last, facts.AsOf, plan, calendar);
        PropertyBound.AddTo(findings, facts, amount, calendar);
        if (Rank.Finding(facts, reach) is { } rank)
            findings.Add(rank);
        findings.Add(action);
        Enforced(findings, facts, suits, credit, action, right, amount, calendar);
        PrivateStopPayment.AddTo(findings, facts, reach, notice, lastDay, amounts, calendar);
        findings.AddRange(PrivatePaymentBond.Findings(facts, reach, amounts, completion, ownersNotices, calendar));
        findings.AddRange(design);
        WaiverFindings.AddTo(findings, facts, amount);
        findings.AddRange(MoneyDue.Findings(facts, completion, calendar));
        if (RetentionCap.Finding(facts) is { } cap)
            findings.Add(cap);
        StopWork.AddTo(findings, facts, calendar);
        OwnersSecurity.AddTo(findings, facts);
        Conditions.Apply(findings);
        IndexWatch.AddTo(findings, facts, plan, calendar);
        // After the watch: the index is watched for the next delivery too.
        NothingDue.Apply(findings, facts, amounts);
        PastSafeDay.Apply(findings, facts.AsOf);
        if (Assumptions.Of(facts) is { } assumed)
            findings.Add(assumed);
        return new Assessment
        {
            AsOf = facts.AsOf,
            Name = facts.Job.Name,
            Findings = findings,
            Amount = amount,
            amounts = amounts,
            noticeIsDue = !reach.GivenToAll,
            NoticeDueTo = reach.Missing,
            ClaimObstacles = LienRight.Obstacles(facts, bare, notice, firstDay, reach, amount),
        };
    }

    // What follows the recording and the time to sue, each where its facts are there.
    private static void Enforced(List<Finding> findings, FactsAsOf facts, ClaimSuits suits, Finding? credit, Finding action, Finding right, Waterfall amount, OpenDays calendar)
    {
        Add(LaterClaim.Finding(facts, suits, calendar));
        Add(StayNotice.Finding(facts, suits, calendar));
        Add(ActionDays.NoBetterThanItsClaim(facts, suits, Credit.ToRecord(facts, suits, calendar)));
        Add(credit);
        findings.AddRange(AfterFiling.Findings(facts, suits, calendar));
        Add(ReleaseBond.Amount(facts, suits, amount));
        Add(ReleaseBond.LastDay(facts, suits, calendar));
        Add(Overstated.Finding(facts, suits, amount));
        findings.AddRange(Release.Findings(facts, suits, action, amount, calendar));
        Add(DebtDays.Finding(facts, right, calendar));
        Add(LowerTierDefense.Finding(facts));

        void Add(Finding? finding)
        {
            if (finding is not null)
                findings.Add(finding);
        }
    }
}
