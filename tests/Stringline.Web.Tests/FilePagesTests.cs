using Stringline.Web.Entering;
using System.Text.RegularExpressions;
using Stringline.Office.DemoOffice;
using Stringline.Office.Entering;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Store;

namespace Stringline.Web.Tests;

/// <summary>The file in parts, the time after recording, and what all pages of facts have in common.</summary>
public sealed partial class FilePagesTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    private const string Hostile = "<script>alert(1)</script>\"'><img src=x onerror=alert(2)>";

    [Fact]
    public async Task Every_page_of_facts_answers_with_the_caution_and_without_code_inside()
    {
        string[] addresses =
        [
            "/job/1/enter", "/job/1/file", "/job/1/after-recording", "/job/1/prove?entry=0", "/job/1/enter?supersedes=e1",
                "/job/1/enter?what=withdrawn&supersedes=e1",
            .. EntryForms.All.Where(form => form != EntryForms.TakeBack).Select(form => $"/job/1/enter?what={form.What}"),
            .. HeadForms.All.Select(part => $"/job/1/file?part={part.Word}"),
        ];
        foreach (var address in addresses)
        {
            var page = await desk.Page(address);
            Assert.Contains(Assessment.Caution, page, StringComparison.Ordinal);
            Assert.DoesNotMatch(InlineCode(), page);
            var ids = Id().Matches(page).Select(id => id.Groups[1].Value).ToList();
            Assert.Equal(ids.Distinct().Count(), ids.Count);
        }
    }

    [Fact]
    public async Task A_hostile_name_becomes_no_markup_on_any_page_of_facts()
    {
        var job = DraftTests.Owed(Hostile);
        var id = Put(job with
        {
            Parties = [job.Parties[0] with { Name = Hostile }],
            Entries = [.. job.Entries.Take(1).Select(entry => (Furnished)entry with { Ref = Hostile, Text = Hostile }),
                new ClaimRecorded { Index = 1, Id = "e2", On = DayFact.On(new LocalDate(2026, 7, 1)), Instrument = Hostile }],
        });
        string[] pages =
        [
            await desk.Page($"/job/{id}"), await desk.Page($"/job/{id}/enter?what=notice-given"),
                await desk.Page($"/job/{id}/enter?what=paid"), await desk.Page($"/job/{id}/enter?supersedes=e1"),
            await desk.Page($"/job/{id}/file"), await desk.Page($"/job/{id}/file?part=parties"),
                await desk.Page($"/job/{id}/after-recording"), await desk.Page($"/job/{id}/prove?entry=0"),
            await new FilledForm(desk, $"/job/{id}/enter?what=paid").With("f-when", "on").With("f-when-on", "2026-07-01")
                .With("f-amount", "1").With("f-from", Hostile).Look(),
        ];
        Assert.All(pages, page =>
        {
            Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
            Assert.DoesNotContain("<img", page, StringComparison.Ordinal);
            Assert.Contains("&lt;script&gt;alert(1)", page, StringComparison.Ordinal);
        });
    }

    [Fact]
    public async Task A_part_of_the_file_is_changed_after_what_it_changes_was_shown_and_keeps_what_it_was()
    {
        var id = Put(DraftTests.Owed());
        var form = new FilledForm(desk, $"/job/{id}/file?part=contract").With("f-contract.on", "2026-01-05")
            .With("f-contract.written", "false").With("f-contract.price", "12,000.00");
        var confirmation = await form.Look();
        Assert.Contains("$10,000.00", confirmation, StringComparison.Ordinal);
        Assert.Contains("$12,000.00", confirmation, StringComparison.Ordinal);
        Assert.Equal($"/job/{id}/file#contract", await form.Confirm(confirmation));
        var open = desk.Office.Open(id)!;
        Assert.Equal((12_000m, false), (open.Facts.Contract.Price, open.Facts.Contract.Written));
        Assert.Equal(10_000m, open.Stored.KnownOn(new LocalDate(2026, 7, 14)).Contract.Price);
    }

    [Fact]
    public async Task A_party_is_added_with_an_id_of_its_own_and_one_that_is_named_elsewhere_cannot_be_taken_out()
    {
        var id = Put(DraftTests.Owed());
        var address = $"/job/{id}/file?part=parties";
        await new FilledForm(desk, address)
            .With("f-parties[0].name", "Alder Holdings, LLC").With("f-parties[0].capacity", "owner")
            .With("f-parties[0].holdsTitleAs.form", "trust")
            .With("f-parties[0].holdsTitleAs.trust", "Alder Family Trust")
            .With("f-parties[0].holdsTitleAs.persons", "Fenn, Mara\nTidewater, Jules, Jr.\n= Granger Slough Bank")
            .With("f-parties[1].name", "Granger Slough Bank").With("f-parties[1].capacity", "construction-lender")
            .With("f-parties[1].reputed", "true").Save();
        var parties = desk.Office.Open(id)!.Facts.Parties;
        Assert.Equal(["p1", "p2"], parties.Select(party => party.Id));
        Assert.Equal(["Fenn", "Tidewater", null], parties[0].HoldsTitleAs!.Persons.Select(person => person.Surname));
        Assert.True(parties[1].Reputed);

        var page = await new FilledForm(desk, address)
            .With("f-parties[0].name", "Alder Holdings, LLC").With("f-parties[0].capacity", "owner").With("f-parties[0].out", "true")
            .With("f-parties[1].name", "Granger Slough Bank").With("f-parties[1].capacity", "construction-lender").Look();
        Assert.Contains("Nothing was written yet", page, StringComparison.Ordinal);
        Assert.Equal(2, desk.Office.Open(id)!.Facts.Parties.Count);
    }

    [Fact]
    public async Task What_is_wrong_in_the_file_stands_beside_its_field()
    {
        var id = Put(DraftTests.Owed());
        var page = await new FilledForm(desk, $"/job/{id}/file?part=contract").With("f-contract.price", "lots")
            .With("f-contract.on", "2026-02-30").Look();
        Assert.Contains("id=\"fault-contract.price\"", page, StringComparison.Ordinal);
        Assert.Contains("id=\"fault-contract.on\"", page, StringComparison.Ordinal);
        Assert.Equal(10_000m, desk.Office.Open(id)!.Facts.Contract.Price);
    }

    public static TheoryData<Sentence, string?> Asked => new()
    {
        { $"Did a tenant contract for the work?{new HeadField("work.orderedByTenant"):aside}",
            "/job/7/file?part=work#work.orderedByTenant" },
        { $"When was the license active? Add {new HeadField("claimant.license.active")}.",
            "/job/7/file?part=claimant#claimant.license.active" },
        { $"Furnished the last? Add {EntryKinds.Of<FurnishingEnded>()}.", "/job/7/enter?what=furnishing-ended" },
        { $"Then they run from it{EntryKinds.Of<Completed>().Saying("by actual"):add}.", "/job/7/enter?what=completed" },
        { $"Was it subject to acceptance{new HeadField("work.subjectToAcceptanceBy"):add}.",
            "/job/7/file?part=work#work.subjectToAcceptanceBy" },
        { $"Did Sallow Millwork agree to the plans?{new HeadField("parties.madeToPlans"):aside}", "/job/7/file?part=parties#parties" },
        { $"When was it put in the mail?{EntryKinds.Of<OwnerToldUs>().At("mailed"):aside}", "/job/7/enter?what=owner-told-us" },
        { $"Is it the whole?{new IPointer[] { EntryKinds.OwnerRecorded.At("contractOf"), new HeadField("work.units") }:aside}",
            "/job/7/file?part=work#work.units" },
        { $"Who is the owner? The file names none, and notice is due to it.", null },
        { $"Who is {"Acme (work.use), add furnishing-ended"}?", null },
    };

    [Theory]
    [MemberData(nameof(Asked))]
    public void A_question_leads_to_the_field_that_answers_it(Sentence question, string? address) =>
        Assert.Equal(address, QuestionLinks.Of(7, new Question(question))?.Address);

    [Fact]
    public void A_question_about_what_an_entry_leaves_out_leads_to_the_correction_of_that_entry()
    {
        var entry = new OwnerRecorded { Index = 3, Id = "e4", On = DayFact.On(new LocalDate(2026, 7, 1)), Notice = OwnerNotice.Completion };
        var question = new Question($"Is it settled?{EntryKinds.OwnerRecorded.At("heldIneffective"):aside}") { Corrects = entry };
        Assert.Equal("/job/7/enter?supersedes=e4", QuestionLinks.Of(7, question)?.Address);
    }

    [Fact]
    public async Task A_party_is_asked_what_its_capacity_asks_and_no_more()
    {
        var id = Put(DraftTests.Owed());
        var address = $"/job/{id}/file?part=parties";
        await new FilledForm(desk, address)
            .With("f-parties[0].name", "Alder Holdings, LLC").With("f-parties[0].capacity", "owner")
            .With("f-parties[1].name", "Sallow Millwork, Inc.").With("f-parties[1].capacity", "supplier")
            .With("f-parties[1].madeToPlans", "false")
            .With("f-parties[2].name", "Granger Slough Bank").With("f-parties[2].capacity", "construction-lender")
            .With("f-parties[2].knownSince", "2026-05-02").Save();
        var parties = desk.Office.Open(id)!.Facts.Parties;
        Assert.False(parties[1].MadeToPlans);
        Assert.Equal(new LocalDate(2026, 5, 2), parties[2].KnownSince);

        var page = await desk.Page(address);
        foreach (var (field, asked) in (IEnumerable<(string, int[])>)[("madeToPlans", [1, 3]), ("knownSince", [2, 3]),
            ("holdsTitleAs.form", [0, 3])])
            Assert.Equal(asked, Enumerable.Range(0, 4).Where(i => page.Contains($"id=\"parties[{i}].{field}\"", StringComparison.Ordinal)));

        // What the form leaves out for a capacity is not lost by sending it.
        await new FilledForm(desk, address)
            .With("f-parties[0].name", "Alder Holdings, LLC").With("f-parties[0].capacity", "owner").With("f-parties[0].reputed", "true")
            .With("f-parties[1].name", "Sallow Millwork, Inc.").With("f-parties[1].capacity", "supplier")
            .With("f-parties[1].madeToPlans", "false")
            .With("f-parties[2].name", "Granger Slough Bank").With("f-parties[2].capacity", "construction-lender")
            .With("f-parties[2].knownSince", "2026-05-02").Save();
        Assert.True(desk.Office.Open(id)!.Facts.Parties[0].Reputed);
        Assert.Equal(new LocalDate(2026, 5, 2), desk.Office.Open(id)!.Facts.Parties[2].KnownSince);
    }

    [Fact]
    public async Task Every_field_named_by_a_question_of_the_demo_office_is_on_the_page_it_leads_to()
    {
        var met = 0;
        for (var job = 1; job <= DemoJobs.Usual; job++)
        {
            foreach (Match link in FileLink().Matches(await desk.Page($"/job/{job}")))
            {
                Assert.Contains($"id=\"{link.Groups[2].Value}\"", await desk.Page(link.Groups[1].Value), StringComparison.Ordinal);
                met++;
            }
        }

        Assert.NotEqual(0, met);
    }

    /// <summary>
    /// Recorded on Wednesday 1 July 2026: the ninetieth day after (Civ. Code § 8460(a)) is Tuesday 29 September. Counted on a calendar: 30
    /// days of July left, 31 of August, 29 of September.
    /// </summary>
    [Fact]
    public async Task After_recording_the_ninety_days_are_drawn_with_what_is_to_be_done()
    {
        var job = DraftTests.Owed();
        var id = Put(job with { Entries =
            [.. job.Entries, new ClaimRecorded { Index = 2, Id = "e3", On = DayFact.On(new LocalDate(2026, 7, 1)), Amount = 10_000m }] });
        Assert.Contains("No claim of lien that counts is recorded yet", await desk.Page("/job/1/after-recording"),
            StringComparison.Ordinal);

        // A completion is needed first: a claim before the direct contract is complete is too early.
        var page = await desk.Page($"/job/{id}/after-recording");
        Assert.Contains("last day 2026-09-29 (Tue)", page, StringComparison.Ordinal);
        Assert.Contains("the instrument number is not entered", page, StringComparison.Ordinal);
        Assert.Contains("90 days</text>", page, StringComparison.Ordinal);
        foreach (var what in (string[])["claim-recorded", "action-filed", "credit-recorded", "lis-pendens-recorded", "release-recorded",
            "release-demanded"])
            Assert.Contains($"/enter?what={what}", page, StringComparison.Ordinal);
    }

    private long Put(JobFile job) => Assert.IsType<PutOutcome.Added>(desk.Office.Add(new KeyedJob(Guid.NewGuid().ToString("N"), job))).Job;

    [GeneratedRegex("""<script(?![^>]*\bsrc=)|<style|\sstyle=|\son[a-z]+=""")]
    private static partial Regex InlineCode();

    [GeneratedRegex("""\sid="([^"]+)["]""")]
    private static partial Regex Id();

    [GeneratedRegex("""href="(/job/\d+/file\?part=[a-z]+)#([^"]+)["]""")]
    private static partial Regex FileLink();
}
