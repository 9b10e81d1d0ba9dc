using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Waiver;
using Stringline.Tables.Sheets.Reading;

namespace Stringline.Office.Batch;

/// <summary>A row of the table: which waiver of which job, and what is said of the payment.</summary>
/// <param name="Line">Its line in the file, from 1.</param>
/// <param name="Job">Path or number of the job, as written.</param>
/// <param name="FormText">The form as written.</param>
/// <param name="Options">What is said of the payment.</param>
/// <param name="Refusals">What is wrong with the row itself.</param>
internal sealed record WaiverRow(int Line, string Job, string FormText, PaperOptions Options, IReadOnlyList<Refusal> Refusals)
{
    /// <summary>The form; null where the row names none.</summary>
    public WaiverForm? Form => FormOf(FormText);

    /// <summary>Reads a record under its heads.</summary>
    public static WaiverRow Of(CsvRecord record, string[] heads)
    {
        var refusals = new List<Refusal>();
        string Cell(string head) => Array.IndexOf(heads, head) is >= 0 and var at && at < record.Cells.Count ? record.Cells[at] : "";
        void Refuse(string head, string there, Sentence right, string section = "") =>
            refusals.Add(new Refusal("row", new Place.InWords(head), Sentence.Of(there), right, section));
        string? Text(string head) => Cell(head) is { Length: > 0 } text ? text : null;
        LocalDate? Day(string head)
        {
            if (Text(head) is not { } text)
                return null;
            if (DayText.Read(text, out var day) is not { } expected)
                return day;
            Refuse(head, $"'{text}'", $"Write {expected}.");
            return null;
        }

        decimal? Money(string head, bool orNothing = false)
        {
            if (Text(head) is not { } text)
                return null;
            if (TypedMoney.Read(text) is { } dollars && (orNothing ? dollars >= 0m : dollars > 0m))
                return dollars;
            Refuse(head, $"'{text}'", $"Write dollars and cents{(orNothing ? "" : " above zero")}, such as 12,000.00.");
            return null;
        }

        if (record.IsBroken)
            Refuse("the row", "Its quotation marks do not pair.",
                $"Put a cell that holds a comma between two quotation marks, and double a quotation mark inside it.");
        if (record.LastLine > record.Line)
            Refuse("the row", "A cell goes over several lines.", $"Keep each row on one line; see whether a quotation mark is not closed.");
        if (record.Cells.Count > heads.Length && record.Cells.Skip(heads.Length).Any(c => c.Length > 0))
            Refuse("the row", $"{record.Cells.Count} cells under {heads.Length} heads.",
                $"Put a cell that holds a comma between quotation marks.");
        if (Text("job") is null)
            Refuse("job", "Nothing is there.", $"Write the path of the job file, or with {new OptionName("store")} the job's number.");
        if (FormOf(Cell("form")) is not { } form)
            Refuse("form", Text("form") is { } text ? $"'{text}'" : "Nothing is there.", $"Write 8132, 8134, 8136 or 8138.");
        else
            Unfitting(form, head => Text(head) is not null, Refuse);
        return new WaiverRow(record.Line, Cell("job"), Cell("form"), new PaperOptions
        {
            Through = Day("through"),
            Amount = Money("amount"),
            Maker = Text("maker"),
            Payee = Text("payee"),
            Disputed = Money("disputed"),
            PaymentCleared = Day("payment-cleared"),
            Releases = Money("releases", orNothing: true),
            ThroughAgain = Day("through-again"),
        }, refusals);
    }

    /// <summary>A cell that the form has no place for is no small thing: a through date on a final waiver would limit nothing.</summary>
    private static void Unfitting(WaiverForm form, Predicate<string> isThere, Action<string, string, Sentence, string> refuse)
    {
        var number = WaiverToBe.NumberOf(form);
        var asks = PaperCatalogue.Waiver(form).Asks;
        foreach (var told in Places)
        {
            var head = told.Word();
            if (isThere(head) && !asks.Any(ask => ask.Input == told))
                refuse(head, $"Form {number} has no place for it.", $"Leave the cell empty, or name the form that has it.",
                    $"Civ. Code § {number}");
        }
    }

    private static readonly PaperInput[] Places =
    [
        PaperInput.Through, PaperInput.Amount, PaperInput.Maker, PaperInput.Payee, PaperInput.Disputed, PaperInput.PaymentCleared,
        PaperInput.Releases, PaperInput.ThroughAgain,
    ];

    private static WaiverForm? FormOf(string text)
    {
        foreach (var form in Enum.GetValues<WaiverForm>())
        {
            if (WaiverToBe.NumberOf(form) == text)
                return form;
        }

        return null;
    }
}
