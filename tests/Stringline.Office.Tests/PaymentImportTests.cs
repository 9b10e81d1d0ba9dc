using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Counting;
using Stringline.Tables.Sheets.Columns;

namespace Stringline.Office.Tests;

/// <summary>
/// Payments: those that name a job or an invoice, and those that the law applies (Civ. Code § 1479). All names are invented.
/// </summary>
public sealed class PaymentImportTests : IDisposable
{
    private const string Invoices = "Job No.,Customer,Inv #,Delivery Date,Amount\n";
    private const string Payments = "Check Number,Date Received,Received From,Amount Paid,Job No.,Applied To Invoice\n";

    private readonly Desk desk = new();

    public PaymentImportTests() => desk.Import("i.csv", Invoices
        + "114,Hobart Framing,A-1,3/2/2026,100\n114,Hobart Framing,A-2,3/20/2026,300\n"
        + "115,Hobart Framing,B-1,3/10/2026,200\n116,Other Framing,C-1,3/1/2026,50\n");

    [Fact]
    public void A_payment_goes_to_the_job_or_invoice_that_it_names()
    {
        var report =
            desk.Import("p.csv", Payments
                + "501,4/1/2026,Hobart Framing,60,114,A-2\n502,4/2/2026,Hobart Framing,70,,B-1\n503,4/3/2026,Hobart Framing,10,115,\n");
        Assert.Equal(TableKind.Payments, report.Files[0].Kind);
        Assert.Equal((3, 0), (report.Files[0].New, report.Files[0].Refused.Count));
        Assert.Equal((60m, "A-2"), (Paid("114")[0].Amount, Paid("114")[0].Toward));
        Assert.Equal([(70m, "B-1"), (10m, null)], Paid("115").Select(paid => (paid.Amount, paid.Toward)));
        Assert.Empty(report.Across);
    }

    [Fact]
    public void A_payment_that_names_nothing_goes_over_the_customers_jobs_by_earliest_maturity()
    {
        // Civ. Code § 1479, Three; Jessup Farms v. Baldwin (1983) 33 Cal.3d 639: 2 March, then 10 March, then 20 March, whatever the job.
        var report = desk.Import("p.csv", Payments + "600,4/1/2026,HOBART FRAMING,350,,\n");
        var across = Assert.Single(report.Across);
        Assert.Equal([("114", 100m, "A-1"), ("115", 200m, "B-1"), ("114", 50m, "A-2")],
            across.Parts.Select(part => (part.Job, part.Amount, part.Ref)));
        Assert.Equal(150m, Assert.Single(Paid("114")).Amount);
        Assert.Equal(200m, Assert.Single(Paid("115")).Amount);
        Assert.Empty(Paid("116"));
        Assert.Equal(1, report.Files[0].New);

        var seal = desk.Seal;
        var again = desk.Import(Desk.Request(report.Files[0].File));
        Assert.Equal((0, 1), (again.Files[0].New, again.Files[0].Unchanged));
        Assert.Equal(seal, desk.Seal);
        var moved = desk.Import("q.csv", Payments + "600,4/1/2026,Hobart Framing,360,,\n");
        Assert.Contains("with the debtor's consent (Civ. Code § 1479)", Assert.Single(moved.Files[0].Refused).Why,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Two_payments_of_one_import_follow_each_other()
    {
        var report = desk.Import("p.csv", Payments + "602,4/2/2026,Hobart Framing,300,,\n601,4/1/2026,Hobart Framing,150,,\n");
        Assert.Equal([("114", 100m), ("115", 50m)], report.Across[0].Parts.Select(part => (part.Job, part.Amount)));
        Assert.Equal([("115", 150m), ("114", 150m)], report.Across[1].Parts.Select(part => (part.Job, part.Amount)));
    }

    [Fact]
    public void What_fell_due_on_one_day_is_paid_ratably_to_the_cent()
    {
        // Civ. Code § 1479, Three: ratably inside a class. 10.00 over 1 and 2 of 3 parts: 3.33 and 6.67.
        JobFile Job(string name, decimal amount) => new()
        {
            Name = name,
            Work = new Work { Kind = WorkKind.Private, Site = new Site { County = "Yolo" } },
            Claimant = new Claimant { Name = "Marlpit", Role = ClaimantRole.Supplier },
            Entries = [new Furnished { Index = 0, On = DayFact.On(new LocalDate(2026, 3, 2)), Until = DayFact.On(new LocalDate(2026, 3, 2)),
                Amount = amount }],
        };
        var applied = AcrossJobs.Of([Job("a", 100m), Job("b", 200m)], new LocalDate(2026, 4, 1), 10m, OpenDays.Statutory);
        Assert.Equal([(0, 3.33m), (1, 6.67m)], applied.Parts.Select(part => (part.Job, part.Amount)));
        Assert.Equal(0m, applied.Left);
        Assert.Equal(20m, AcrossJobs.Of([Job("a", 100m), Job("b", 200m)], new LocalDate(2026, 4, 1), 320m, OpenDays.Statutory).Left);
    }

    [Theory]
    [InlineData("700,4/1/2026,Hobart Framing,9999,,", "exceeds by 9399.00")]
    [InlineData("700,4/1/2026,Nobody,10,,", "the customer of no job")]
    [InlineData("700,4/1/2026,,10,,", "no job, no invoice and no customer")]
    [InlineData("700,4/1/2026,Hobart Framing,10,,Z-9", "which no job has")]
    [InlineData("700,4/1/2026,Hobart Framing,10,114,B-1", "which job 114 does not have")]
    [InlineData("700,4/1/2026,Hobart Framing,-10,114,", "more than zero")]
    [InlineData("700,,Hobart Framing,10,114,", "the day on which the money was received")]
    public void A_payment_that_cannot_be_placed_is_refused(string row, string why)
    {
        var report = desk.Import("p.csv", Payments + row + "\n");
        Assert.Contains(why, Assert.Single(report.Files[0].Refused).Why, StringComparison.Ordinal);
        Assert.Equal(0, report.Changes);
    }

    [Fact]
    public void Payments_without_a_number_are_known_again()
    {
        const string Rows =
            "Date Received,Received From,Amount Paid,Job No.\n4/1/2026,Hobart Framing,25,114\n4/1/2026,Hobart Framing,25,114\n";
        Assert.Equal(2, desk.Import("p.csv", Rows).Files[0].New);
        Assert.Equal(2, desk.Import("p.csv", Rows).Files[0].Unchanged);
        Assert.Equal(2, Paid("114").Count);
    }

    [Fact]
    public void Invoices_and_payments_come_in_one_transaction()
    {
        var report = desk.Import(Desk.Request(
            desk.File("p2.csv", Payments + "800,5/1/2026,New Framing,30,,D-1\n"),
            desk.File("i2.csv", Invoices + "117,New Framing,D-1,4/2/2026,40\n")));
        Assert.All(report.Files, file => Assert.Equal(1, file.New));
        Assert.Equal(30m, Assert.Single(Paid("117")).Amount);
    }

    private List<Paid> Paid(string job) => [.. desk.Entries(job).OfType<Paid>()];

    public void Dispose() => desk.Dispose();
}
