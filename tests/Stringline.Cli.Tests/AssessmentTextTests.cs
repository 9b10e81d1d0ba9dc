using Stringline.Cli.Terminal;
using Stringline.Law.Facts;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

public sealed class AssessmentTextTests
{
    private const string Page = """
        Alder “Court”
        As of 2026-06-22 (Mon)
        Not legal advice. Confirm with the county recorder, the local rules and a California construction
        lawyer.

        Where things stand
        ──────────────────
        What                                            Standing  Act by            Day, or band of days
        Claim of lien: last day to record               open      2026-08-14 (Fri)  2026-08-16 to 2026-09-10
        Completion of the work                          in doubt                    2026-05-18, no end yet
        Release bond                                    not yet                     $49,382.20

        What stands in the way of recording a claim of lien
        ───────────────────────────────────────────────────
        └─ The signer is not named. [Civ. Code § 8416(a)]

        The amount
        ──────────
        Agreed price                                        $39,605.75  Civ. Code § 8430(a)(2)
        Paid                                                  -$100.00  Civ. Code § 8416(a)(1); entries[1]
                                                      ────────────────
        Demand                                              $39,505.75
        Billed, but left out of the claim                      $412.80

        Agreed price
        └─ The price agreed. [Civ. Code § 8430(a)(2)]
        Paid
        └─ Payments received: $100.00. [Civ. Code § 8416(a)(1); entries[1]]

        What would settle more
        ──────────────────────
        - When did labor cease? (Claim of lien: last day to record; could move it by 25 days)
        - Was the charge agreed? (Claim of lien: last day to record; could move it by $412.80)

        Why
        ───
        Claim of lien: last day to record: open [claim-of-lien.last-day]
          completion by occupation: last day 2026-08-16 (Sun); a roll to 2026-08-17 (Mon) can be argued,
            never planned on
          actual completion: last day 2026-09-10 (Thu)
        └─ 90 days after completion. [Civ. Code § 8414(b)]
           ├─ Occupied 2026-05-18 (Mon). [Civ. Code § 8180(a)(2); entries[0]]
           └─ Did not apply: No notice of completion is recorded. [Civ. Code § 8414(b)(2)]

        Completion of the work: in doubt [completion.day]
          completion by occupation: 2026-05-18 (Mon)

        Release bond: not yet [release-bond.amount]


        """;

    [Fact]
    public void The_page_shows_table_obstacles_amount_questions_and_whys() =>
        Assert.Equal(Page, AssessmentText.Of(AssessmentSample.Made));

    [Fact]
    public void No_line_is_wider_than_the_page() =>
        Assert.All(AssessmentText.Of(AssessmentSample.Made).Split('\n'), line => Assert.True(line.Length <= Layout.Width, line));

    [Fact]
    public void In_ASCII_the_page_has_the_same_lines_and_nothing_beyond_ASCII()
    {
        var ascii = Glyphs.ToAscii(AssessmentText.Of(AssessmentSample.Made));
        Assert.All(ascii, c => Assert.InRange(c, '\n', '~'));
        Assert.Equal(Page.Split('\n').Length, ascii.Split('\n').Length);
        Assert.Contains("`- Payments received: $100.00. [Civ. Code sec. 8416(a)(1); entries[1]]", ascii, StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_reason_wraps_under_its_branch_and_a_section_is_never_torn()
    {
        var words = string.Join(' ', Enumerable.Repeat("word", 22));
        var page = new System.Text.StringBuilder();
        ReasonTree.Draw(page, [Law.Reasoning.Reason.Of("Civ. Code § 8414(b)", $"{words}")]);
        Assert.Equal(
            """
            └─ word word word word word word word word word word word word word word word word word word word
               word word word [Civ. Code § 8414(b)]

            """,
            page.ToString());
    }

    // A job still at work whose deliveries have no prices: nothing is no sum, and none of its rows says so.
    [Fact]
    public void An_amount_that_nobody_can_know_yet_is_never_shown_as_nothing()
    {
        var page = Of(new JobBuilder().Role(ClaimantRole.Subcontractor).Price(412_000m).Furnished("2026-04-01").Paid("2026-06-30", 180_000m)
            .Notice("2026-04-02"));
        Assert.Contains("Demand                                               not known\n", page, StringComparison.Ordinal);
        Assert.DoesNotContain(page.Split('\n'), line => line.StartsWith("Amount of the claim", StringComparison.Ordinal)
            && line.Contains('$', StringComparison.Ordinal));
    }

    // The look-back to 10 September cuts the span in two: the first table shows both ends of what may be claimed.
    [Fact]
    public void An_amount_in_doubt_shows_its_band_in_the_first_table_and_under_the_demand()
    {
        var page = Of(new JobBuilder().Furnished("2025-09-01", 3_000m, until: "2025-09-20").Notice("2025-09-30"));
        Assert.Contains(page.Split('\n'), line => line.StartsWith("Amount of the claim", StringComparison.Ordinal)
            && line.EndsWith("$0.00 to $3,000.00", StringComparison.Ordinal));
        Assert.Contains("On the readings that are open: $0.00 to $3,000.00.\n", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(WorkKind.Public, ClaimantRole.Supplier, "\nDemand of the stop payment notice ")]
    [InlineData(WorkKind.Public, ClaimantRole.DirectContractor, "\nOwed under the contract ")]
    [InlineData(WorkKind.Federal, ClaimantRole.Supplier, "\nDemand on the federal bond ")]
    [InlineData(WorkKind.Private, ClaimantRole.Supplier, "\nDemand  ")]
    public void The_sum_is_named_by_the_remedy_it_is_asked_by(WorkKind kind, ClaimantRole role, string title) =>
        Assert.Contains(title,
            Of(new JobBuilder().Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct").Work(w => w with { Kind = kind })
            .Furnished("2025-09-01", 3_000m).Notice("2025-09-03")), StringComparison.Ordinal);

    private static string Of(JobBuilder job) => AssessmentText.Of(UseCases.Assess(job.Build(), new LocalDate(2026, 7, 1)));
}
