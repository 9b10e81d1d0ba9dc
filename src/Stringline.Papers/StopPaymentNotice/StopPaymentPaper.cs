using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.StopPaymentNotice;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.StopPaymentNotice;

/// <summary>
/// The stop payment notice, plain or bonded, to an owner or construction lender (Civ. Code §§ 8500-8538), and to a public entity
/// (§§ 9350-9362). Signed and verified; it claims only what is due for work provided through its day.
/// </summary>
internal static class StopPaymentPaper
{
    /// <summary>Both papers.</summary>
    public static IEnumerable<Paper> Papers => [Private, Public];

    private static Paper Private { get; } = new("stop-payment-notice", "Stop Payment Notice", WritePrivate)
    {
        Sections = "Civ. Code §§ 8102, 8502",
        Use = PaperUse.Given,
        Works = [WorkKind.Private],
        Words = $"The claimant, to the owner or the construction lender, to have money withheld.",
        Asks = [new(PaperInput.To), new(PaperInput.Bonded)],
        Deadline = "stop-payment-notice.last-day",
        AlsoServes = ["stop-payment-notice.owner", "stop-payment-notice.lender", "stop-payment-notice.owner-demand"],
        ProvedAs = ProvedNotice.StopPayment,
        Entries = [Given],
    };

    private static Paper Public { get; } =
        new("public-stop-payment-notice", "Stop Payment Notice, Public Works", PublicStopPaymentPaper.Write)
    {
        Sections = "Civ. Code §§ 8102, 9352",
        Use = PaperUse.Given,
        Works = [WorkKind.Public],
        Words = $"The claimant, to the public entity, to have money withheld.",
        Asks = [new(PaperInput.To)],
        Deadline = "stop-payment-notice.last-day",
        AlsoServes = ["stop-payment-notice.money-out"],
        ProvedAs = ProvedNotice.StopPayment,
        Entries = [Given],
    };

    private static EntryAfter Given => new("stop-payment-given", "It was given: day, to whom, amount")
    {
        To = _ => [],
        Fill = now =>
        [
            new Filled.By(Manner.CertifiedMail),
            .. now.Assessment.AmountOf(Remedy.StopPaymentNotice) is { IsUnknown: false, Demand: > 0 and var held }
                ? [new Filled.Sum("amount", held)] : (Filled[])[],
            .. now.Options.Bonded ? [new Filled.Ticked("bonded")] : (Filled[])[],
        ],
    };

    private static Bundle WritePrivate(Matter matter)
    {
        var to = ToWhom(matter);
        if (!AnswersOwner(matter))
            matter.NotIfLost("stop-payment-notice.last-day", "The right to give a stop payment notice is lost.");
        NoticeFirst(matter, "Civ. Code §§ 8200(a), 8508(a)");
        foreach (var party in to)
            NotTo(matter, party);
        if (matter.Options.Bonded && to.Any(p => p.Capacity != PartyCapacity.ConstructionLender))
        {
            matter.Refuse("bond-to-owner", Place.Of(PaperInput.Bonded), $"A bond goes only with a notice to a construction lender.",
                $"Make the notice to the lender by itself with {new InputName(PaperInput.To, PaperInput.Bonded)}; the owner's "
                    + $"without.", "Civ. Code § 8532");
        }

        var due = (matter.Assessment.AmountOf(Remedy.StopPaymentNotice) ?? matter.Assessment.Amount).Demand;
        List<PaperBuilder> leaves = [];
        foreach (var (party, i) in to.Select((p, i) => (p, i)))
        {
            var lender = party.Capacity == PartyCapacity.ConstructionLender;
            // Toward a lender whose preliminary notice came late only what that notice reaches is claimed (Civ. Code § 8204(a)).
            var demand = lender ? matter.Assessment.Find(PrivateStopPayment.RowOf(matter.Job, party)!)?.Amount ?? due : due;
            var leaf = new PaperBuilder(to.Count == 1 ? "stop-payment-notice.pdf"
                : string.Create(CultureInfo.InvariantCulture, $"stop-payment-notice-{i + 1}.pdf"), "Stop Payment Notice")
                { Addressee = party, FootTo = FootTo(party, to) };
            leaf.Head($"Private works{(matter.Options.Bonded ? ", bonded" : "")}. California Civil Code sections 8102 and "
                + $"{(lender ? "8500 to 8538" : "8500 to 8522")}");
            leaf.Line("Date", Day(matter.AsOf));
            Addressees.Put(leaf, matter, [party], AttentionOf);
            leaf.Say($"{matter.Facts.Claimant} (“claimant”) gives notice of a claim and demands that "
                + $"{(lender ? "you withhold construction funds" : "you withhold money due or to become due to the direct contractor")} "
                + "sufficient to pay it, as the Civil Code provides.");
            if (to.Count > 1)
            {
                leaf.Say("This notice and those given to others for the same work state one and the same claim. It is to be paid once.");
            }

            Contents(leaf, matter, demand, "Civ. Code § 8502");
            if (matter.Options.Bonded && demand > 0)
            {
                leaf.Field("Bond",
                    $"A bond in the penal sum of {Dollars(ReleaseBond.AmountFor(demand, Bond(matter)))}, {Bond(matter)} of the claim, "
                    + "accompanies this notice (Civil Code section 8532).");
            }

            Signing.Claimant(leaf, matter, "Civ. Code § 8502(a)");
            Signing.Verify(leaf, matter, "stop payment notice", "Civ. Code § 8502(a)");
            leaves.Add(leaf);
            if (lender)
            {
                leaves.Add(Request(matter, party, leaf.FootTo,
                    leaf.FileName.Replace("stop-payment-notice", "request-for-notice-of-election", StringComparison.Ordinal)));
            }
        }

        if (leaves.Count == 0)
            leaves.Add(new PaperBuilder("stop-payment-notice.pdf", "Stop Payment Notice"));
        return new Bundle(leaves, new Guide
        {
            To = to,
            Attention = AttentionOf,
            Manner = Addressees.Manner,
            First =
            [
                "Claim only what is due for work provided through the day of the notice. One who willfully gives a false notice, or "
                    + "includes work not provided, forfeits the fund and the lien (§ 8504).",
                .. AmountInDoubt.Of(matter.Assessment.AmountOf(Remedy.StopPaymentNotice) ?? matter.Assessment.Amount, due, "notice"),
                .. WorkAhead.Counted(matter), .. WhatDiffers.Between(matter.Assessment.AmountOf(Remedy.StopPaymentNotice)
                    ?? matter.Assessment.Amount, matter.Assessment.Owed),
                .. Once(matter), .. LenderMissed(matter), .. InDoubt(matter, "stop-payment-notice.owner"),
                .. InDoubt(matter, "stop-payment-notice.lender"),
                .. to.Any(p => p.Capacity == PartyCapacity.ConstructionLender) && !matter.Options.Bonded
                    ? ["A lender may choose not to withhold on a notice without a bond (§ 8536). With a bond of "
                    + $"{Bond(matter)} of the claim "
                    + "from an admitted surety it must: make the paper again and say that a bond comes with it."] : Array.Empty<string>(),
            ],
            Steps =
            [
                $"Sign and verify in ink, with date and place, and keep a signed copy{Requests(to)}.",
                .. matter.Options.Bonded
                    ? [$"Attach the surety’s bond to the notice. The lender may object "
                        + $"within {matter.ByLaw(Number.ObjectToSureties)}; then bring an "
                    + $"admitted surety’s bond within {matter.ByLaw(Number.ReplaceBond).Count} (§ 8534)."] : Array.Empty<string>(),
                .. to.Any(p => p.Capacity == PartyCapacity.ConstructionLender)
                ? ["With the lender’s notice go the request for notice of election and a preaddressed, stamped envelope (§ 8538). The "
                + "notice counts only if it reaches the manager or another responsible person at the branch that holds the fund "
                + "(§ 8506(b))."] : Array.Empty<string>(),
                Send(to),
                ProofOfNotice.Step(ProvedNotice.StopPayment),
            ],
            After = [$"{EntryName.Enter("stop-payment-given")}its day, to whom, amount, and whether a bond came with it.",
                $"The action on it may begin after {matter.ByLaw(Number.NoActionOnNotice).Spelled} and must begin "
                    + $"within {matter.ByLaw(Number.SueOnNotice)} after the time to give the notice ends (§ 8550(a), "
                    + $"(b)). Within {matter.ByLaw(Number.TellOfAction).Spelled} after it is begun give notice of it to everyone who was "
                    + $"given this notice (§ 8550(e))."],
        });
    }

    // A foot that cannot hold the name says the capacity: what is cut alike tells no notice from another.
    // How much of the claim the bond of a bonded notice is for.
    private static NumberRow Bond(Matter matter) => matter.Assessment.Numbers.On(Number.BondOfNotice, matter.AsOf);

    private static string? FootTo(Party party, IReadOnlyList<Party> to)
    {
        if (OneLine(party.Name).Length <= PaperBuilder.FootName)
            return null;
        List<Party> alike = [.. to.Where(p => p.Capacity == party.Capacity)];
        var words = $"the {CapacityWords.Of(party)}";
        return alike.Count == 1 ? words
            : string.Create(CultureInfo.InvariantCulture, $"{words} ({alike.IndexOf(party) + 1} of {alike.Count})");
    }

    private static IReadOnlyList<Party> ToWhom(Matter matter)
    {
        if (matter.Options.To.Count > 0)
            return Addressees.WithAddress(matter, matter.Named(matter.Options.To), "Civ. Code § 8506");
        var owners = (matter.Job.Claimant.Role == ClaimantRole.DirectContractor && !AnswersOwner(matter)) || matter.Options.Bonded ? []
            : matter.In(PartyCapacity.Owner);
        IReadOnlyList<Party> to = [.. owners, .. matter.In(PartyCapacity.ConstructionLender)];
        if (to.Count == 0)
        {
            matter.Refuse("recipient-missing", Place.Parties, $"Nobody is there to whom this claimant may give it.",
                $"Add the owner or the construction lender. A direct contractor gives it to a construction lender only.",
                "Civ. Code §§ 8520(a), 8530");
        }

        return Addressees.WithAddress(matter, to, "Civ. Code § 8506");
    }

    // Who is given the owner's demand answers it for the lien's sake, though it gives the owner no other (Civ. Code § 8520(b)).
    private static bool AnswersOwner(Matter matter) =>
        matter.Assessment.Find("stop-payment-notice.owner-demand") is { Standing: Standing.Open or Standing.InDoubt };

    private static void NotTo(Matter matter, Party party)
    {
        switch (party.Capacity)
        {
            case PartyCapacity.Owner or PartyCapacity.Architect or PartyCapacity.OwnersAgent or PartyCapacity.Association:
                matter.NotIfLost(PrivateStopPayment.RowOf(matter.Job, party)!, "To the owner the right is lost.");
                break;
            case PartyCapacity.ConstructionLender:
                matter.NotIfLost(PrivateStopPayment.RowOf(matter.Job, party)!, "To the construction lender the right is lost.");
                break;
            case PartyCapacity.DirectContractor or PartyCapacity.Subcontractor or PartyCapacity.Surety or PartyCapacity.PublicEntity
                or PartyCapacity.Supplier:
                matter.Refuse("wrong-holder", Place.Of(PaperInput.To), $"{OneLine(party.Name)} is a {CapacityWords.Of(party)}.",
                    $"A stop payment notice on private work goes to the owner or to a construction lender.", "Civ. Code §§ 8520, 8530");
                break;
            default:
                throw new InvalidOperationException($"No such capacity: {party.Capacity}.");
        }
    }

    // Before the preliminary notice a stop payment notice is void. Where only a lender was missed, opinions may differ, and the sheet says
    // so.
    internal static void NoticeFirst(Matter matter, string section)
    {
        var missing = matter.Assessment.NoticeDueTo.Where(r => r.Who != PartyCapacity.ConstructionLender).ToList();
        if (missing.Count > 0)
        {
            matter.Refuse("notice-first", Place.Journal,
                $"The file shows no preliminary notice given to the {string.Join(", nor to the ", missing.Select(r => r.Words))}.",
                $"Give the preliminary notice first, and enter it. Both may go the same day, the preliminary notice first.", section);
        }
    }

    /// <summary>The line to whoever must receive it at a lender (Civ. Code § 8506(b)); null for any other.</summary>
    internal static string? AttentionOf(Party party) => party.Capacity == PartyCapacity.ConstructionLender
        ? "Attention: manager or other responsible person at the office or branch that holds or administers the construction funds" : null;

    private static string Requests(IReadOnlyList<Party> to) => to.Count(p => p.Capacity == PartyCapacity.ConstructionLender) switch
    {
        0 => "",
        1 => "; sign the request for notice of election too",
        _ => "; sign each request for notice of election too",
    };

    // Each notice is made out to one of them.
    internal static string Send(IReadOnlyList<Party> to) =>
        (to.Count > 1 ? "Each numbered notice goes to its own addressee, whose name is on it. Mail or hand over every one of them "
        : "Mail it or hand it over ") + "by the act-by day.";

    internal static void Contents(PaperBuilder leaf, Matter matter, decimal demand, string section)
    {
        leaf.Field("Amount claimed", TypeStyle.BodyBold,
            NoticeContents.Demand(matter, demand, $"{section}(c)", " due for work provided through the date of this notice,"));
        NoticeContents.Put(leaf, matter, "General description of work");
        var total = matter.Need(PriceEstimate.Of(matter.Known) ?? Furnished(matter), "estimate-missing", new Place.OfHead("contract.price"),
            $"Add the agreed price, or the amounts of what was furnished.", $"{section}(b)");
        leaf.Field("Estimated total value", TypeStyle.BodyBold, total is { } value
            ? [Dollars(value), "This is an estimate of the total amount in value of the work provided and to be provided."] : [null]);
    }

    /// <summary>Where only unit prices are agreed: what was furnished, as the waterfall has it.</summary>
    private static decimal? Furnished(Matter matter) => matter.Assessment.Amount.Steps.FirstOrDefault(s => s.Id == "agreed-price")?.Amount;

    private static PaperBuilder Request(Matter matter, Party lender, string? footTo, string fileName)
    {
        var leaf = new PaperBuilder(fileName, "Request for Notice of Election") { Addressee = lender, FootTo = footTo };
        leaf.Head("California Civil Code section 8538");
        leaf.Line("Date", Day(matter.AsOf));
        Addressees.Put(leaf, matter, [lender], AttentionOf);
        leaf.Say($"With this request {matter.Facts.Claimant} gives you a stop payment notice for work at "
            + $"{matter.Facts.Street ?? matter.Facts.Legal}. If you elect not to withhold construction funds in response to it, claimant "
            + "requests notice of that election, and a copy of the payment bond if the election rests on one, within the time that "
            + "section 8538 allows. A preaddressed, stamped envelope is enclosed.");
        Signing.Claimant(leaf, matter, "Civ. Code § 8538");
        return leaf;
    }

    internal static IEnumerable<string> Once(Matter matter) => matter.Known.All<StopPaymentGiven>()
        .Select(n => $"The file shows a stop payment notice given{(n.On is DayFact.Exact on ? $" on {Day(on.Day)}" : "")}. Be sure that "
            + "another is meant.");

    private static IEnumerable<string> LenderMissed(Matter matter)
    {
        List<string> missed =
        [
            .. matter.Assessment.NoticeDueTo.Where(r => r.Who == PartyCapacity.ConstructionLender)
                .SelectMany(r => r.AnyOf.Select(Addressees.InSentence).DefaultIfEmpty(r.Words)),
        ];
        if (missed.Count > 0)
        {
            yield return $"The file shows no preliminary notice given to {(missed.Count == 1 ? missed[0] : $"any of these lenders: "
                + string.Join("; ", missed))}. Without it a notice to that lender is void, and one to the owner is in doubt (§§ 8200(a), "
                + $"8508(a)). One given now reaches only what was provided in the {matter.ByLaw(Number.NoticeLookBack)} before it and "
                + $"after (§ 8204): give it first.";
        }
    }

    private static IEnumerable<string> InDoubt(Matter matter, string finding)
    {
        if (matter.Assessment.Find(finding) is { Standing: Standing.InDoubt or Standing.Narrowed } doubt)
            yield return $"{doubt.Title}: {doubt.Standing.Word()}. {Matter.Said(doubt)}";
    }
}
