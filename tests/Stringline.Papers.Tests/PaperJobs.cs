using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Counting;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Preflight;
using Stringline.Papers.Waiver;
using static Stringline.Papers.Tests.Jobs;

namespace Stringline.Papers.Tests;

/// <summary>For every paper of the catalogue one invented job that fits it, assessed by the rules, and what must be said with it.</summary>
internal static class PaperJobs
{
    /// <summary>A supplier's private job with a lender: noticed in time, finished, and completed.</summary>
    public static JobFile Private() => Demo() with
    {
        Parties =
        [
            .. Demo().Parties,
            new Party { Id = "p4", Capacity = PartyCapacity.ConstructionLender, Name = "Granger Slough Bank",
                Address = "600 Levee Street\nSacramento, CA 95814" },
            new Party { Id = "p5", Capacity = PartyCapacity.Surety, Name = "Quayside Surety Company",
                Address = "12 Bond Alley, Oakland, CA 94607" },
        ],
        Entries =
        [
            .. Demo().Entries,
            Noticed(2, "p1", "70121010000012345678"), Noticed(20, "p3", "9407111898765432101245"),
            Noticed(21, "p4", "9407111898765432101252"),
            new Completed { Index = 3, On = DayFact.On(Day("2026-05-01")), By = CompletionTheory.Actual },
        ],
    };

    private static NoticeGiven Noticed(int index, string to, string article) => new()
    {
        Index = index, On = DayFact.On(Day("2026-02-20")), Notice = NoticeKind.Preliminary, To = [to], Manner = Manner.CertifiedMail,
        Article = article,
    };

    /// <summary>The same with nothing given or finished yet, on the fourth day of furnishing.</summary>
    public static JobFile Begun() => Private() with { Entries = [Demo().Entries[0]] };

    /// <summary>The same with a recorded claim.</summary>
    public static JobFile Recorded() => Private().With(
        new ClaimServed { Index = 4, On = DayFact.On(Day("2026-05-18")), To = ["p1"], Manner = Manner.CertifiedMail,
            Article = "9407111898765432101238" },
        new ClaimRecorded { Index = 5, On = DayFact.On(Day("2026-05-20")), Amount = 84_250.00m, Instrument = "2026-0012345" });

    /// <summary>The same with an action filed.</summary>
    public static JobFile Sued() =>
        Recorded().With(new ActionFiled { Index = 6, On = DayFact.On(Day("2026-08-03")),
        Court = "Superior Court of California, County of Yolo", Case = "CV-2026-0419" });

    /// <summary>A direct contractor under a written contract, unpaid since a demand of February.</summary>
    public static JobFile Direct() => Demo() with
    {
        Claimant = Demo().Claimant with { Role = ClaimantRole.DirectContractor, HiredBy = "p1",
            License = new License { Required = true, Number = "1020304", Class = "B",
            Active = [new LicenseSpan(Day("2020-01-01"), null)] } },
        Parties = [.. Demo().Parties.Where(p => p.Capacity == PartyCapacity.Owner)],
        Entries = [Demo().Entries[0], new PaymentDemanded { Index = 1, On = DayFact.On(Day("2026-04-01")), Amount = 40_000m }],
    };

    /// <summary>A supplier to a subcontractor on a city's job.</summary>
    public static JobFile Public() => Private() with
    {
        Work = Private().Work with { Kind = WorkKind.Public, Use = null, Permit = null },
        Parties =
        [
            new Party { Id = "c1", Capacity = PartyCapacity.PublicEntity, Name = "City of Woodland",
                Address = "300 First Street, Woodland, CA 95695" },
            .. Private().Parties.Where(p => p.Id is "p2" or "p3" or "p5"),
        ],
        Entries =
        [
            .. Demo().Entries,
            Noticed(2, "c1", "70121010000012345678"), Noticed(20, "p3", "9407111898765432101245"),
            new Completed { Index = 3, On = DayFact.On(Day("2026-05-01")), By = CompletionTheory.Acceptance },
        ],
    };

    /// <summary>
    /// A landscape designer whose garden was never begun: hired by the owner in writing, with a permit, and its demand refused.
    /// </summary>
    public static JobFile Designed() => Demo() with
    {
        Claimant = Demo().Claimant with { Role = ClaimantRole.DesignProfessional, HiredBy = "p1" },
        Parties = [.. Demo().Parties.Where(p => p.Capacity == PartyCapacity.Owner).Select(p => p with { Reputed = false })],
        Contract = Demo().Contract with { Work = "Planting plans, grading plans and specifications." },
        Entries =
        [
            Demo().Entries[0],
            new PaymentDemanded { Index = 1, On = DayFact.On(Day("2026-04-20")), Amount = 84_250m, To = ["p1"], OfDefault = true },
            new WorkWillNotCommence { Index = 2, On = DayFact.On(Day("2026-04-15")) },
        ],
    };

    /// <summary>The same with the design professional's lien recorded.</summary>
    public static JobFile DesignRecorded() => Designed().With(
        new ClaimRecorded { Index = 3, On = DayFact.On(Day("2026-05-06")), Amount = 84_250m, Instrument = "2026-0012345",
            Lien = LienKind.Design });

    /// <summary>The same, and work commenced on June 1, 2026 after all, which ended that lien (Civ. Code § 8306(b)(1)).</summary>
    public static JobFile Commenced() => DesignRecorded() with { Work = Designed().Work with { Commenced = Day("2026-06-01") } };

    /// <summary>The private job with a stop payment notice to owner and lender, and an action on it.</summary>
    public static JobFile SuedOnNotice() => Private().With(
        new StopPaymentGiven { Index = 4, On = DayFact.On(Day("2026-05-07")), To = ["p1", "p4"], Amount = 84_250m, Bonded = true,
            BondAmount = 105_312.50m, Manner = Manner.CertifiedMail },
        new ActionFiled { Index = 5, On = DayFact.On(Day("2026-06-15")), Enforces = [ActionOn.StopPaymentNotice],
            Court = "Superior Court of California, County of Yolo", Case = "CV-2026-0377" });

    /// <summary>The city's job with a stop payment notice, and the direct contractor's affidavit for release.</summary>
    public static JobFile Contested() => Public().With(
        new StopPaymentGiven { Index = 4, On = DayFact.On(Day("2026-05-07")), To = ["c1"], Amount = 84_250m,
            Manner = Manner.CertifiedMail },
        new ReleaseAffidavitServed { Index = 5, On = DayFact.On(Day("2026-06-01")), AnswerBy = Day("2026-06-15"), Amount = 30_000m,
            Ground = ReleaseGround.Excessive });

    /// <summary>The direct contractor's own file of the city's job, on which its mason gave the city a stop payment notice.</summary>
    public static JobFile Withheld() => Public() with
    {
        Claimant = Direct().Claimant with { HiredBy = "c1" },
        Parties = [.. Public().Parties.Where(p => p.Id is "c1" or "p2" or "p5")],
        Contract = Demo().Contract with { On = Day("2026-01-05"), Price = 640_000m,
            Work = "Construction of the Alder Court library, masonry and site work included." },
        Entries = [new Furnished { Index = 0, On = DayFact.On(Day("2026-02-16")), Until = DayFact.On(Day("2026-03-27")),
            Amount = 84_250.00m }],
    };

    /// <summary>The same with a claim to the city, received and not answered.</summary>
    public static JobFile Claimed() => Withheld().With(
        new DisputeClaimSent { Index = 1, On = DayFact.On(Day("2026-05-21")), Amount = 31_600m, Received = Day("2026-05-26"),
            Manner = Manner.CertifiedMail });

    /// <summary>The job, the day and what is said, by the paper's id. A paper without a row here fails a test.</summary>
    public static (JobFile Job, LocalDate AsOf, PaperOptions Options) For(string id) => id switch
    {
        "preliminary-notice" => (Begun(), Day("2026-02-20"), PaperOptions.None),
        "public-preliminary-notice" => (Public() with { Entries = [Demo().Entries[0]] }, Day("2026-02-20"), PaperOptions.None),
        "proof-of-notice" => (Private(), Day("2026-03-02"), PaperOptions.None),
        "certified-mail-sheet" => (Recorded(), Day("2026-06-01"), PaperOptions.None),
        "waiver-8132" => (Private(), Day("2026-04-01"),
            new PaperOptions { Through = Day("2026-03-27"), Amount = 12_000.50m, Maker = "Łukasz Masonry, Inc.", Releases = 84_250m }),
        "waiver-8134" => (Private(), Day("2026-04-20"),
            new PaperOptions { Through = Day("2026-03-27"), Amount = 12_000.50m, PaymentCleared = Day("2026-04-15"), Releases = 84_250m }),
        "waiver-8136" => (Private(), Day("2026-05-06"),
            new PaperOptions { Amount = 84_250m, Maker = "Łukasz Masonry, Inc.", Disputed = 1_500m }),
        "waiver-8138" => (Private(), Day("2026-05-06"), new PaperOptions { PaymentCleared = Day("2026-05-05"), Releases = 84_250m }),
        "payment-demand" => (Private(), Day("2026-05-06"), new PaperOptions { Day = Day("2026-05-20") }),
        "stop-work-notice" => (Direct(), Day("2026-06-16"), new PaperOptions { Day = Day("2026-05-01") }),
        "security-demand" =>
            (Direct() with { Contract = Direct().Contract with { Price = 6_000_000m } }, Day("2026-06-16"), PaperOptions.None),
        "dispute-claim" => (Withheld(), Day("2026-05-20"), new PaperOptions
        {
            Amount = 31_600m, ExtensionDays = 9,
                Documents = ["Change order request 7 of March 4, 2026, with its prices", "Daily logs of March 2 to 13, 2026"],
            Words = "On March 2, 2026, the footing of the north wall was found to stand on fill that no boring shows. It was dug out and "
                + "poured anew by direction of the city’s engineer.",
        }),
        "conference-demand" => (Claimed(), Day("2026-07-20"), new PaperOptions
        {
            Words = "Whether the fill under the north wall is a changed condition under section 4 of the contract, and its price.",
        }),
        "disputed-portion" =>
            (Claimed().With(new ConferenceHeld { Index = 2, On = DayFact.On(Day("2026-08-03")) }), Day("2026-08-20"), new PaperOptions
        {
            Amount = 24_600m,
            Words = "The price of the footing that was poured anew; the nine days of extension were granted at the conference.",
        }),
        "claim-request" => (Public(), Day("2026-05-20"), new PaperOptions
        {
            Amount = 8_750m, Documents = ["Delivery tickets 411 to 418"],
            Words = "Eight pallets of limestone were cut anew after the drawings of the sills were changed on March 9, 2026.",
        }),
        "action-notice" => (SuedOnNotice(), Day("2026-06-16"), PaperOptions.None),
        "counteraffidavit" =>
            (Contested(), Day("2026-06-05"), new PaperOptions { Words = "The affidavit says that 12 sills were never delivered. They were "
            + "delivered on March 20, 2026, and signed for at the site." }),
        "release-affidavit" => (Withheld(), Day("2026-05-20"), new PaperOptions
        {
            To = ["p2"], Grounds = [ReleaseGround.Excessive], Amount = 12_400m, Day = Day("2026-05-07"),
            Words = "The notice claims the whole of invoice 88. The subcontractor set 31 of the 62 sills that the invoice lists; the other "
                + "31 were never delivered to the site.",
        }),
        "converted-claim" => (Commenced(), Day("2026-06-10"), PaperOptions.None),
        "design-lien-release" =>
            (DesignRecorded().With(new Paid { Index = 4, On = DayFact.On(Day("2026-06-01")), Amount = 84_250m }), Day("2026-06-10"),
            PaperOptions.None),
        "notice-of-completion" => (Private(), Day("2026-05-06"), new PaperOptions { Words = "Fee simple" }),
        "stop-payment-notice" => (Private(), Day("2026-05-06"), PaperOptions.None),
        "public-stop-payment-notice" => (Public(), Day("2026-05-06"), PaperOptions.None),
        "stop-payment-release" =>
            (Private().With(new StopPaymentGiven { Index = 4, On = DayFact.On(Day("2026-05-07")), To = ["p1"], Amount = 84_250m }),
            Day("2026-06-01"), PaperOptions.None),
        "bond-notice" => (Private(), Day("2026-05-06"), new PaperOptions { Number = "QS-4471" }),
        "public-bond-notice" => (Public(), Day("2026-05-06"), PaperOptions.None),
        "claim" => (Private(), Day("2026-05-06"), PaperOptions.None),
        "amended-claim" => (Recorded(), Day("2026-06-01"), PaperOptions.None),
        "design-lien-demand" => (Designed() with { Entries = [Demo().Entries[0]] }, Day("2026-04-20"), PaperOptions.None),
        "design-lien" => (Designed(), Day("2026-05-06"), PaperOptions.None),
        "notice-of-credit" =>
            (Recorded(), Day("2026-06-01"), new PaperOptions { Until = Day("2026-11-30"), Words = "Owner pays $14,000.00 on the first day "
            + "of each month, beginning July 1, 2026." }),
        "notice-of-pendency" => (Sued(), Day("2026-08-05"), PaperOptions.None),
        "release" => (Recorded(), Day("2026-06-01"), PaperOptions.None),
        "partial-release" => (Recorded(), Day("2026-06-01"), new PaperOptions { Amount = 20_000m }),
        "release-demand" => (Recorded(), Day("2026-09-01"), PaperOptions.None),
        _ => throw new ArgumentOutOfRangeException(nameof(id), id, "No job fits this paper: add one."),
    };

    public static Assessment Assess(JobFile job, LocalDate asOf) => Assessment.Of(job, asOf, OpenDays.Statutory);

    public static PacketOutcome Outcome(string id, JobFile job, LocalDate asOf, PaperOptions options) =>
        PaperMaker.Make(id, job, Assess(job, asOf), options);

    /// <summary>What is told, and for a waiver the figure that it releases by this file: its maker has read it and typed it.</summary>
    public static PaperOptions Typed(string id, JobFile job, LocalDate asOf, PaperOptions options) =>
        PaperCatalogue.Find(id)?.Waiver is { } form && WaiverOrder.Of(form, job, Assess(job, asOf), options).Outlook is { } outlook
            ? options with { Releases = outlook.Released, ThroughAgain = options.Through } : options;

    /// <summary>The paper for its fitting job, changed or not.</summary>
    public static PacketOutcome.Made Make(string id, Func<JobFile, JobFile>? job = null, Func<PaperOptions, PaperOptions>? options = null,
        LocalDate? asOf = null)
    {
        var fitting = For(id);
        var (facts, day) = (job?.Invoke(fitting.Job) ?? fitting.Job, asOf ?? fitting.AsOf);
        var outcome = Outcome(id, facts, day, Typed(id, facts, day, options?.Invoke(fitting.Options) ?? fitting.Options));
        if (outcome is PacketOutcome.Refused refused)
            Assert.Fail(string.Join("\n", refused.Refusals));
        var made = Assert.IsType<PacketOutcome.Made>(outcome);
        foreach (var file in made.Files)
            Kept.Keep($"{id}--{file.Name}", file);
        return made;
    }

    /// <summary>The reasons against it, for its fitting job changed.</summary>
    public static IReadOnlyList<Refusal> Refusals(string id, Func<JobFile, JobFile>? job = null, Func<PaperOptions,
        PaperOptions>? options = null, LocalDate? asOf = null)
    {
        var fitting = For(id);
        return Assert.IsType<PacketOutcome.Refused>(Outcome(id, job?.Invoke(fitting.Job) ?? fitting.Job, asOf ?? fitting.AsOf,
            options?.Invoke(fitting.Options) ?? fitting.Options)).Refusals;
    }

    /// <summary>The text of one of the papers.</summary>
    public static string TextOf(this PacketOutcome.Made made, int file = 0) => ReadBack.Of(made.Files[file].Bytes).Text;

    /// <summary>Whether one of the papers says something, across lines or down a column.</summary>
    public static bool Says(this PacketOutcome.Made made, string text, int file = 0)
    {
        var read = ReadBack.Of(made.Files[file].Bytes);
        return read.Text.Contains(text, StringComparison.Ordinal) || read.Columns()
            .Contains(string.Concat(text.Where(c => c != ' ')), StringComparison.Ordinal);
    }

    /// <summary>The text of the sheet that goes with them.</summary>
    public static string SheetText(this PacketOutcome.Made made) => ReadBack.Of(made.Files[^1].Bytes).Text;
}
