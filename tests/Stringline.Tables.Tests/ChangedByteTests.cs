using Stringline.Tables.Sheets;
using Stringline.Tables.Sheets.Reading;
using Stringline.Tables.Sheets.Writing;
using Stringline.Testing;

namespace Stringline.Tables.Tests;

/// <summary>A workbook is taken as it was written or not at all: every byte of it is changed in turn.</summary>
[Slow(Slow.Fuzz)]
public sealed class ChangedByteTests : IDisposable
{
    private readonly string folder = Scratch.Folder();

    public static TheoryData<string> Books => ["by-hand", "shared-texts", "as-written"];

    [Theory]
    [MemberData(nameof(Books))]
    [Attack("each byte of three workbooks changed")]
    public async Task Each_changed_byte_is_refused_or_changes_no_row(string name)
    {
        var good = await Make(name);
        var path = Path.Combine(folder, "book.xlsx");
        var rows = Rows(path, good);
        Assert.NotEmpty(rows);
        var (refused, same) = (0, 0);
        for (var at = 0; at < good.Length; at++)
        {
            foreach (var change in (byte[])[0x01, 0x20])
            {
                var changed = (byte[])good.Clone();
                changed[at] ^= change;
                try
                {
                    Assert.Equal(rows, Rows(path, changed));
                    same++;
                }
                catch (SheetException)
                {
                    refused++;
                }
            }
        }

        TestContext.Current.SendDiagnosticMessage(
            $"{name}: {good.Length:N0} bytes, two changes each: {refused:N0} refused, {same:N0} with the very same rows.");

        // Most of a workbook is what it says; the rest is times, versions and the like.
        Assert.True(refused > same);
        AttackAttribute.Tried(good.Length * 2);
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static async Task<byte[]> Make(string name)
    {
        switch (name)
        {
            case "by-hand":
                return Hostile.Books.Of(Hostile.Books.TwoRows);
            case "shared-texts":
                return Hostile.Books.With(Hostile.Books.Sheet, Hostile.Books.Worksheet(
                    "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c r=\"B1\"><v>7</v></c></row><row r=\"2\"><c r=\"B2\" "
                        + "t=\"s\"><v>0</v></c></row>"));
            default:
                using (var stream = new MemoryStream())
                {
                    await SheetWriter.WriteXlsxAsync(
                        stream,
                        new Sheet("Invoices", [new("Job #"), new("Delivery Date", Look.Day), new("Amount", Look.Money)],
                            [[Sheets.Cells.Cell.Of("J1"), Sheets.Cells.Cell.Of(new LocalDate(2026, 3, 2)), Sheets.Cells.Cell.Of(100.25m)]]),
                        ["About these rows: invented."]);
                    return stream.ToArray();
                }
        }
    }

    private static List<string> Rows(string path, byte[] bytes)
    {
        File.WriteAllBytes(path, bytes);
        return [.. new SheetFile(path).Rows().Select(row =>
            $"{row.Line}|{row.Broken}|{string.Join('|', row.Cells.Select(cell => $"{cell.Kind} {cell}"))}")];
    }
}
