using Stringline.Law.Facts;
using Stringline.Tables;
using Stringline.Law.Reasoning;
using Stringline.Tables.Sheets;

namespace Stringline.Office.Import;

/// <summary>Says on a page what a reason of an import names: the page has fields where the command line has options.</summary>
internal sealed class DeskWords : Door
{
    private static readonly Dictionary<ImportAsk, string> Fields = new()
    {
        [ImportAsk.Claimant] = "your firm and what it is, under \"What the table does not say\"",
        [ImportAsk.Kind] = "chosen above",
        [ImportAsk.Columns] = "choose the columns by hand",
        [ImportAsk.Column] = "choose which below",
        [ImportAsk.DayOrder] = "the order of days chosen by hand",
        [ImportAsk.County] = "the county chosen for all new jobs",
        [ImportAsk.CustomerIs] = "what the customer is, chosen for all new jobs",
        [ImportAsk.Work] = "choice on the page",
        [ImportAsk.Look] = "",
    };

    private static readonly DeskWords Page = new();

    private DeskWords()
    {
    }

    /// <summary>A sentence in the words of a page.</summary>
    public static new string Of(Sentence sentence) => Signs.Spelled(((Door)Page).Of(sentence));

    /// <summary>The reasons against a row in the words of a page.</summary>
    public static string Of(RefusedRow row) => Signs.Spelled(row.Say(Page));

    /// <summary>A fault of the table in the words of a page.</summary>
    public static string Of(SheetException refusal) =>
        new Fault(refusal.Fault.File, refusal.Fault.Path, Of(refusal.Found), Of(refusal.Expected)).ToString();

    /// <inheritdoc/>
    protected override string OfPointer(IPointer aim) => aim switch
    {
        ImportAsk ask => Fields[ask],
        ImportConfirmed => "look again, and confirm what is right",
        RefusedRow row => row.Say(this),
        _ => aim.Name,
    };
}
