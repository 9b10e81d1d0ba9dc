using System.Buffers.Binary;

namespace Stringline.Tables.Tests.Hostile;

/// <summary>Old workbooks whose records send their reader beyond all bounds.</summary>
internal static class HostileOldBooks
{
    private static readonly byte[] Rows = [.. RawXls.Text(0, 0, "job number"), .. RawXls.Text(0, 1, "amount"), .. RawXls.Text(1, 0, "J1"),
        .. RawXls.Number(1, 1, 100)];

    public static IReadOnlyList<HostileFile> All { get; } =
    [
        new("old.xls", "an old workbook", () => RawXls.File(RawXls.Book(Rows))) { Rows = 2 },
        Sheet("run-without-an-end", "a run of numbers to column 65,536", RawXls.Record(0xBD, 2, 0, 0, 0, 0, 65_535)),
        Sheet("run-backward", "a run of numbers that ends before it begins", RawXls.Record(0xBD, 2, 9, 0, 0, 0, 3)),
        Sheet("column-300", "a cell in column 301", RawXls.Number(2, 300, 1)),
        Sheet("cut-cell", "a cell of two bytes", RawXls.Record(0x203, 2)),
        Sheet("record-cut-off", "a cell in row 49,088 and column 34,243 whose record is longer than the file",
            [0x04, 0x02, 0x00, 0xEF, 0xBF, 0xBF, 0xC2, 0x85, 0, 0]),
        Sheet("extent-of-rows", "a sheet said to have 2,147,483,647 rows", RawXls.Record(0x200, 0, 0, 65_535, 32_767, 0, 2, 0)),
        Sheet("extent-of-columns", "a sheet said to have 65,535 columns", RawXls.Record(0x200, 0, 0, 2, 0, 0, 65_535, 0)),
        new("blank-sheets.xls", "200 sheets, each with an error in its last cell", () =>
            RawXls.File(RawXls.Sheets(RawXls.Record(0x205, 65_535, 255, 0, 0x0107), 200))),
        new("locked.xls", "an old workbook with a password", () => RawXls.File(RawXls.Book(Rows, RawXls.Record(0x2F, 0, 0, 0)))),
        new("one-sheet-twice.xls", "two sheets at one place", () => RawXls.File(RawXls.Book(Rows, sheets: 2))),
        new("encrypted.xls", "an encrypted workbook", () => RawXls.File(RawXls.Book(Rows), "EncryptedPackage")),
        new("no-book.xls", "another document of that time", () => RawXls.File(RawXls.Book(Rows), "WordDocument")),
        Changed("chain-in-a-circle", "a chain of sectors that comes back to itself", file => Number(file, 512 + 12, 2)),
        Changed("chain-outside", "a chain of sectors that leaves the file", file => Number(file, 512 + 12, 70_000)),
        Changed("directory-in-a-circle", "a directory that comes back to itself", file => Number(file, 512 + 4, 1)),
        Changed("longer-than-the-file", "a stream of 2 GB in a file of 6 kB", file => Number(file, 1024 + 128 + 120, 0x7FFF_FFFF)),
        Changed("longer-than-its-chain", "a stream that is longer than its sectors", file => Number(file, 1024 + 128 + 120, 5_000)),
        Changed("tables-without-an-end", "a list of 2,147,483,647 tables", file => Number(file, 72, 0x7FFF_FFFF)),
        Changed("sectors-of-2-gb", "sectors of 2 GB", file => file[30] = 31),
        Changed("small-sectors-of-2-gb", "small sectors of 2 GB", file => file[32] = 31),
        Changed("table-outside", "a table of sectors that is not there", file => Number(file, 76, 70_000)),
        new("cut-off.xls", "half of an old workbook", () => RawXls.File(RawXls.Book(Rows))[..2_000]),
        new("only-a-header.xls", "the first 512 bytes of one", () => RawXls.File(RawXls.Book(Rows))[..512]),
        new("only-a-beginning.xls", "its first four bytes", () => [0xD0, 0xCF, 0x11, 0xE0]),
        new("large.xls", "an old workbook of 33 MB", () => [.. RawXls.File(RawXls.Book(Rows)), .. new byte[33 * 1024 * 1024]]),
    ];

    private static HostileFile Sheet(string name, string how, byte[] more) =>
        new(name + ".xls", how, () => RawXls.File(RawXls.Book([.. Rows, .. more])));

    private static HostileFile Changed(string name, string how, Action<byte[]> change) =>
        new(name + ".xls", how, () => RawXls.File(RawXls.Book(Rows), change: change));

    private static void Number(byte[] file, int at, uint number) => BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(at), number);
}
