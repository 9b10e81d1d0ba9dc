using Stringline.Tables;
using Stringline.Law.Reasoning;
using Stringline.Tables.Sheets;

namespace Stringline.Office.Import;

/// <summary>Says on a page what a reason of an import names: the page has fields where the command line has options.</summary>
internal static class DeskWords
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

    /// <summary>A sentence in the words of a page.</summary>
    public static string Of(Sentence sentence) => Signs.Spelled(sentence.Say(Words));

    /// <summary>The reasons against a row in the words of a page.</summary>
    public static string Of(RefusedRow row) => Signs.Spelled(row.Say(Words));

    /// <summary>A fault of the table in the words of a page.</summary>
    public static string Of(SheetException refusal) => new Fault(refusal.Fault.File, refusal.Fault.Path, Of(refusal.Found), Of(refusal.Expected)).ToString();

    private static string Words(object named, string? format) => named switch
    {
        ImportAsk ask => Fields[ask],
        ImportConfirmed => "look again, and confirm what is right",
        RefusedRow row => row.Say(Words),
        _ => Sentence.Plain(named, format),
    };
}
