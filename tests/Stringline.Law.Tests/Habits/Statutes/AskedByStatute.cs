namespace Stringline.Law.Tests.Habits.Statutes;

/// <summary>
/// One thing on which a section makes its effect hang: a condition, a period, or the day from which one counts; and where a job file holds
/// it.
/// </summary>
/// <param name="Place">The file and line of the table, for a message.</param>
/// <param name="Section">The section, such as <c>Civ. Code § 8190(a)</c>.</param>
/// <param name="Kind">A word of <see cref="Kinds"/>.</param>
/// <param name="Words">Words of the statute, letter for letter.</param>
/// <param name="Where">Where it lives: see <see cref="Means"/>.</param>
internal sealed record AskedByStatute(string Place, string Section, string Kind, string Words, string Where)
{
    /// <summary>What a row can be about.</summary>
    public static readonly string[] Kinds = ["condition", "period", "start day"];

    /// <summary>
    /// How a row can say where: fields of the job file, the finding that counts the days, words of a question; none is needed; or it is
    /// missing.
    /// </summary>
    public static readonly string[] Means = ["field ", "finding ", "question ", "none: ", "missing: "];

    private const string Folder = "tests/Stringline.Law.Tests/Habits/Statutes";

    /// <summary>
    /// Every row of the tables beside this file. They were filled by reading each cited section against the Legislature's text for every
    /// "if", "unless", "only", "except" and "within"; those of the federal table are from memory, and those of recording follow a digest.
    /// </summary>
    public static IReadOnlyList<AskedByStatute> All { get; } =
        [.. Directory.GetFiles(Repository.Path(Folder), "*.tsv").Order(StringComparer.Ordinal).SelectMany(Read)];

    /// <summary>What follows the means, where the row has these means; else null.</summary>
    public string? By(string means) => Where.StartsWith(means, StringComparison.Ordinal) ? Where[means.Length..] : null;

    /// <summary>The section without its subdivisions.</summary>
    public static string WithoutSubdivision(string section) =>
        section.IndexOf('(', StringComparison.Ordinal) is var at and >= 0 ? section[..at] : section;

    /// <summary>Whether one of two sections is the other or a part of it.</summary>
    public static bool AreOfOneAnother(string one, string other) => IsPart(one, other) || IsPart(other, one);

    private static bool IsPart(string part, string whole) => part == whole || part.StartsWith(whole + "(", StringComparison.Ordinal);

    private static IEnumerable<AskedByStatute> Read(string file)
    {
        var lines = File.ReadAllLines(file);
        for (var i = 0; i < lines.Length; i++)
        {
            if (lines[i].StartsWith('#'))
                continue;
            var place = $"{Path.GetFileName(file)}:{i + 1}";
            yield return lines[i].Split('\t') is [var section, var kind, var words, var where]
                ? new AskedByStatute(place, section, kind, words, where)
                : throw new FormatException($"{place}: not four cells");
        }
    }
}
