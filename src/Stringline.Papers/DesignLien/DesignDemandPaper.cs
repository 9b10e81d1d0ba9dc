using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.DesignLien;

/// <summary>
/// The design professional's notice to the landowner of the demand, the default and the amount, at least 10 days before the claim is
/// recorded (Civ. Code § 8304).
/// </summary>
internal static class DesignDemandPaper
{
    private const string Section = "Civ. Code § 8304";

    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("design-lien-demand", "Design Professional’s Demand and Notice of Default", Write)
    {
        Sections = Section,
        Use = PaperUse.Given,
        Works = [WorkKind.Private],
        Words = $"A design professional to the landowner, 10 days before its claim of lien.",
        Asks = [new(PaperInput.Words, "What it says in words of your own")],
        Deadline = "design-lien.demand-last-day",
        ProvedAs = ProvedNotice.Default,
        Entries = [new("payment-demanded", "It was given: day, amount, that it says a default has occurred") { To = _ => [] }],
    };

    private static Bundle Write(Matter matter)
    {
        DesignLienPaper.OnlyDesigners(matter);
        matter.NotIfLost("design-lien.right", "The right to a design professional’s lien is lost.");
        matter.NotIfLost("design-lien.last-day", "The time to record is over.");
        matter.NotIfLost("design-lien.demand-last-day", $"{LawText.Capital(matter.ByLaw(Number.DefaultNotice).Spelled)} no longer fit "
            + $"between this notice and the last day to record.");
        if (matter.Facts.Owners.Count == 0)
        {
            matter.Refuse("owner-missing", Place.Parties, $"No party with capacity {new FileWord(PartyCapacity.Owner)} is there.",
                $"Add the landowner with the name on the deed.", Section);
        }

        var to = Addressees.WithAddress(matter, matter.Facts.Owners, Section);
        var leaf = new PaperBuilder("design-professionals-demand.pdf", "Design Professional’s Demand and Notice of Default");
        leaf.Head("California Civil Code section 8304");
        leaf.Line("Date", Day(matter.AsOf));
        Addressees.Put(leaf, matter, to);
        leaf.Say($"{matter.Facts.Claimant} (“claimant”) demands payment of the amount stated in paragraph 1 for services under a "
            + $"written contract with {DesignLienPaper.Landowner(matter)}, and gives notice of the default stated in paragraph "
            + "2. If it is not paid, a claim of design "
            + $"professional’s lien may be recorded against the property {matter.ByLaw(Number.DefaultNotice)} or more after this notice is "
            + $"given.");
        leaf.Field("Amount demanded", TypeStyle.BodyBold, NoticeContents.Demand(matter, DesignLienPaper.Amount(matter), Section));
        leaf.Field("Default", Clean(matter.Options.Words)
            ?? "The amount stated in paragraph 1 is due under the contract and has not been paid.");
        leaf.Field("Design professional", [
            Lines(matter.Need(matter.Facts.Claimant, "claimant-name-missing", new Place.OfHead("claimant.name"),
                $"Add the claimant’s full name.", Section),
                matter.Need(matter.Facts.Address, "claimant-address-missing", new Place.OfHead("claimant.address"),
                    $"Add the claimant’s address.", Section)),
            .. NoticeContents.Reached(matter),
            .. matter.Facts.License is { } license ? [license] : Array.Empty<string?>()]);
        leaf.Field("Services",
            matter.Need(matter.Facts.Work, "work-missing", new Place.OfHead("contract.work"), $"Say in a few words what services were "
            + $"rendered.", "Civ. Code § 8300"));
        leaf.Field("Site", [.. NoticeContents.Site(matter)]);
        Signing.Claimant(leaf, matter, Section);
        return new Bundle([leaf], new Guide
        {
            First = [$"The claim may be recorded no sooner than {matter.ByLaw(Number.DefaultNotice)} after this notice is given, and only "
                + $"while the work has not "
                + "commenced (§ 8304). Count from the day that can be proved.",
                .. NoDay(matter), .. DesignLienPaper.OneOfSeveral(matter)],
            To = to,
            Manner = "How: no section says how it is given (§ 8308 leaves out §§ 8100-8118). Certified mail, return receipt requested, "
                + "with a proof of "
                + "notice, is safe.",
            Steps = [Clean(matter.Options.Words) is null
                ? $"Paragraph 2 says that the amount is due and not paid. If the {matter.OwnerWord} failed "
                + "in more than "
                + "that, make the paper again and say it in words of your own."
                : "Paragraph 2 holds the default in your own words. Be sure that it is still true.",
                $"Sign in ink, with date and place, and keep a signed copy; mail one "
                    + $"to {(to.Count == 1 ? "the owner" : "each owner")} and keep the receipt{(to.Count == 1 ? "" : "s")}.",
                ProofOfNotice.Step(ProvedNotice.Default)],
            After = [$"{EntryName.Enter("payment-demanded")}its day, amount, to whom, and that it says a default has occurred."],
        });
    }

    // The days count from when the claimant knew, and the file need not say it.
    private static IEnumerable<string> NoDay(Matter matter)
    {
        if (matter.Assessment.Find("design-lien.demand-last-day") is null)
        {
            yield return "There is no act-by day yet: the file does not say since when you know, or have reason to know, that the work "
                + $"will not be commenced. The claim must be recorded within {matter.ByLaw(Number.RecordDesignLien)} from then, and this "
                + $"notice must come at least {matter.ByLaw(Number.DefaultNotice)} "
                + $"before it (§§ 8304(c), 8312). {EntryName.Enter("work-will-not-commence")}that day; the act-by day counts from it.";
        }
    }

    private static string? Lines(string? name, string? address) => name is null ? null : address is null ? name : $"{name}\n{address}";
}
