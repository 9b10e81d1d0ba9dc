using System.Security.Cryptography;
using System.Text;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Waiver;

/// <summary>A conditional waiver given before, whose payment has not come.</summary>
/// <param name="On">The day it was signed.</param>
/// <param name="Amount">Dollars and cents of the unpaid progress payment.</param>
public sealed record EarlierWaiver(LocalDate On, decimal Amount);

/// <summary>
/// What a waiver and release says. A null leaves a blank on a draft and is refused otherwise, unless said here that it may stay blank.
/// </summary>
public sealed record WaiverToBe
{
    /// <summary>Which of the four forms.</summary>
    public required WaiverForm Form { get; init; }

    /// <summary>Name of claimant.</summary>
    public string? Claimant { get; init; }

    /// <summary>Name of customer: the one who contracted with the claimant.</summary>
    public string? Customer { get; init; }

    /// <summary>Job location.</summary>
    public string? JobLocation { get; init; }

    /// <summary>Owner; several are joined.</summary>
    public string? Owner { get; init; }

    /// <summary>Through date of a progress form.</summary>
    public LocalDate? Through { get; init; }

    /// <summary>Dollars and cents of the check described, or of the progress payment received. Form 8138 has no such blank.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Maker of the check, on a conditional form.</summary>
    public string? Maker { get; init; }

    /// <summary>Payee of the check, on a conditional form.</summary>
    public string? Payee { get; init; }

    /// <summary>On form 8132: conditional waivers given before and not paid. None leaves the two blanks empty.</summary>
    public IReadOnlyList<EarlierWaiver> Earlier { get; init; } = [];

    /// <summary>On a final form: dollars and cents of disputed extras that stay alive. Null leaves the blank empty.</summary>
    public decimal? Disputed { get; init; }

    /// <summary>The signer's title. May stay blank.</summary>
    public string? SignerTitle { get; init; }

    /// <summary>
    /// On an unconditional form: the day the payment cleared the bank. It is not printed; without it the form is not made.
    /// </summary>
    public LocalDate? PaymentCleared { get; init; }

    /// <summary>Whether the form is conditional on payment.</summary>
    public bool IsConditional => Form switch
    {
        WaiverForm.ConditionalProgress or WaiverForm.ConditionalFinal => true,
        WaiverForm.UnconditionalProgress or WaiverForm.UnconditionalFinal => false,
        _ => throw new InvalidOperationException($"No such form: {Form}."),
    };

    /// <summary>Whether the form is for a progress payment.</summary>
    public bool IsProgress => Form switch
    {
        WaiverForm.ConditionalProgress or WaiverForm.UnconditionalProgress => true,
        WaiverForm.ConditionalFinal or WaiverForm.UnconditionalFinal => false,
        _ => throw new InvalidOperationException($"No such form: {Form}."),
    };

    /// <summary>The section's number, as in a job file.</summary>
    public string Number => NumberOf(Form);

    /// <summary>The section's number of a form.</summary>
    public static string NumberOf(WaiverForm form) => form switch
    {
        WaiverForm.ConditionalProgress => "8132",
        WaiverForm.UnconditionalProgress => "8134",
        WaiverForm.ConditionalFinal => "8136",
        WaiverForm.UnconditionalFinal => "8138",
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "Not a form."),
    };

    /// <summary>
    /// A fingerprint of everything that will stand on the page, the prescribed words included: SHA-256 in hexadecimal. Two waivers that
    /// read alike have the same.
    /// </summary>
    public string Fingerprint =>
        Convert.ToHexStringLower(
            SHA256.HashData(Encoding.UTF8.GetBytes($"{WaiverBuilder.TitleOf(Form)}\n{WaiverBuilder.WordingOf(this).Body}")));

    /// <summary>What the blanks of the form hold, by their names in the prescribed wording.</summary>
    internal IReadOnlyDictionary<string, string?> Blanks => new Dictionary<string, string?>(StringComparer.Ordinal)
    {
        ["claimant"] = Line(Claimant),
        ["customer"] = Line(Customer),
        ["job_location"] = Line(JobLocation),
        ["owner"] = Line(Owner),
        ["through_date"] = Through is { } through ? Day(through) : null,
        ["maker_of_check"] = Line(Maker),
        ["amount_of_check"] = Figures(Amount),
        ["amount_received"] = Figures(Amount),
        ["check_payable_to"] = Line(Payee),
        ["dates_of_earlier_waivers"] = Earlier.Count == 0 ? null : string.Join("; ", Earlier.Select(e => Day(e.On))),
        ["amounts_of_unpaid_progress_payments"] = Earlier.Count == 0 ? null
            : string.Join("; ", Earlier.Select((e, i) => (i == 0 ? "" : "$") + Figures(e.Amount))),
        ["disputed_extras"] = Figures(Disputed),
        ["title"] = Line(SignerTitle),
    };

    /// <summary>Every reason why the waiver may not be made as it stands.</summary>
    public IReadOnlyList<Refusal> Refusals()
    {
        var section = $"Civ. Code § {Number}";
        var refusals = new List<Refusal>();
        void Need(bool there, string id, Place where, Sentence right)
        {
            if (!there)
                refusals.Add(new Refusal(id, where, $"Nothing is there.", right, section));
        }

        Need(Line(Claimant) is not null, "claimant-name-missing", new Place.OfHead("claimant.name"), $"Add the claimant's full name.");
        Need(Line(Customer) is not null, "hirer-missing", new Place.OfHead("claimant.hiredBy"),
            $"Name the party id of the one who contracted with the claimant: the form's customer.");
        Need(Line(JobLocation) is not null, "site-missing", new Place.OfHead("work.site"),
            $"Add the street address or the legal description.");
        Need(Line(Owner) is not null, "owner-missing", Place.Parties,
            $"Add a party with capacity {new FileWord(PartyCapacity.Owner)} (public work: {new FileWord(PartyCapacity.PublicEntity)}).");
        if (IsProgress)
        {
            Need(Through is not null, "through-missing", Place.Of(PaperInput.Through),
                $"Say through which day work is released{ForTheAsker.SuchAs(PaperInput.Through, new LocalDate(2026, 5, 31))}. Never later "
                    + $"than the last day that this payment "
                + $"pays for.");
        }

        if (Form != WaiverForm.UnconditionalFinal)
        {
            Need(Amount is > 0, "amount-missing", Place.Of(PaperInput.Amount),
                $"{(IsConditional
                    ? "Say the amount of the check"
                    : "Say the progress payment received")}{ForTheAsker.SuchAs(PaperInput.Amount, 12000m)}.");
        }

        if (IsConditional)
        {
            Need(Line(Maker) is not null, "maker-missing", Place.Of(PaperInput.Maker),
                $"Say whose account the check is drawn on: the paper takes effect only when that check is paid.");
            Need(Line(Payee) is not null, "payee-missing", Place.Of(PaperInput.Payee), $"Say to whom the check is payable.");
        }
        else if (PaymentCleared is null)
        {
            refusals.Add(new Refusal("payment-not-cleared", Place.Of(PaperInput.PaymentCleared),
                $"Nothing shows that the payment has cleared the bank.",
                $"An unconditional form binds on signing, paid or not. Until the money is in the bank use the conditional form "
                + $"({(IsProgress ? "8132" : "8136")}). Once it has cleared, say the day: "
                + $"{new InputTold(PaperInput.PaymentCleared, new LocalDate(2026, 5, 31))}, or enter it as "
                + $"{new FileWord("paymentCleared")} of the conditional waiver.",
                section));
        }

        refusals.AddRange(TooLong.In([.. Blanks.Values.OfType<string>()], new[] { Claimant, SignerTitle }.OfType<string>()));
        if (MissingLetters() is { Count: > 0 } letters)
        {
            refusals.Add(new Refusal("letters-missing", Place.PaperTexts,
                $"The typeface has no letter for {string.Join(" ", letters.Select(m => $"'{m}' (U+{char.ConvertToUtf32(m, 0):X4})"))}.",
                $"Write it in Latin letters, with any accents.", section));
        }

        return refusals;
    }

    private List<string> MissingLetters() =>
        [.. Blanks.Values.OfType<string>().SelectMany(t => Fonts.Missing(Face.Serif, t).Concat(Fonts.Missing(Face.SerifBold, t)))
            .Distinct()];

    private static string? Figures(decimal? amount) => amount is { } dollars ? Dollars(dollars)[1..] : null;

    private static string? Line(string? text) => Clean(text) is { } clean ? OneLine(clean) : null;
}
