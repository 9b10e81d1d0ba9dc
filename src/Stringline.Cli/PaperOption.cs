using System.CommandLine;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;

namespace Stringline.Cli;

/// <summary>One option of a paper on the command line.</summary>
/// <param name="Option">The option.</param>
/// <param name="Take">Puts what was said into the paper's options.</param>
internal sealed record PaperOption(Option Option, Func<ParseResult, PaperOptions, PaperOptions> Take)
{
    /// <summary>
    /// The option for what a paper asks; the paper's own words for a day, a number or words, which mean another thing on each.
    /// </summary>
    public static PaperOption Of(PaperAsk ask)
    {
        var told = Of(ask.Input);
        if (ask is { Input: PaperInput.Day or PaperInput.Number or PaperInput.Words, Label: { } label })
            told.Option.Description = label + ".";
        return told;
    }

    /// <summary>The option for what a paper may be told, in words that hold for every paper.</summary>
    public static PaperOption Of(PaperInput told)
    {
        var name = "--" + told.Word();
        return told switch
        {
            PaperInput.To =>
                Texts(name, "ID", "Party ids of the job file to whom it goes; of a notice of completion, the contractor whose contract "
                    + "alone it is for; of an affidavit for release, who gave the stop payment notice. Default: those whom the law "
                    + "names.", (o, v) => o with { To = v }),
            PaperInput.Through => Day(name, "Last day of the work that the paper covers.", (o, v) => o with { Through = v }),
            PaperInput.Amount => Money(name, "Dollars and cents, such as 12000.00.", (o, v) => o with { Amount = v }),
            PaperInput.Maker => Text(name, "NAME", "On whose account the check is drawn.", (o, v) => o with { Maker = v }),
            PaperInput.Payee => Text(name, "NAME", "To whom the check is payable. Default: the claimant.", (o, v) => o with { Payee = v }),
            PaperInput.Disputed =>
                Money(name, "Dollars and cents of disputed extras that the paper keeps.", (o, v) => o with { Disputed = v }),
            PaperInput.PaymentCleared =>
                Day(name, "The day the payment cleared the bank: you confirm that the money is there.", (o, v) =>
                    o with { PaymentCleared = v }),
            PaperInput.Releases =>
                Money(name, "What the paper releases, to the cent: asked for where that is more than is paid, or where an unconditional "
                    + "form has no payment in the journal.", (o, v) => o with { Releases = v }, orNothing: true),
            PaperInput.ThroughAgain =>
                Day(name, "The day of --through a second time, where it is still to come.", (o, v) => o with { ThroughAgain = v }),
            PaperInput.Bonded => Flag(name, "A bond comes with the notice.", o => o with { Bonded = true }),
            PaperInput.Until => Day(name, "The day the credit ends.", (o, v) => o with { Until = v }),
            PaperInput.Words => Text(name, "TEXT", "What it says in words of your own.", (o, v) => o with { Words = v }),
            PaperInput.Day => Day(name, "The day.", (o, v) => o with { Day = v }),
            PaperInput.Number =>
                Text(name, "TEXT", "Which recorded claim, by its instrument number. Default: the last one.", (o, v) =>
                    o with { Number = v }),
            PaperInput.ExtensionDays => Number(name, "Days of a time extension that is claimed.", (o, v) => o with { ExtensionDays = v }),
            PaperInput.Documents => Texts(name, "TEXT", "A document that goes with the claim and supports it; several may be named.",
                (o, v) => o with { Documents = v }),
            PaperInput.Structure =>
                Text(name, "ID", "The one of several structures that the claim is on, by its id. Default: the whole work.",
                    (o, v) => o with { Structure = v }),
            PaperInput.FormerOwner =>
                Text(name, "TEXT", "Name and address of the one who transferred the property after the work began, where the owner who "
                    + "signs took it over.", (o, v) => o with { FormerOwner = v }),
            PaperInput.WholeWork =>
                Flag(name, "The notice is for the whole work: every direct contract is complete.", o => o with { WholeWork = true }),
            PaperInput.Grounds =>
                Grounds(name, "On which ground: " + string.Join(", ", JobFileWords.ReleaseGround.Words) + "; several may be named."),
            PaperInput.Notice => Notice(name, "Which notice is proved: " + string.Join(", ", ProvedNotices.All.Select(kind => kind.Word()))
                + ". Default: the one kind that the file tells of."),
            _ => throw new ArgumentOutOfRangeException(nameof(told), told, "No such option."),
        };
    }

    private static PaperOption Text(string name, string help, string description, Func<PaperOptions, string, PaperOptions> put)
    {
        var option = new Option<string>(name) { Description = description, HelpName = help };
        return new PaperOption(option, (parsed, options) => parsed.GetValue(option) is { } value ? put(options, value) : options);
    }

    private static PaperOption Texts(string name, string help, string description, Func<PaperOptions, string[], PaperOptions> put)
    {
        var option = new Option<string[]>(name) { Description = description, HelpName = help, AllowMultipleArgumentsPerToken = true };
        return new PaperOption(option, (parsed, options) => parsed.GetValue(option) is { Length: > 0 } values
            ? put(options, values) : options);
    }

    private static PaperOption Grounds(string name, string description)
    {
        var option = new Option<string[]>(name) { Description = description, HelpName = "WORD", AllowMultipleArgumentsPerToken = true };
        option.AcceptOnlyFromAmong([.. JobFileWords.ReleaseGround.Words]);
        return new PaperOption(option, (parsed, options) => parsed.GetValue(option) is { Length: > 0 } words
            ? options with { Grounds = [.. words.Select(word => (ReleaseGround)JobFileWords.ReleaseGround.IndexOf(word)!.Value)] }
            : options);
    }

    private static PaperOption Notice(string name, string description)
    {
        var option = new Option<string>(name) { Description = description, HelpName = "WORD" };
        option.AcceptOnlyFromAmong([.. ProvedNotices.All.Select(kind => kind.Word())]);
        return new PaperOption(option, (parsed, options) => parsed.GetValue(option) is { } word
            ? options with { Notice = ProvedNotices.Of(word) } : options);
    }

    private static PaperOption Number(string name, string description, Func<PaperOptions, int, PaperOptions> put)
    {
        var option = new Option<string>(name) { Description = description, HelpName = "DAYS" };
        option.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && TypedDays.AboveZero(result.Tokens[0].Value) is null)
                result.AddError($"{name} takes a whole number above zero, not '{result.Tokens[0].Value}'.");
        });
        return new PaperOption(option, (parsed, options) => parsed.GetValue(option) is { } text && TypedDays.AboveZero(text) is { } number
            ? put(options, number) : options);
    }

    private static PaperOption Flag(string name, string description, Func<PaperOptions, PaperOptions> put)
    {
        var option = new Option<bool>(name) { Description = description };
        return new PaperOption(option, (parsed, options) => parsed.GetValue(option) ? put(options) : options);
    }

    private static PaperOption Day(string name, string description, Func<PaperOptions, LocalDate, PaperOptions> put)
    {
        var option = new Option<string>(name) { Description = description, HelpName = "DAY" };
        option.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && DayText.Read(result.Tokens[0].Value, out _) is { } expected)
                result.AddError($"{name} takes {expected}.");
        });
        return new PaperOption(option, (parsed, options) =>
            parsed.GetValue(option) is { } text && DayText.Read(text, out var day) is null ? put(options, day) : options);
    }

    private static PaperOption Money(string name, string description, Func<PaperOptions, decimal, PaperOptions> put, bool orNothing = false)
    {
        decimal? Read(string text) => TypedMoney.Read(text) is { } dollars && (orNothing ? dollars >= 0m : dollars > 0m) ? dollars : null;
        var option = new Option<string>(name) { Description = description, HelpName = "DOLLARS" };
        option.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && Read(result.Tokens[0].Value) is null)
                result.AddError($"{name} takes dollars and cents{(orNothing ? "" : " above zero")}, such as 12,000.00, not "
                    + $"'{result.Tokens[0].Value}'.");
        });
        return new PaperOption(option, (parsed, options) => parsed.GetValue(option) is { } text && Read(text) is { } amount
            ? put(options, amount) : options);
    }
}
