using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;
using UglyToad.PdfPig;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>To whom given papers are made out, on which day, under which title.</summary>
public sealed class GivenPaperAddressTests
{
    /// <summary>A notice that speaks of its date bears one; so does every other that is given.</summary>
    [Fact]
    public void Every_paper_that_is_given_bears_its_day()
    {
        // A stop work notice is given on a later day than it is made (Civ. Code § 8834(a)).
        foreach (var paper in PaperCatalogue.All.Where(p => p is { Use: PaperUse.Given, Id: not "stop-work-notice" }))
            Assert.Contains($"Date {PaperText.Day(For(paper.Id).AsOf)}", Make(paper.Id).TextOf(), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 9354(b): the envelope is made out from the sheet.</summary>
    [Fact]
    public void The_sheet_has_the_officer_s_line_of_the_notice()
    {
        var made = Make("public-stop-payment-notice", job => job with { Work = job.Work with { Body = PublicBody.State } });
        Assert.Contains("Attention: Director", made.TextOf(), StringComparison.Ordinal);
        Assert.True(made.Says("Attention: Director", made.Files.Count - 1));
    }

    [Fact]
    public void An_address_with_a_line_of_its_own_keeps_it_under_the_statute_s_officer()
    {
        JobFile Addressed(JobFile job) => job with
        {
            Parties = [.. job.Parties.Select(p => p.Capacity == PartyCapacity.PublicEntity
                ? p with { Address = "Attn: City Controller\n300 First Street, Woodland, CA 95695" } : p)],
        };
        var text = Make("public-stop-payment-notice", Addressed).TextOf();
        Assert.Contains("Attn: City Controller", text, StringComparison.Ordinal);
        Assert.Contains("Attention: the officer or body named in section 9354", text, StringComparison.Ordinal);
    }

    /// <summary>A trust receives nothing: its trustees do.</summary>
    [Fact]
    public void A_trust_is_addressed_with_its_trustees()
    {
        JobFile Held(JobFile job) => job with
        {
            Parties = [.. job.Parties.Select(p => p.Capacity != PartyCapacity.Owner ? p : p with
            {
                Reputed = false, Name = "The Imada Family Trust",
                HoldsTitleAs = new TitleHolding { Form = TitleForm.Trust, Trust = "The Imada Family Trust",
                    Persons = [new TitleHolder { Surname = "Imada", Given = "Kenji" }] },
            })],
        };
        var made = Make("preliminary-notice", Held);
        foreach (var file in Enumerable.Range(0, made.Files.Count))
            Assert.True(made.Says("Kenji Imada, trustee of the Imada Family Trust", file), made.Files[file].Name);
    }

    [Fact]
    public void Of_several_notices_each_foot_names_its_addressee()
    {
        var made = Make("stop-payment-notice");
        Assert.Contains("To whom: 2 notices, one addressed to each", made.SheetText(), StringComparison.Ordinal);
        foreach (var (file, i) in made.Files.Select((f, i) => (f, i)).Where(f => !f.f.IsSheet))
        {
            using var pdf = PdfDocument.Open(made.Files[i].Bytes.ToArray());
            Assert.Contains($"{file.Title} to {file.Addressee}".Replace(" ", "", StringComparison.Ordinal),
                string.Concat(pdf.GetPages().SelectMany(p => p.Letters).Select(l => l.Value.Trim())), StringComparison.Ordinal);
        }
    }

    /// <summary>Whoever holds sheet and paper beside each other finds one title; what a title adds tells two papers apart.</summary>
    [Theory]
    [InlineData("conference-demand")]
    [InlineData("disputed-portion")]
    [InlineData("dispute-claim")]
    [InlineData("release-affidavit")]
    public void Paper_and_sheet_bear_one_title(string id) =>
        Assert.Equal(PaperCatalogue.Find(id)!.Title, Make(id).Files[0].Title);

    /// <summary>Civ. Code § 9406(b): what must have arrived is not helped by its day of deposit.</summary>
    [Fact]
    public void The_sheet_of_a_counteraffidavit_does_not_rest_on_the_day_of_deposit()
    {
        const string deposit = "Mail counts from the day it is deposited";
        Assert.DoesNotContain(deposit, Make("counteraffidavit").SheetText(), StringComparison.Ordinal);
        Assert.Contains(deposit, Make("public-stop-payment-notice").SheetText(), StringComparison.Ordinal);
        Assert.Contains(deposit, Addressees.Manner, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("counteraffidavit")]
    [InlineData("action-notice")]
    public void A_sum_other_than_that_of_the_notice_given_is_said_first(string id)
    {
        JobFile Other(JobFile job) => job with
        {
            Entries = [.. job.Entries.Select(e => e is StopPaymentGiven g ? g with { Amount = 80_000m } : e)],
        };
        Assert.Contains("The amount differs: this paper states $84,250.00, the stop payment notice given on May 7, 2026 $80,000.00",
            Make(id, Other).SheetText(), StringComparison.Ordinal);
        Assert.DoesNotContain("The amount differs", Make(id).SheetText(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_notice_of_the_same_day_is_not_released_unseen()
    {
        var sheet = Make("stop-payment-release", job => job.With(new StopPaymentGiven
        {
            Index = 60, On = DayFact.On(Day("2026-05-07")), To = ["p4"], Amount = 84_250m, Manner = Manner.CertifiedMail,
        })).SheetText();
        Assert.Contains("Another stop payment notice was given that day, to ", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("Another stop payment notice", Make("stop-payment-release").SheetText(), StringComparison.Ordinal);
    }
}
