using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Recording;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.DesignLien;

/// <summary>
/// The design professional's claim of lien before the work commences, with what Civ. Code § 8304 has it state: name, amount, current owner
/// of record, legal description, permit or approval. It is no claim under § 8416, whose contents do not apply to it (§ 8308).
/// </summary>
internal static class DesignLienPaper
{
    private const string Section = "Civ. Code § 8304";
    private const string NoticeSection = "Civ. Code § 8304(c)";

    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("design-lien", "Claim of Design Professional’s Lien", Write)
    {
        Sections = "Civ. Code §§ 8302, 8304, 8306",
        Use = PaperUse.Recorded,
        Works = [WorkKind.Private],
        Words = $"A design professional hired by the landowner, before the work commences.",
        Deadline = "design-lien.last-day",
        Effect = new("Recorded, it burdens the land until work commences, and no longer than 90 days without a suit.", "Civ. Code § 8306"),
        Entries =
        [
            new("claim-recorded", "It was recorded: day, instrument number, amount, for a design professional's lien"),
        ],
    };

    private static Bundle Write(Matter matter)
    {
        OnlyDesigners(matter);
        matter.NotIfLost("design-lien.right", "The right to a design professional’s lien is lost.");
        matter.NotIfLost("design-lien.last-day", "The time to record is over.");
        var demand = Demanded(matter);
        var leaf = new PaperBuilder("claim-of-design-professionals-lien.pdf",
            "Claim of Design Professional’s Lien") { Return = RecordedClaims.Return(matter) };
        leaf.Head("California Civil Code sections 8300 and following");
        leaf.Say($"{matter.Facts.Claimant ?? "The undersigned"} (“claimant”) claims a design professional’s lien upon the real property "
            + "described in paragraph 4, and states:");
        leaf.Field("Design professional", [Name(matter), .. matter.Facts.License is { } license ? [license] : Array.Empty<string?>()]);
        leaf.Field("Amount of the claim", TypeStyle.BodyBold, NoticeContents.Demand(matter, Amount(matter), Section));
        leaf.Field(matter.Facts.SeveralOwners ? "Current owners of record" : "Current owner of record", OwnersOfRecord(matter));
        leaf.Field("Site", Site(matter));
        leaf.Field("Building permit or other approval", Permit(matter));
        leaf.Field("Services",
            matter.Need(matter.Facts.Work, "work-missing", new Place.OfHead("contract.work"), $"Say in a few words what services were "
            + $"rendered.", "Civ. Code § 8300"));
        leaf.Field("Contract", Contract(matter));
        leaf.Field("Notice of demand and default", demand is null ? null
            : $"Given to the {matter.OwnerWord} on {Day(demand.Value)}, at least {matter.ByLaw(Number.DefaultNotice)} before this claim is "
                + $"recorded. "
                + "The amount remains unpaid.");
        leaf.Say("The work of improvement for which the services were rendered has not commenced.");
        Signing.Claimant(leaf, matter, Section);
        Signing.Verify(leaf, matter, "claim", Section);
        return new Bundle([leaf], Guide(matter));
    }

    /// <summary>Reasons that both papers of this lien share.</summary>
    public static void OnlyDesigners(Matter matter)
    {
        if (matter.Job.Claimant.Role != ClaimantRole.DesignProfessional)
        {
            matter.Refuse("not-a-design-professional", new Place.OfHead("claimant.role"),
                $"The claimant is {NoticeContents.ARole(matter.Job.Claimant.Role)}.",
                $"This lien is for a design professional under a written contract with the landowner.", "Civ. Code § 8300");
        }

        if (matter.Facts.HiredBy is null)
        {
            matter.Refuse("hirer-missing", new Place.OfHead("claimant.hiredBy"), $"Nothing is there.",
                $"Name the party id of the landowner: the lien needs a contract with the landowner itself.", "Civ. Code § 8300");
        }
    }

    /// <summary>What the lien is for: neither preliminary notice nor a waiver form limits it (Civ. Code §§ 8302(b), 8308).</summary>
    public static decimal Amount(Matter matter) => matter.Assessment.AmountOf(Remedy.DesignLien)?.Demand ?? 0m;

    /// <summary>
    /// The day of the notice of default from which 10 days have run: one that covers the amount, since the claim is verified.
    /// </summary>
    private static LocalDate? Demanded(Matter matter)
    {
        if (matter.Assessment.Find("design-lien.first-day") is not { } first)
        {
            matter.NotEntered("payment-demanded", "no-demand", $"No demand on the owner is entered.",
                $"Give notice of the demand, the default and the amount ({new PaperName(DesignDemandPaper.Paper)}), and enter it "
                    + $"as {new KindName("payment-demanded")}. "
                + $"The claim may be recorded {matter.ByLaw(Number.DefaultNotice).Text} later.", NoticeSection);
            return null;
        }

        if (first is { Standing: Standing.NotYet, Band: { } band })
        {
            matter.Refuse("too-early", new Place.OfFinding(first.Id),
                $"The notice of the demand is not yet {matter.ByLaw(Number.DefaultNotice).Text} old on {Day(matter.AsOf)}.",
                $"Record on {Day(band.Earliest.Day)} or after.", NoticeSection);
        }
        else if (first.Standing is not Standing.Open)
        {
            matter.Refuse("no-notice-of-default", new Place.OfFinding(first.Id),
                Sentence.Join(" ", first.Why.Select(w => w.Sentence)),
                $"Give notice of the demand, the default and its amount now "
                    + $"({new PaperName(DesignDemandPaper.Paper)}), at least {matter.ByLaw(Number.DefaultNotice).Text} before recording. "
                + $"If the demand was such a notice for the whole amount, say {new FieldSaid("ofDefault", "true")} on its "
                + $"entry.{Sentence.Join("", first.Questions.Select(Then))}", NoticeSection);
        }

        return first.Why.SelectMany(w => w.Facts).OfType<PaymentDemanded>().Select(d => d.On).OfType<DayFact.Exact>()
            .Select(d => (LocalDate?)d.Day).FirstOrDefault();
    }

    private static Sentence Then(Question question) => $" {question.Sentence}";

    private static string? Name(Matter matter) =>
        matter.Facts.Claimant is { } name ? $"{name}{(matter.Facts.Address is { } address ? "\n" + address : "")}" : null;

    private static IReadOnlyList<string?> OwnersOfRecord(Matter matter)
    {
        foreach (var reputed in matter.Facts.Owners.Where(o => o.Reputed))
        {
            matter.Refuse("owner-not-of-record", Place.Of(matter.Job, reputed, "reputed"),
                $"{OneLine(reputed.Name)} is only reputed to be the owner.",
                $"Take the name from the deed: the claim states the current owner of record.", Section);
        }

        // A draft keeps the file's doubt, and so is sworn on belief (Code Civ. Proc. § 446(a)).
        var owners = RecordedClaims.Owners(matter);
        return [.. owners.Select((words, i) => words is not null && matter.Facts.Owners[i].Reputed ? $"{words} (reputed owner)" : words)];
    }

    private static IReadOnlyList<string?> Site(Matter matter)
    {
        if (matter.Facts.Legal is null)
        {
            matter.Refuse("legal-missing", new Place.OfHead("work.site.legal"), $"Nothing is there.",
                $"Add the legal description from the deed: the claim states it.", Section);
        }

        return NoticeContents.Site(matter);
    }

    private static string? Permit(Matter matter)
    {
        var permit = matter.Job.Work.Permit;
        var number = matter.Need(permit?.Number, "permit-missing", new Place.OfHead("work.permit.number"),
            $"Add the number of the building permit or other governmental approval that was obtained with the services; without one there "
            + $"is no such lien.", "Civ. Code § 8302");
        return number is null ? null : $"No. {number}{(Clean(permit?.Authority) is { } by ? $", {OneLine(by)}" : "")}";
    }

    /// <summary>The contract, with the one of several owners who made it where the file says who (Civ. Code § 8300).</summary>
    public static string? Contract(Matter matter) =>
        matter.Job.Contract.On is { } on ? $"Written contract of {Day(on)}, with {Landowner(matter)}" : matter.Job.Contract.Written == true
            ? $"Written contract with {Landowner(matter)}" : null;

    /// <summary>The landowner with whom the contract is: named where it is one of several.</summary>
    public static string Landowner(Matter matter) => !matter.Facts.SeveralOwners ? "the landowner"
        : matter.Facts is { Owners.Count: > 1, HiredBy: { Capacity: PartyCapacity.Owner } hirer } ? Addressees.InSentence(hirer)
        : "the landowners";

    /// <summary>
    /// That only one of several owners made the contract: the lien is for services under a contract with the landowner, who owns the site
    /// when it is recorded (Civ. Code §§ 8300, 8302(a)).
    /// </summary>
    public static IEnumerable<string> OneOfSeveral(Matter matter)
    {
        if (matter.Facts is { Owners.Count: > 1 and var owners, HiredBy: { Capacity: PartyCapacity.Owner } hirer })
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"The contract is with {Addressees.InSentence(hirer)}, one of "
                + $"{owners} owners, while the paper names them all. This lien is for services under a written contract with the landowner "
                + $"(§§ 8300, 8302(a)): it can bind the interest of the one who made the contract. Ask counsel, before you sign, whether "
                + $"it binds the others.");
        }
    }

    private static IReadOnlyList<Question> Unsure(Matter matter) => matter.Assessment.Find("design-lien.right")?.Questions ?? [];

    private static Guide Guide(Matter matter) => new()
    {
        ForWhat = $"{OneLine(matter.Facts.Claimant ?? "Claimant not named")}: {Dollars(Amount(matter))}",
        First =
        [
            .. OneOfSeveral(matter),
            "Do not sign unless you have seen that the work has not commenced: the claim says so under oath"
                + $"{(Unsure(matter).Any() ? ", and the file leaves it open" : "")}. Look at the site again on the morning you record. "
                + $"Once work "
                + "has commenced there is no such lien; the mechanics lien of § 8400 takes its place (§§ 8304, 8306, 8310).",
            matter.Facts.SeveralOwners
                ? "The owners named must be those of record on the day of recording; look them up again (§ 8302)."
                : "The owner named must be the one of record on the day of recording; look it up again (§ 8302).",
            "The amount is the lesser of the agreed fee and the reasonable value of the services, less deposits and payments (§ 8302).",
            $"There is no such lien on a single-family, owner-occupied residence whose expected cost of construction is "
                + $"under {matter.ByLaw(Number.LeastCostForDesignLien)} "
                + "(§ 8318).",
            .. Unsure(matter).Select(q => "The file leaves open: " + RefusalInWords.Said(q.Sentence)),
        ],
        Steps =
        [
            "Sign the claim and the verification in ink, and have a notary acknowledge the signature.",
            $"Record in the county of the site, at least {matter.ByLaw(Number.DefaultNotice)} after the notice of the demand and no later "
                + $"than {matter.ByLaw(Number.RecordDesignLien)} after you knew or "
                + "had reason to know that the work will not be commenced (§§ 8304, 8312).",
            $"No section requires that a copy be served on the {matter.OwnerWord}; mail one by certified mail anyway, as § 8416 requires "
                + "for a mechanics lien.",
        ],
        After =
        [
            $"{EntryName.Enter("claim-recorded")}that it is for a design professional’s lien, its day, amount and instrument number.",
            $"The lien ends {matter.ByLaw(Number.SueOnDesignLien)} after recording unless an action to enforce it is filed, and when the "
                + $"work commences (§ 8306). If it "
                + $"ended by commencement, record a mechanics lien within {matter.ByLaw(Number.ConvertDesignLien)} that says it is a "
                + $"converted design professional lien "
                + "(§ 8319; the paper “Claim of Mechanics Lien, Converted”).",
            "When it is paid, in whole or in part, record a document of satisfaction and release (§ 8306(c); the paper “Satisfaction and "
                + "Release of Design Professional’s Lien”).",
        ],
        Recording = new Recording(RecordedPaperKind.Other, 1, 0,
            "Gov. Code § 27287 lets a claim of lien under § 8416 be recorded without a notary. This is not such a claim, so it is prepared "
                + "to "
            + "be acknowledged, which is the safer reading; ask the office."),
    };
}
