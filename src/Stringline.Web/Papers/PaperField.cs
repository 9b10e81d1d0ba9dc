using Stringline.Office.Entering;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;

namespace Stringline.Web.Papers;

/// <summary>One field of the form by which a paper is asked for.</summary>
/// <param name="Told">What it tells.</param>
/// <param name="Words">What it asks for.</param>
/// <param name="Type">The type of its input: text, date, checkbox, area, parties, choices or choice.</param>
internal sealed record PaperField(PaperInput Told, string Words, string Type)
{
    private static readonly IReadOnlyList<Choice> Grounds = Choice.Of(JobFileWords.ReleaseGround,
        "no stop payment notice may be given for such a claim", "whoever gave it is not one who may",
        "the amount is too high", "there is no basis for the claim");

    private static readonly IReadOnlyList<Choice> Notices = [.. ProvedNotices.All.Select(kind => new Choice(kind.Word(), kind.Words()))];

    /// <summary>Its name in the address, the same as on the command line.</summary>
    public string Name => Told.Word();

    /// <summary>What may be ticked or chosen; empty where nothing is.</summary>
    public IReadOnlyList<Choice> Choices { get; private init; } = [];

    /// <summary>The field for what a paper asks; the paper's own words for it where it has some.</summary>
    public static PaperField Of(PaperAsk ask) => ask.Label is { } label ? Of(ask.Input) with { Words = label } : Of(ask.Input);

    private static PaperField Of(PaperInput told) => told switch
    {
        PaperInput.To => new(told, "To whom it goes; leave unchecked to send to everyone the law requires", "parties"),
        PaperInput.Through => new(told, "Last day of the work that it covers, never later than the payment pays for", "date"),
        PaperInput.Amount => new(told, "Dollars and cents", "text"),
        PaperInput.Maker => new(told, "On whose account the check is drawn", "text"),
        PaperInput.Payee => new(told, "To whom the check is payable; nothing: the claimant", "text"),
        PaperInput.Disputed => new(told, "Dollars and cents of disputed extras that it keeps", "text"),
        PaperInput.PaymentCleared => new(told, "The day the payment cleared the bank", "date"),
        PaperInput.Releases => new(
            told, "What it releases, in dollars and cents, typed by you; only where the page asks for it", "text"),
        PaperInput.ThroughAgain => new(told, "The last day of the work a second time; only where it is still to come", "date"),
        PaperInput.Bonded => new(told, "A bond comes with the notice", "checkbox"),
        PaperInput.Until => new(told, "The day the credit ends", "date"),
        PaperInput.Words => new(told, "What it says in words of your own", "area"),
        PaperInput.Day => new(told, "The day", "date"),
        PaperInput.Number => new(told, "Which recorded claim, by its instrument number; nothing: the last one", "text"),
        PaperInput.ExtensionDays => new(told, "Days of a time extension claimed; nothing where only money is", "number"),
        PaperInput.Documents => new(told, "The documents that support it and go with it, one on each line", "area"),
        PaperInput.Structure => new(
            told, "For one of several structures only: its short id; nothing: for the whole work", "text"),
        PaperInput.FormerOwner => new(
            told,
            "Where the owner who signs took the property over after the work began: name and address of the one who transferred it",
            "area"),
        PaperInput.WholeWork => new(told, "It is for the whole work: every direct contract is complete", "checkbox"),
        PaperInput.Grounds => new(told, "On which grounds; tick each that you allege", "choices") { Choices = Grounds },
        PaperInput.Notice =>
            new(told, "Which notice is proved; nothing: the one kind that the file tells of", "choice") { Choices = Notices },
        _ => throw new ArgumentOutOfRangeException(nameof(told), told, "No such option."),
    };

    /// <summary>Puts what was typed into the options.</summary>
    /// <param name="typed">What was typed; several for parties.</param>
    /// <param name="options">The options so far.</param>
    /// <param name="fault">What would be right; null where it was taken, or nothing was typed.</param>
    public PaperOptions Take(IReadOnlyList<string> typed, PaperOptions options, out string? fault)
    {
        fault = null;
        var text = typed.Count == 0 ? "" : typed[0].Trim();
        if (text.Length == 0)
            return options;
        switch (Told)
        {
            case PaperInput.To:
                return options with { To = [.. typed] };
            case PaperInput.Bonded:
                return options with { Bonded = true };
            case PaperInput.WholeWork:
                return options with { WholeWork = true };
            case PaperInput.FormerOwner:
                return options with { FormerOwner = text };
            case PaperInput.ExtensionDays:
                fault = TypedDays.AboveZero(text) is null ? $"\"{text}\" is no number of days above zero." : null;
                return options with { ExtensionDays = TypedDays.AboveZero(text) };
            case PaperInput.Documents:
                return options with { Documents =
                    [.. typed.SelectMany(t => t.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))] };
            case PaperInput.Grounds:
                // The form offers only these; an address typed by hand may say anything.
                fault = typed.Any(word => JobFileWords.ReleaseGround.IndexOf(word) is null) ? "Tick one of these." : null;
                return options with { Grounds =
                    [.. typed.Select(JobFileWords.ReleaseGround.IndexOf).OfType<int>().Select(index => (ReleaseGround)index)] };
            case PaperInput.Notice:
                fault = ProvedNotices.Of(text) is null ? "Choose one of these." : null;
                return options with { Notice = ProvedNotices.Of(text) };
            case PaperInput.Maker:
                return options with { Maker = text };
            case PaperInput.Payee:
                return options with { Payee = text };
            case PaperInput.Structure:
                return options with { Structure = text };
            case PaperInput.Words:
                return options with { Words = text };
            case PaperInput.Number:
                return options with { Number = text };
            case PaperInput.Amount:
                return Money(text, out fault) is { } amount ? options with { Amount = amount } : options;
            case PaperInput.Disputed:
                return Money(text, out fault) is { } disputed ? options with { Disputed = disputed } : options;
            case PaperInput.Releases:
                fault = TypedMoney.Read(text) is >= 0m ? null : $"\"{text}\" is no amount: dollars and cents, such as 12,500.00.";
                return options with { Releases = fault is null ? TypedMoney.Read(text) : null };
            case PaperInput.ThroughAgain:
                return Day(text, out fault) is { } again ? options with { ThroughAgain = again } : options;
            case PaperInput.Through:
                return Day(text, out fault) is { } through ? options with { Through = through } : options;
            case PaperInput.PaymentCleared:
                return Day(text, out fault) is { } cleared ? options with { PaymentCleared = cleared } : options;
            case PaperInput.Until:
                return Day(text, out fault) is { } until ? options with { Until = until } : options;
            case PaperInput.Day:
                return Day(text, out fault) is { } day ? options with { Day = day } : options;
            default:
                throw new InvalidOperationException($"No such option: {Told}.");
        }
    }

    private static LocalDate? Day(string text, out string? fault)
    {
        if (DayText.Read(text, out var day) is not { } expected)
        {
            fault = null;
            return day;
        }

        fault = $"\"{text}\" cannot be read: it should be {expected}.";
        return null;
    }

    private static decimal? Money(string text, out string? fault)
    {
        if (TypedMoney.AboveZero(text) is { } dollars)
        {
            fault = null;
            return dollars;
        }

        fault = $"\"{text}\" is no amount: dollars and cents above zero, such as 12,500.00.";
        return null;
    }
}
