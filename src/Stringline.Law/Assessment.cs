using Stringline.Law.ClaimOfLien;
using Stringline.Law.Completion;
using Stringline.Law.DesignLien;
using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.LargeProject;
using Stringline.Law.Licensing;
using Stringline.Law.LienableAmount;
using Stringline.Law.MechanicsLien;
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

/// <summary>
/// What the law makes of a job file on a day. Two are equal only if they are one: steps and reasons are worked out when first read.
/// </summary>
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

    /// <summary>What stands in the way of recording a converted claim (Civ. Code § 8319); empty where nothing does.</summary>
    public IReadOnlyList<Reason> ConvertedClaimObstacles => Conversion.Obstacles(
        Numbers, Facts?.Job.Work.Commenced ?? AsOf, Find(Conversion.Id) is { } found ? new(found.Standing, found.Amount, found.Why) : null);

    /// <summary>
    /// The owner's time to record a notice of completion (Civ. Code § 8182), by the calendar of the assessment: what its paper says.
    /// </summary>
    /// <exception cref="InvalidOperationException">The assessment was not made from a job file.</exception>
    public TimeToRecord TimeToRecordCompletion(LocalDate completed) => OwnersNotice.TimeFor(
        Facts ?? throw new InvalidOperationException("This assessment was not made from a job file."), completed, Calendar);

    /// <summary>The finding on the right that is asked about first: the lien.</summary>
    public Finding Right => Find("lien-right")!;

    /// <summary>What is to be done, nearest day first; worked out when first read.</summary>
    public IReadOnlyList<NextStep> Next => next ??= NextSteps.Of(Findings, amounts, noticeIsDue, AsOf);

    private IReadOnlyList<NextStep>? next;
    private Amounts? amounts;
    private bool noticeIsDue;

    /// <summary>Those to whom preliminary notice is due and was not given; empty where none is, or every one of them was reached.</summary>
    public IReadOnlyList<Recipient> NoticeDueTo { get; init; } = [];

    /// <summary>The caution that goes with every answer on a screen, a sheet or in JSON.</summary>
    public const string Caution =
        "Not legal advice. Confirm with the county recorder, the local rules and a California construction lawyer.";

    /// <summary>The finding with that id, or null.</summary>
    public Finding? Find(string id) => Findings.FirstOrDefault(f => f.Id == id);

    /// <summary>
    /// What would be found had something more happened by that day, by the same calendar and plan: what a paper would do before anybody
    /// signs it.
    /// </summary>
    /// <param name="more">What is supposed; their places in the file do not matter.</param>
    /// <exception cref="InvalidOperationException">The assessment was not made from a job file.</exception>
    public Assessment Supposing(params Entry[] more) => Supposing(job => job with { Entries = [.. job.Entries, .. more] });

    /// <summary>
    /// What would be found were the file another, on that day, by the same calendar and plan: what a paper is told and the file does not
    /// say.
    /// </summary>
    /// <param name="change">What is supposed of the file.</param>
    /// <exception cref="InvalidOperationException">The assessment was not made from a job file.</exception>
    public Assessment Supposing(Func<JobFile, JobFile> change) => asked is var (job, calendar, plan, numbers)
        ? Of((change ?? throw new ArgumentNullException(nameof(change)))(job), AsOf, calendar, plan, numbers)
        : throw new InvalidOperationException("This assessment was not made from a job file.");

    private (JobFile Job, OpenDays Calendar, PlanSettings Plan, NumberTable Numbers)? asked;

    /// <inheritdoc/>
    public bool Equals(Assessment? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);

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
        var found = LienRight.NotOnThisWork(facts) is { } none
            ? WithoutLien(facts, none, calendar, plan) : PrivateWork(facts, calendar, plan);
        found.asked = (job, calendar, plan, facts.Numbers);
        return found;
    }

    private static Assessment WithoutLien(FactsAsOf facts, Outcome right, OpenDays calendar, PlanSettings plan)
    {
        var isPublic = facts.Job.Work.Kind == WorkKind.Public;
        var owners = isPublic ? OwnersNotice.Of(facts, calendar) : [];
        var completion = isPublic ? PublicCompletion.Of(facts, owners) : null;
        var reach = completion is not null
            ? PublicNotice.ReachOf(facts) with { Complete = HasCeased.ByCompletion(facts, completion)?.OverBy }
            : Reach.Everything;
        var license = LicenseGate.Of(facts);
        var amounts = new Amounts(facts, reach, license);
        var amount = amounts.Of(amounts.Main)!;
        var found = new Composition();
        found.Add(LienRight.Finding(right));
        found.Add(LicenseGate.Finding(license));
        found.Add(AuthorizedWork.Finding(
            facts.Job.Work.Kind == WorkKind.Federal ? FederalTier.Of(facts, amount.Demand) : AuthorizedWork.Of(facts, amount.Demand)));
        if (isPublic)
            found.Add(EstimateDoubt.Finding(EstimateDoubt.Of(facts, amount.Demand)));
        found.Add(AmountDoubt.Finding(amounts));
        found.Add(completion is not null
            ? PublicRemedies.Findings(facts, reach, completion, owners, amounts, calendar)
            : FederalBond.Findings(facts, amounts, calendar));
        found.Add(WaiverFindings.Of(facts, amount));
        return Made(facts, found, plan, calendar, amounts, reach, LienRight.Obstacles(facts, right, null, null, null, amount));
    }

    // What is the same of every kind of work: what limits what, the watch of the index, and what is taken for granted.
    private static Assessment Made(
        FactsAsOf facts, Composition found, PlanSettings plan, OpenDays calendar, Amounts amounts, Reach reach,
        IReadOnlyList<Reason> obstacles)
    {
        found.ApplyConditions();
        if (facts.Job.Work.Kind != WorkKind.Federal)
            found.AddIndexWatch(facts, plan, calendar);
        // After the watch: the index is watched for the next delivery too.
        found.EndWhereNothingIsDue(facts, amounts);
        found.ApplyPastSafeDay(facts.AsOf);
        found.Add(Assumptions.Of(facts));
        return new Assessment
        {
            AsOf = facts.AsOf,
            Name = facts.Job.Name,
            Findings = found.Findings,
            Amount = amounts.Of(amounts.Main)!,
            amounts = amounts,
            noticeIsDue = !reach.GivenToAll,
            NoticeDueTo = reach.Missing,
            ClaimObstacles = obstacles,
        };
    }

    private static Assessment PrivateWork(FactsAsOf facts, OpenDays calendar, PlanSettings plan)
    {
        var license = LicenseGate.Of(facts);
        var ownersNotices = OwnersNotice.Of(facts, calendar);
        var completion = CompletionDay.Of(facts, ownersNotices);
        var reach = PreliminaryNoticeDays.ReachOf(facts, calendar) with { Complete = HasCeased.ByCompletion(facts, completion)?.OverBy };
        var notice = PreliminaryNoticeDays.LastDay(facts, reach, calendar);
        var firstDay = FirstDay.Of(facts, completion, ownersNotices);
        var lastDay = LastDay.Of(facts, completion, ownersNotices, calendar);
        var claim = RecordedClaim.ThatCounts(facts, firstDay, lastDay);
        var suits = ClaimSuits.Of(facts, claim, firstDay, lastDay, calendar);
        var credit = ActionDays.NoBetterThanItsClaim(facts, suits, Credit.ToSue(facts, suits, completion, calendar));
        var action = ActionDays.Of(facts, suits, credit, calendar);
        var last = RecordedClaim.Of(
            facts, firstDay, lastDay, suits.OnRecord, action.Standing,
            () => WhatWouldNarrow.Questions(facts, completion, ownersNotices, lastDay, calendar), calendar);
        var amounts = new Amounts(facts, reach, license);
        var amount = amounts.Of(Remedy.Lien)!;
        var authorized = AuthorizedWork.Of(facts, amount.Demand);
        var estimate = EstimateDoubt.Of(facts, amount.Demand);
        var design = DesignLienDays.Findings(facts, amounts, calendar, out var converted);
        var bare = LienRight.Of(facts, new(license, notice, last, action, authorized, estimate));
        var right = Conversion.WithConverted(bare, converted);

        var found = new Composition();
        found.Add(LienRight.Finding(right));
        found.Add(LicenseGate.Finding(license));
        found.Add(PreliminaryNoticeDays.Finding(facts, reach, notice));
        found.Add(AuthorizedWork.Finding(authorized));
        found.Add(EstimateDoubt.Finding(estimate));
        found.Add(AmountDoubt.Finding(amounts));
        found.Add(PreliminaryNoticeDays.ReachesBackTo(facts, reach));
        found.Add(LaterLender.Finding(facts, reach, calendar));
        found.Add(CompletionDay.Finding(facts, completion));
        found.Add(firstDay.Finding(facts));
        found.Add(RecordedClaim.Finding(last));
        found.Add(AmountByStructure.Finding(facts, amount.Demand));
        found.Add(BackPlan.Findings(last.Deadline, facts.AsOf, plan, calendar));
        found.Add(PropertyBound.Property(facts, calendar));
        found.Add(PropertyBound.Enforceable(facts, amount));
        found.Add(Rank.Finding(facts, reach));
        found.Add(ActionDays.Finding(action));
        AddEnforced(found, facts, suits, credit, action, right.Standing, amount, calendar);
        found.Add(PrivateStopPayment.Findings(facts, reach, notice, lastDay, amounts, calendar));
        found.Add(PrivatePaymentBond.Findings(facts, reach, amounts, completion, ownersNotices, calendar));
        found.Add(design);
        found.Add(WaiverFindings.Of(facts, amount));
        found.Add(MoneyDue.Findings(facts, completion, calendar, out var undisputed));
        found.Add(RetentionCap.Finding(facts));
        found.Add(StopWork.Findings(facts, undisputed, calendar));
        found.Add(OwnersSecurity.Findings(facts));
        return Made(facts, found, plan, calendar, amounts, reach, LienRight.Obstacles(facts, bare, notice, firstDay, reach, amount));
    }

    // What follows the recording and the time to sue, each where its facts are there.
    private static void AddEnforced(
        Composition found, FactsAsOf facts, ClaimSuits suits, Outcome? credit, Outcome action, Standing right, Waterfall amount,
        OpenDays calendar)
    {
        found.Add(LaterClaim.Finding(facts, suits, calendar));
        found.Add(StayNotice.Finding(facts, suits, calendar));
        found.Add(Credit.Finding(ActionDays.NoBetterThanItsClaim(facts, suits, Credit.ToRecord(facts, suits, calendar))));
        found.Add(CreditToSue.Finding(credit));
        found.Add(AfterFiling.Findings(facts, suits, calendar));
        found.Add(ReleaseBond.Amount(facts, suits, amount));
        found.Add(ReleaseBond.LastDay(facts, suits, calendar));
        found.Add(Overstated.Finding(facts, suits, amount));
        found.Add(Release.Findings(facts, suits, action.Deadline, amount, calendar));
        found.Add(DebtDays.Finding(facts, right, calendar));
        found.Add(LowerTierDefense.Finding(facts));
    }
}
