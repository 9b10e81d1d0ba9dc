using System.Text.Json;
using Stringline.Law.Facts;

namespace Stringline.Exchange.Writing;

/// <summary>Writes one entry: <c>what</c>, the day, and the fields of its kind.</summary>
internal static partial class EntryWriting
{
    public static void Write(Utf8JsonWriter json, Entry entry)
    {
        json.WriteString("what", What(entry));
        if (entry is Furnished furnished && furnished.Until != furnished.On)
            Span(json, furnished);
        else
            When(json, entry.On);
        Rest(json, entry);
        json.Text("id", entry.Id);
        json.Text("supersedes", entry.Supersedes);
        json.Day("learned", entry.Learned);
    }

    private static string What(Entry entry) => entry switch
    {
        Furnished => "furnished",
        FurnishingEnded => "furnishing-ended",
        Change => "change",
        Paid => "paid",
        Credited => "credited",
        Charged => "charged",
        NoticeGiven => "notice-given",
        Completed => "completed",
        LaborCeased => "labor-ceased",
        OwnerRecorded => "owner-recorded",
        OwnerToldUs => "owner-told-us",
        Waived => "waived",
        ClaimServed => "claim-served",
        ClaimRecorded => "claim-recorded",
        CreditRecorded => "credit-recorded",
        ActionFiled => "action-filed",
        LisPendensRecorded => "lis-pendens-recorded",
        ReleaseRecorded => "release-recorded",
        ReleaseBondRecorded => "release-bond-recorded",
        ReleaseDemanded => "release-demanded",
        StopPaymentGiven => "stop-payment-given",
        BondNoticeGiven => "bond-notice-given",
        Withdrawn => "withdrawn",
        IndexSearched => "index-searched",
        Retained => "retained",
        PaymentDemanded => "payment-demanded",
        HirerPaid => "hirer-paid",
        Disputed => "disputed",
        LowerTierClaim => "lower-tier-claim",
        NonresponsibilityRecorded => "nonresponsibility-recorded",
        DisputeClaimSent => "dispute-claim-sent",
        WorkWillNotCommence => "work-will-not-commence",
        LenderSought => "lender-sought",
        NoticeFiled => "notice-filed",
        StopPaymentReleased => "stop-payment-released",
        StopPaymentDemanded => "stop-payment-demanded",
        StopPaymentBondGiven => "stop-payment-bond-given",
        BondObjected => "bond-objected",
        ActionTold => "action-told",
        ActionServed => "action-served",
        TrialBegun => "trial-begun",
        ActionEnded => "action-ended",
        ReleasePetitionServed => "release-petition-served",
        ContractEnded => "contract-ended",
        DisputeClaimAnswered => "dispute-claim-answered",
        ConferenceDemanded => "conference-demanded",
        ConferenceHeld => "conference-held",
        FinalPayment => "final-payment",
        FinalDecisionServed => "final-decision-served",
        ClaimRequestMade => "claim-request-made",
        ClaimRequestAnswered => "claim-request-answered",
        StopWorkNoticeGiven => "stop-work-notice-given",
        SuspensionNoticeSent => "suspension-notice-sent",
        SecurityDemanded => "security-demanded",
        SecurityProvided => "security-provided",
        DisputedWorkDone => "disputed-work-done",
        ReleaseAffidavitServed => "release-affidavit-served",
        CounteraffidavitServed => "counteraffidavit-served",
        RightsActionFiled => "rights-action-filed",
        HearingNoticed => "hearing-noticed",
        ReleaseOrdered => "release-ordered",
        _ => throw Unsayable(entry, "has a kind the format does not know"),
    };

    private static void When(Utf8JsonWriter json, DayFact when)
    {
        switch (when)
        {
            case DayFact.Exact exact:
                json.Day("on", exact.Day);
                break;
            case DayFact.Between between:
                json.Texts("between", [DayText.Write(between.First), DayText.Write(between.Last)]);
                break;
            default:
                json.WriteNull("on");
                break;
        }
    }

    private static void Span(Utf8JsonWriter json, Furnished furnished)
    {
        if (furnished is not { On: DayFact.Exact from, Until: DayFact.Exact to } || to.Day < from.Day)
            throw Unsayable(furnished, "is a span without two known days in order");
        json.Day("from", from.Day);
        json.Day("to", to.Day);
    }

    private static void Rest(Utf8JsonWriter json, Entry entry)
    {
        if (!Work(json, entry) && !Papers(json, entry) && !Money(json, entry) && !Claims(json, entry) && !SaysNoMore(entry))
            throw Unsayable(entry, "has a kind the format does not know");
    }

    private static bool SaysNoMore(Entry entry) => entry is FurnishingEnded or Withdrawn or WorkWillNotCommence
        or ConferenceHeld or FinalPayment or FinalDecisionServed;

    private static void Given(Utf8JsonWriter json, IEnumerable<string> to, Manner? manner, string? article)
    {
        json.Texts("to", to);
        json.Manner(manner);
        json.Text("article", article);
    }

    private static ArgumentException Unsayable(Entry entry, string why) => new($"{entry.Path} {why}.");
}
