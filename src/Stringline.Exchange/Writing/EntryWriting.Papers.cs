using System.Text.Json;
using Stringline.Law.Facts;

namespace Stringline.Exchange.Writing;

/// <summary>Notices and waivers that the claimant gives, and what is answered to them.</summary>
internal static partial class EntryWriting
{
    private static bool Papers(Utf8JsonWriter json, Entry entry)
    {
        switch (entry)
        {
            case NoticeGiven e:
                json.WriteString("notice", JobFileWords.Word(e.Notice));
                Given(json, e.To, e.Manner, e.Article);
                json.Money("estimate", e.Estimate);
                json.Text("estimateBasis", e.EstimateBasis is { } basis ? JobFileWords.Word(basis) : null);
                json.Text("lacks", e.Lacks);
                json.Day("mailed", e.Mailed);
                json.Count("tries", e.Tries);
                return true;
            case Waived e:
                json.WriteString("form", JobFileWords.Word(e.Form));
                json.Day("through", e.Through);
                json.Money("amount", e.Amount);
                json.Money("excepted", e.Excepted);
                json.Day("paymentCleared", e.PaymentCleared);
                json.Truth("inStatutoryForm", e.InStatutoryForm);
                if (e.UnpaidWaivers is { } listed)
                    json.Texts("unpaidWaivers", listed.Select(DayText.Write));
                json.Truth("settlement", e.Settlement);
                return true;
            case StopPaymentGiven e:
                json.Texts("to", e.To);
                json.Money("amount", e.Amount);
                json.WriteBoolean("bonded", e.Bonded);
                json.Money("bondAmount", e.BondAmount);
                json.Manner(e.Manner);
                json.Text("article", e.Article);
                json.Day("mailed", e.Mailed);
                json.Count("tries", e.Tries);
                json.Text("lacks", e.Lacks);
                json.Truth("tenDollars", e.TenDollars);
                return true;
            case BondNoticeGiven e:
                Given(json, e.To, e.Manner, e.Article);
                json.Day("mailed", e.Mailed);
                json.Count("tries", e.Tries);
                json.Money("amount", e.Amount);
                return true;
            case LowerTierClaim e:
                json.Money("amount", e.Amount);
                json.Text("by", e.By);
                json.Flag("stopPaymentNotice", e.StopPaymentNotice);
                return true;
            case NoticeFiled e:
                json.Text("instrument", e.Instrument);
                return true;
            case StopPaymentReleased e:
                json.Money("amount", e.Amount);
                json.Text("of", e.Of);
                return true;
            case StopPaymentDemanded e:
                json.Text("from", e.From);
                return true;
            case StopPaymentBondGiven e:
                json.Money("amount", e.Amount);
                json.Text("surety", e.Surety);
                return true;
            case BondObjected e:
                json.Text("by", e.By);
                json.Day("newBond", e.NewBond);
                return true;
            case ActionTold e:
                json.Texts("to", e.To);
                json.Manner(e.Manner);
                return true;
            default:
                return false;
        }
    }
}
