using System.Globalization;

namespace Stringline.Office.Batch;

/// <summary>
/// File names from job, form and through date, in letters, digits and hyphens that every system takes, and no two that differ only in case.
/// The same rows in the same order get the same names.
/// </summary>
internal sealed class WaiverNames
{
    private readonly Dictionary<string, int> given = [];

    /// <summary>The next row's name: <c>alder-court-8132-2026-05-31.pdf</c>; a second of that name ends in <c>-2</c>.</summary>
    public string Next(WaiverRow row)
    {
        var stem = Stem(row.Job) + "-" + (row.Form is null ? "waiver" : row.FormText)
            + (row.Options.Through is { } through ? "-" + Tables.DayText.Write(through) : "");
        var name = stem;
        while (given.ContainsKey(name))
            name = string.Create(CultureInfo.InvariantCulture, $"{stem}-{++given[stem]}");
        given[name] = 1;
        return name + ".pdf";
    }

    /// <summary>A job's path or number in lower-case letters and digits; accents are left off, all else becomes a hyphen.</summary>
    public static string Stem(string job)
    {
        var name = job.Replace('\\', '/').Split('/')[^1];
        if (name.EndsWith(".json", StringComparison.OrdinalIgnoreCase))
            name = name[..^5];
        return PaperFileName.Stem(name, "job");
    }
}
