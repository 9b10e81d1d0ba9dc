using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>No command writes over a file that has other content, unless it is told to.</summary>
public sealed class NothingWrittenOverTests : IDisposable
{
    private const string Mine = "what somebody wrote by hand";

    private readonly string folder = Scratch.Folder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("list --store {store} --csv {file}")]
    [InlineData("list --store {store} --xlsx {file}")]
    [InlineData("calendar --store {store} --out {file}")]
    [InlineData("waterfall {job} --csv {file}")]
    [InlineData("waterfall {job} --xlsx {file}")]
    [InlineData("days {job} --csv {file}")]
    [Attack("other content in the way")]
    public void A_sheet_or_a_calendar_is_replaced_only_where_that_was_asked_for(string command)
    {
        Assert.Equal(CommandLine.Done, Run("store add --new --store {store} {job}"));
        command += " --as-of 2026-06-22";
        File.WriteAllText(At("file"), Mine);
        Assert.Equal(CommandLine.Refused, Run(command));
        Assert.Equal(Mine, File.ReadAllText(At("file")));
        Assert.Equal(CommandLine.Done, Run(command + " --replace"));
        Assert.NotEqual(Mine, File.ReadAllText(At("file")));
    }

    [Fact]
    [Attack("other content in the way")]
    public void A_backup_and_an_export_are_refused_where_something_is()
    {
        Assert.Equal(CommandLine.Done, Run("store add --new --store {store} {job}"));
        File.WriteAllText(At("file"), Mine);
        Assert.Equal(CommandLine.Refused, Run("store backup --store {store} {file}"));
        Assert.Equal(CommandLine.Refused, Run("store export --store {store} --out {file}"));
        Assert.Equal(Mine, File.ReadAllText(At("file")));
    }

    [Fact]
    [Attack("other content in the way")]
    public void Refused_rows_that_were_mended_are_kept_and_a_mapping_is_not_written_over()
    {
        const string Import = "import {table} --store {store} --new --save-mapping {file} --claimant X --role supplier --county Yolo "
            + "--customer-is subcontractor --as-of 2026-05-01";
        File.WriteAllText(At("in.csv"), "Job No.,Customer,Inv #,Delivery Date,Amount\n114,Hobart Framing,INV-2,4/31/2026,5\n");
        File.WriteAllText(At("file"), Mine);
        File.WriteAllText(At("in.refused.csv"), Mine);
        Assert.Equal(CommandLine.Refused, Run(Import));
        Assert.Equal(Mine, File.ReadAllText(At("file")));
        Assert.Equal(Mine, File.ReadAllText(At("in.refused.1.csv")));
        Assert.Contains("INV-2", File.ReadAllText(At("in.refused.csv")), StringComparison.Ordinal);
        Run(Import);
        Assert.False(File.Exists(At("in.refused.2.csv")));
    }

    [Theory]
    [InlineData("made.csv")]
    [InlineData("refused.csv")]
    [Attack("other content in the way")]
    public void A_list_of_somebody_s_own_is_no_list_of_waivers(string name)
    {
        File.WriteAllText(At(name), Mine);
        File.WriteAllText(At("in.csv"),
            "job,form,through,amount,maker,payee,disputed,payment-cleared,releases,through-again\nnobody.json,8132,2026-03-20,1,X,,,,,\n");
        Assert.Equal(CommandLine.Refused, Run("packet waiver --jobs {table} --out {folder} --as-of 2026-06-22"));
        Assert.Equal(Mine, File.ReadAllText(At(name)));
    }

    private int Run(string command)
    {
        using var output = new MemoryStream();
        using var errors = new StringWriter();
        return new CommandLine(output, errors, SystemClock.Instance).Run([.. command.Split(' ').Select(word => word
            .Replace("{store}", At("office"), StringComparison.Ordinal).Replace("{file}", At("file"), StringComparison.Ordinal)
            .Replace("{table}", At("in.csv"), StringComparison.Ordinal).Replace("{folder}", folder, StringComparison.Ordinal)
            .Replace("{job}", Repository.Path("data/demo/alder-court.json"), StringComparison.Ordinal))]);
    }

    private string At(string name) => Path.Combine(folder, name);
}
