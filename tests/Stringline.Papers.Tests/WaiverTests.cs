using System.Text.RegularExpressions;
using Stringline.Law.Facts;
using Stringline.Papers.Preflight;
using Stringline.Papers.Prescribed;
using Stringline.Papers.Waiver;
using Stringline.Testing;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// The four waivers and releases against the wording of Civ. Code §§ 8132, 8134, 8136, 8138 as it stands in <c>data/prescribed</c>
/// (compared with the Civil Code of the Legislature as updated 10 July 2026).
/// </summary>
public sealed partial class WaiverTests
{
    public static TheoryData<WaiverForm> Forms() => [.. Enum.GetValues<WaiverForm>()];

    private static WaiverToBe Filled(WaiverForm form) => new()
    {
        Form = form,
        Claimant = "Quarrymen’s Supply Company, Inc.",
        Customer = "Łukasz Masonry, Inc.",
        JobLocation = "418 Alder Court, Woodland, California 95695",
        Owner = "Alder Court Partners, LLC",
        Through = Day("2026-03-27"),
        Amount = 12_000.50m,
        Maker = "Çelik & Ōta Builders, Inc.",
        Payee = "Quarrymen’s Supply Company, Inc. and Łukasz Masonry, Inc.",
        Earlier = [new EarlierWaiver(Day("2026-02-27"), 3_000m), new EarlierWaiver(Day("2026-03-06"), 450.25m)],
        Disputed = 1_500m,
        SignerTitle = "President",
        PaymentCleared = Day("2026-04-15"),
    };

    /// <summary>What is read back, white space dropped, equals the data file's wording with nothing but the blanks changed.</summary>
    [Theory]
    [MemberData(nameof(Forms))]
    public void The_form_read_back_equals_the_data_file_letter_for_letter(WaiverForm form)
    {
        var paper = new WaiverPress().Print(Filled(form), Day("2026-04-20"));
        var read = string.Concat(ReadBack.Of(paper.Bytes).Body.Select(w => w.Text));
        var pattern = "^" + string.Join("(.*?)", Blank().Split(PrescribedText.Of(WaiverToBe.NumberOf(form)).Body)
            .Select(t => Regex.Escape(Squeeze(t)))) + "$";
        var match = Regex.Match(read, pattern, RegexOptions.Singleline);
        Assert.True(match.Success, $"{read}\nis not\n{pattern}");
        Assert.Contains(Squeeze("Quarrymen’s Supply Company, Inc."), match.Groups[1].Value, StringComparison.Ordinal);
    }

    /// <summary>The same with every blank empty: then not a letter more or less than the statute's stands on the page.</summary>
    [Theory]
    [MemberData(nameof(Forms))]
    public void An_empty_form_holds_the_statutes_letters_and_no_other(WaiverForm form)
    {
        var paper = new WaiverPress().Print(new WaiverToBe { Form = form }, Day("2026-04-20"), draft: true);
        Assert.Equal(
            Squeeze(Blank().Replace(PrescribedText.Of(WaiverToBe.NumberOf(form)).Body, "")),
            string.Concat(ReadBack.Of(paper.Bytes).Body.Select(w => w.Text)));
    }

    /// <summary>Each value stands after its own label: read in the order of the form.</summary>
    [Fact]
    public void Each_blank_of_the_conditional_progress_form_has_its_value()
    {
        var text = ReadBack.Of(new WaiverPress().Print(Filled(WaiverForm.ConditionalProgress), Day("2026-04-20")).Bytes).Text;
        Assert.All(
            (string[])
            [
                "Name of Claimant: Quarrymen’s Supply Company, Inc.",
                "Name of Customer: Łukasz Masonry, Inc.",
                "Job Location: 418 Alder Court, Woodland, California 95695",
                "Owner: Alder Court Partners, LLC",
                "Through Date: March 27, 2026",
                "Maker of Check: Çelik & Ōta Builders, Inc.",
                "Amount of Check: $12,000.50",
                "Check Payable to: Quarrymen’s Supply Company, Inc. and Łukasz Masonry, Inc.",
                "Date(s) of waiver and release: February 27, 2026; March 6, 2026",
                "Amount(s) of unpaid progress payment(s): $3,000.00; $450.25",
                "Claimant’s Title: President",
            ],
            item => Assert.Contains(item, text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(WaiverForm.UnconditionalProgress, "the following progress payment: $12,000.50")]
    [InlineData(WaiverForm.ConditionalFinal, "Disputed claims for extras in the amount of: $1,500.00")]
    [InlineData(WaiverForm.UnconditionalFinal, "Disputed claims for extras in the amount of: $1,500.00")]
    public void The_sums_stand_in_their_blanks(WaiverForm form, string text) =>
        Assert.Contains(text, ReadBack.Of(new WaiverPress().Print(Filled(form), Day("2026-04-20")).Bytes).Text, StringComparison.Ordinal);

    /// <summary>
    /// Civ. Code §§ 8134, 8138: the Notice to Claimant is in type at least as large as the largest type otherwise in the form.
    /// </summary>
    [Theory]
    [InlineData(WaiverForm.UnconditionalProgress)]
    [InlineData(WaiverForm.UnconditionalFinal)]
    public void The_notice_to_claimant_is_in_the_largest_type_of_the_form(WaiverForm form)
    {
        var read = ReadBack.Of(new WaiverPress().Print(Filled(form), Day("2026-04-20")).Bytes);
        var words = read.Pages.SelectMany(p => p.Words).ToList();
        var from = words.FindIndex(w => w.Text == "NOTICE");
        var to = words.FindIndex(from, w => w.Text == "FORM.");
        Assert.True(words[from..(to + 1)].Min(w => w.Points) >= words.Max(w => w.Points));
        Assert.True(WaiverPress.Check(new WaiverPress().Print(Filled(form), Day("2026-04-20")), Filled(form))
            .Check("largest type")?.Passed);
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void Each_form_fits_one_page_and_passes_its_check(WaiverForm form)
    {
        var paper = new WaiverPress().Print(Filled(form), Day("2026-04-20"));
        Assert.Equal(1, paper.Pages);
        var report = WaiverPress.Check(paper, Filled(form));
        Assert.True(report.Passed, report.ToString());
    }

    /// <summary>A waiver of another wording or with another sum does not pass.</summary>
    [Fact]
    public void The_check_finds_a_changed_sum()
    {
        var paper = new WaiverPress().Print(Filled(WaiverForm.ConditionalProgress), Day("2026-04-20"));
        Assert.False(WaiverPress.Check(paper, Filled(WaiverForm.ConditionalProgress) with { Amount = 12_000.51m })
            .Check("notice wording")?.Passed);
    }

    /// <summary>Civ. Code §§ 8134, 8138, lead-in: only when the claimant has received the payment.</summary>
    [Theory]
    [InlineData("waiver-8134")]
    [InlineData("waiver-8138")]
    public void An_unconditional_waiver_without_cleared_payment_is_refused(string id)
    {
        var refusal = Assert.Single(Refusals(id, options: o => o with { PaymentCleared = null }));
        Assert.Equal("payment-not-cleared", refusal.Id);
        Assert.Contains("use the conditional form", refusal.Right.ToString(), StringComparison.Ordinal);
        Assert.Equal("payment-not-cleared", Assert.Single(Refusals(id, options: o => o with { PaymentCleared = Day("2026-12-31") })).Id);
    }

    [Fact]
    public void A_cleared_payment_in_the_file_stands_in_for_the_confirmation()
    {
        var cleared = new Waived { Index = 4, On = DayFact.On(Day("2026-04-02")), Form = WaiverForm.ConditionalProgress,
            Through = Day("2026-03-27"), Amount = 9_000m, PaymentCleared = Day("2026-04-10") };
        var made = Make("waiver-8134", j => j.With(cleared), _ => Catalogue.PaperOptions.None);
        Assert.Contains("the following progress payment: $9,000.00", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("April 10, 2026", made.SheetText(), StringComparison.Ordinal);
        Assert.Contains(Refusals("waiver-8134", j => j.With(cleared with { PaymentCleared = Day("2026-05-30") }),
            _ => Catalogue.PaperOptions.None), r => r.Id == "payment-not-cleared");
    }

    /// <summary>
    /// Civ. Code § 8124(b): a sum received since the waiver was signed is no unpaid progress payment; each payment answers one waiver.
    /// </summary>
    [Fact]
    public void A_waiver_whose_sum_was_received_since_is_not_stated_as_unpaid()
    {
        static Waived Signed(int index, string on, decimal amount) =>
            new() { Index = index, On = DayFact.On(Day(on)), Form = WaiverForm.ConditionalProgress, Through = Day(on), Amount = amount };
        string Form(params Entry[] more) => Make("waiver-8132", j => more.Aggregate(j, (job, entry) => job.With(entry))).TextOf();
        var (first, second) = (Signed(10, "2026-03-01", 5_000m), Signed(11, "2026-03-08", 5_000m));
        var paid = new Paid { Index = 12, On = DayFact.On(Day("2026-03-10")), Amount = 5_000m };
        Assert.Contains("March 1, 2026; March 8, 2026", Form(first, second), StringComparison.Ordinal);
        Assert.DoesNotContain("March 1, 2026", Form(first, second, paid), StringComparison.Ordinal);
        Assert.Contains("March 8, 2026", Form(first, second, paid), StringComparison.Ordinal);
        Assert.Contains("March 1, 2026", Form(first, paid with { On = DayFact.On(Day("2026-02-28")) }), StringComparison.Ordinal);
        Assert.Contains("March 1, 2026", Form(first, paid with { Amount = 4_999.99m }), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8132, exception (3).</summary>
    [Fact]
    public void Earlier_conditional_waivers_that_are_unpaid_are_listed_and_paid_ones_are_not()
    {
        var made = Make("waiver-8132", j => j.With(
            new Waived { Index = 4, On = DayFact.On(Day("2026-03-01")), Form = WaiverForm.ConditionalProgress, Through = Day("2026-02-28"),
                Amount = 5_000m },
            new Waived { Index = 5, On = DayFact.On(Day("2026-03-10")), Form = WaiverForm.ConditionalProgress, Through = Day("2026-03-09"),
                Amount = 7_000m, PaymentCleared = Day("2026-03-20") }));
        Assert.Contains("Date(s) of waiver and release: March 1, 2026 Amount(s) of unpaid progress payment(s): $5,000.00 (4)",
            made.TextOf(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("waiver-8132", "through-missing")]
    [InlineData("waiver-8132", "amount-missing")]
    [InlineData("waiver-8132", "maker-missing")]
    [InlineData("waiver-8134", "through-missing")]
    [InlineData("waiver-8134", "amount-missing")]
    [InlineData("waiver-8136", "amount-missing")]
    [InlineData("waiver-8136", "maker-missing")]
    public void What_a_form_needs_and_was_not_told_is_asked_for(string id, string refusal) =>
        Assert.Contains(Refusals(id, options: _ => Catalogue.PaperOptions.None), r => r.Id == refusal
            && r.Where.ToString().StartsWith("--", StringComparison.Ordinal));

    /// <summary>The sheet, never the form, says what is given up: 84,250.00 unpaid, 12,000.50 paid for.</summary>
    [Fact]
    public void The_sheet_says_before_signing_what_the_form_does_to_rights()
    {
        var made = Make("waiver-8134");
        Assert.Contains("from the moment it is signed, paid or not, this paper gives up lien, stop payment notice and payment bond rights "
            + "for everything furnished through March 27, 2026", made.SheetText(), StringComparison.Ordinal);
        Assert.Contains("$84,250.00 is released", made.SheetText(), StringComparison.Ordinal);
        Assert.Contains("$72,249.50 more than the payment", made.SheetText(), StringComparison.Ordinal);
        Assert.DoesNotContain("Before you sign", made.TextOf(), StringComparison.Ordinal);
    }

    /// <summary>
    /// 84,250.00 unpaid and released; a form that pays less, and an unconditional form whose payment the journal does not hold, is made
    /// only with that figure typed.
    /// </summary>
    [Theory]
    [InlineData("waiver-8132", 12_000.50, "$72,249.50 more than the payment of $12,000.50")]
    [InlineData("waiver-8134", 84_250.0, "No cleared payment of that sum is in the journal.")]
    [InlineData("waiver-8136", 12_000.0, "$70,750.00 more than the payment of $12,000.00")]
    [InlineData("waiver-8138", null, "all of that is given up unpaid. No cleared payment is in the journal.")]
    public void What_is_given_away_is_typed_first(string id, double? amount, string said)
    {
        Catalogue.PaperOptions Told(Catalogue.PaperOptions o, decimal? typed) =>
            o with { Amount = (decimal?)amount ?? o.Amount, Releases = typed };
        var released = id == "waiver-8136" ? 82_750m : 84_250m;
        foreach (var typed in (decimal?[])[null, released - 0.01m, released + 0.01m])
        {
            var refusal = Assert.Single(Refusals(id, options: o => Told(o, typed)));
            Assert.Equal(("release-not-typed", "--releases"), (refusal.Id, refusal.Where.ToString()));
            Assert.Contains($"{PaperText.Dollars(released)} is released", refusal.There.ToString(), StringComparison.Ordinal);
            Assert.Contains(said, refusal.There.ToString(), StringComparison.Ordinal);
            Assert.Contains($"--releases {released.ToString("0.00", CultureInfo.InvariantCulture)}", refusal.Right.ToString(),
                StringComparison.Ordinal);
            Assert.Equal(typed is not null, refusal.There.ToString().Contains("Typed was", StringComparison.Ordinal));
        }

        var (job, asOf, options) = For(id);
        var made = Assert.IsType<PacketOutcome.Made>(Outcome(id, job, asOf, Told(options, released)));
        Assert.Equal(released, made.Outlook?.Released);
    }

    /// <summary>Neither more than is paid, nor an unconditional form without its payment: nothing is asked a second time.</summary>
    [Fact]
    public void A_waiver_that_gives_away_no_more_than_is_paid_asks_nothing_more()
    {
        var (job, asOf, options) = For("waiver-8136");
        Assert.IsType<PacketOutcome.Made>(Outcome("waiver-8136", job, asOf, options with { Amount = 82_750m }));
        var paid = For("waiver-8134").Job.With(new Paid { Index = 4, On = DayFact.On(Day("2026-04-14")), Amount = 84_250m });
        var made = Assert.IsType<PacketOutcome.Made>(Outcome("waiver-8134", paid, Day("2026-04-20"),
            For("waiver-8134").Options with { Amount = 84_250m, Releases = null }));
        Assert.Equal(0m, made.Outlook?.Released);
        Assert.Contains("The payment of $84,250.00 is taken off already.", made.SheetText(), StringComparison.Ordinal);
        // Of a payment in part all that is left is given up for nothing.
        var part = For("waiver-8134").Job.With(new Paid { Index = 4, On = DayFact.On(Day("2026-04-14")), Amount = 12_000.50m });
        var refusal = Assert.Single(Refusals("waiver-8134", _ => part, o => o with { Releases = null }));
        Assert.Contains("$72,249.50 is released. The payment of $12,000.50 is taken off already: all of that is more than the payment.",
            refusal.There.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("waiver-8132", "2026-04-01")]
    [InlineData("waiver-8134", "2026-04-20")]
    public void A_through_date_to_come_is_given_twice(string id, string asOf)
    {
        var ahead = Day(asOf).PlusDays(1);
        foreach (var again in (LocalDate?[])[null, Day(asOf), ahead.PlusDays(365)])
        {
            var refusal = Assert.Single(Refusals(id, options: o => o with { Through = ahead, ThroughAgain = again }));
            Assert.Equal(("through-ahead", "--through-again"), (refusal.Id, refusal.Where.ToString()));
            Assert.Contains(PaperText.DayOfWeek(ahead), refusal.There.ToString(), StringComparison.Ordinal);
        }

        var (job, day, options) = For(id);
        Assert.IsType<PacketOutcome.Made>(Outcome(id, job, day, options with { Through = ahead, ThroughAgain = ahead }));
        Assert.IsType<PacketOutcome.Made>(Outcome(id, job, day, options with { Through = day }));
    }

    [Fact]
    public void Written_change_orders_are_named_on_the_sheet() =>
        Assert.Contains("$2,500.00, Thicker sills",
            Make("waiver-8132", j =>
            j.With(new Change { Index = 4, On = DayFact.On(Day("2026-03-01")), Amount = 2_500m, Agreed = true, Text = "Thicker sills" }))
            .SheetText(), StringComparison.Ordinal);

    /// <summary>Presses side by side, one for each thread, print the same as one after another.</summary>
    [Fact]
    [Slow(Slow.Lasting)]
    public void Presses_on_many_threads_print_what_one_prints()
    {
        var waivers = Enumerable.Range(1, 200)
            .Select(i => Filled((WaiverForm)(i % 4)) with { Claimant = $"Ōta {i} & Sønner", Amount = i + 0.25m }).ToList();
        var press = new WaiverPress();
        var one = waivers.Select(w => ReadBack.Of(press.Print(w, Day("2026-04-20")).Bytes).Text).ToList();
        var many = new string[waivers.Count];
        Parallel.ForEach(Enumerable.Range(0, waivers.Count), new ParallelOptions { MaxDegreeOfParallelism = 8 }, () => new WaiverPress(),
            (i, _, mine) =>
        {
            many[i] = ReadBack.Of(mine.Print(waivers[i], Day("2026-04-20")).Bytes).Text;
            return mine;
        }, _ => { });
        Assert.Equal(one, many);
    }

    private static string Squeeze(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    [GeneratedRegex(@"\{\w+\}")]
    private static partial Regex Blank();
}
