using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>
/// The summary proceeding by which a direct contractor has money released that the entity withholds on a stop payment notice
/// (Civ. Code §§ 9400-9414). The claimant has some days to answer; after them the money goes out without further notice.
/// </summary>
internal static class SummaryRelease
{
    private const string Notice = "Civ. Code § 9404";

    /// <summary>Each affidavit that was served, with the last day to answer it and the answer.</summary>
    public static IReadOnlyList<ReleaseAnswer> Of(FactsAsOf facts, OpenDays calendar)
    {
        var affidavits = facts.All<ReleaseAffidavitServed>();
        if (affidavits.Count == 0)
            return [];
        var answers = new List<ReleaseAnswer>(affidavits.Count);
        foreach (var affidavit in affidavits)
            answers.Add(DaySpan.Of(affidavit.On) is { } on
                ? AnswerLastDay(facts, affidavit, on, calendar) : OnADayUnknown(facts, affidavit, calendar));
        return answers;
    }

    /// <summary>The findings <c>summary-release.*</c>; none where no affidavit was served.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, IReadOnlyList<ReleaseAnswer> answers)
    {
        var kept = false;
        for (var i = 0; i < answers.Count; i++)
        {
            kept |= answers[i].MayHold;
            yield return answers[i].LastDay.Finding(
                Id(i + 1), "Counteraffidavit against the release of withheld money: last day to serve it", answers[i].Affidavit.Amount);
        }

        if (answers.Count == 0)
            yield break;
        foreach (var finding in SummaryReleaseInCourt.Findings(facts, kept))
            yield return finding;
    }

    /// <summary>
    /// The day stated, itself the last, and never rolled. Where none is stated, or it lies less than ten days after service on the
    /// claimant, the tenth day or the stated one, whichever is earlier; where it lies more than twenty days after it, the twentieth is
    /// planned on.
    /// </summary>
    [Rule("Civ. Code § 9404")]
    [Rule("Civ. Code § 9406(b)")]
    private static ReleaseAnswer AnswerLastDay(FactsAsOf facts, ReleaseAffidavitServed affidavit, DaySpan on, OpenDays calendar)
    {
        var served = ServedPapers.CompleteOn(facts, on, affidavit.Manner);
        var readings = new List<Reading>();
        var (least, most) =
            (facts.Numbers.On(Number.LeastToAnswer, served.Earliest), facts.Numbers.On(Number.MostToAnswer, served.Earliest));
        var (first, last) = (least.LastDay(served.Earliest), most.LastDay(served.Earliest));
        var surelyAllowed = facts.Numbers.LastDay(Number.LeastToAnswer, served.Latest);
        var asAsked = false;
        if (affidavit.AnswerBy is { } stated)
        {
            readings.Add(new Reading($"the day that the entity's notice states", stated));
            if (stated < surelyAllowed)
                readings.Add(new Reading($"{least.Spelled} after service, the least the section allows", LocalDate.Max(first, stated)));
            else if (stated > last)
                readings.Add(new Reading($"{most.Spelled} after service, the most the section allows", last));
            else
                asAsked = true;
        }
        else
        {
            readings.Add(new Reading($"{least.Spelled} after service, the least the section allows", first));
        }

        // A day too late is settled by the day stated; one too early, or none at all, by no day: the notice is not what the section asks.
        var endFirm = affidavit.AnswerBy is { } by && by >= surelyAllowed;
        var answer = CounterPapers.Of(facts, on.Earliest, Latest(readings));
        var standing = Deadline.StandingOf(facts.AsOf, readings, answer.Given, endFirm);
        if (answer.IsAsked && standing is Standing.Kept or Standing.Lost && !IsPastAll(answer.AtBest, readings))
            standing = Standing.InDoubt;
        return new ReleaseAnswer(
            affidavit,
            new Outcome(
                Deadline.Of(standing, Deadline.Sorted(readings), calendar),
                new Words(() => Why(facts, affidavit, served, answer, asAsked, standing), () => Questions(facts, affidavit, answer))),
            answer);
    }

    private static string Id(int number) => number == 1 ? "summary-release.answer-last-day" : $"summary-release.answer-last-day.{number}";

    /// <summary>
    /// Served on a day that nobody knows: the day stated is planned on, and where none is the days may be over at any time. Nothing of it
    /// is sure.
    /// </summary>
    [Rule("Civ. Code § 9404", Sure = Sure.OurReading)]
    private static ReleaseAnswer OnADayUnknown(FactsAsOf facts, ReleaseAffidavitServed affidavit, OpenDays calendar)
    {
        Reading[] readings = [affidavit.AnswerBy is { } stated
            ? new Reading($"the day that the entity's notice states", stated)
            : new Reading($"at once: nobody knows when the days began", facts.AsOf)];
        var (least, most) = (facts.Numbers.On(Number.LeastToAnswer, facts.AsOf), facts.Numbers.On(Number.MostToAnswer, facts.AsOf));
        var answer = CounterPapers.Of(facts, LocalDate.MinIsoValue, affidavit.AnswerBy ?? LocalDate.MaxIsoValue);
        return new ReleaseAnswer(affidavit, new Outcome(Deadline.Of(Standing.InDoubt, readings, calendar), new Words(
            () =>
            [
                Reason.Of(Notice, $"The public entity served the direct contractor's affidavit on a day that the file does not give. It "
                    + $"releases the money unless a counteraffidavit is served on it on or before the day "
                    + $"stated, {least.Count} to {most} after that service: serve it at once.", [affidavit]),
                .. answer.Why,
            ],
            () => [new Question($"On which day was the affidavit served on the "
                + $"claimant?{PublicKinds.ReleaseAffidavitServed.At("on"):aside}", Days: most.Count) { Corrects = affidavit },
                .. Questions(facts, affidavit, answer)])), answer);
    }

    private static bool IsPastAll(DaySpan? day, List<Reading> readings) => day is not { } known || known.Earliest > Latest(readings);

    private static LocalDate Latest(List<Reading> readings) => readings.Max(static r => r.Day);

    private static List<Reason> Why(FactsAsOf facts, ReleaseAffidavitServed affidavit, DaySpan served, CounterPapers answer, bool asAsked,
        Standing standing)
    {
        var why = new List<Reason>
        {
            Reason.Of(Notice, $"The public entity served the direct contractor's affidavit {served}: it releases the money unless a "
                + $"counteraffidavit is served on it on or before the day "
                + $"stated{(affidavit.Ground is { } ground ? $" (the ground is that {InWords(ground)})" : "")}.", [affidavit]),
            Reason.Of("Civ. Code § 9406(a)", $"Serve on the entity the counteraffidavit, with the details of the claim and the specific "
                + $"basis on which each ground is rebutted, TOGETHER with proof of service of a copy on the direct contractor; both by "
                + $"hand, or registered, certified or express mail, or an overnight carrier, complete on delivery or deposit."),
            Reason.Of("Civ. Code § 9406(b)", $"Without it the money goes out at once and without further notice, and the entity is not "
                + $"liable. That ends the hold on the money only: the claim on the payment bond and the debt live on (Civ. Code § 9414)."),
        };
        var (least, most) = (facts.Numbers.On(Number.LeastToAnswer, served.Earliest), facts.Numbers.On(Number.MostToAnswer, served.Latest));
        if (!asAsked)
            why.Add(Reason.Of(Notice, $"The time stated shall be not less than {least.Count} and not more than {most} after service on the "
                + $"claimant, {least.LastDay(served.Earliest)} to {most.LastDay(served.Latest)}: this notice is not as the section asks. "
                + $"Keep to the earlier day all the same."));
        why.AddRange(answer.Why);
        if (standing == Standing.Lost)
            why.Add(Reason.Of("Civ. Code § 9406(b)", $"Lost for the money withheld, unless the papers and the proof of service went by "
                + $"then and are not entered. The claim on the payment bond is alive."));
        return why;
    }

    [Rule("Civ. Code § 9400")]
    private static string InWords(ReleaseGround ground) => ground switch
    {
        ReleaseGround.NotSuchAClaim => "the claim is not of a kind for which a stop payment notice may be given",
        ReleaseGround.NotSuchAClaimant => "the claimant is not one who may give it",
        ReleaseGround.Excessive => "the amount is excessive",
        ReleaseGround.NoBasis => "there is no basis for the claim",
        _ => throw new InvalidOperationException($"No such ground: {ground}."),
    };

    private static List<Question> Questions(FactsAsOf facts, ReleaseAffidavitServed affidavit, CounterPapers answer)
    {
        List<Question> questions = [.. answer.Questions];
        if (affidavit.AnswerBy is null)
            questions.Add(
                new Question($"Which day does the entity's notice state for the "
                    + $"counteraffidavit?{PublicKinds.ReleaseAffidavitServed.At("answerBy"):aside}",
                    Days: facts.Numbers.On(Number.MostToAnswer, facts.AsOf).Count
                        - facts.Numbers.On(Number.LeastToAnswer, facts.AsOf).Count) { Corrects = affidavit });
        if (affidavit.Manner is null)
            questions.Add(
                new Question($"How was the affidavit served on the claimant? The days run from when that was "
                    + $"complete.{PublicKinds.ReleaseAffidavitServed.At("manner"):aside}") { Corrects = affidavit });
        return questions;
    }
}

/// <summary>A direct contractor's affidavit for the release of withheld money, and the claimant's answer to it.</summary>
/// <param name="Affidavit">The affidavit.</param>
/// <param name="LastDay">The last day to answer it, and whether it was answered in time.</param>
/// <param name="Papers">What was served in answer.</param>
internal sealed record ReleaseAnswer(ReleaseAffidavitServed Affidavit, Outcome LastDay, CounterPapers Papers)
{
    /// <summary>Whether a counteraffidavit may hold the money.</summary>
    public bool MayHold => Papers.Given is not null && LastDay.Standing != Standing.Lost;
}
