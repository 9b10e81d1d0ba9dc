using System.Text.RegularExpressions;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;
using Stringline.Testing;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>Who signs, who receives and how many there are: each person is named whole, on every paper and its sheet.</summary>
public sealed partial class NamedWholeTests
{
    private static readonly Func<JobFile, JobFile> Trust = HardJobs.All["a trust named after its trustees"];

    private static readonly Func<JobFile, JobFile> Estate = HardJobs.All["an estate"];

    private static Party Unit(int i) => new()
    {
        Id = i == 1 ? "p1"
            : $"o{i}", Capacity = PartyCapacity.Owner, Name = $"Cordage Unit {i}, LLC", Address = $"{i} Cordage Way\nDavis, CA 95616",
        HoldsTitleAs = new TitleHolding { Form = TitleForm.Company },
    };

    private static JobFile Several(JobFile job) => job.WithOwners(Unit(1), Unit(2), Unit(3));

    private static JobFile ManyLenders(JobFile job) => job with
    {
        Parties = [.. job.Parties, .. Enumerable.Range(1, 2)
            .Select(i => new Party { Id = $"bank{i}", Capacity = PartyCapacity.ConstructionLender,
            Name = $"Granger Slough Bank {i}", Address = $"{i}00 Levee Street\nSacramento, CA 95814" })],
    };

    // The statement and the first signature under it are of no use on two pages.
    [Theory]
    [Slow(Slow.Lasting)]
    [InlineData("as it is")]
    [InlineData("half a page of description")]
    [InlineData("a trust named after its trustees")]
    [InlineData("an estate")]
    [InlineData("61 owners")]
    public void What_the_owner_agrees_to_stands_with_the_first_owner_s_signature(string hard)
    {
        for (var lines = 0; lines < 8; lines++)
        {
            var made = Make("notice-of-credit", HardJobs.All.GetValueOrDefault(hard), o => o with
            {
                Words = o.Words
                    + string.Concat(Enumerable.Range(1, lines * 6)
                        .Select(i => $" Installment {i} is $5,000.00, due on the first day of the month.")),
            });
            var pages = ReadBack.Of(made.Files[0].Bytes).Pages;
            var page = pages.Single(p => Text(p).Contains("to the credit and to its terms", StringComparison.Ordinal));
            var agreed = Text(page);
            Assert.Contains("Date of signing", agreed[agreed.IndexOf("to the credit and to its terms", StringComparison.Ordinal)..],
                StringComparison.Ordinal);
            Assert.All(pages, p => Assert.Contains("2026-0012345", Text(p), StringComparison.Ordinal));
        }
    }

    private static string Text(ReadPage page) => string.Join(' ', page.Words.Select(w => w.Text));

    [Fact]
    public void Each_trustee_and_each_representative_signs_a_notice_of_credit()
    {
        var trust = Make("notice-of-credit", Trust);
        Assert.Equal(3, trust.TextOf().Split("Date of signing").Length - 1);
        Assert.Contains("3 certificate pages are counted", trust.SheetText(), StringComparison.Ordinal);
        Assert.Contains("Kenji Imada: signature; date and place of signing", trust.SheetText(), StringComparison.Ordinal);
        Assert.Contains("Ruth Imada: signature; date and place of signing", trust.SheetText(), StringComparison.Ordinal);
        Assert.True(Make("notice-of-credit", Estate).Says("Representative of the estate"));
        var company = Make("notice-of-credit").SheetText();
        Assert.Contains("For Alder Court Partners, LLC: signature; printed name; title and authority; date and place of signing", company,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_notice_of_credit_states_the_balance_that_the_file_shows_or_leaves_a_labeled_blank()
    {
        var part = Make("notice-of-credit", job => job.With(new Paid { Index = 50, On = DayFact.On(Day("2026-05-25")), Amount = 14_000m }));
        Assert.True(part.Says("Unpaid balance of the claim on June 1, 2026"));
        Assert.True(part.Says("$70,250.00"));
        var more = Make("notice-of-credit", job => job.With(new Furnished { Index = 50, On = DayFact.On(Day("2026-03-26")),
            Until = DayFact.On(Day("2026-03-26")), Amount = 9_000m }) with { Contract = job.Contract with { Price = 93_250m } });
        Assert.DoesNotContain("$93,250.00", more.TextOf(), StringComparison.Ordinal);
        Assert.Contains("Unpaid balance of the claim on June 1, 2026", more.SheetText(), StringComparison.Ordinal);
    }

    public static TheoryData<string> Owned => [.. PaperCatalogue.All.Where(p => p.Works.Contains(WorkKind.Private)).Select(p => p.Id)
        .Where(id => !id.StartsWith("waiver", StringComparison.Ordinal) && For(id).Job.Work.Kind == WorkKind.Private)];

    // A trust acts by its trustees, and the dead by a representative: whoever is told or served is named.
    [Theory]
    [Slow(Slow.Lasting)]
    [MemberData(nameof(Owned))]
    public void Where_a_trust_or_an_estate_is_named_those_who_hold_title_are_named_with_it(string id)
    {
        foreach (var (hard, name, held) in ((Func<JobFile, JobFile>, string, string)[])[
            (Trust, "KenjiImadaandRuthImadaFamilyTrust", "KenjiImadaandRuthImada,trusteesof"),
            (Estate, "EstateofAmbrosioQuintanilla", "PhilomenaQuintanilla-Oyelaran,representativeof")])
        {
            var made = Make(id, hard, o => id == "notice-of-pendency" ? o with { Draft = true } : o);
            foreach (var file in made.Files)
            {
                var columns = ReadBack.Of(file.Bytes).Columns();
                if (columns.Contains(name, StringComparison.OrdinalIgnoreCase) && !file.IsSheet)
                    Assert.True(columns.Contains(held, StringComparison.OrdinalIgnoreCase), $"{file.Name} names no holder: {columns}");
            }
        }
    }

    [Theory]
    [InlineData("claim")]
    [InlineData("amended-claim")]
    public void A_claim_s_sheet_and_proof_of_service_name_who_is_served_for_an_estate(string id)
    {
        const string whole = "Philomena Quintanilla-Oyelaran, representative of the estate of Ambrosio";
        var made = Make(id, job => Estate(job) with { Entries = [.. job.Entries.Where(e => e is not ClaimServed)] });
        var text = made.TextOf();
        Assert.Contains(whole, text[text.IndexOf("PROOF OF SERVICE", StringComparison.Ordinal)..], StringComparison.Ordinal);
        Assert.Contains("to " + whole, made.SheetText(), StringComparison.Ordinal);
    }

    // Two words for many: none says one, and none is made many twice.
    [Theory]
    [MemberData(nameof(AllIds))]
    [Slow(Slow.Lasting)]
    public void No_word_is_made_plural_twice(string id)
    {
        foreach (var hard in (Func<JobFile, JobFile>[])[j => j, Several, HardJobs.All["61 owners"], j => ManyLenders(j), Couple])
        {
            foreach (var file in Both(id, hard).Files)
            {
                var found = TwicePlural().Match(ReadBack.Of(file.Bytes).Text);
                Assert.False(found.Success, $"{file.Name}: {found.Value}");
            }
        }
    }

    [GeneratedRegex(@"(?:owner|lender|contractor|notice|copie|page|name)ss|(?<![\d.,-])1 "
        + @"(?:are|names|pages|copies|owners|notices|certificates)\b",
        RegexOptions.IgnoreCase)]
    private static partial Regex TwicePlural();

    public static TheoryData<string> AllIds => [.. PaperCatalogue.All.Select(p => p.Id)];

    private static JobFile Couple(JobFile job) => job.Work.Kind == WorkKind.Public ? job : job.WithOwners(new Party
    {
        Id = "p1", Capacity = PartyCapacity.Owner, Name = "Ana Ibarra and Tomás Ibarra", Address = "77 Cordage Way\nDavis, CA 95616",
        HoldsTitleAs = new TitleHolding { Form = TitleForm.JointTenants,
            Persons = [new TitleHolder { Surname = "Ibarra", Given = "Ana" }, new TitleHolder { Surname = "Ibarra", Given = "Tomás" }] },
    });

    private static PacketOutcome.Made Both(string id, Func<JobFile, JobFile> job) =>
        Make(id, job, o => id == "notice-of-pendency" ? o with { Draft = true } : o);

    [Theory]
    [InlineData("design-lien", "Current owners of record", "Given to the owners on")]
    [InlineData("design-lien-release", "The landowners have fully satisfied", "Landowners")]
    [InlineData("security-demand", "demands that the owners provide security for the owners’ payment", "Owners or reputed owners")]
    [InlineData("release-demand", "One of the owners, who gives this notice", "The owner who gives this notice demands")]
    [InlineData("claim", "Owners or reputed owners", "(owner)")]
    public void Of_several_owners_a_paper_says_several(string id, string first, string second)
    {
        var made = Make(id, Several);
        Assert.True(made.Says(first), made.TextOf());
        Assert.True(made.Says(second), made.TextOf());
    }

    [Fact]
    public void The_notice_of_intent_is_for_the_owners_and_the_contract_is_with_the_one_who_made_it()
    {
        Assert.True(Make("stop-work-notice", Several).Says("give the owners a stop work notice", 1));
        Assert.True(Make("design-lien-demand", Several).Says("written contract with Cordage Unit 1, LLC"));
        Assert.True(Make("converted-claim").Says("Written contract of February 2, 2026, with the landowner"));
        var sheet = Make("claim", Several).SheetText();
        Assert.Contains("The owners’ names are spelled as on the deed", sheet, StringComparison.Ordinal);
        Assert.Contains("Owners: Cordage Unit 1, LLC", sheet, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("preliminary-notice")]
    [InlineData("notice-of-completion")]
    [InlineData("bond-notice")]
    [InlineData("stop-payment-notice")]
    [InlineData("action-notice")]
    [InlineData("security-demand")]
    [InlineData("stop-work-notice")]
    [InlineData("release-demand")]
    public void Several_lenders_are_lenders(string id)
    {
        var made = Make(id, ManyLenders);
        Assert.True(made.Says("Construction lenders"), made.TextOf());
        Assert.False(Make(id, j =>
            j with { Parties = [.. j.Parties.Where(p => p.Capacity != PartyCapacity.ConstructionLender || p.Id == "p4")] })
            .Says("Construction lenders"));
    }

    // Civ. Code § 8834(a): five days of posting come first, so that its day is not known when it is made.
    [Fact]
    public void A_stop_work_notice_is_dated_by_hand()
    {
        var made = Make("stop-work-notice");
        Assert.DoesNotContain("Date June 16, 2026", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("Stop Work Notice: Date", made.SheetText(), StringComparison.Ordinal);
        Assert.Contains("If you post the notice of intent on another day, give the stop work notice no sooner than five days after that "
            + "day.", made.SheetText(),
            StringComparison.Ordinal);
        Assert.DoesNotContain("but not before", made.SheetText(), StringComparison.Ordinal);
    }

    // The officer of the statute is named whatever the address says of its own.
    [Fact]
    public void The_statute_s_officer_is_named_though_the_address_has_a_line_of_its_own()
    {
        var own = HardJobs.All["addresses of six lines"];
        var lender = Make("stop-payment-notice", own);
        var file = lender.Files.ToList()
            .FindIndex(f =>
                f.Addressee is { } a && ReadBack.Of(f.Bytes).Text.Contains("withhold construction funds", StringComparison.Ordinal));
        Assert.True(lender.Says("Attention: manager or other responsible person", file));
        Assert.True(lender.Says("Attention: General Counsel", file));
        var entity = Make("public-stop-payment-notice", own);
        Assert.True(entity.Says("Attention: the officer or body named in section 9354"));
        Assert.True(entity.Says("Attention: the officer or body named in section 9354", entity.Files.Count - 1));
    }

    [Fact]
    public void A_release_to_a_bank_goes_to_its_manager()
    {
        var made = Make("stop-payment-release", job =>
            job with { Entries = [.. job.Entries.Select(e => e is StopPaymentGiven g ? g with { To = ["p4"] } : e)] });
        Assert.True(made.Says("Attention: manager or other responsible person"));
        Assert.True(made.Says("Attention: manager or other responsible person", made.Files.Count - 1));
        Assert.Contains("Be sure that a full release is meant; for a part make the reduction", made.SheetText(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_feet_of_several_notices_differ_however_long_the_names_are()
    {
        var made = Make("stop-payment-notice", job => HardJobs.All["names of three lines"](ManyLenders(job)));
        var feet = made.Files.Where(f => !f.IsSheet).Select(f => string.Join(' ', ReadBack.Of(f.Bytes).Pages[0].Words
            .Where(w => w.Baseline >= Sheet.FootBaseline - 8).Select(w => w.Text)).Split(", from")[0]).ToList();
        Assert.Equal(feet.Count, feet.Distinct().Count());
        Assert.Contains(feet, f => f.EndsWith("to the construction lender (1 of 3)", StringComparison.Ordinal));
    }

    // Never two sums under one description.
    [Theory]
    [InlineData("action-notice", 84_250, false)]
    [InlineData("action-notice", 90_000, true)]
    [InlineData("counteraffidavit", 84_250, false)]
    [InlineData("counteraffidavit", 90_000, true)]
    public void The_sum_of_a_notice_is_told_beside_another_sum(string id, int sum, bool differs)
    {
        var made = Make(id, job =>
            job with { Entries = [.. job.Entries.Select(e => e is StopPaymentGiven g ? g with { Amount = sum } : e)] });
        Assert.Equal(differs, made.Says("The stop payment notice given on May 7, 2026, states a different amount, $90,000.00"));
        Assert.Equal(differs, made.SheetText().Contains("The amount differs", StringComparison.Ordinal));
    }

    [Fact]
    public void A_claim_s_sheet_asks_first_for_a_notice_recorded_lately()
    {
        var sheet = Make("claim").SheetText();
        var before = sheet[sheet.IndexOf("Before you go", StringComparison.Ordinal)..];
        Assert.StartsWith("Before you go Search the county index, or ask the recorder, for a notice of completion or cessation recorded "
            + "lately",
            before, StringComparison.Ordinal);
    }
}
