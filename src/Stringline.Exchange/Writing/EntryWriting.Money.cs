using System.Text.Json;
using Stringline.Law.Facts;

namespace Stringline.Exchange.Writing;

/// <summary>Money received, demanded and disputed.</summary>
internal static partial class EntryWriting
{
    private static bool Money(Utf8JsonWriter json, Entry entry)
    {
        switch (entry)
        {
            case Paid e:
                json.Money("amount", e.Amount);
                json.Text("from", e.From);
                json.Text("toward", e.Toward);
                return true;
            case Credited e:
                json.Money("amount", e.Amount);
                json.Text("text", e.Text);
                json.Text("toward", e.Toward);
                return true;
            case Charged e:
                json.Money("amount", e.Amount);
                json.WriteString("of", JobFileWords.Word(e.Of));
                json.Text("ref", e.Ref);
                return true;
            case Retained e:
                json.Money("amount", e.Amount);
                return true;
            case PaymentDemanded e:
                json.Money("amount", e.Amount);
                json.SomeTexts("to", e.To);
                json.Manner(e.Manner);
                json.Text("article", e.Article);
                json.Day("mailed", e.Mailed);
                json.Day("received", e.Received);
                json.Day("due", e.Due);
                json.Truth("ofDefault", e.OfDefault);
                json.Day("returned", e.Returned);
                json.Day("resubmitted", e.Resubmitted);
                return true;
            case HirerPaid e:
                json.Money("amount", e.Amount);
                json.WriteString("of", JobFileWords.Word(e.Of));
                return true;
            case Disputed e:
                json.Money("amount", e.Amount);
                json.Text("text", e.Text);
                json.Text("about", e.About is { } about ? JobFileWords.Word(about) : null);
                json.Text("demand", e.Demand);
                return true;
            case DisputeClaimSent e:
                json.Money("amount", e.Amount);
                json.Day("received", e.Received);
                json.Manner(e.Manner);
                json.Day("extendedTo", e.ExtendedTo);
                json.Day("nextMeeting", e.NextMeeting);
                json.Day("documentsAsked", e.DocumentsAsked);
                json.Day("documentsGiven", e.DocumentsGiven);
                return true;
            case DisputeClaimAnswered e:
                json.Money("undisputed", e.Undisputed);
                return true;
            case ConferenceDemanded e:
                json.Manner(e.Manner);
                return true;
            case ClaimRequestMade e:
                json.Money("amount", e.Amount);
                return true;
            case ClaimRequestAnswered e:
                json.Truth("presented", e.Presented);
                return true;
            case StopWorkNoticeGiven e:
                json.SomeTexts("to", e.To);
                json.Day("posted", e.Posted);
                json.Day("postedBy", e.PostedBy);
                return true;
            case SuspensionNoticeSent e:
                json.WriteString("notice", JobFileWords.Word(e.Notice));
                json.Manner(e.Manner);
                return true;
            case SecurityDemanded e:
                json.Manner(e.Manner);
                return true;
            case DisputedWorkDone e:
                json.Day("accepted", e.Accepted);
                json.Day("rejected", e.Rejected);
                return true;
            case SecurityProvided e:
                json.Money("amount", e.Amount);
                json.Day("until", e.Until);
                return true;
            case ReleaseAffidavitServed e:
                json.Manner(e.Manner);
                json.Day("answerBy", e.AnswerBy);
                json.Money("amount", e.Amount);
                json.Text("ground", e.Ground is { } ground ? JobFileWords.Word(ground) : null);
                return true;
            case CounteraffidavitServed e:
                json.Texts("to", e.To);
                json.Manner(e.Manner);
                json.Truth("proof", e.Proof);
                return true;
            case RightsActionFiled e:
                json.Text("case", e.Case);
                return true;
            case HearingNoticed e:
                json.Manner(e.Manner);
                json.Day("hearing", e.Hearing);
                json.SomeTexts("to", e.To);
                json.Text("by", e.By);
                return true;
            case ReleaseOrdered e:
                json.Money("amount", e.Amount);
                return true;
            default:
                return false;
        }
    }
}
