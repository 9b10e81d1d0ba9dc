using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Testing;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>Words of given and sent papers and their sheets: whom they name, what they call them, what is left to fill in.</summary>
public sealed class GivenPaperWordsTests
{
    /// <summary>Civ. Code §§ 9302(b), 9354(b): who the officer is hangs on what the body is.</summary>
    [Theory]
    [InlineData(null, true, true)]
    [InlineData(PublicBody.Local, false, false)]
    [InlineData(PublicBody.GeneralServices, false, true)]
    public void The_officer_is_spoken_of_where_it_may_matter(PublicBody? body, bool asked, bool disbursing)
    {
        JobFile With(JobFile job) => job with { Work = job.Work with { Body = body } };
        Assert.Equal(asked, Make("public-stop-payment-notice", With).SheetText().Contains("what kind of public "
            + "body", StringComparison.Ordinal));
        Assert.Equal(disbursing, Make("public-preliminary-notice", With).SheetText()
            .Contains("Department of General Services", StringComparison.Ordinal));
    }

    /// <summary>Civ. Code § 8206 stands in the part on private works.</summary>
    [Theory]
    [InlineData("preliminary-notice", true)]
    [InlineData("public-preliminary-notice", false)]
    public void A_second_notice_on_public_work_is_asked_about_without_a_section_of_private_works(string id, bool cited)
    {
        var sheet = Make(id, job => job.With(new NoticeGiven
        {
            Index = 40, On = DayFact.On(Day("2026-02-18")), Notice = NoticeKind.Preliminary, To = ["p3"], Manner = Manner.CertifiedMail,
        })).SheetText();
        Assert.Contains("a preliminary notice given already", sheet, StringComparison.Ordinal);
        Assert.Equal(cited, sheet.Contains("8206", StringComparison.Ordinal));
    }

    [Fact]
    public void A_bond_notice_names_the_principal_and_says_why_there_is_no_day()
    {
        var made = Make("public-bond-notice");
        Assert.Contains("direct contractor and bond principal", made.TextOf(), StringComparison.Ordinal);
        Assert.True(made.Says("direct contractor and bond principal", made.Files.Count - 1));
        Assert.Equal(made.SheetText().Contains("ACT BY", StringComparison.Ordinal),
            !made.SheetText().Contains("No act-by day is shown", StringComparison.Ordinal));
    }

    /// <summary>Civ. Code § 8102(a)(2) asks for the direct contractor's name and address, also where it gives the notice itself.</summary>
    [Fact]
    public void A_direct_contractor_s_notice_names_it_with_its_address() =>
        Assert.Contains("Direct contractor Quarrymen’s Supply Company, Inc., 2200 Plumb Street, Sacramento, CA 95811",
            Make("security-demand").TextOf(), StringComparison.Ordinal);

    /// <summary>A couple is one party of the file and two persons.</summary>
    [Theory]
    [InlineData(2, "owners")]
    [InlineData(1, "owner")]
    public void A_party_of_two_persons_is_called_owners(int persons, string called)
    {
        JobFile Titled(JobFile job) => job with
        {
            Parties = [.. job.Parties.Select(p => p.Capacity != PartyCapacity.Owner ? p : p with
            {
                Reputed = false, Name = persons == 2 ? "Ione Maddox and Ramón Maddox" : "Ione Maddox",
                HoldsTitleAs = new TitleHolding
                {
                    Form = persons == 2 ? TitleForm.JointTenants : TitleForm.Individual,
                    Persons = [.. ((TitleHolder[])[new() { Surname = "Maddox", Given = "Ione" }, new() { Surname = "Maddox",
                        Given = "Ramón" }]).Take(persons)],
                },
            })],
        };
        Assert.Matches($@"Maddox, {called}\b(?!s)", Make("security-demand", Titled).TextOf());
    }

    [Theory]
    [InlineData("019-042-101 through 019-042-114", "Assessor’s parcel numbers: 019-042-101")]
    [InlineData("019-042-101", "Assessor’s parcel number: 019-042-101")]
    public void Several_parcels_have_numbers(string apn, string words) => Assert.Contains(words, Make("payment-demand",
        job => job with { Work = job.Work with { Site = job.Work.Site with { Apn = apn } } }).TextOf(), StringComparison.Ordinal);

    /// <summary>No paper of these calls a claimant, who may be a natural person, "it".</summary>
    [Fact]
    [Slow(Slow.Lasting)]
    public void A_claimant_is_never_called_it()
    {
        foreach (var paper in PaperCatalogue.All.Where(p => p.Use is PaperUse.Given or PaperUse.Sent))
        {
            foreach (var file in Make(paper.Id).Files.Where(f => !f.IsSheet))
                Assert.DoesNotMatch(@"that it provided|it will stop work|notice of its claim|under its (?:written|direct) contract",
                    Preflight.ReadBack.Of(file.Bytes).Text);
        }
    }

    /// <summary>Plain American English, in every paper and on every sheet.</summary>
    [Fact]
    [Slow(Slow.Lasting)]
    public void No_paper_that_is_given_or_sent_uses_words_that_no_office_would()
    {
        foreach (var paper in PaperCatalogue.All.Where(p => p.Use != PaperUse.Recorded))
        {
            foreach (var file in Make(paper.Id).Files)
                Assert.DoesNotMatch(@"\b(?:wilful|cancelled|reckon|RECKON)|\$10 were|§ 415\.20 has it|mails you word|moves no day|one hirer"
                    + @"|\bany more\b|No section has|made from a claimant’s job file|name of the signer",
                    Preflight.ReadBack.Of(file.Bytes).Text);
        }
    }

    [Fact]
    public void What_a_proof_of_notice_leaves_blank_is_listed_in_its_own_words()
    {
        var made = Make("proof-of-notice", options: o => o);
        var list = made.SheetText()[made.SheetText().IndexOf("Fill in by hand", StringComparison.Ordinal)..];
        foreach (var label in (string[])["Given by (name)", "Place (city, state)", "Signature", "Name, printed", "Date of signing",
            "Signed at (city, state)"])
        {
            Assert.Contains(label, made.TextOf(), StringComparison.Ordinal);
            Assert.Contains(label, list, StringComparison.Ordinal);
        }
    }

    /// <summary>A round date stamp of the post office needs an inch.</summary>
    [Fact]
    public void The_mail_sheet_has_room_for_a_stamp_and_the_day_where_there_is_one()
    {
        Assert.InRange(StampRoom.Height, 72, 200);
        Assert.InRange(StampRoom.Width, 144, 400);
        var made = Make("certified-mail-sheet");
        Assert.Contains("Compare each article number with the postal receipt", made.SheetText(), StringComparison.Ordinal);
        Assert.DoesNotContain("Write each article number", made.SheetText(), StringComparison.Ordinal);
        var blank = Make("certified-mail-sheet", options: o => o with { To = ["p1"] });
        Assert.Contains("Write each article number", blank.SheetText(), StringComparison.Ordinal);
        var one = Make("certified-mail-sheet", job => job with
        {
            Entries = [.. job.Entries.Where(e => e is not ClaimServed
                && (e is not NoticeGiven n || n.On == DayFact.On(Day("2026-02-20"))))],
        });
        Assert.Contains("Deposited on (date) February 20, 2026", one.TextOf(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_designer_s_demand_has_name_address_and_license_in_one()
    {
        var text = Make("design-lien-demand", job => job with { Claimant = job.Claimant with
        { License = new License { Required = true, Number = "LA 4417", Class = "landscape architect" } } }).TextOf();
        Assert.Contains("License no. LA 4417, landscape architect", text, StringComparison.Ordinal);
        Assert.Contains("make the paper again and say it in words of your own", Make("design-lien-demand",
            options: o => o with { Words = null }).SheetText(), StringComparison.Ordinal);
        Assert.DoesNotContain("make the paper again", Make("design-lien-demand",
            options: o => o with { Words = "No installment since March was paid." }).SheetText(), StringComparison.Ordinal);
    }
}
