using System.Text.Json;
using Stringline.Law.Facts;

namespace Stringline.Exchange.Writing;

/// <summary>What was furnished, and what became of the work.</summary>
internal static partial class EntryWriting
{
    private static bool Work(Utf8JsonWriter json, Entry entry)
    {
        switch (entry)
        {
            case Furnished e:
                json.Money("amount", e.Amount);
                json.Text("text", e.Text);
                json.Text("ref", e.Ref);
                json.Text("structure", e.Structure);
                return true;
            case Change e:
                json.Money("amount", e.Amount);
                json.WriteBoolean("agreed", e.Agreed);
                json.Text("text", e.Text);
                json.Truth("inDirectContract", e.InDirectContract);
                json.Truth("knewOutside", e.KnewOutside);
                return true;
            case Completed e:
                json.WriteString("by", JobFileWords.Word(e.By));
                json.WriteBoolean("contested", e.Contested);
                json.Text("structure", e.Structure);
                return true;
            case LaborCeased e:
                json.Day("until", e.Until);
                json.Truth("unfinished", e.Unfinished);
                return true;
            case OwnerRecorded e:
                json.WriteString("notice", JobFileWords.Word(e.Notice));
                json.Text("instrument", e.Instrument);
                json.Day("states", e.States);
                json.Text("contractOf", e.ContractOf);
                json.Text("lacks", e.Lacks);
                json.Flag("heldIneffective", e.HeldIneffective);
                return true;
            case OwnerToldUs e:
                json.WriteString("notice", JobFileWords.Word(e.Notice));
                json.Day("mailed", e.Mailed);
                json.Manner(e.Manner);
                return true;
            case NonresponsibilityRecorded e:
                json.Day("posted", e.Posted);
                json.Day("knew", e.Knew);
                json.Truth("leaseRequiresWork", e.LeaseRequiresWork);
                json.Text("lacks", e.Lacks);
                return true;
            case LenderSought e:
                json.Text("where", e.Where);
                return true;
            case ContractEnded e:
                json.WriteString("how", JobFileWords.Word(e.How));
                json.Truth("byPayer", e.ByPayer);
                return true;
            default:
                return false;
        }
    }
}
