using Stringline.Office.Entering;
using Stringline.Web.Pages;
using Stringline.Web.Papers;
using Stringline.Papers.Catalogue;
using Stringline.Tables.Sheets.Cells;

namespace Stringline.Cli.Tests;

/// <summary>Money typed by a person is read alike at every entrance: a decimal comma nowhere, commas at thousands everywhere.</summary>
public sealed class MoneyEntranceTests
{
    private static readonly (string Typed, decimal? Dollars)[] Texts =
    [
        ("12500", 12_500m),
        ("12500.00", 12_500m),
        ("$12,500.00", 12_500m),
        ("$ 12,500", 12_500m),
        (" 1,250.00 ", 1_250m),
        ("1,250.5", 1_250.50m),
        ("1,234,567.89", 1_234_567.89m),
        ("0.01", 0.01m),
        (".75", 0.75m),
        ("999,999,999.99", 999_999_999.99m),
        ("12,50", null),
        ("6,43", null),
        ("1,2500", null),
        (",250", null),
        ("12,", null),
        ("1.250,00", null),
        ("12.345", null),
        ("1e3", null),
        ("twelve", null),
        ("1,000,000,000.00", null),
    ];

    [Fact]
    public void The_forms_of_entries_and_of_the_file_read_it_so() => Assert.All(Texts, text =>
    {
        var typed = new Typed();
        typed.Set("amount", text.Typed);
        var faults = new Faults();
        var read = AnswerReading.Read(new Asked("amount", "Amount", Answer.Money), typed, faults)?.GetValue<decimal>();
        Assert.Equal((text.Typed, text.Dollars), (text.Typed, read));
        Assert.Equal(text.Dollars is null, faults.Of("amount") is not null);
    });

    [Fact]
    public void The_form_of_a_paper_reads_it_so() => Assert.All(Texts, text =>
    {
        foreach (var told in (PaperInput[])[PaperInput.Amount, PaperInput.Disputed])
        {
            var field = new PaperField(told, "", "text");
            var options = field.Take([text.Typed], new PaperOptions(), out var fault);
            Assert.Equal((text.Typed, text.Dollars), (text.Typed, told == PaperInput.Amount ? options.Amount : options.Disputed));
            Assert.Equal(text.Dollars is null, fault is not null);
        }
    });

    [Fact]
    public void The_command_line_reads_it_so() => Assert.All(Texts, text =>
    {
        foreach (var (told, name) in (IEnumerable<(PaperInput, string)>)[(PaperInput.Amount, "--amount"),
            (PaperInput.Disputed, "--disputed")])
        {
            var option = PaperOption.Of(told);
            var parsed = new System.CommandLine.RootCommand { option.Option }.Parse([name, text.Typed]);
            var options = option.Take(parsed, new PaperOptions());
            Assert.Equal((text.Typed, text.Dollars is null), (text.Typed, parsed.Errors.Count > 0));
            if (text.Dollars is not null)
                Assert.Equal((text.Typed, text.Dollars), (text.Typed, told == PaperInput.Amount ? options.Amount : options.Disputed));
        }
    });

    [Fact]
    public void The_form_of_a_new_job_reads_it_so() => Assert.All(Texts, text =>
    {
        var form = new NewJobForm
        {
            Name = "Sawpit Row", Kind = "private", County = "Yolo", Claimant = "Quillback Masonry, Inc.", Role = "subcontractor",
            Customer = "Sawpit Builders", CustomerIs = "direct-contractor", Price = text.Typed,
        };
        var (job, faults) = form.Read(new LocalDate(2026, 7, 15));
        Assert.Equal((text.Typed, text.Dollars), (text.Typed, job?.Contract.Price));
        Assert.Equal(text.Dollars is null, faults.ContainsKey(nameof(NewJobForm.Price)));
    });

    /// <summary>
    /// A cell of three decimals, the last a zero, is how accounting systems write cents; no person's text of the table is one.
    /// </summary>
    [Fact]
    public void The_cell_of_a_table_reads_it_so() => Assert.All(Texts, text =>
    {
        var wrong = MoneyCell.Read(Cell.Of(text.Typed), out var dollars);
        Assert.Equal((text.Typed, text.Dollars), (text.Typed, wrong is null ? dollars : null));
    });
}
