using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.StopPaymentNotice;

/// <summary>
/// The claimant's counteraffidavit to the public entity against the direct contractor's affidavit for release of what is withheld, with the
/// proof of service of its copy on the direct contractor (Civ. Code § 9406).
/// </summary>
internal static class CounteraffidavitPaper
{
    private const string Section = "Civ. Code § 9406";
    private const string Deadline = "summary-release.answer-last-day";

    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("counteraffidavit", "Counteraffidavit", Write)
    {
        Sections = "Civ. Code §§ 9404, 9406",
        Use = PaperUse.Given,
        Works = [WorkKind.Public],
        Words = $"The claimant, to the public entity within the time its notice states, with proof that a copy was served on the direct "
            + $"contractor.",
        Asks = [new(PaperInput.Words, "On what specific basis each allegation of the affidavit is contested")],
        Deadline = Deadline,
        ProvedAs = ProvedNotice.Counteraffidavit,
        Entries = [new("counteraffidavit-served", "It was served: day, on whom, with proof") { To = _ => [] }],
    };

    // The law has one such time for each affidavit.
    private static Law.Reasoning.Finding? TimeFor(Matter matter, ReleaseAffidavitServed affidavit) => matter.Assessment.Findings
        .FirstOrDefault(f => f.Id.StartsWith(Deadline, StringComparison.Ordinal) && f.Why.Any(w => w.Facts.Contains(affidavit)));

    private static Bundle Write(Matter matter)
    {
        var affidavit = matter.Last<ReleaseAffidavitServed>();
        if (affidavit is null)
        {
            matter.Refuse("no-affidavit", Place.Journal, $"No affidavit of the direct contractor is entered.",
                $"Enter it as {new KindName("release-affidavit-served")} with its day and the day by which the public entity asks for the "
                + $"counteraffidavit.", "Civ. Code § 9404");
        }
        else if (TimeFor(matter, affidavit) is { Standing: Law.Reasoning.Standing.Lost } over)
        {
            matter.Refuse("too-late", new Place.OfFinding(over.Id), Matter.LawSays(over),
                $"After that time it releases the money. Serve it all the same if the money is still "
                    + $"there{new ForTheAsker($" ({new DraftName()} prints it)")}, and have "
                + $"counsel see to an action at once.", "Civ. Code § 9406(b)");
        }

        var basis = matter.Need(matter.Options.Words, "basis-missing", Place.Of(PaperInput.Words),
            $"Say on what specific basis each allegation of the affidavit is contested: "
                + $"{new InputTold(PaperInput.Words, "The affidavit says ...; in fact ...")}.",
            "Civ. Code § 9406(a)");
        var entity = Addressees.WithAddress(matter, matter.In(PartyCapacity.PublicEntity), "Civ. Code § 8108");
        var contractor = Addressees.WithAddress(matter, matter.In(PartyCapacity.DirectContractor), "Civ. Code § 8108");
        if (entity.Count == 0)
        {
            matter.Refuse("entity-missing", Place.Parties, $"No party with capacity {new FileWord(PartyCapacity.PublicEntity)} is there.",
                $"Add the public entity that withholds the money.", Section);
        }

        if (contractor.Count == 0)
        {
            matter.Refuse("contractor-missing", Place.Parties,
                $"No party with capacity {new FileWord(PartyCapacity.DirectContractor)} is there.",
                $"Add the direct contractor, on whom a copy is served.", Section);
        }

        var notice = matter.Last<StopPaymentGiven>();
        var leaf = new PaperBuilder("counteraffidavit.pdf", "Counteraffidavit");
        leaf.Head("Public works. California Civil Code section 9406");
        leaf.Line("Date", Day(matter.AsOf));
        Addressees.Put(leaf, matter, entity);
        var copy = affidavit?.On is DayFact.Exact served ? $" of which a copy was served on claimant on {Day(served.Day)}" : "";
        leaf.Say($"{matter.Facts.Claimant} (“claimant”) contests the affidavit of the direct contractor{copy}, by which the release of "
            + "funds withheld under claimant’s stop payment notice is demanded.");
        var given = notice?.On is DayFact.Exact on ? $" on {Day(on.Day)}" : "";
        var amount = notice?.Amount is { } sum ? $", in the amount of {Dollars(sum)}" : "";
        leaf.Field("Stop payment notice", notice is null ? null : $"Given{given}{amount}");
        leaf.Field("Amount of the claim", TypeStyle.BodyBold, [.. NoticeContents.Demand(matter, matter.Assessment.Amount.Demand, Section),
            .. WhatDiffers.BesideNotice(matter.Assessment.Amount.Demand, notice is null ? [] : [notice])]);
        leaf.Field("Amount of which release is demanded", affidavit is null ? null : affidavit.Amount is { } demanded ? Dollars(demanded)
            : "All that is withheld under the stop payment notice");
        NoticeContents.Put(leaf, matter, giver: "Claimant");
        leaf.Field("Basis on which the affidavit is contested", basis);
        Signing.Claimant(leaf, matter, Section);
        Signing.Verify(leaf, matter, "counteraffidavit", Section);
        return new Bundle([leaf, ProofOfNotice.Build(matter, ProvedNotice.Counteraffidavit, contractor)], new Guide
        {
            To = [.. entity, .. contractor],
            Manner = Addressees.MannerToArrive,
            First =
            [
                .. WhatDiffers.FromNotice(matter.Assessment.Amount.Demand, notice is null ? [] : [notice]),
                affidavit?.AnswerBy is { } last
                    ? $"The public entity asked for it by {DayOfWeek(last)}. It must be there by then, with the proof of service: "
                    + "otherwise the money is released at once (§ 9406(b))."
                    : $"The notice of the public entity states the "
                        + $"time, {matter.ByLaw(Number.LeastToAnswer).Count} to {matter.ByLaw(Number.MostToAnswer)} after it was served "
                        + $"(§ 9404). Without a "
                    + "counteraffidavit in that time, with the proof of service, the money is released at once (§ 9406(b)).",
                "It answers the affidavit point by point: details of the claim, and the specific basis on which each allegation is "
                    + "contested. With the affidavit it is the pleading in court (§ 9410). Have counsel read it.",
            ],
            Steps =
            [
                "Sign and verify in ink, with date and place, and keep a signed copy.",
                "First serve a copy on the direct contractor, at the address stated in its affidavit (§ 9402(c)); whoever serves it fills "
                    + "in and signs the proof of notice declaration that comes with it.",
                "Then serve the counteraffidavit on the public entity together with that declaration, which is the proof of service.",
            ],
            After = [$"{EntryName.Enter("counteraffidavit-served")}its day, on whom, how, and that the proof went with it. Either "
                + "side may then sue for a declaration of rights (§ 9408)."],
        });
    }
}
