using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Preflight;

namespace Stringline.Papers.Tests;

/// <summary>What holds for every paper of the catalogue.</summary>
public sealed class CatalogueTests
{
    public static TheoryData<string> Ids() => [.. PaperCatalogue.All.Select(p => p.Id)];

    [Fact]
    public void Ids_are_unique_and_titles_are_there()
    {
        Assert.Equal(PaperCatalogue.All.Count, PaperCatalogue.All.Select(p => p.Id).Distinct().Count());
        Assert.All(PaperCatalogue.All,
            p => Assert.True(p.Title.Length > 5 && p.Sections.Contains('§', StringComparison.Ordinal) && p.Works.Count > 0
            && p.Words.ToString().EndsWith('.'), p.Id));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_paper_for_a_fitting_job_passes_its_preflight(string id)
    {
        var made = PaperJobs.Make(id);
        Assert.All(made.Preflight, r => Assert.True(r.Passed, r.ToString()));
        Assert.Equal(made.Files.Count, made.Preflight.Count);
        Assert.Equal(id == "notice-of-pendency" ? ["for-the-attorney"] : [], made.InTheWay.Select(r => r.Id));
    }

    /// <summary>Every recorded paper has what Gov. Code §§ 27324, 27361.6 ask of a first page, and a fee; no other has either.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void What_is_recorded_has_the_recorders_space_its_title_and_a_fee(string id)
    {
        var made = PaperJobs.Make(id);
        var recorded = PaperCatalogue.Find(id)!.Use == PaperUse.Recorded;
        Assert.Equal(recorded, made.Fee is not null);
        Assert.Equal(recorded, made.Preflight[0].Check("recorder’s space")?.Passed == true);
        Assert.Equal(recorded, made.Preflight[0].Check("title")?.Passed == true);
        Assert.Equal(recorded, made.Preflight[0].Check("return block")?.Passed == true);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_sheet_carries_the_caution_and_a_recorded_paper_does_not(string id)
    {
        var made = PaperJobs.Make(id);
        Assert.Contains(Assessment.Caution, made.SheetText(), StringComparison.Ordinal);
        foreach (var file in made.Files.SkipLast(1))
            Assert.DoesNotContain("legal advice", ReadBack.Of(file.Bytes).Text, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Each_page_says_which_of_how_many_it_is(string id)
    {
        foreach (var file in PaperJobs.Make(id).Files)
        {
            var read = ReadBack.Of(file.Bytes);
            foreach (var page in read.Pages)
            {
                Assert.Contains($"Page {page.Number} of {read.Pages.Count}", string.Join(' ', page.Words.Select(w => w.Text)),
                    StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void No_page_holds_a_signature_without_words_before_it(string id)
    {
        foreach (var file in PaperJobs.Make(id).Files.SkipLast(1))
        {
            foreach (var page in ReadBack.Of(file.Bytes).Pages.Skip(1))
            {
                var first = page.Lines.Count == 0 ? "" : string.Join(' ', page.Lines[0].Select(w => w.Text));
                Assert.False(first.StartsWith("Signature", StringComparison.Ordinal)
                    || first.StartsWith("Date of signing", StringComparison.Ordinal), $"{file.Name}, page {page.Number}: '{first}'");
            }
        }
    }

    /// <summary>A file of which nothing is known makes a draft of every paper, and the sheet names every reason.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void A_job_with_next_to_nothing_is_refused_with_reasons_and_prints_as_a_draft(string id)
    {
        var bare = new Law.Facts.JobFile
        {
            Name = "Bare",
            Work = new Law.Facts.Work { Kind = PaperCatalogue.Find(id)!.Works[0], Site = new Law.Facts.Site { County = "Yolo" } },
            Claimant = new Law.Facts.Claimant { Name = "Bare Claimant", Role = Law.Facts.ClaimantRole.Supplier },
        };
        var day = Jobs.Day("2026-05-06");
        var refused = Assert.IsType<PacketOutcome.Refused>(PaperJobs.Outcome(id, bare, day, PaperOptions.None));
        Assert.All(refused.Refusals, r => Assert.True(r.Right.ToString().Length > 0 && r.Where.ToString().Length > 0, r.ToString()));
        var made = Assert.IsType<PacketOutcome.Made>(PaperJobs.Outcome(id, bare, day, new PaperOptions { Draft = true }));
        Assert.NotEmpty(made.InTheWay);
        Assert.All(made.Preflight, r => Assert.True(r.Check("DRAFT on each page")?.Passed, r.ToString()));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Work_of_another_kind_is_refused(string id)
    {
        var paper = PaperCatalogue.Find(id)!;
        if (paper.Works.Count == 3)
            return;
        var other = Enum.GetValues<Law.Facts.WorkKind>().First(k => !paper.Works.Contains(k));
        var refusals = PaperJobs.Refusals(id, job => job with { Work = job.Work with { Kind = other } });
        Assert.Contains(refusals, r => r.Id is "other-work" or "law");
    }

    [Fact]
    public void An_unknown_id_names_those_that_are_there() =>
        Assert.Contains("preliminary-notice",
            Assert.Throws<ArgumentException>(() =>
            PaperJobs.Outcome("writ", Jobs.Demo(), Jobs.Day("2026-05-06"), PaperOptions.None)).Message, StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_letter_that_the_typeface_lacks_is_refused_and_never_an_empty_box(string id)
    {
        var refusals = PaperJobs.Refusals(id, job => job with
        {
            Claimant = job.Claimant with { Name = "石 Company" },
            Parties = [.. job.Parties.Select(p => p with { Name = p.Name + " 石" })],
        });
        Assert.Contains(refusals, r => r.Id == "letters-missing" && r.There.ToString().Contains("U+77F3", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("claim")]
    [InlineData("release")]
    public void A_letter_in_the_job_s_name_that_its_sheet_cannot_print_is_refused_in_words(string id)
    {
        var refusals = PaperJobs.Refusals(id, job => job with { Name = "🧱 Brick" });
        Assert.Contains(refusals, r => r is { Id: "letters-missing", Where: Place.InWords { Words: "the texts of the sheet" } });
    }

    [Theory]
    [InlineData("notice-of-credit")]
    [InlineData("release")]
    [InlineData("stop-payment-notice")]
    [InlineData("claim")]
    public void A_letter_in_the_signer_s_name_that_the_typeface_lacks_is_refused_too(string id)
    {
        var refusals = PaperJobs.Refusals(id, job => job with { Claimant = job.Claimant with { Signer = new Signer("石", "President") } });
        Assert.Contains(refusals, r => r.Id == "letters-missing" && r.There.ToString().Contains("U+77F3", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_word_without_an_end_is_refused_with_its_length_and_what_would_be_right(string id)
    {
        var refusal = Assert.Single(PaperJobs.Refusals(id, job => job with
        {
            Claimant = job.Claimant with { Name = new string('x', 61) },
            Parties = [.. job.Parties.Select(p => p with { Name = new string('x', 61) })],
        }), r => r.Id == "word-too-long");
        Assert.Contains("61 characters without a space", refusal.There.ToString(), StringComparison.Ordinal);
        Assert.Contains("60 characters", refusal.Right.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_name_of_sixty_letters_in_one_word_stands_on_every_paper(string id) =>
        Assert.NotEmpty(PaperJobs.Make(id, job => job with { Claimant = job.Claimant with { Name = new string('W', 60) } }).Files);
}
