using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.DesignLien;

/// <summary>Whether there is a design professional's lien at all (Civ. Code §§ 8300-8306, 8318).</summary>
internal static class DesignLienRight
{
    /// <summary>Over by the commencement of the work.</summary>
    [Rule("Civ. Code § 8306(b)(1)")]
    public static Outcome Ended(LocalDate commenced) => Made(Standing.Lost,
        [Reason.Of("Civ. Code § 8306(b)(1)", $"The work commenced on {commenced}: the design professional's lien before work is over; the "
            + $"mechanics lien of Civ. Code § 8400 stands (Civ. Code § 8310).")], []);

    /// <summary>The right before the work commences.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="fee">What may be claimed.</param>
    /// <param name="suits">The claims with their actions; null where none is recorded.</param>
    /// <param name="last">Where the last day to record stands.</param>
    [Rule("Civ. Code § 8300")]
    [Rule("Civ. Code § 8302")]
    [Rule("Civ. Code § 8304")]
    public static Outcome Of(FactsAsOf facts, Waterfall fee, ClaimSuits? suits, Standing last)
    {
        List<Reason> why =
        [
            Reason.Of("Civ. Code § 8302(b)", $"Before work commences a design professional under a written contract with the landowner has "
                + $"a lien for the lesser of its fee and the reasonable value, less every deposit and payment: {fee.Demand}. Neither "
                + $"preliminary notice nor a waiver form limits it (Civ. Code § 8308(a))."),
        ];
        var questions = new List<Question>();
        if (Bar(facts) is { } bar)
            return Made(Standing.Lost, [.. why, bar], []);
        var site = AtRecording(facts, suits, why);
        if (site == Standing.Lost)
            return Made(Standing.Lost, why, []);
        Ask(facts, fee, questions);
        var standing = Small(facts, why, questions) == Verdict.Yes
            ? Standing.Lost : questions.Count > 0 || site == Standing.InDoubt ? Standing.InDoubt : Standing.Open;
        if (standing != Standing.Lost)
            standing = WithClaim(facts, suits, last, standing, why);
        if (facts.All<PaymentDemanded>().Count == 0)
            why.Add(Reason.Of("Civ. Code § 8304(c)", $"Give the landowner notice of the demand, the default and the amount at "
                + $"least {facts.Numbers.On(Number.DefaultNotice, facts.AsOf)} before recording{MoneyKinds.PaymentDemanded:enter}."));
        return Made(standing, why, standing == Standing.Lost ? [] : questions);
    }

    [Rule("Civ. Code § 8300")]
    private static Reason? Bar(FactsAsOf facts) =>
        !facts.HiredByOwner
        ? Reason.Of("Civ. Code § 8300", $"It needs a contract with the landowner itself; the file says that somebody else hired the "
            + $"claimant.")
        : facts.Job.Contract.Written == false ? Reason.Of("Civ. Code § 8300", $"The contract is not in writing.")
        : null;

    /// <summary>The landowner who contracted must still own the site when the claim is recorded.</summary>
    [Rule("Civ. Code § 8302(a)")]
    private static Standing AtRecording(FactsAsOf facts, ClaimSuits? suits, List<Reason> why)
    {
        if (facts.Hirer is not { SoldOn: { } sold } landowner || sold > facts.AsOf)
        {
            why.Add(Reason.Of("Civ. Code § 8302(a)", $"The landowner who contracted for the services must own the site on the day of "
                + $"recording: look the title up that day{HeadField.PartiesSoldOn:aside}."));
            return Standing.Open;
        }

        var best = Standing.Lost;
        foreach (var suit in suits?.Chain ?? [])
        {
            if (suit.Recorded.Latest < sold)
                best = Standing.Open;
            else if (suit.Recorded.Earliest <= sold && best == Standing.Lost)
                best = Standing.InDoubt;
        }

        why.Add(best switch
        {
            Standing.Open =>
                Reason.Of("Civ. Code § 8302(a)", $"{landowner.Name} sold the site on {sold}, after the claim was recorded: the lien was "
                    + $"created by then."),
            Standing.InDoubt =>
                Reason.Of("Civ. Code § 8302(a)", $"{landowner.Name} sold the site on {sold}, and whether the claim was recorded before is "
                    + $"open."),
            _ => Reason.Of("Civ. Code § 8302(a)", $"{landowner.Name} contracted for the services and sold the site on {sold}: no claim "
                + $"recorded after that creates a lien."),
        });
        return best;
    }

    private static void Ask(FactsAsOf facts, Waterfall fee, List<Question> questions)
    {
        if (facts.Job.Contract.Written is null)
            questions.Add(new Question($"Is the contract with the landowner in writing?{HeadField.ContractWritten:aside}"));
        if (facts.Job.Work.Permit is null)
            questions.Add(new Question($"Was a building permit or other approval obtained with the services?{HeadField.WorkPermit:aside}"));
        if (facts.Job.Work.Commenced is null)
            questions.Add(new Question($"Has work at the site commenced, and when?{HeadField.WorkCommenced:aside}"));
        if (fee.IsUnknown)
            questions.Add(new Question($"What is the fee for the services provided so far?{WorkKinds.Furnished.At("amount"):aside}"));
    }

    /// <summary>None on a single-family, owner-occupied residence expected to cost less than $100,000.</summary>
    [Rule("Civ. Code § 8318")]
    private static Verdict Small(FactsAsOf facts, List<Reason> why, List<Question> questions)
    {
        var work = facts.Job.Work;
        var least = facts.Numbers.On(Number.LeastCostForDesignLien, facts.Job.Contract.On ?? facts.AsOf);
        if (work.Use is not WorkUse.OwnerOccupiedOneToFour || work.Units > 1 || work.ExpectedCost >= least.Value)
            return Verdict.No;
        if (work is { Units: not null, ExpectedCost: not null })
        {
            why.Add(Reason.Of("Civ. Code § 8318", $"There is none on a single-family, owner-occupied residence of an expected construction "
                + $"cost under {least.Value}; here it is {work.ExpectedCost.Value}."));
            return Verdict.Yes;
        }

        if (work.Units is null)
            questions.Add(new Question($"How many dwelling units are on the site? On a single-family, owner-occupied residence of an "
                + $"expected construction cost under {least.Text} there is no such lien.{HeadField.WorkUnits:aside}"));
        if (work.ExpectedCost is null)
            questions.Add(new Question($"What is the expected construction cost? Under {least.Text} there is no such lien on a "
                + $"single-family, owner-occupied residence.{HeadField.WorkExpectedCost:aside}"));
        return Verdict.Open;
    }

    // With its claim recorded the right is where the claim is; expired, where the time to record anew is.
    private static Standing WithClaim(FactsAsOf facts, ClaimSuits? suits, Standing last, Standing standing, List<Reason> why)
    {
        if (suits?.Leading is { Standing: Standing.Lost } expired)
            why.Add(Reason.Of("Civ. Code § 8306(b)(2)",
                $"The lien recorded {expired.Recorded} expired {facts.Numbers.On(Number.SueOnDesignLien,
                    expired.Recorded.Earliest)} after it, on {expired.FirstEnd}; another may be recorded only while the time of Civ. Code "
                        + $"§ 8312 runs.", [expired.Claim]));
        if (last == Standing.Lost)
        {
            why.Add(Reason.Of("Civ. Code § 8312", $"The time to record is over."));
            return Standing.Lost;
        }

        if (last == Standing.InDoubt || suits is not null && suits.StandingOn(facts.AsOf) == Standing.InDoubt)
            return Standing.InDoubt;
        return standing;
    }

    /// <summary>
    /// Once no other notice of default can be given in time, the right is no surer than the one that may have been given.
    /// </summary>
    [Rule("Civ. Code § 8304(c)")]
    public static Outcome WithNotice(Outcome right, Outcome notice, LocalDate asOf) =>
        right.Standing == Standing.Open && notice.Standing == Standing.InDoubt && notice.Deadline.ActBy < asOf
            ? right.Limited(Standing.InDoubt,
                [.. right.Why,
                    Reason.Of("Civ. Code § 8304(c)", $"Whether notice of the demand, the default and its amount was given in time is in "
                        + $"doubt, and this needs it.", [.. notice.Why])])
            : right;

    private static Outcome Made(Standing standing, IReadOnlyList<Reason> why, IReadOnlyList<Question> questions) =>
        new(standing, new Words(why, questions));

    /// <summary>The finding <c>design-lien.right</c>.</summary>
    public static Finding Finding(Outcome right, Waterfall fee) =>
        right.Finding("design-lien.right", "Design professional's lien before work") with { Amount = fee.IsUnknown ? null : fee.Demand };
}
