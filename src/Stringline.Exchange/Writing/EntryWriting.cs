using System.Text.Json;
using Stringline.Law.Facts;

namespace Stringline.Exchange.Writing;

/// <summary>Writes one entry: <c>what</c>, the day, and the fields of its kind.</summary>
internal static class EntryWriting
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
        switch (entry)
        {
            case Furnished e:
                json.Money("amount", e.Amount);
                json.Text("text", e.Text);
                json.Text("ref", e.Ref);
                break;
            case Change e:
                json.Money("amount", e.Amount);
                json.WriteBoolean("agreed", e.Agreed);
                json.Text("text", e.Text);
                break;
            case Paid e:
                json.Money("amount", e.Amount);
                json.Text("from", e.From);
                json.Text("toward", e.Toward);
                break;
            case Credited e:
                json.Money("amount", e.Amount);
                json.Text("text", e.Text);
                break;
            case Charged e:
                json.Money("amount", e.Amount);
                json.WriteString("of", JobFileWords.Word(e.Of));
                json.Text("ref", e.Ref);
                break;
            case NoticeGiven e:
                json.WriteString("notice", JobFileWords.Word(e.Notice));
                Given(json, e.To, e.Manner, e.Article);
                json.Money("estimate", e.Estimate);
                json.Text("estimateBasis", e.EstimateBasis is { } basis ? JobFileWords.Word(basis) : null);
                break;
            case ClaimServed e:
                Given(json, e.To, e.Manner, e.Article);
                break;
            case Completed e:
                json.WriteString("by", JobFileWords.Word(e.By));
                json.WriteBoolean("contested", e.Contested);
                break;
            case LaborCeased e:
                json.Day("until", e.Until);
                break;
            case OwnerRecorded e:
                json.WriteString("notice", JobFileWords.Word(e.Notice));
                json.Text("instrument", e.Instrument);
                json.Day("states", e.States);
                json.Text("contractOf", e.ContractOf);
                json.Text("lacks", e.Lacks);
                if (e.HeldIneffective)
                    json.WriteBoolean("heldIneffective", true);
                break;
            case OwnerToldUs e:
                json.WriteString("notice", JobFileWords.Word(e.Notice));
                json.Day("mailed", e.Mailed);
                break;
            case Waived e:
                json.WriteString("form", JobFileWords.Word(e.Form));
                json.Day("through", e.Through);
                json.Money("amount", e.Amount);
                json.Money("excepted", e.Excepted);
                json.Day("paymentCleared", e.PaymentCleared);
                json.Truth("inStatutoryForm", e.InStatutoryForm);
                break;
            case ClaimRecorded e:
                json.Text("county", e.County);
                json.Money("amount", e.Amount);
                json.Text("instrument", e.Instrument);
                break;
            case CreditRecorded e:
                json.Day("until", e.Until);
                json.Text("instrument", e.Instrument);
                break;
            case ActionFiled e:
                json.Text("court", e.Court);
                json.Text("case", e.Case);
                break;
            case LisPendensRecorded e:
                json.Text("instrument", e.Instrument);
                break;
            case ReleaseRecorded e:
                json.Text("instrument", e.Instrument);
                json.Truth("satisfied", e.Satisfied);
                break;
            case ReleaseBondRecorded e:
                json.Day("noticeGiven", e.NoticeGiven);
                json.Money("amount", e.Amount);
                json.Text("instrument", e.Instrument);
                break;
            case ReleaseDemanded e:
                json.Text("instrument", e.Instrument);
                break;
            case StopPaymentGiven e:
                json.Texts("to", e.To);
                json.Money("amount", e.Amount);
                json.WriteBoolean("bonded", e.Bonded);
                break;
            case BondNoticeGiven e:
                json.Texts("to", e.To);
                break;
            case Retained e:
                json.Money("amount", e.Amount);
                break;
            case PaymentDemanded e:
                json.Money("amount", e.Amount);
                break;
            case HirerPaid e:
                json.Money("amount", e.Amount);
                json.WriteString("of", JobFileWords.Word(e.Of));
                break;
            case Disputed e:
                json.Money("amount", e.Amount);
                json.Text("text", e.Text);
                break;
            case LowerTierClaim e:
                json.Money("amount", e.Amount);
                json.Text("by", e.By);
                break;
            case NonresponsibilityRecorded e:
                json.Day("posted", e.Posted);
                json.Day("knew", e.Knew);
                json.Truth("leaseRequiresWork", e.LeaseRequiresWork);
                break;
            case DisputeClaimSent e:
                json.Money("amount", e.Amount);
                json.Day("received", e.Received);
                break;
            case FurnishingEnded or Withdrawn or IndexSearched or WorkWillNotCommence:
                break;
            default:
                throw Unsayable(entry, "has a kind the format does not know");
        }
    }

    private static void Given(Utf8JsonWriter json, IEnumerable<string> to, Manner manner, string? article)
    {
        json.Texts("to", to);
        json.WriteString("manner", JobFileWords.Word(manner));
        json.Text("article", article);
    }

    private static ArgumentException Unsayable(Entry entry, string why) => new($"{entry.Path} {why}.");
}
