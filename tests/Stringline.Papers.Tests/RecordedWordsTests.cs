using Stringline.Law.Facts;
using Stringline.Law.Recording;
using Stringline.Papers.Fees;
using Stringline.Papers.Indexing;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>What recorded papers say of owners, of themselves and of belief, and what their sheets put first.</summary>
public sealed class RecordedWordsTests
{
    private const string Belief = "except as to who is named as reputed";

    private static Party Couple { get; } = new()
    {
        Id = "p1", Capacity = PartyCapacity.Owner, Name = "Ana Ibarra and Tomás Ibarra", Address = "77 Cordage Way\nDavis, CA 95616",
        HoldsTitleAs = new TitleHolding { Form = TitleForm.JointTenants,
            Persons = [new TitleHolder { Surname = "Ibarra", Given = "Ana" }, new TitleHolder { Surname = "Ibarra", Given = "Tomás" }] },
    };

    private static Party SurnameFirst { get; } = new()
    {
        Id = "p1", Capacity = PartyCapacity.Owner, Name = "Đặng Thị Hoa", Address = "77 Cordage Way\nDavis, CA 95616",
        HoldsTitleAs =
            new TitleHolding { Form = TitleForm.Individual, Persons = [new TitleHolder { Surname = "Đặng", Given = "Thị Hoa" }] },
    };

    private static JobFile Owned(JobFile job, params Party[] owners) => job.WithOwners(owners);

    // A claim and its affidavit are sworn on belief only where they name somebody as reputed (Code Civ. Proc. § 446(a)).
    [Theory]
    [InlineData(PartyCapacity.Owner, true)]
    [InlineData(PartyCapacity.ConstructionLender, false)]
    public void A_claim_is_sworn_on_belief_only_where_it_names_somebody_as_reputed(PartyCapacity reputed, bool belief)
    {
        var job = Demo();
        job = job with
        {
            Parties =
            [
                .. job.Parties.Select(p => p with { Reputed = false }).Select(p => p.Capacity == reputed ? p with { Reputed = true } : p),
                new Party { Id =
                    "extra", Capacity = reputed, Reputed = true, Name = "Estuary Mutual Bank", Address = "9 Lighter Street, Davis, CA" },
            ],
        };
        Assert.Equal(belief, Kept.Packet("belief", job).Claim().Text.Contains(Belief, StringComparison.Ordinal));
    }

    [Fact]
    public void The_name_of_record_is_claimed_of_nobody_who_is_only_reputed_to_own()
    {
        const string ofRecord = "in which the interest appears of record";
        Assert.Contains("These are the names " + ofRecord, Kept.Packet("of-record", Owned(Demo(), Couple)).Claim().Text,
            StringComparison.Ordinal);
        Assert.DoesNotContain(ofRecord, Kept.Packet("reputed", Owned(Demo(), Couple with { Reputed = true })).Claim().Text,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("amended-claim", "Amended Claim of Mechanics Lien", "amended claim of mechanics lien")]
    [InlineData("converted-claim", "Claim of Mechanics Lien, Converted", "converted claim of mechanics lien")]
    public void What_stands_on_another_claim_swears_to_its_own_title(string id, string title, string called)
    {
        var made = Make(id);
        Assert.True(made.Says($"named in the foregoing {called}"));
        Assert.True(made.Says($"I served a true copy of the foregoing {title}"));
        Assert.Contains($"Counter sheet: {title}", made.SheetText(), StringComparison.Ordinal);
    }

    // A name is never turned around: the paper has it as the file has it.
    [Fact]
    public void A_name_with_the_surname_first_stays_as_the_file_has_it()
    {
        Assert.Equal(["Đặng, Thị Hoa"], IndexNames.OfOwner(SurnameFirst).Select(n => n.Indexed));
        Assert.Equal("Đặng Thị Hoa", IndexNames.TitleWords(SurnameFirst));
        Assert.False(IndexNames.NeedsTitleWords(SurnameFirst));
        var claim = Kept.Packet("surname-first", Owned(Demo(), SurnameFirst)).Claim().Text;
        Assert.DoesNotContain("Title held by", claim, StringComparison.Ordinal);
        Assert.DoesNotContain("Thị Hoa Đặng", claim, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_persons_in_one_entry_are_owners()
    {
        var claim = Kept.Packet("couple", Owned(Demo(), Couple)).Claim();
        var text = claim.Text;
        Assert.Contains("Ana Ibarra and Tomás Ibarra (owners)", text, StringComparison.Ordinal);
        Assert.True(Make("release", j => Owned(j, Couple)).Says("Owners of the property"));
        var completion = Make("notice-of-completion", j => Owned(j, Couple));
        Assert.True(completion.Says("1. Owners"));
        Assert.True(completion.Says("one of the owners named in the foregoing notice of completion"));
    }

    // Civ. Code § 8460(b): a credit to which both sides agree; each who owns signs, and each may sign apart (Civ. Code § 1189).
    [Fact]
    public void Each_owner_signs_a_notice_of_credit_and_each_certificate_is_counted()
    {
        var made = Make("notice-of-credit", j => Owned(j, Couple));
        var text = made.TextOf();
        Assert.Equal(3, text.Split("Date of signing").Length - 1);
        var agreed = text[text.IndexOf("Each owner agrees to the credit", StringComparison.Ordinal)..];
        Assert.All((string[])["Ana Ibarra", "Tomás Ibarra"], n => Assert.Contains(n, agreed, StringComparison.Ordinal));
        Assert.Contains("3 certificate pages are counted", made.SheetText(), StringComparison.Ordinal);
        Assert.Equal(3m * (made.Files[0].Pages + 2), made.Fee!.Part("extra-pages")!.Amount);
    }

    // Code Civ. Proc. §§ 405.22, 405.23: the copies are mailed before recording, or the notice is void as to the party.
    [Fact]
    public void The_sheet_of_a_notice_of_pendency_mails_before_it_records_and_gives_its_steps_to_the_attorney()
    {
        var made = Make("notice-of-pendency");
        var sheet = made.SheetText();
        Assert.Equal(1, made.Files[0].Pages);
        string[] order = ["For the attorney to fill in", "bar number, address, telephone", "Before recording, mail a copy",
            "signs a proof of that service",
            "Only then record the notice", "Where", "Hand in, once the attorney has signed and the copies are mailed"];
        Assert.Equal(order.Select(w => sheet.IndexOf(w, StringComparison.Ordinal)).Order(),
            order.Select(w => sheet.IndexOf(w, StringComparison.Ordinal)));
        Assert.All(order, w => Assert.Contains(w, sheet, StringComparison.Ordinal));
        Assert.DoesNotContain("program", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("name of the signer", sheet, StringComparison.Ordinal);
        Assert.Equal(3m, made.Fee!.Part("extra-pages")?.Amount);
        Assert.Contains("The proof of service is counted as one page", sheet, StringComparison.Ordinal);
    }

    // Civ. Code §§ 8304, 8306: no such lien once work has commenced, and the paper swears that it has not.
    [Fact]
    public void The_sheet_of_a_design_lien_says_first_not_to_sign_what_was_not_seen()
    {
        var sheet = Make("design-lien").SheetText();
        Assert.Contains("First • Do not sign unless you have seen that the work has not commenced", sheet, StringComparison.Ordinal);
        Assert.Contains("have a notary acknowledge the signature", sheet, StringComparison.Ordinal);
    }

    // Gov. Code § 27297.5 has the notice for liens that somebody else records; on any other paper the office brings none.
    [Theory]
    [InlineData("notice-of-completion")]
    [InlineData("release")]
    [InlineData("notice-of-pendency")]
    public void No_other_paper_is_told_of_the_fee_for_the_notice_of_a_lien(string id) =>
        Assert.DoesNotContain("otice fee", Make(id, j => j with { Work = j.Work with { Site = j.Work.Site with { County = "Alameda" } } })
            .SheetText(), StringComparison.Ordinal);

    // Gov. Code § 27361.8: the names of the paper itself, and the claimant has no part in the owner's notice.
    [Fact]
    public void Of_the_owner_s_notice_only_the_owners_are_counted()
    {
        var twelve = Enumerable.Range(1, 12).Select(i => new Party { Id = $"o{i}", Capacity = PartyCapacity.Owner, Name = $"Unit {i}, LLC",
            Address = "77 Cordage Way\nDavis, CA 95616", HoldsTitleAs = new TitleHolding { Form = TitleForm.Company } }).ToArray();
        Assert.Contains("12 names are counted", Make("notice-of-completion", j => Owned(j, twelve)).SheetText(), StringComparison.Ordinal);
    }

    // The difference between the two sums of a check is told part by part, and comes out.
    [Theory]
    [InlineData("San Luis Obispo")]
    [InlineData("Santa Cruz")]
    [InlineData("Alameda")]
    [InlineData("Glenn")]
    public void What_a_check_may_come_to_is_what_its_parts_may_come_to(string county)
    {
        var fee = RecordingFee.Of(RecorderTable.For(county, Day("2026-05-26")), new FeeRequest { Pages = 3, ConformedCopy = true });
        Assert.Equal(fee.AtMost - fee.Total, fee.Parts.Sum(p => p.Most - p.Amount) + fee.Unpriced.Sum(p => p.Most));
        Assert.All(fee.Unpriced, p => Assert.Equal(0m, p.Amount));
        var sheet = Make("design-lien", j => j with { Work = j.Work with { Site = j.Work.Site with { County = county } } }).SheetText();
        Assert.DoesNotContain("Total;", sheet, StringComparison.Ordinal);
        Assert.Contains("Restrictive covenant fee: up to $2.00", sheet, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "1 additional group of ten at")]
    [InlineData(2, "2 additional groups of ten at")]
    public void Groups_of_ten_names_are_counted_in_english(int groups, string words) =>
        Assert.StartsWith(words, RecordingFee.Of(RecorderTable.For("Yolo", Day("2026-05-26")),
            new FeeRequest { Pages = 1, Names = 10 + (groups * 10) }).Part("names")!.Why, StringComparison.Ordinal);
}
