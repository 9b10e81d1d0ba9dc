using System.Text;
using Microsoft.Extensions.DependencyInjection;
using Stringline.Office.Import;

namespace Stringline.Browser.Tests;

/// <summary>An office with a table at every step of an import. The tables are invented; what they hold is counted beside them.</summary>
internal static class ImportOffice
{
    /// <summary>A table whose headers do not say what its rows are.</summary>
    public const string Unclear = "/import/00000000000000000000000000000001";

    /// <summary>A table whose columns are understood.</summary>
    public const string Columns = "/import/00000000000000000000000000000002";

    /// <summary>A table that was looked at.</summary>
    public const string Looked = "/import/00000000000000000000000000000003";

    /// <summary>
    /// A table that is being written: by another desk on this store, so that it goes on for as long as the pages are looked at.
    /// </summary>
    public const string Running = "/import/00000000000000000000000000000004";

    /// <summary>A table that was written.</summary>
    public const string Written = "/import/00000000000000000000000000000005";

    /// <summary>A table whose writing was broken off.</summary>
    public const string Broken = "/import/00000000000000000000000000000006";

    /// <summary>
    /// Eight rows of two jobs, of which one has an amount that is none; and a total. The column of the ship day has a header that nobody
    /// knows.
    /// </summary>
    /// <param name="prefix">With which the numbers of the jobs begin.</param>
    public static byte[] Invoices(string prefix) => Encoding.UTF8.GetBytes($"""
        Job number,Job name,County,Customer,Invoice number,Left our yard,Invoice amount,Sales rep
        {prefix}-1,"Brick Kiln Lane, lot 4",Yolo,Tamarack Framing,I-201,03/02/2026,"1,200.00",Jo
        {prefix}-1,"Brick Kiln Lane, lot 4",Yolo,Tamarack Framing,I-202,03/09/2026,800.50,Jo
        {prefix}-1,"Brick Kiln Lane, lot 4",Yolo,Tamarack Framing,I-203,03/16/2026,415.25,Jo
        {prefix}-2,Ferry Landing,Solano,Tamarack Framing,I-204,03/11/2026,450.00,Al
        {prefix}-2,Ferry Landing,Solano,Tamarack Framing,I-205,03/12/2026,forty,Al
        {prefix}-2,Ferry Landing,Solano,Tamarack Framing,I-206,03/18/2026,96.00,Al
        {prefix}-1,"Brick Kiln Lane, lot 4",Yolo,Tamarack Framing,I-207,03/24/2026,77.10,Jo
        {prefix}-2,Ferry Landing,Solano,Tamarack Framing,I-208,03/25/2026,"2,310.00",Al
        Total,,,,,,"5,348.85",

        """);

    /// <summary>Serves it.</summary>
    /// <returns>The desk, and what must be let go of before it ends.</returns>
    public static async Task<(ServedDesk Desk, IDisposable Held)> Start(LocalDate today)
    {
        var desk = await ServedDesk.Start(today);
        var tables = desk.Services.GetRequiredService<WaitingTables>();
        Give(tables, Unclear, "yard-slips.csv", "Nr,Where,Slip,Given,Worth\r\n26-31,Yolo,S-1,03/02/2026,10.00\r\n"u8.ToArray(),
            ImportStep.Received);
        Give(tables, Columns, "march-invoices.csv", Known("26-4"), ImportStep.Received);
        foreach (var (address, name, prefix, write) in new[] { (Looked, "april-invoices.csv", "26-5", false),
            (Written, "may-invoices.csv", "26-6", true), (Broken, "june-invoices.csv", "26-7", false) })
        {
            Give(tables, address, name, Known(prefix), ImportStep.Received);
            await Do(desk, address, false);
            if (write)
                await Do(desk, address, true);
        }

        desk.Assess();
        var broken = tables.Find(IdOf(Broken))!;
        tables.Keep(broken with { Step = ImportStep.Broken, WasBroken = true });

        // The lock that a writing desk holds, as another one would.
        Give(tables, Running, "july-invoices.csv", Known("26-8"), ImportStep.Writing);
        return (desk, new FileStream(Path.Combine(tables.Folder, "running"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
    }

    private static string IdOf(string address) => address.Split('/')[^1];

    private static byte[] Known(string prefix) =>
        Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(Invoices(prefix)).Replace("Left our yard", "Ship date", StringComparison.Ordinal));

    private static void Give(WaitingTables tables, string address, string name, byte[] content, ImportStep step)
    {
        var state = new ImportState
        {
            Id = IdOf(address),
            File = name,
            Bytes = content.Length,
            AboutRows = content.Count(one => one == '\n'),
            Received = $"2026-07-15T16:0{address[^1]}:00Z",
            Step = step,
            Choices = new ImportChoices { Claimant = "Quillback Lumber & Truss, Inc.", Role = "supplier", CustomerIs = "subcontractor" },
        };
        Directory.CreateDirectory(tables.FolderOf(state));
        File.WriteAllBytes(tables.PathOf(state), content);
        tables.Keep(state);
    }

    private static async Task Do(ServedDesk desk, string address, bool write)
    {
        var runs = desk.Services.GetRequiredService<ImportRuns>();
        Assert.Null(runs.Begin(runs.Find(IdOf(address))!, write));
        for (var tries = 0; tries < 600 && runs.Find(IdOf(address))!.IsRunning; tries++)
            await Task.Delay(50);
        Assert.Equal(write ? ImportStep.Written : ImportStep.Looked, runs.Find(IdOf(address))!.Step);
    }
}
