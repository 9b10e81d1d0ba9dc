using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.DesignLien;

/// <summary>The design professional's lien before the work commences (Civ. Code §§ 8300-8319).</summary>
public static class DesignLienDays
{
    /// <summary>Days from the demand before which no claim is recorded.</summary>
    public const int DemandDays = 10;

    /// <summary>Days to record, and to sue.</summary>
    public const int Ninety = 90;

    /// <summary>Days from commencement within which an ended design lien is recorded anew as a mechanics lien.</summary>
    public const int ConversionDays = 30;

    /// <summary>The findings <c>design-lien.*</c>; none for other roles.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, Amounts amounts, OpenDays calendar)
    {
        if (facts.Job.Claimant.Role != ClaimantRole.DesignProfessional)
            yield break;
        var demand = amounts.DemandOf(Remedy.DesignLien);
        if (facts.Job.Work.Commenced is { } commenced && commenced <= facts.AsOf)
        {
            yield return Right(Standing.Lost, demand, Reason.Of("Civ. Code § 8306(b)", $"The work commenced on {commenced}: the design professional's lien before work is over; the mechanics lien of Civ. Code § 8400 stands (Civ. Code § 8310)."));
            if (Conversion(facts, commenced, calendar) is { } conversion)
                yield return conversion;
            yield break;
        }

        yield return Conditions(facts, demand);
        foreach (var asked in facts.All<PaymentDemanded>())
        {
            if (Days.Of(asked.On) is not { } on)
                continue;
            var first = on.Plus(DemandDays);
            List<Reading> readings = [new Reading("ten days after the demand", first.Latest)];
            yield return new Finding
            {
                Id = "design-lien.first-day",
                Title = "Design professional's lien: first day to record",
                Standing = facts.AsOf >= first.Latest ? Standing.Open : Standing.NotYet,
                Readings = readings,
                Band = Deadline.Band(readings),
                Why = [Reason.Of("Civ. Code § 8304(b)", $"Notice of the demand, the default and the amount was given {on}, and must precede recording by at least 10 days.", [asked])],
            };
            break;
        }

        foreach (var knew in facts.All<WorkWillNotCommence>())
        {
            if (Days.Of(knew.On) is not { } on)
                continue;
            List<Reading> readings = [Deadline.Own("90 days after knowing that work will not commence", Period.LastDay(on.Earliest, Ninety), calendar)];
            if (!on.IsExact)
                readings.Add(Deadline.Own("90 days after knowing it, at the latest", Period.LastDay(on.Latest, Ninety), calendar));
            var recorded = facts.FirstDayOf<ClaimRecorded>();
            yield return Deadline.Finding("design-lien.last-day", "Design professional's lien: last day to record",
                Deadline.StandingOf(facts.AsOf, readings, recorded), readings, calendar,
                [Reason.Of("Civ. Code § 8312", $"No later than 90 days after the claimant knew or had reason to know {on} that the work will not be commenced.", [knew])]);
            break;
        }
    }

    [Rule("Civ. Code § 8300")]
    [Rule("Civ. Code § 8302")]
    [Rule("Civ. Code § 8304")]
    [Rule("Civ. Code § 8312")]
    [Rule("Civ. Code § 8318")]
    private static Finding Conditions(FactsAsOf facts, decimal demand)
    {
        var questions = new List<Question>();
        var why = new List<Reason>
        {
            Reason.Of("Civ. Code § 8302(a)", $"Before work commences a design professional under a written contract with the landowner has a lien for the lesser of its fee and the reasonable value, less payments: {demand}."),
        };
        var standing = Standing.Open;
        if (!facts.HiredByOwner)
        {
            why.Add(Reason.Of("Civ. Code § 8300", $"It needs a contract with the landowner itself; the file says that somebody else hired the claimant."));
            standing = Standing.Lost;
        }
        else if (facts.Job.Contract.Written == false)
        {
            why.Add(Reason.Of("Civ. Code § 8302(a)", $"The contract is not in writing."));
            standing = Standing.Lost;
        }
        else
        {
            if (facts.Job.Contract.Written is null)
                questions.Add(new Question("Is the contract with the landowner in writing? (contract.written)"));
            if (facts.Job.Work.Permit is null)
                questions.Add(new Question("Was a building permit or other approval obtained with the services? (work.permit)"));
            if (facts.Job.Work.Commenced is null)
                questions.Add(new Question("Has work at the site commenced, and when? (work.commenced)"));
            if (facts.Job.Work.Use == WorkUse.OwnerOccupiedOneToFour)
                questions.Add(new Question("Is it a single-family owner-occupied residence with an expected construction cost under $100,000? Then there is no such lien (Civ. Code § 8318)."));
            if (facts.All<PaymentDemanded>().Count == 0)
                why.Add(Reason.Of("Civ. Code § 8304(b)", $"Give the owner notice of the demand, the default and the amount at least 10 days before recording (enter payment-demanded)."));
            standing = questions.Count > 0 ? Standing.InDoubt : Standing.Open;
        }

        return Right(standing, demand, [.. why]) with { Questions = questions };
    }

    private static Finding Right(Standing standing, decimal demand, params Reason[] why) => new()
    {
        Id = "design-lien.right",
        Title = "Design professional's lien before work",
        Standing = standing,
        Amount = demand,
        Why = why,
    };

    /// <summary>An unpaid design lien that ended because work commenced may be recorded as a mechanics lien within 30 days; no preliminary notice is needed.</summary>
    [Rule("Civ. Code § 8319")]
    [Rule("Civ. Code § 8306(b)")]
    private static Finding? Conversion(FactsAsOf facts, LocalDate commenced, OpenDays calendar)
    {
        ClaimRecorded? before = null, after = null;
        foreach (var claim in facts.All<ClaimRecorded>())
        {
            if (claim.On.Latest < commenced)
                before = claim;
            else
                after = claim;
        }

        if (before is null || Days.Of(before.On) is not { } recorded || commenced > Period.LastDay(recorded.Latest, Ninety))
            return null;
        List<Reading> readings = [Deadline.Own("30 days after work commenced", Period.LastDay(commenced, ConversionDays), calendar)];
        return Deadline.Finding("design-lien.conversion-last-day", "Record the design lien anew as a mechanics lien",
            Deadline.StandingOf(facts.AsOf, readings, after is null ? null : Days.Of(after.On)), readings, calendar,
            [Reason.Of("Civ. Code § 8319", $"The design lien recorded {recorded} ended when work commenced on {commenced}; unpaid, it may be recorded within 30 days as a mechanics lien that says it is converted. No preliminary notice is needed.", [before])]);
    }
}
