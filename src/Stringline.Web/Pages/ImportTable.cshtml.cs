using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Stringline.Office.Import;
using Stringline.Office.Settings;
using Stringline.Tables.Sheets;
using Stringline.Tables.Sheets.Cells;
using Stringline.Tables.Sheets.Columns;

namespace Stringline.Web.Pages;

/// <summary>One table on its way into the store: how it is read, what would happen, the writing, and what was done.</summary>
internal sealed class ImportTableModel(Desk office, ImportRuns runs, WaitingTables tables, TableLooks looks) : PageModel
{
    private const int MostColumns = 200;
    private const int LongestShown = 200;

    /// <summary>The table's name in addresses.</summary>
    [BindProperty(SupportsGet = true)]
    public string Id { get; set; } = "";

    /// <summary>What the rows are, as chosen.</summary>
    [BindProperty]
    public string? Kind { get; set; }

    /// <summary>The order of the parts of a day, as chosen.</summary>
    [BindProperty]
    public DayOrder Days { get; set; }

    /// <summary>The sheet of a workbook, as typed.</summary>
    [BindProperty]
    public string? Sheet { get; set; }

    /// <summary>The name of a mapping: one to be used, or one to be kept.</summary>
    [BindProperty]
    public string? Name { get; set; }

    /// <summary>Which questions of the look are confirmed.</summary>
    [BindProperty]
    public IReadOnlyList<string> Confirmed { get; set; } = [];

    /// <summary>What the table does not say.</summary>
    [BindProperty]
    public ImportChoices Choices { get; set; } = new();

    /// <summary>How far the table is.</summary>
    public ImportState State { get; private set; } = null!;

    /// <summary>How it would be read; null where that is of no matter now.</summary>
    public TableLook? Look { get; private set; }

    /// <summary>What each column means, as shown.</summary>
    public IReadOnlyDictionary<int, Column> Meanings { get; private set; } = new Dictionary<int, Column>();

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Faults { get; } = new(StringComparer.Ordinal);

    /// <summary>Why what was asked for was not begun, or why the file is no table.</summary>
    public string? Refused { get; private set; }

    /// <summary>How far the work has come; null where none is done.</summary>
    public ToldProgress? Progress => runs.Current is { } run && run.Id == Id ? run.Progress() : null;

    /// <summary>The office's kept mappings.</summary>
    public IReadOnlyList<SavedMapping> Mappings { get; private set; } = [];

    /// <summary>The mapping that the table is read by.</summary>
    public ColumnMapping Mapping { get; private set; } = ColumnMapping.None;

    /// <summary>How many columns are shown.</summary>
    public int Shown => Math.Min(Look?.Width ?? 0, MostColumns);

    /// <summary>The sheets of a workbook; none of a file of text.</summary>
    public IReadOnlyList<string> Sheets { get; private set; } = [];

    /// <summary>Whether there are refused rows to download.</summary>
    public bool HasRefusedFile => tables.RefusedOf(State) is not null;

    /// <summary>The new jobs that can be opened: id, key and name.</summary>
    public IReadOnlyList<(long Id, string Key, string Name)> NewJobs { get; private set; } = [];

    /// <summary>
    /// The columns without which the table cannot be read and that none stands for, by the header they would be known by.
    /// </summary>
    public IReadOnlyList<string> Missing => Look?.Kind is { } kind
        ? [.. TableLook.Needed(kind).Where(needed => !Meanings.Values.Contains(needed)).Select(needed => TableLook.Title(needed, kind))]
        : [];

    /// <summary>Shows it.</summary>
    public IActionResult OnGet()
    {
        if (!Open())
            return NotFound();
        Choices = State.Choices;
        Prepare();
        return Page();
    }

    /// <summary>Does what a button says.</summary>
    public IActionResult OnPost(string step)
    {
        if (!Open())
            return NotFound();
        switch (step)
        {
            case "use" when State.Step == ImportStep.Received:
                var kept = Mappings.FirstOrDefault(mapping => mapping.Name == Name);
                tables.Keep(State with { Mapping = kept?.Json, MappingName = kept?.Name, Trouble = null });
                return Back();
            case "again" or "keep" or "look" when State.Step == ImportStep.Received:
                return Settle(step);
            case "look" when State.Step is ImportStep.Looked or ImportStep.Broken:
                return Begin(write: false);
            case "write" when State.Step == ImportStep.Looked:
                return Write();
            case "back" when State.Step is ImportStep.Looked or ImportStep.Broken or ImportStep.SetAside:
                tables.Keep(State with { Step = ImportStep.Received, Trouble = null });
                return Back();
            case "stop":
                if (runs.Current is { } run && run.Id == Id)
                    run.Stop();
                return Back();
            case "away" when !State.IsRunning:
                tables.Remove(State);
                return Redirect("/import");
            default:
                // A button of a page that was overtaken: what is true now is shown.
                return Back();
        }
    }

    /// <summary>What a column may mean: each meaning with its title.</summary>
    public static IEnumerable<(Column Column, string Title)> MeaningsOf(TableKind kind) =>
        TableLook.ColumnsOf(kind)
        .Select(column => (column, TableLook.Title(column, kind) + (TableLook.Needed(kind).Contains(column) ? " (needed)" : "")));

    /// <summary>A text of a cell, as long as a page has room for.</summary>
    public static string Short(string text) => text.Length <= LongestShown ? text : text[..LongestShown] + "…";

    /// <summary>The field of a column.</summary>
    public static string FieldOf(int place) => string.Create(CultureInfo.InvariantCulture, $"c{place}");

    private bool Open()
    {
        if (runs.Find(Id) is not { } state)
            return false;
        State = state;
        Mappings = office.Settings.Mappings;
        try
        {
            Mapping = state.Mapping is null ? ColumnMapping.None : MappingJson.Read(Encoding.UTF8.GetBytes(state.Mapping), state.File);
            if (state.Step == ImportStep.Received)
            {
                var seen = looks.Of(state, state.Mapping, HttpContext.RequestAborted);
                (Sheets, Look) = (seen.Sheets, seen.Look);
                Refused = seen.Refusal is { } refusal ? Words(refusal) : null;
            }
        }
        catch (SheetException e)
        {
            Refused = Words(e);
        }
        catch (OperationCanceledException) when (!HttpContext.RequestAborted.IsCancellationRequested)
        {
            Refused = "The desk is being closed. The table waits beside the store; nothing of it is written.";
        }

        Meanings = Look?.Meanings ?? Meanings;
        return true;
    }

    private void Prepare()
    {
        (Kind, Days, Sheet) = (Look?.Kind is { } kind ? MappingJson.Word(kind) : null, Mapping.Days, Mapping.Sheet);
        if (State.Step == ImportStep.Written)
            NewJobs = [.. (State.Told?.NewJobs ?? []).Select(key => office.Journal.Find(key)).OfType<Store.StoredJob>()
                .Select(job => (job.Tip.Id, job.Tip.Key, job.Job.Name))];
    }

    // Takes what the form says, and goes on only where it is clear.
    private IActionResult Settle(string step)
    {
        if (Look is null)
            return Page();
        foreach (var (field, fault) in Choices.Faults())
            Faults[field] = fault;
        var kinds = Enum.GetValues<TableKind>();
        TableKind? kind = Array.FindIndex(kinds, one => MappingJson.Word(one) == Kind) is >= 0 and var at ? kinds[at] : null;
        var sheet = string.IsNullOrWhiteSpace(Sheet) ? null : Sheet.Trim();
        var given = ColumnMapping.None with { Days = Enum.IsDefined(Days) ? Days : default, Sheet = sheet, Kind = kind };

        // Another kind of rows, or another sheet, has other columns: they are first read by their words.
        if (kind is { } said && said == Look.Kind && sheet == Mapping.Sheet)
        {
            Meanings = Chosen(said);
            if (Faults.Count == 0)
                given = Look.Chosen(said, Meanings, given) with { Types = TypesChosen() };
        }
        else
        {
            step = "again";
        }

        if (Faults.Count > 0)
            return Page();
        var json = Encoding.UTF8.GetString(MappingJson.Write(given));
        var isKept = State.MappingName is { } name && Mappings.Any(mapping => mapping.Name == name && mapping.Json == json);
        State = State with { Mapping = json, MappingName = isKept ? State.MappingName : null, Choices = Choices, Trouble = null };
        tables.Keep(State);
        if (step == "again" || !IsClear(json))
            return Back();
        return step == "keep" ? KeepMapping(json) : Begin(write: false);
    }

    // Where it is no table at all, the page that follows says why.
    private bool IsClear(string json) => looks.Of(State, json, HttpContext.RequestAborted).Look is { Unclear: null };

    private IActionResult KeepMapping(string json)
    {
        var name = Name?.Trim() ?? "";
        if (name.Length is 0 or > SavedMapping.LongestName || name.Any(char.IsControl))
            Faults[nameof(Name)] = $"A name by which the office will know it again, of at most {SavedMapping.LongestName} letters.";
        else if (Mappings.Count >= SavedMapping.Most && Mappings.All(mapping => mapping.Name != name))
            Faults[nameof(Name)] = $"The office keeps {SavedMapping.Most} already; delete one in the settings first.";
        if (Faults.Count > 0)
            return Page();
        office.ChangeSettings(settings =>
            settings with { Mappings = settings.Mappings.RemoveAll(mapping => mapping.Name == name).Add(new SavedMapping(name, json)) });
        tables.Keep(State with { MappingName = name });
        return Back();
    }

    private Dictionary<string, RowKind> TypesChosen()
    {
        var types = new Dictionary<string, RowKind>(StringComparer.Ordinal);
        for (var i = 0; i < Look!.Types.Count; i++)
        {
            if (RowKinds.Read(Request.Form[TypeFieldOf(i)]) is { } kind)
                types[Look.Types[i].Type] = kind;
        }

        return types;
    }

    /// <summary>The field of a type.</summary>
    public static string TypeFieldOf(int place) => string.Create(CultureInfo.InvariantCulture, $"type{place}");

    private Dictionary<int, Column> Chosen(TableKind kind)
    {
        var chosen = new Dictionary<int, Column>();
        for (var place = 0; place < Shown; place++)
        {
            if (Request.Form[FieldOf(place)].ToString() is not { Length: > 0 } word)
                continue;
            if (TableLook.ColumnsOf(kind).Where(column => MappingJson.Word(column) == word).Cast<Column?>()
                .FirstOrDefault() is not { } meaning)
            {
                Faults[FieldOf(place)] = "One of the meanings in the list.";
                continue;
            }

            if (chosen.Where(pair => pair.Value == meaning).Select(pair => (int?)pair.Key).FirstOrDefault() is { } first)
                Faults[FieldOf(place)] = $"Column {TableLook.Letters(first)} is said to be that already: choose one of them.";
            // What was chosen stays chosen on the page that says what is wrong with it.
            chosen[place] = meaning;
        }

        return chosen;
    }

    // Nothing is written while a question of the look is open.
    private IActionResult Write()
    {
        if (State.Told!.Questions.Any(question => !Confirmed.Contains(question.Id)))
        {
            Refused = "Nothing was written. Each question below must be confirmed first; where the answer is no, fix the file or how it is "
                + "read.";
            Prepare();
            return Page();
        }

        State.Choices.Confirmed = [.. State.Told.Questions.Select(question => question.Id)];
        return Begin(write: true);
    }

    private IActionResult Begin(bool write)
    {
        if (runs.Begin(State, write) is not { } busy)
            return Back();
        Refused = busy;
        Choices = State.Choices;
        Prepare();
        return Page();
    }

    private RedirectResult Back() => Redirect($"/import/{Id}");

    // Where no place leads the sentence, its first word does.
    private static string Begun(string found, string path) => path.Length > 0 ? found : char.ToUpperInvariant(found[0]) + found[1..];

    /// <summary>A refusal of the table in words, without the folder in which it waits.</summary>
    public static string Words(SheetException refusal) =>
        $"{refusal.Fault.Path}{(refusal.Fault.Path.Length > 0
            ? ": " : "")}{Begun(DeskWords.Of(refusal.Found), refusal.Fault.Path)}. There should be {DeskWords.Of(refusal.Expected)}.";
}
