using System.Globalization;
using System.Text.RegularExpressions;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>
/// The caps on retention to the cent, with every question and what hangs on it (Civ. Code § 8811; Pub. Contract Code § 7201).
/// </summary>
public sealed partial class CapQuestionsTests
{
    [GeneratedRegex(@"\((?:\w+\.)*(\w+)\)$")]
    private static partial Regex Field();

    private static decimal? Sum(string? text) => text is null ? null : decimal.Parse(text, CultureInfo.InvariantCulture);

    private static string Asked(Finding cap) =>
        string.Join(" ", cap.Questions.Select(q =>
            $"{Field().Match(q.Text).Groups[1].Value}={q.Dollars?.ToString("0.##", CultureInfo.InvariantCulture)}"));

    private static JobBuilder Job(JobBuilder job, string? price, string? work, string retained)
    {
        job = job.Contract(c => c with { Price = Sum(price) });
        foreach (var part in work?.Split(' ') ?? [])
            job.Furnished("2026-03-16", part == "?" ? null : Sum(part));
        return job.Retained("2026-04-20", Sum(retained)!.Value);
    }

    private static JobBuilder Private(ClaimantRole role, string? price, string? work, string retained, decimal? percent) => Job(
        new JobBuilder().Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct")
            .Contract(c => c with { On = Day("2026-02-24") })
            .Work(w => w with { Use = WorkUse.Commercial, DirectContract = percent is null
                ? null : new DirectContract { RetentionPercent = percent } }), price, work, retained);

    // Civ. Code § 8811(b)(1)(A) to (C): 5 percent of each payment and of the price, and below the direct contract no more than its
    // percentage.
    [Theory]
    [InlineData(ClaimantRole.DirectContractor, "200000", null, "10000.50", null, Standing.Open, "0.50", "")]
    [InlineData(ClaimantRole.DirectContractor, "200000.10", null, "10000.01", null, Standing.Kept, "0", "")]
    [InlineData(ClaimantRole.DirectContractor, "200000.10", null, "10000.02", null, Standing.Open, "0.01", "")]
    [InlineData(ClaimantRole.DirectContractor, "80000", "22000", "1100.50", null, Standing.Open, "0.50", "retained=0.5")]
    [InlineData(ClaimantRole.DirectContractor, "22000", "80000", "1100.50", null, Standing.Open, "0.50", "")]
    [InlineData(ClaimantRole.DirectContractor, "80000", "22000", "5000", null, Standing.Open, "3900", "retained=2900")]
    [InlineData(ClaimantRole.DirectContractor, "22000", "22000", "1100.50", null, Standing.Open, "0.50", "")]
    [InlineData(ClaimantRole.DirectContractor, "80000", "22000", "1100.50", 3.0, Standing.Open, "0.50", "retained=0.5")]
    [InlineData(ClaimantRole.DirectContractor, "80000", "11000 11000", "1100", null, Standing.Kept, "0", "")]
    [InlineData(ClaimantRole.DirectContractor, "80000", "11000 ?", "1100", null, Standing.Kept, "0", "")]
    [InlineData(ClaimantRole.DirectContractor, null, "22000", "1100", null, Standing.InDoubt, "0", "price=")]
    [InlineData(ClaimantRole.DirectContractor, null, "22000", "1100.50", null, Standing.Open, "0.50", "price= retained=0.5")]
    [InlineData(ClaimantRole.DirectContractor, null, "11000 ?", "1100", null, Standing.InDoubt, null, "price=")]
    [InlineData(ClaimantRole.DirectContractor, null, null, "1100", null, Standing.InDoubt, null, "price=")]
    [InlineData(ClaimantRole.Subcontractor, "80000", "80000", "4000.50", null, Standing.Open, "0.50",
        "retentionPercent=4000 bondNotBrought=0.5")]
    [InlineData(ClaimantRole.Subcontractor, "80000", "80000", "4000", null, Standing.InDoubt, "0", "retentionPercent=4000")]
    [InlineData(ClaimantRole.Subcontractor, "80000", "80000", "4000", 10.0, Standing.Kept, "0", "")]
    [InlineData(ClaimantRole.Subcontractor, "80000", "80000", "2400", 3.0, Standing.Kept, "0", "")]
    [InlineData(ClaimantRole.Subcontractor, "80000", "80000", "2400.50", 3.0, Standing.Open, "0.50", "bondNotBrought=0.5")]
    [InlineData(ClaimantRole.Subcontractor, null, "80000", "2400", 3.0, Standing.InDoubt, "0", "price=")]
    [InlineData(ClaimantRole.Supplier, "80000", "80000", "4000", 3.0, Standing.InDoubt, "0", "")]
    [InlineData(ClaimantRole.Supplier, "80000", "80000", "4000.50", null, Standing.InDoubt, "0.50", "")]
    [Proves("Civ. Code § 8811(b)(1)(A)")]
    [Proves("Civ. Code § 8811(b)(1)(B)")]
    [Proves("Civ. Code § 8811(b)(1)(C)")]
    public void The_private_cap_to_the_cent(ClaimantRole role, string? price, string? work, string retained, double? percent,
        Standing expected, string? beyond, string asked)
    {
        var cap = Private(role, price, work, retained, (decimal?)percent).On("2026-06-15").Get("retention.cap");
        Assert.Equal((expected, Sum(beyond), asked), (cap.Standing, cap.Amount, Asked(cap)));
        Assert.Equal(role == ClaimantRole.Subcontractor && percent is not null,
            cap.Says($"The direct contract lets {percent} percent be retained"));
        Assert.Equal(role == ClaimantRole.Supplier, cap.Says("The section names direct contractors and subcontractors"));
        if (beyond is not null)
        {
            Assert.True(cap.Says($"Retention may not exceed {(role == ClaimantRole.Subcontractor && percent == 3 ? 3 : 5)} percent"));
            Assert.Equal(work is not null && !work.Contains('?', StringComparison.Ordinal), cap.Says("of the work furnished so far"));
            Assert.Equal(price is not null, cap.Says("Nor of the price with its changes, $"));
        }
    }

    // § 8811(b)(2) and (3): the exceptions, each asked about as far as money hangs on it. 4,000.50 held of 80,000.00.
    [Theory]
    [InlineData(ClaimantRole.DirectContractor, null, null, null, Standing.InDoubt, "lowRiseResidential=0.5")]
    [InlineData(ClaimantRole.DirectContractor, false, null, null, Standing.Open, "")]
    [InlineData(ClaimantRole.DirectContractor, true, WorkUse.Commercial, null, Standing.Done, "")]
    [InlineData(ClaimantRole.DirectContractor, null, WorkUse.Commercial, true, Standing.Open, "")]
    [InlineData(ClaimantRole.Subcontractor, null, WorkUse.Commercial, true, Standing.Done, "")]
    [InlineData(ClaimantRole.Subcontractor, null, WorkUse.Commercial, false, Standing.Open, "")]
    [InlineData(ClaimantRole.Subcontractor, null, WorkUse.Residential, null, Standing.InDoubt, "lowRiseResidential=0.5 bondNotBrought=0.5")]
    [Proves("Civ. Code § 8811(b)(2)")]
    [Proves("Civ. Code § 8811(b)(3)")]
    public void The_exceptions_of_the_private_cap(ClaimantRole role, bool? lowRise, WorkUse? use, bool? noBond, Standing expected,
        string asked)
    {
        var cap = Private(role, "80000", "80000", "4000.50", 10m).Work(w => w with { LowRiseResidential = lowRise, Use = use })
            .Contract(c => c with { BondNotBrought = noBond }).On("2026-06-15").Get("retention.cap");
        Assert.Equal((expected, asked), (cap.Standing, Asked(cap)));
        Assert.Equal(expected == Standing.Done ? null : 0.50m, cap.Amount);
    }

    // Only agreed changes move the price: of 80,000.00 and 2,000.00 the cap is 4,100.00.
    [Theory]
    [InlineData(true, "4100", Standing.Kept)]
    [InlineData(true, "4100.01", Standing.Open)]
    [InlineData(false, "4000", Standing.Kept)]
    [InlineData(false, "4000.01", Standing.Open)]
    [Proves("Civ. Code § 8811(b)(1)(B)")]
    [Proves("Pub. Contract Code § 7201(b)(1)")]
    public void Agreed_changes_are_part_of_the_price(bool agreed, string retained, Standing expected)
    {
        Assert.Equal(expected, Private(ClaimantRole.DirectContractor, "80000", null, retained, null).Changed("2026-03-20", 2_000m, agreed)
            .On("2026-06-15").Get("retention.cap").Standing);
        Assert.Equal(expected, Public(ClaimantRole.DirectContractor, "80000", null, retained, null).Changed("2026-03-20", 2_000m, agreed)
            .On("2026-06-15").Get("retention.cap").Standing);
    }

    private static JobBuilder Public(ClaimantRole role, string? price, string? work, string retained, decimal? percent,
        bool? complex = false, PublicBody? body = PublicBody.Local) => Job(
        new JobBuilder().PublicWork().Role(role, role == ClaimantRole.DirectContractor ? "city" : "direct").Licensed("2012-06-01..")
            .Contract(c => c with { On = Day("2012-01-01") })
            .Work(w => w with { Body = body, SubstantiallyComplex = complex, DirectContract = percent is null
                ? null : new DirectContract { RetentionPercent = percent } }), price, work, retained);

    // Pub. Contract Code §§ 7200(b), 7201(b)(1): the same on public work, where a contract below the direct one bears no higher rate.
    [Theory]
    [InlineData(ClaimantRole.DirectContractor, "80000.10", null, "4000.01", null, Standing.Kept, "0", "")]
    [InlineData(ClaimantRole.DirectContractor, "80000", null, "4000.50", null, Standing.Open, "0.50", "")]
    [InlineData(ClaimantRole.DirectContractor, "80000", "22000", "1100.50", null, Standing.Open, "0.50", "retained=0.5")]
    [InlineData(ClaimantRole.DirectContractor, "22000", "22000", "1100.50", 3.0, Standing.Open, "0.50", "")]
    [InlineData(ClaimantRole.DirectContractor, "80000", "22000", "5000", null, Standing.Open, "3900", "retained=2900")]
    [InlineData(ClaimantRole.DirectContractor, "80000", "11000 ?", "1100", null, Standing.Kept, "0", "")]
    [InlineData(ClaimantRole.DirectContractor, null, "22000", "1100", null, Standing.InDoubt, "0", "price=")]
    [InlineData(ClaimantRole.DirectContractor, null, "22000", "1100.50", null, Standing.InDoubt, "0.50", "price= retained=0.5")]
    [InlineData(ClaimantRole.DirectContractor, null, "11000 ?", "1100", null, Standing.InDoubt, null, "price=")]
    [InlineData(ClaimantRole.DirectContractor, null, null, "1100", null, Standing.InDoubt, null, "price=")]
    [InlineData(ClaimantRole.Subcontractor, "80000", "80000", "4000.50", null, Standing.Open, "0.50", "bondNotBrought=0.5")]
    [InlineData(ClaimantRole.Subcontractor, "80000", "80000", "4000", 10.0, Standing.Kept, "0", "")]
    [InlineData(ClaimantRole.Subcontractor, "80000", "80000", "2400.50", 3.0, Standing.Open, "0.50", "bondNotBrought=0.5")]
    [InlineData(ClaimantRole.Supplier, "80000", "80000", "2400.50", 3.0, Standing.InDoubt, "0.50", "bondNotBrought=0.5")]
    [InlineData(ClaimantRole.Supplier, "80000", "80000", "4000", null, Standing.InDoubt, "0", "")]
    [Proves("Pub. Contract Code § 7200(b)")]
    [Proves("Pub. Contract Code § 7201(b)(1)")]
    public void The_public_cap_to_the_cent(ClaimantRole role, string? price, string? work, string retained, double? percent,
        Standing expected, string? beyond, string asked)
    {
        var cap = Public(role, price, work, retained, (decimal?)percent).On("2026-06-15").Get("retention.cap");
        Assert.Equal((expected, Sum(beyond), asked), (cap.Standing, cap.Amount, Asked(cap)));
        Assert.Equal(role == ClaimantRole.Supplier, cap.Says("The section speaks of contractors and subcontractors"));
        if (beyond is null)
            return;
        Assert.True(cap.Says($"Retention may not exceed {(percent == 3 && role != ClaimantRole.DirectContractor ? 3 : 5)} percent"));
        Assert.Equal(price is not null, cap.Says("The price with its changes is $"));
        Assert.Equal(work is not null && !work.Contains('?', StringComparison.Ordinal), cap.Says("ork furnished so far"));
    }

    // § 7201(b)(2) to (4): no bond brought below the direct contract; a finding that the project is substantially complex, by the State or
    // not.
    [Theory]
    [InlineData(ClaimantRole.DirectContractor, PublicBody.Local, null, null, Standing.Open, "substantiallyComplex=0.5", "7201(b)(1)")]
    [InlineData(ClaimantRole.DirectContractor, PublicBody.Local, true, null, Standing.InDoubt, "", "7201(b)(4)")]
    [InlineData(ClaimantRole.DirectContractor, PublicBody.State, true, null, Standing.InDoubt, "", "7201(b)(3)")]
    [InlineData(ClaimantRole.DirectContractor, PublicBody.Local, false, true, Standing.Open, "", "7201(b)(1)")]
    [InlineData(ClaimantRole.Subcontractor, PublicBody.Local, false, true, Standing.Done, "", "7201(b)(2)")]
    [InlineData(ClaimantRole.Subcontractor, PublicBody.Local, false, false, Standing.Open, "", "7201(b)(1)")]
    [InlineData(ClaimantRole.Subcontractor, PublicBody.Local, null, null, Standing.Open, "bondNotBrought=0.5 substantiallyComplex=0.5",
        "7201(b)(1)")]
    [InlineData(ClaimantRole.Subcontractor, PublicBody.Transportation, false, false, Standing.Open, "", "7201(b)(1)")]
    [InlineData(ClaimantRole.DirectContractor, PublicBody.Transportation, false, null, Standing.Open, "", "7202(a)")]
    [Proves("Pub. Contract Code § 7201(b)(2)")]
    [Proves("Pub. Contract Code § 7201(b)(3)")]
    [Proves("Pub. Contract Code § 7201(b)(4)")]
    [Proves("Pub. Contract Code § 7202(a)")]
    public void The_exceptions_of_the_public_cap(ClaimantRole role, PublicBody body, bool? complex, bool? noBond, Standing expected,
        string asked, string section)
    {
        var cap = Public(role, "80000", "80000", "4000.50", null, complex, body).Contract(c => c with { BondNotBrought = noBond })
            .On("2026-06-15").Get("retention.cap");
        Assert.Equal((expected, asked), (cap.Standing, Asked(cap)));
        Assert.Equal($"Pub. Contract Code § {section}", cap.Sections[^1]);
        // Within the cap neither exception matters.
        var within = Public(role, "80000", "80000", "4000", null, complex).Contract(c => c with { BondNotBrought = noBond })
            .On("2026-06-15").Get("retention.cap");
        Assert.Equal((role == ClaimantRole.Subcontractor && noBond == true ? Standing.Done : Standing.Kept, ""),
            (within.Standing, Asked(within)));
    }
}
