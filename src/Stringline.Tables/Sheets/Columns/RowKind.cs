namespace Stringline.Tables.Sheets.Columns;

/// <summary>What a row of a table of invoices is, where a column of types says it.</summary>
public enum RowKind
{
    /// <summary>An invoice or delivery.</summary>
    Invoice,

    /// <summary>A credit memo: a credit, whatever sign the table gives it.</summary>
    Credit,

    /// <summary>A payment, whatever sign the table gives it.</summary>
    Payment,

    /// <summary>Nothing that belongs into a job.</summary>
    LeftOut,
}

/// <summary>The types that tables write, and what they mean.</summary>
public static class RowKinds
{
    private static readonly (RowKind Kind, string Word, string Title, string[] Types)[] Known =
    [
        (RowKind.Invoice, "invoice", "invoice", ["inv", "invoice", "in", "sale", "sales", "bill", "ticket", "delivery"]),
        (RowKind.Credit, "credit", "credit memo", ["cm", "cr", "credit", "credit memo", "credit note", "crm", "return", "rma"]),
        (RowKind.Payment, "payment", "payment", ["pmt", "pay", "payment", "py", "receipt", "rcpt", "cash receipt", "check", "cash"]),
        (RowKind.LeftOut, "left-out", "leave these rows out", []),
    ];

    /// <summary>What a type means by itself; null where only a person can say.</summary>
    public static RowKind? Of(string type)
    {
        var folded = ColumnWords.Fold(type);
        foreach (var (kind, _, _, types) in Known)
        {
            if (Array.Exists(types, known => ColumnWords.Fold(known) == folded))
                return kind;
        }

        return null;
    }

    /// <summary>The word in a mapping.</summary>
    public static string Word(RowKind kind) => Known[(int)kind].Word;

    /// <summary>The kind of a word in a mapping; null where it is none.</summary>
    public static RowKind? Read(string? word)
    {
        foreach (var known in Known)
        {
            if (known.Word == word)
                return known.Kind;
        }

        return null;
    }

    /// <summary>The kind in words for a person.</summary>
    public static string Title(RowKind kind) => Known[(int)kind].Title;
}
