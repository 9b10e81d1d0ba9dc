using System.Text.Json;
using Stringline.Law.Facts;

namespace Stringline.Exchange.Writing;

/// <summary>The claim of lien and the action on it.</summary>
internal static partial class EntryWriting
{
    private static bool Claims(Utf8JsonWriter json, Entry entry)
    {
        switch (entry)
        {
            case ClaimServed e:
                Given(json, e.To, e.Manner, e.Article);
                return true;
            case ClaimRecorded e:
                json.Text("county", e.County);
                json.Money("amount", e.Amount);
                json.Text("instrument", e.Instrument);
                json.Text("lien", e.Lien is { } lien ? JobFileWords.Word(lien) : null);
                json.Text("amends", e.Amends);
                json.Text("structure", e.Structure);
                json.Text("lacks", e.Lacks);
                return true;
            case IndexSearched e:
                json.Text("county", e.County);
                return true;
            case CreditRecorded e:
                json.Day("until", e.Until);
                json.Text("instrument", e.Instrument);
                return true;
            case ActionFiled e:
                json.Text("court", e.Court);
                json.Text("case", e.Case);
                json.SomeTexts("enforces", [.. e.Enforces.Select(JobFileWords.Word)]);
                json.Text("claim", e.Claim);
                json.SomeTexts("against", e.Against);
                json.Flag("smallClaims", e.SmallClaims);
                return true;
            case ActionServed e:
                json.SomeTexts("to", e.To);
                json.Text("of", e.Of);
                return true;
            case TrialBegun e:
                json.Text("of", e.Of);
                return true;
            case ActionEnded e:
                json.WriteString("how", JobFileWords.Word(e.How));
                json.Truth("withoutPrejudice", e.WithoutPrejudice);
                json.Text("of", e.Of);
                return true;
            case ReleasePetitionServed e:
                json.Manner(e.Manner);
                json.Day("hearing", e.Hearing);
                return true;
            case LisPendensRecorded e:
                json.Text("instrument", e.Instrument);
                json.Truth("mailedFirst", e.MailedFirst);
                json.Truth("proofRecorded", e.ProofRecorded);
                return true;
            case ReleaseRecorded e:
                json.Text("instrument", e.Instrument);
                json.Truth("satisfied", e.Satisfied);
                return true;
            case ReleaseBondRecorded e:
                json.Day("noticeGiven", e.NoticeGiven);
                json.Money("amount", e.Amount);
                json.Text("instrument", e.Instrument);
                return true;
            case ReleaseDemanded e:
                json.Text("instrument", e.Instrument);
                return true;
            default:
                return false;
        }
    }
}
