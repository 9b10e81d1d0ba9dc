using Stringline.Law.Facts;
using Stringline.Papers.Layout;
using Stringline.Papers.Prescribed;
using Stringline.Papers.Writing;

namespace Stringline.Papers.Waiver;

/// <summary>
/// Sets a statutory waiver and release: the words of Civ. Code §§ 8132, 8134, 8136 or 8138 letter for letter, with its blanks filled.
/// Nothing else stands on the page but the running foot.
/// </summary>
internal static class WaiverBuilder
{
    /// <summary>
    /// Largest type of the form. The "Notice to Claimant" of an unconditional form must be at least as large (Civ. Code §§ 8134, 8138).
    /// </summary>
    private static readonly TypeStyle Large = new(Face.SerifBold, 12, 15.5);

    private static readonly TypeStyle Head = new(Face.SerifBold, 11, 14.5);

    private static readonly Dictionary<WaiverForm, PrescribedText> Forms =
        Enum.GetValues<WaiverForm>().ToDictionary(f => f, f => PrescribedText.Of(WaiverToBe.NumberOf(f)));

    private static readonly string[] Heads =
        ["Identifying Information", "Conditional Waiver and Release", "Unconditional Waiver and Release", "Exceptions", "Signature"];

    /// <summary>Title of a form as the catalogue has it.</summary>
    public static string TitleOf(WaiverForm form) => form switch
    {
        WaiverForm.ConditionalProgress => "Conditional Waiver and Release on Progress Payment",
        WaiverForm.UnconditionalProgress => "Unconditional Waiver and Release on Progress Payment",
        WaiverForm.ConditionalFinal => "Conditional Waiver and Release on Final Payment",
        WaiverForm.UnconditionalFinal => "Unconditional Waiver and Release on Final Payment",
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "Not a form."),
    };

    /// <summary>The words of the form with its blanks filled: everything that will stand on the page.</summary>
    public static PrescribedText WordingOf(WaiverToBe waiver) => Forms[waiver.Form].Filled(waiver.Blanks);

    /// <summary>The paper.</summary>
    public static PaperBuilder Of(WaiverToBe waiver)
    {
        var form = Forms[waiver.Form];
        var blanks = waiver.Blanks;
        var leaf = new PaperBuilder($"waiver-{waiver.Number}.pdf", TitleOf(waiver.Form))
        {
            Wording = form.Filled(blanks),
            LargestText = waiver.IsConditional ? null : form.Paragraphs[1],
        };
        var paragraphs = form.Paragraphs;
        leaf.Add(new Heading(paragraphs[0], Large) { Before = 0 });
        leaf.Add(new Paragraph(paragraphs[1], Large) { Before = 8 });
        // The signature stands with what the form excepts: alone on a page it says nothing of a release.
        var signing = paragraphs.ToList().IndexOf("Exceptions") is >= 0 and var excepts
            ? excepts : paragraphs.ToList().IndexOf("Signature");
        for (var i = 2; i < signing; i++)
            leaf.Add(Set(leaf, paragraphs[i], blanks, clings: false));
        leaf.Add(new Together([.. paragraphs.Skip(signing).Select(p => Set(leaf, p, blanks, clings: true))]));
        return leaf;
    }

    private static Block Set(PaperBuilder leaf, string paragraph, IReadOnlyDictionary<string, string?> blanks, bool clings)
    {
        if (Heads.Contains(paragraph))
            return new Heading(paragraph, Head) { Before = 10, Align = Align.Left };
        if (PrescribedText.Blanks().Match(paragraph) is not { Success: true } blank)
            return new Paragraph(paragraph, TypeStyle.Body) { Before = 3, WithNext = clings, MayPart = true };
        var label = paragraph[..blank.Index];
        // Maker, amount and payee of one check are read together.
        clings |= blank.Groups[1].Value is "maker_of_check" or "amount_of_check";
        if (blanks.GetValueOrDefault(blank.Groups[1].Value) is { } value)
            return new LabeledBlank(label, value, TypeStyle.Body) { WithNext = clings };
        if (!MayStayEmpty(blank.Groups[1].Value))
            leaf.Blank(label.Split(". ")[^1].TrimEnd(' ', '$', ':'));
        return new LabeledBlank(label, null, TypeStyle.Body) { WithNext = clings, Room = blank.Groups[1].Value == "signature" ? 14 : 4 };
    }

    private static bool MayStayEmpty(string blank) =>
        blank is "dates_of_earlier_waivers" or "amounts_of_unpaid_progress_payments" or "disputed_extras";
}
