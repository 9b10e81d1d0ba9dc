using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;
using Stringline.Law.StopPaymentNotice;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.StopPaymentNotice;

/// <summary>
/// The release or reduction of a stop payment notice (Civ. Code § 8128): a writing that says whether it is released or reduced,
/// and if reduced by how much, and what is still to be withheld.
/// </summary>
internal static class StopPaymentReleasePaper
{
    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("stop-payment-release", "Release of Stop Payment Notice", Write)
    {
        Sections = "Civ. Code § 8128",
        Use = PaperUse.Given,
        Works = [WorkKind.Private, WorkKind.Public],
        Words = $"The claimant, to whoever withholds, once paid in whole or in "
            + $"part{new ForTheAsker($" ({new InputName(PaperInput.Amount)} for a reduction)")}.",
        Asks = [new(PaperInput.To), new(PaperInput.Amount, "Dollars and cents by which the notice is reduced; nothing: all of it")],
        ProvedAs = ProvedNotice.StopPaymentRelease,
        Effect = new(
            "Given, it lets the holder pay out what was held. Other rights stay, and a new notice may follow while there is time.",
            "Civ. Code § 8128"),
        Fits = now => now.Has<StopPaymentGiven>() && now.Assessment.Amount.Demand == 0
            ? "A stop payment notice was given, and nothing is owed by the file." : null,
    };

    private static Bundle Write(Matter matter)
    {
        var given = matter.Known.All<StopPaymentGiven>()
            .LastOrDefault(n => matter.Options.To.Count == 0 || n.To.Any(matter.Options.To.Contains));
        if (given is null)
        {
            matter.NotEntered("stop-payment-given", "no-stop-payment-notice",
                Sentence.Of(matter.Options.To.Count == 0 ? "No stop payment notice is entered."
                : "No stop payment notice to that party is entered."),
                $"Enter the one given as {new KindName("stop-payment-given")} with its day, to and amount.", "Civ. Code § 8128");
        }

        var amount = given is null
            ? null : matter.Need(given.Amount, "amount-missing", Place.Of(given, "amount"), $"Add the amount that the "
            + $"stop payment notice claims.", "Civ. Code § 8128");
        // What earlier reductions left is all that this one can lower.
        var stands = given is null ? null : StopPaymentReleases.StandsFor(matter.Known, given);
        var day = given?.On is DayFact.Exact on ? on.Day : (LocalDate?)null;
        if (given is not null && day is null)
        {
            matter.Refuse("day-missing", Place.Of(given, "on"), $"The day of the notice is not exact.",
                $"Enter the day on which it was given.",
                "Civ. Code § 8128");
        }

        var to = Addressees.WithAddress(matter, matter.Named(given?.To ?? []), "Civ. Code § 8128");
        if (matter.Options.Amount is { } asked && stands is { } whole && asked >= whole)
        {
            matter.Refuse("reduction-too-large", Place.Of(PaperInput.Amount),
                $"A reduction of {Dollars(asked)} leaves nothing of the {Dollars(whole)} for which the notice stands.",
                $"Leave {new InputName(PaperInput.Amount)} away for a full release; for a reduction name less than "
                    + $"that.", "Civ. Code § 8128");
        }

        var reduced = matter.Options.Amount is not null;
        var leaf = new PaperBuilder(reduced ? "reduction-of-stop-payment-notice.pdf" : "release-of-stop-payment-notice.pdf", reduced
            ? "Reduction of Stop Payment Notice" : "Release of Stop Payment Notice");
        leaf.Head("California Civil Code section 8128");
        leaf.Line("Date", Day(matter.AsOf));
        Addressees.Put(leaf, matter, to, StopPaymentPaper.AttentionOf);
        leaf.Field("Claimant", [$"{matter.Facts.Claimant}\n{matter.Facts.Address}", .. NoticeContents.Reached(matter)]);
        var when = day is { } d ? $"on {Day(d)}" : "on the day written here: ______________";
        var whom = to.Count == 0 ? "" : $" to {Addressees.Names(to)}";
        var since = stands < amount && stands is { } left ? $", reduced since to {Dollars(left)}" : "";
        leaf.Field("Stop payment notice", $"Given {when}{whom}, in the amount of "
            + $"{(amount is { } a ? Dollars(a) : "$______________")}{since}");
        leaf.Field("Site", [.. NoticeContents.Site(matter)]);
        if (reduced)
        {
            leaf.Field("Amount of the reduction", matter.Options.Amount is { } reduction ? Dollars(reduction) : null);
            leaf.Field("Amount to be withheld under the notice from now on", stands is { } stated && matter.Options.Amount is { } less
                && Lowered.Left(stated, less) is { } rest ? Dollars(rest) : null);
            leaf.Say("Claimant reduces the stop payment notice described above by the amount stated in paragraph 4. The notice stands for "
                + "the amount stated in paragraph 5.");
        }
        else
        {
            leaf.Say("Claimant releases the stop payment notice described above entirely. Nothing is to be withheld on account of it "
                + "from now on.");
        }

        leaf.Say("This release concerns the stop payment notice only. It releases no other right of claimant.");
        Signing.Claimant(leaf, matter, "Civ. Code § 8128");
        return new Bundle([leaf], new Guide
        {
            To = to,
            Attention = StopPaymentPaper.AttentionOf,
            Manner = "How: any writing will do (§ 8128); send it by a method that lets you prove delivery.",
            First = [$"Whoever holds the money is free of the notice{(reduced ? " to that extent" : "")} from the moment this is given. Do "
                + "not hand it over until the money is in your account.", .. Owing(matter, reduced), .. Others(matter, given)],
            Steps = ["Sign in ink, with date and place, and keep a signed copy.",
                "Hand it over, or mail it by a method that lets you prove delivery.", ProofOfNotice.Step(ProvedNotice.StopPaymentRelease)],
            After =
            [
                $"{EntryName.Enter("stop-payment-released")}its day"
                    + (matter.Options.Amount is { } entered ? $", the amount of the reduction, {Dollars(entered)}," : "")
                    + $" and the notice it is for{(day is { } notice ? $", that of {Day(notice)}" : "")}.",
                "Other rights stay, and a new notice may follow while its time runs (§ 8128).",
            ],
        });
    }

    private static IEnumerable<string> Owing(Matter matter, bool reduced)
    {
        if (!reduced && (matter.Assessment.AmountOf(Remedy.StopPaymentNotice) ?? matter.Assessment.Amount).Demand is > 0 and var unpaid)
        {
            yield return $"By the job file {Dollars(unpaid)} of the demand is not paid. Be sure that a full release is meant; for a part "
                + "make the reduction.";
        }
    }

    // Whoever holds money on another notice goes on withholding it.
    private static IEnumerable<string> Others(Matter matter, StopPaymentGiven? given) => matter.Known.All<StopPaymentGiven>()
        .Where(n => given is not null && n != given && n.On == given.On)
        .Select(n => "Another stop payment notice was given that day, to "
            + $"{string.Join("; ", n.To.Select(id => OneLine(Clean(matter.Job.Party(id)?.Name) ?? id)))}. This paper does not release "
            + "it: if "
            + "it is to be released too, make a paper for it, named by the one to whom it was given.");
}
