using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Papers.Fees;
using Stringline.Papers.Indexing;
using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;
using Stringline.Papers.Prescribed;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>The packet for recording a claim of mechanics lien (Civ. Code § 8416): the claim, and the counter sheet.</summary>
/// <remarks>It reads no clock and touches no file: the day comes with the assessment, the bytes go to the caller.</remarks>
public static class ClaimPacket
{
    /// <summary>Makes the packet, or says why not.</summary>
    /// <param name="job">The facts.</param>
    /// <param name="assessment">What the law makes of them; days and amounts are taken from it and never worked out here.</param>
    /// <param name="office">The recorder's prices; null takes the shipped row of the site's county.</param>
    /// <param name="draft">Prints in spite of every reason against it, with DRAFT across each page; missing facts become blanks.</param>
    /// <param name="structure">Id of the one of several structures that the claim is on; null for the whole work.</param>
    /// <returns>The packet, or every reason why there is none.</returns>
    public static PacketOutcome Prepare(JobFile job, Assessment assessment, RecorderOffice? office, bool draft, string? structure = null) =>
        PrepareOrAmend(job, assessment, office, draft, earlier: null, structure);

    /// <summary>The same for a claim that may stand on a recorded one.</summary>
    internal static PacketOutcome PrepareOrAmend(
        JobFile job, Assessment assessment, RecorderOffice? office, bool draft, EarlierClaim? earlier, string? structure = null)
    {
        var measure = new Measure();
        var facts = earlier is Conversion converted ? ClaimFacts.Of(job, assessment) with
            { Demand = converted.Unpaid, Contract = converted.Contract }
            : ClaimFacts.Of(job, assessment);
        var one = structure is null ? null : OneStructure.Of(job, assessment, facts, structure);
        facts = one?.Facts ?? facts;
        var service = Service.Of(job, assessment.AsOf, earlier?.MailedAfter);
        List<Refusal> refusals =
            [.. earlier?.Refusals ?? [], .. one?.Refusals ?? [],
            .. ClaimRefusals.Of(job, assessment, earlier, facts, service, office, measure)];
        if (refusals.Count > 0 && !draft)
            return new PacketOutcome.Refused(refusals);
        if (refusals.Where(SocialSecurityNumber.Is).ToList() is { Count: > 0 } secrets)
            return new PacketOutcome.Refused(secrets);
        if (refusals.Find(r => r.Id == "return-block-full" || TooLong.Is(r)) is { } full)
            return new PacketOutcome.Refused([full]);

        var plan = ClaimPaper.Plan(facts, service, earlier, assessment.AsOf, draft);
        var claim = Press.Print(plan, measure);
        var recorder = office
            ?? (facts.County is { } county ? RecorderTable.For(county, assessment.AsOf)
            : new RecorderOffice { County = "(county not named)" });
        var fee = RecordingFee.Of(recorder, Request(facts, service, claim.Pages) with
        {
            References = earlier is null ? 0 : 1,
            Until = assessment.Find(earlier?.Deadline ?? ClaimPaper.Deadline)?.ActBy,
        });
        var toldAtTheCounter = new CounterSheet(job, assessment, facts, service, fee, claim.Pages, refusals, earlier).Plan(draft, measure);
        if (Writing.Binding.UnsetOnSheet(toldAtTheCounter, refusals) is { } unset)
        {
            if (!draft)
                return new PacketOutcome.Refused([unset]);
            refusals.Add(unset);
        }

        var sheet = Press.Print(toldAtTheCounter, measure);

        List<PaperFile> files =
        [
            new(earlier?.FileName ?? ClaimPaper.FileName, ClaimPaper.TitleOf(earlier), claim.Pages, claim.Bytes),
            new(CounterSheet.FileName, CounterSheet.Title, sheet.Pages, sheet.Bytes) { IsSheet = true },
        ];
        List<PreflightReport> reports =
        [
            PaperPreflight.Check(files[0], Expected(facts, earlier, claim.Pages, draft) with { InOrder = plan.Says }),
            PaperPreflight.Check(files[1], new PaperExpectations { Pages = sheet.Pages, Draft = draft, InOrder = toldAtTheCounter.Says }),
        ];
        var failed = reports.SelectMany(r => r.Checks.Where(c => !c.Passed).Select(c => Writing.Binding.Failed(r, c))).ToList();
        return failed.Count > 0 && !draft
            ? new PacketOutcome.Refused(failed)
            : new PacketOutcome.Made(files, fee, reports, [.. refusals, .. failed]);
    }

    /// <summary>
    /// Gets fonts, writer and reader ready by printing and reading back one line, so that a program may do that on another core
    /// while it still reads the job file. It changes nothing in what <see cref="Prepare"/> gives.
    /// </summary>
    public static void GetReady()
    {
        var made = new LocalDate(2026, 1, 1);
        var printed = Press.Print(new PaperPlan { Title = "Ready", Foot = "Ready", Made = made,
            Blocks = [new Paragraph("Ready.", TypeStyle.Body)] });
        PaperPreflight.Check(new PaperFile("ready.pdf", "Ready", printed.Pages, printed.Bytes),
            new PaperExpectations { Pages = printed.Pages });
    }

    private static FeeRequest Request(ClaimFacts facts, Service service, int pages) => new()
    {
        Pages = pages,
        Parcels = facts.Parcels.Count,
        ParcelsTold = facts.Parcels,
        Names = Math.Max(2, facts.Names.Count),
        NamesAtEachAddress =
            [.. facts.Owners.GroupBy(o => Clean(o.Address) ?? o.Id).Select(g => IndexNames.Of(null, g).Count).DefaultIfEmpty(1)],
        ConformedCopy = true,
        ServedWithCertificateOfMailing = service.Mailings.Any(m => m.Manner == Manner.CertificateOfMailing),
    };

    private static PaperExpectations Expected(ClaimFacts facts, EarlierClaim? earlier, int pages, bool draft) => new()
    {
        Pages = pages,
        Draft = draft,
        Recorded = new RecordedPaper(ClaimPaper.TitleOf(earlier).ToUpperInvariant(), facts.Claimant ?? "", facts.Address ?? ""),
        Wording = PrescribedText.NoticeOfMechanicsLien,
        WordingPoints = 10,
        LastSentenceInCapitals = true,
        Signers = facts.Signer is { } signer ? [signer, signer] : [],
        MustHold =
        [
            .. facts.Owners.Select(o => Clean(o.Name)).OfType<string>().Select(OneLine),
            .. facts.Owners.SelectMany(IndexNames.OfOwner).Select(n => n.Written),
            .. new[] { facts.Claimant, facts.Work, facts.Street, facts.Apn is { } apn ? OneLine(apn) : null, facts.Legal,
                facts.OnStructure }.OfType<string>(),
            .. facts.Demand > 0 ? [Dollars(facts.Demand)] : Array.Empty<string>(),
            .. facts.IsDesignated ? facts.Works.Select(w => Dollars(w.Share!.Value)) : [],
        ],
    };
}
