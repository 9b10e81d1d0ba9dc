using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// Progress payments from the owner of private work to its direct contractor: some days after a notice that demands payment under the
/// contract, unless they agreed otherwise in writing. The notice is one of Civ. Code §§ 8100-8118, given as every notice is.
/// </summary>
internal static class OwnersProgress
{
    private const string Section = "Civ. Code § 8800(a)";
    private const string Id = "prompt-payment.progress";
    private const string Title = "Progress payment from the owner";

    /// <summary>The sums that were demanded by a notice, by the day on which it was complete.</summary>
    [Rule(Section)]
    public static List<SumDue> Demanded(FactsAsOf facts, OpenDays calendar)
    {
        var sums = new List<SumDue>();
        foreach (var demanded in facts.All<PaymentDemanded>())
        {
            if (!IsNotice(facts, demanded) || DaySpan.Of(demanded.On) is not { } on)
                continue;
            var due = calendar.RollForwardOnAnyList(Due(facts, demanded));
            sums.Add(new SumDue(demanded, on.Earliest, due, demanded.Amount, LateLaw.OwnersProgress.On(facts, due)));
        }

        return sums;
    }

    /// <summary>
    /// Whether a demand is a notice of this section: sent in a manner in which notice is given, and to the owner; what the file does not
    /// say is taken to be so.
    /// </summary>
    [Rule("Civ. Code § 8106")]
    public static bool IsNotice(FactsAsOf facts, PaymentDemanded demanded) => 
        (demanded.Manner is not { } manner || Giving.IsGood(manner)) && IsToTheOwner(facts, demanded);

    /// <summary>The day on which the sum falls due under the contract; null where the file does not say.</summary>
    [Rule("Civ. Code § 8832")]
    public static LocalDate? UnderTheContract(FactsAsOf facts, PaymentDemanded demanded) =>
        demanded.Due ?? (facts.Job.Contract.PaymentDueDays is { } days && DaySpan.Of(demanded.On) is { } on
            ? TimeLimit.LastDay(on.Latest, days) : null);

    /// <summary>The owner has 30 days after the notice is complete, and until a later day that was agreed in writing.</summary>
    [Rule(Section)]
    private static LocalDate Due(FactsAsOf facts, PaymentDemanded demanded)
    {
        var given = Giving.CompleteOn(facts.Numbers, demanded.On, demanded.Manner, demanded.Mailed)!.Value.Latest;
        var own = facts.Numbers.LastDay(Number.OwnersProgress, given);
        return facts.Job.Contract.Written != false && UnderTheContract(facts, demanded) is { } agreed && agreed > own ? agreed : own;
    }

    /// <summary>The finding about one sum.</summary>
    public static Finding Finding(SumOwed owed, int number) => owed.Finding(MoneyDue.Numbered(Id, number), Title);

    /// <summary>Where one sum stands.</summary>
    [Rule(Section)]
    [Rule("Civ. Code § 8800(c)")]
    public static SumOwed Owed(FactsAsOf facts, SumDue sum)
    {
        var demanded = (PaymentDemanded)sum.Fact;
        var given = Giving.CompleteOn(facts.Numbers, demanded.On, demanded.Manner, demanded.Mailed)!.Value;
        var due = Due(facts, demanded);
        var days = facts.Numbers.On(Number.OwnersProgress, given.Latest);
        var owed = MoneyDue.Owed(facts, sum, "Civ. Code § 8800",
            due > days.LastDay(given.Latest)
                ? Reason.Of(Section, $"Demanded by a notice given {given}. The owner and the direct contractor agreed on a later day than "
                    + $"the {NumberWords.Place(days.Count)} after it: {due}. Penalty {sum.Terms.PerMonth} a month in place of other "
                    + $"interest.", [demanded])
                : Reason.Of(Section, $"Due within {days} after a notice demanding payment was given {given}, unless agreed otherwise in "
                    + $"writing; a rolled last day is allowed the owner. Penalty {sum.Terms.PerMonth} a month in place of other "
                    + $"interest.", [demanded]));
        return demanded.Manner is not null || owed.Standing == Standing.Done ? owed : owed with
        {
            Questions = [.. owed.Questions,
                new Question($"How was the demand for payment given? By hand, registered or certified mail, express mail or an overnight "
                    + $"carrier is good; plain mail, e-mail and fax are "
                    + $"none.{MoneyKinds.PaymentDemanded.At("manner"):aside}") { Corrects = demanded }],
        };
    }

    /// <summary>
    /// A finding for each demand that starts no time, unless one that does was given since for as much; numbered from a number on.
    /// </summary>
    [Rule(Section)]
    public static IEnumerable<Finding> NotGiven(FactsAsOf facts, int number)
    {
        var since = MostGivenSince(facts);
        foreach (var demanded in facts.All<PaymentDemanded>())
        {
            if (IsNotice(facts, demanded) || IsGivenAgain(since, demanded))
                continue;
            var days = facts.Numbers.On(Number.OwnersProgress, demanded.On.Latest ?? facts.AsOf);
            yield return new Finding
            {
                Id = MoneyDue.Numbered(Id, number++),
                Title = Title,
                Standing = Standing.NotYet,
                Why =
                [
                    IsToTheOwner(facts, demanded)
                        ? Reason.NotApplied(Section, $"The demand was sent in a manner in which no notice is given (Civ. Code §§ 8106, "
                            + $"8110): it starts no {days}. Give it again by hand, by registered, certified or express mail, or by an "
                            + $"overnight carrier.", demanded)
                        : Reason.NotApplied(Section, $"The demand did not go to the owner: it starts no {days}. Give it to the owner.",
                            demanded),
                ],
            };
        }
    }

    // The most that was demanded by a notice on each day or later, the latest day first; those of an unknown day may be later than all.
    private static List<(LocalDate? Day, decimal Most)> MostGivenSince(FactsAsOf facts)
    {
        var most = new List<(LocalDate? Day, decimal Most)>();
        foreach (var notice in facts.All<PaymentDemanded>().Where(demanded => IsNotice(facts, demanded))
            .OrderByDescending(static d => d.On.Latest ?? LocalDate.MaxIsoValue))
            most.Add((notice.On.Latest, most.Count == 0 ? notice.Amount : Math.Max(most[^1].Most, notice.Amount)));
        return most;
    }

    private static bool IsGivenAgain(List<(LocalDate? Day, decimal Most)> since, PaymentDemanded demanded)
    {
        var (low, high) = (0, since.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (since[middle].Day < demanded.On.Earliest)
                high = middle;
            else
                low = middle + 1;
        }

        return low > 0 && since[low - 1].Most >= demanded.Amount;
    }

    private static bool IsToTheOwner(FactsAsOf facts, PaymentDemanded demanded)
    {
        if (demanded.To.Count == 0)
            return true;
        foreach (var id in demanded.To)
        {
            if (facts.Job.Party(id) is { } party
                && (party.Id == facts.Hirer?.Id || party.Capacity is PartyCapacity.Owner or PartyCapacity.OwnersAgent
                    or PartyCapacity.Association))
                return true;
        }

        return false;
    }
}
