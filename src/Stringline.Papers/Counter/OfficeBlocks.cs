using Stringline.Law.Recording;
using Stringline.Papers.Layout;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Counter;

/// <summary>
/// What is known of the office to whoever goes there. What was not read is asked for and never invented; what stands on an old page, or on
/// one without a date, says so beside it.
/// </summary>
internal static class OfficeBlocks
{
    /// <summary>Heading over mail and electronic recording.</summary>
    public const string OtherWaysHeading = "Other ways in";

    /// <summary>Until when a paper is taken that day: to be seen with the day itself.</summary>
    public static Block LastTime(RecorderOffice office, TypeStyle? style = null) => new Paragraph(
        office.Words(RecorderField.RecordUntil) is { } time
            ? $"At the counter by {Sentence(time, Why(office, RecorderField.RecordUntil))}"
            : office.Words(RecorderField.Hours) is { } hours
            ? $"Last time at the counter: not verified. Hours are {hours}, and recording may stop earlier: "
            + $"{(Site(office) is { } site ? $"ask, through {site}" : "call and ask")}."
            : $"Last time at the counter: not verified. {(Site(office) is { } own ? $"Ask, through {own}" : "Call and ask")}.",
        style ?? new TypeStyle(Face.SansBold, 11.5, 15)) { Before = style is null ? 3 : 1 };

    // Nobody can call without a number: the office's site has one.
    private static string? Site(RecorderOffice office) => office.Words(RecorderField.Phone) is null ? office.OwnSite : null;

    /// <summary>Whose counter, where, when; that nothing is known of it but from memory, where that is so.</summary>
    public static IEnumerable<Block> Where(RecorderOffice office, Closeness set)
    {
        yield return new Paragraph($"{office.Name}, where the site lies (Civ. Code § 8060)", set.Text) { Before = 2, WithNext = true };
        yield return new Paragraph(office.Words(RecorderField.Counter) is { } counter ? counter + Asked(office, RecorderField.Counter)
            : office.Place is { } city ? $"{city}; street: ask" : "street: ask", set.Bold) { Before = 0, WithNext = true };
        var hours = office.Words(RecorderField.Hours) is { } open ? Sentence(open, Asked(office, RecorderField.Hours)) : "ask.";
        yield return new Paragraph(
            $"Telephone: {office.Words(RecorderField.Phone) ?? (Site(office) is { } site ? $"ask ({site})" : "ask")}. Hours: {hours}"
            + (office.Words(RecorderField.SameDay) is { } same ? " " + same : "")
            + (IsAsked(office, InWhere) ? Meaning : ""), set.Text)
        { Before = 0 };
        if (office.IsFromMemory)
        {
            yield return new Paragraph("Nothing published by this office was found. Call it before you go.", set.Bold) { Before = 2 };
        }
    }

    /// <summary>The check to bring: to whom, how much, how much more to have at hand, what else is taken.</summary>
    public static IEnumerable<Block> CheckToBring(FeeEstimate fee, Closeness set)
    {
        var office = fee.Office;
        var others = office.Otherwise(RecorderField.Payee).Select(o => $" or “{o}”").ToList();
        yield return new Paragraph(
            (office.Words(RecorderField.Payee) is { } payee
                ? $"Payable to “{payee}”{string.Concat(others)}{(others.Count > 0 ? " (ask which)" : Asked(office, RecorderField.Payee))}."
                : "Payable to: not verified, ask for the exact payee.")
            + (fee.AtMost > fee.Total ? $" Be ready to pay {Dollars(fee.AtMost)}: prices marked “ask” on page 2 may be higher"
                + $"{(fee.DearerOn is { } later ? $", or on {Day(later)}" : "")}." : "")
            + (set.IsCut ? "" : Notice(fee))
            + " A short check is the most common reason for a rejection."
            + (office.Words(RecorderField.Payment) is { } payment ? $" {Sentence(payment, Asked(office, RecorderField.Payment))}"
                : " Ask what else is taken: card, cash, a check “not to exceed” a sum.")
            // Said once, where the mark first stands.
            + (!IsAsked(office, InWhere) && IsAsked(office, [RecorderField.Payee, RecorderField.Payment]) ? Meaning : ""),
            set.Text) { Before = 2 };
    }

    // Often the greater part of the sum, and not charged where the office needs to send no notice of its own (Gov. Code § 27297.5).
    private static string Notice(FeeEstimate fee) => fee.Part("lien-notice") is { Amount: > 0 } notice && fee.ProofSparesNotice
        ? $" {Dollars(notice.Amount)} of it is for the recorder’s notice of involuntary lien, which is not "
            + "charged if the office accepts the claim’s proof of service instead. Ask."
        : "";

    /// <summary>Copy and envelope, as far as a page has them.</summary>
    public static string CopyToBringBack(RecorderOffice office) =>
        (office.Words(RecorderField.Copies) is { } copies ? $"{Sentence(copies, Asked(office, RecorderField.Copies))} " : "")
        + $"Bring {Small(office.Words(RecorderField.Envelope) ?? "A self-addressed stamped envelope for what comes back by mail")}.";

    /// <summary>Mail and electronic recording, and when neither will do.</summary>
    public static IEnumerable<Block> OtherWays(RecorderOffice office, Closeness set)
    {
        if (office.Words(RecorderField.FirstPage) is { } page)
            yield return set.Point($"This office wants: {Small(Sentence(page, Asked(office, RecorderField.FirstPage)))}");
        var branches = office.Facts.Where(f => f.Field == RecorderField.Branch).Select(f => f.Value).ToList();
        if (branches.Count > 0)
            yield return set.Point($"Other counters (ask): {string.Join("; ", branches)}.");
        var mail = office.Words(RecorderField.Mail) is { } address ? address + Asked(office, RecorderField.Mail) : "ask for the address";
        var courier = office.Words(RecorderField.Courier) is { } overnight ? $" Overnight: {overnight}." : "";
        var back = office.Words(RecorderField.MailBack) is { } weeks ? $" The original comes back in {weeks}."
            : " Ask how long mail takes to be recorded.";
        yield return set.Point($"By mail: {mail}.{courier}{back} Mailed is not recorded: never for a last day.");
        var system = office.Words(RecorderField.Electronic) is { } electronic
            ? $" Here: {Small(electronic)}" : "";
        yield return set.Point("Electronically: not by you, but through a title insurer, an underwritten title company, an institutional "
            + $"lender or a government body, or an agent of one, on a certified system (Gov. Code § 27391).{system} Ask one well before "
            + $"the last "
            + "day, and do not rely on it for a last day in 2027 or later: a wider rule was to end with 2026.");
    }

    /// <summary>What to say and which paper to ask for when the counter will not take it.</summary>
    public static IEnumerable<Block> Refused(Closeness set)
    {
        yield return set.Point("Say: “The recorder takes a paper that a statute lets be recorded, if it can be indexed, meets the format "
            + "and can be copied. Whether it is good in law is not for the recorder to judge: Government Code section 27201(a).”");
        yield return set.Point("If the form of page 1 is the reason: put a cover page that conforms in front, one page more (§ 27361.6). "
            + "If it is "
            + "the fee: pay the difference.");
        yield return set.Point("Otherwise ask for the refusal in writing, on the office’s form, with the reason (§§ 27203, 27204), and "
            + "call "
            + "your office from the window.");
    }

    private static RecorderField[] InWhere { get; } = [RecorderField.Counter, RecorderField.Hours];

    private static string Meaning { get; } = string.Create(CultureInfo.InvariantCulture,
        $" “(ask)”: confirm, the page is undated or over {RecorderFact.YearsToTrust} years old.");

    private static bool IsAsked(RecorderOffice office, RecorderField[] fields) => fields.Any(f => Asked(office, f).Length > 0);

    // A mark behind what must be asked; nothing where a young page has it.
    private static string Asked(RecorderOffice office, RecorderField field) =>
        office.Fact(field) is not null && office.Asks(field) ? " (ask)" : "";

    // The same with the reason.
    private static string Why(RecorderOffice office, RecorderField field) =>
        office.Fact(field) is not { } fact || !office.Asks(field) ? ""
        : fact.PageDay is { } day ? $" (from a {day.Year.ToString(CultureInfo.InvariantCulture)} page; call to confirm)"
        : " (from an undated page; call to confirm)";

    private static string Small(string words) => char.ToLowerInvariant(words[0]) + words[1..];

    private static string Sentence(string words, string mark)
    {
        var said = words.EndsWith(".m.", StringComparison.Ordinal) && mark.Length > 0 ? words : words.TrimEnd('.');
        return $"{said}{mark}.";
    }
}
