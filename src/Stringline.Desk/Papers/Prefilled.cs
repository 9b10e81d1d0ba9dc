using Stringline.Desk.Entering;
using Stringline.Desk.Web;
using Stringline.Exchange;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.PublicWork;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Waiver;

namespace Stringline.Desk.Papers;

/// <summary>
/// What a paper that was just made says of the entry that follows it: addressees, kind, sums, manner. The form shows it, and a person may
/// change all of it.
/// </summary>
internal static class Prefilled
{
    /// <summary>What stands before the name of a field in an address.</summary>
    public const string Lead = "p.";

    /// <summary>The fields of an entry with their values.</summary>
    /// <param name="what">The kind of entry.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="options">What it was told.</param>
    /// <param name="job">The job.</param>
    public static IEnumerable<(string Field, string Value)> Of(string what, Paper paper, PaperOptions options, OpenJob job)
    {
        var facts = new FactsAsOf(job.Facts, job.AsOf);
        foreach (var id in To(what, paper, options, facts))
            yield return ("to", id);
        switch (what)
        {
            case "notice-given":
                yield return ("notice", JobFileWords.Word(NoticeKind.Preliminary));
                yield return ("manner", JobFileWords.Word(Manner.CertifiedMail));
                if ((options.Amount ?? PriceEstimate.Of(facts)) is { } estimate)
                    yield return ("estimate", MoneyText.Write(estimate));
                break;
            case "claim-served":
                yield return ("manner", JobFileWords.Word(Manner.CertifiedMail));
                break;
            case "stop-payment-given":
                yield return ("manner", JobFileWords.Word(Manner.CertifiedMail));
                if (job.Assessment.AmountOf(Remedy.StopPaymentNotice) is { IsUnknown: false, Demand: > 0 and var held })
                    yield return ("amount", MoneyText.Write(held));
                if (options.Bonded)
                    yield return ("bonded", "true");
                break;
            case "bond-notice-given":
                yield return ("manner", JobFileWords.Word(Manner.CertifiedMail));
                if (job.Assessment.AmountOf(Remedy.PaymentBond) is { IsUnknown: false, Demand: > 0 and var claimed })
                    yield return ("amount", MoneyText.Write(claimed));
                break;
            case "claim-recorded" when job.Assessment.Amount is { IsUnknown: false, Demand: > 0 and var demand }
                && paper.Id != "design-lien":
                yield return ("amount", MoneyText.Write(demand));
                break;
            case "waived":
                if (WaiverToBe.FormOf(paper.Id) is { } form)
                    yield return ("form", JobFileWords.Word(form));
                if (options.Through is { } through)
                    yield return ("through", DayText.Write(through));
                if (options.Amount is { } check)
                    yield return ("amount", MoneyText.Write(check));
                if (options.Disputed is { } excepted)
                    yield return ("excepted", MoneyText.Write(excepted));
                if (options.PaymentCleared is { } cleared)
                    yield return ("paymentCleared", DayText.Write(cleared));
                break;
            case "payment-demanded" when options.Amount is { } asked:
                yield return ("amount", MoneyText.Write(asked));
                break;
            case "credit-recorded" when options.Until is { } until:
                yield return ("until", DayText.Write(until));
                break;
        }
    }

    // Whom the paper named: those told with it, else those whom the law names for it. Where the law leaves a choice nobody is checked.
    private static IEnumerable<string> To(string what, Paper paper, PaperOptions options, FactsAsOf facts)
    {
        if (!EntryForms.Find(what)!.Fields.Any(asked => asked.Name == "to"))
            return [];
        if (options.To.Count > 0)
            return options.To;
        return (what, paper.Id) switch
        {
            ("notice-given", "preliminary-notice") =>
                Ids([.. Recipients.Of(facts).SelectMany(recipient => recipient.AnyOf), .. Recipients.NotYetKnown(facts)]),
            ("notice-given", "public-preliminary-notice") => Ids(PublicNotice.RecipientsOf(facts).SelectMany(recipient => recipient.AnyOf)),
            ("claim-served", _) => Ids(facts.Job.In(PartyCapacity.Owner)),
            _ => [],
        };
    }

    private static IEnumerable<string> Ids(IEnumerable<Party> parties) => parties.Select(party => party.Id).Distinct();
}
