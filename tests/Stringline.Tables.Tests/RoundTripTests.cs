using System.Text;
using CsCheck;
using Stringline.Law.Facts;
using Stringline.Testing;

namespace Stringline.Tables.Tests;

public sealed class RoundTripTests
{
    [Fact]
    public void What_is_written_reads_as_the_same_job_and_writes_as_the_same_bytes() =>
        JobFileGen.Job.Sample(job =>
        {
            var bytes = JobFileWriter.Write(job);
            var read = Read(bytes);
            Assert.Null(JobFileDifference.Between(job, read));
            Assert.Equal(bytes, JobFileWriter.Write(read));
        });

    [Fact]
    public void The_comparison_sees_a_changed_cent()
    {
        var job = Read(File.ReadAllBytes(Repository.Path("data/demo/alder-court.json")));
        var paid = job.All<Paid>().First();
        var entries = job.Entries.Select(entry => entry == paid ? paid with { Amount = paid.Amount + 0.01m } : entry).ToList();
        Assert.Equal(
            $"job.Entries[{paid.Index}].Amount: {paid.Amount} and {paid.Amount + 0.01m}",
            JobFileDifference.Between(job, job with { Entries = entries }));
    }

    [Fact]
    public void A_byte_order_mark_of_UTF_8_may_lead_the_file()
    {
        var bytes = File.ReadAllBytes(Repository.Path("data/demo/alder-court.json"));
        Assert.Null(JobFileDifference.Between(Read(bytes), Read([0xEF, 0xBB, 0xBF, .. bytes])));
    }

    [Fact]
    public void Blank_optional_texts_count_as_absent()
    {
        const string Blank = """
            { "format": "stringline-job/1", "name": "n", "work": { "kind": "private", "use": null,
              "site": { "street": "", "city": "", "zip": "", "county": "Yolo", "apn": " ", "legal": "" } },
              "claimant": { "name": "c", "role": "supplier", "signer": { "name": "", "title": "" },
                "license": { "required": false, "number": "", "class": "", "active": [ { "from": "2020-01-01", "to": "2027-01-31" } ] } } }
            """;
        var job = Read(Encoding.UTF8.GetBytes(Blank));
        Assert.Null(job.Work.Site.Street);
        Assert.Null(job.Work.Site.Apn);
        Assert.Null(job.Claimant.Signer);
        Assert.Null(job.Claimant.License!.Number);
    }

    [Fact]
    public void A_waiver_form_may_stand_as_a_number_and_is_written_as_text()
    {
        var job = Read(Encoding.UTF8.GetBytes("""
            { "format": "stringline-job/1", "name": "n", "work": { "kind": "private", "site": { "county": "Yolo" } },
              "claimant": { "name": "c", "role": "supplier" },
              "entries": [ { "what": "waived", "on": "2026-03-02", "form": 8136 } ] }
            """));
        Assert.Equal(WaiverForm.ConditionalFinal, Assert.Single(job.All<Waived>()).Form);
        Assert.Contains("\"form\": \"8136\"", Encoding.UTF8.GetString(JobFileWriter.Write(job)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_correction_keeps_the_ref_of_the_entry_it_replaces()
    {
        var job = Read(Encoding.UTF8.GetBytes("""
            { "format": "stringline-job/1", "name": "n", "work": { "kind": "private", "site": { "county": "Yolo" } },
              "claimant": { "name": "c", "role": "supplier" },
              "entries": [ { "what": "furnished", "on": "2026-03-02", "amount": 100.00, "ref": "INV-1", "id": "e1" },
                { "what": "furnished", "on": "2026-03-02", "amount": 110.00, "ref": "INV-1", "id": "e2", "supersedes": "e1", "learned": "2026-03-09" },
                { "what": "paid", "on": "2026-03-20", "amount": 110.00, "toward": "INV-1" } ] }
            """));
        Assert.Equal(["INV-1", "INV-1"], job.All<Furnished>().Select(furnished => furnished.Ref));
    }

    [Theory]
    [InlineData("0", "0.00")]
    [InlineData("-0.00", "0.00")]
    [InlineData("1200", "1200.00")]
    [InlineData("1200.5", "1200.50")]
    [InlineData("-999999999.99", "-999999999.99")]
    public void Money_is_read_to_the_cent_and_written_with_two_decimals(string digits, string written)
    {
        Assert.Null(MoneyText.Read(digits, out var dollars));
        Assert.Equal(written, MoneyText.Write(dollars));
    }

    [Fact]
    public void Money_is_never_rounded_into_a_file() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MoneyText.Write(0.005m));

    [Fact]
    public void A_span_between_days_in_doubt_cannot_be_written()
    {
        var job = Read(File.ReadAllBytes(Repository.Path("data/demo/alder-court.json")));
        var furnished = job.All<Furnished>().First() with { Index = 0, Until = new DayFact.Unknown() };
        var error = Assert.Throws<ArgumentException>(() => JobFileWriter.Write(job with { Entries = [furnished] }));
        Assert.Equal("entries[0] is a span without two known days in order.", error.Message);
    }

    internal static JobFile Read(byte[] bytes) => JobFileReader.Read(bytes, "job.json") switch
    {
        JobFileResult.Read read => read.Job,
        JobFileResult.Refused refused => throw new InvalidOperationException(string.Join('\n', refused.Faults)),
        _ => throw new InvalidOperationException("Neither read nor refused."),
    };
}
