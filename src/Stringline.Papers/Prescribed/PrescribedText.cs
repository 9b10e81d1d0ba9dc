namespace Stringline.Papers.Prescribed;

/// <summary>Wording that a section prescribes letter for letter.</summary>
/// <param name="Section">The section, such as <c>Civ. Code § 8416(a)(8)</c>.</param>
/// <param name="ReadIn">The text of the Code in which it was read.</param>
/// <param name="Body">The wording: paragraphs are parted by line ends; an empty line parts groups of them. A blank is
/// <c>{name}</c>.</param>
public sealed partial record PrescribedText(string Section, string ReadIn, string Body)
{
    private const string Marker = ", prescribed wording, verified in ";

    /// <summary>Conditional waiver and release on progress payment (Civ. Code § 8132).</summary>
    public static PrescribedText ConditionalProgress => Of("8132");

    /// <summary>Unconditional waiver and release on progress payment (Civ. Code § 8134).</summary>
    public static PrescribedText UnconditionalProgress => Of("8134");

    /// <summary>Conditional waiver and release on final payment (Civ. Code § 8136).</summary>
    public static PrescribedText ConditionalFinal => Of("8136");

    /// <summary>Unconditional waiver and release on final payment (Civ. Code § 8138).</summary>
    public static PrescribedText UnconditionalFinal => Of("8138");

    /// <summary>Notice to property owner of the preliminary notice (Civ. Code § 8202(a)(3)).</summary>
    public static PrescribedText NoticeToPropertyOwner => Of("8202-notice-to-property-owner");

    /// <summary>Notice of mechanics lien (Civ. Code § 8416(a)(8)).</summary>
    public static PrescribedText NoticeOfMechanicsLien => Of("8416-notice-of-mechanics-lien");

    /// <summary>All six, by the name of their file in <c>data/prescribed</c> without its ending.</summary>
    public static IReadOnlyList<string> Names { get; } =
        ["8132", "8134", "8136", "8138", "8202-notice-to-property-owner", "8416-notice-of-mechanics-lien"];

    /// <summary>The paragraphs, empty lines left out.</summary>
    public IReadOnlyList<string> Paragraphs => Body.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The wording with its blanks filled in; a blank without a value is left out, as it is an empty line on the paper.</summary>
    /// <param name="values">The values by the blank's name.</param>
    public PrescribedText Filled(IReadOnlyDictionary<string, string?> values) =>
        this with { Body = Blanks().Replace(Body, m => values.GetValueOrDefault(m.Groups[1].Value) ?? "") };

    [System.Text.RegularExpressions.GeneratedRegex(@"\{(\w+)\}")]
    internal static partial System.Text.RegularExpressions.Regex Blanks();

    /// <summary>The wording of that file.</summary>
    /// <exception cref="InvalidOperationException">No such wording is embedded.</exception>
    public static PrescribedText Of(string name) => Parse(Resources.Text($"prescribed/{name}.txt"));

    /// <summary>Parses a file: the first line is a comment with section and source, the wording is the rest.</summary>
    /// <exception cref="FormatException">The first line does not name section and source.</exception>
    public static PrescribedText Parse(string file)
    {
        var lines = file.ReplaceLineEndings("\n").Split('\n', 2);
        var marker = lines[0].IndexOf(Marker, StringComparison.Ordinal);
        if (lines.Length < 2 || !lines[0].StartsWith("# ", StringComparison.Ordinal) || marker < 0)
            throw new FormatException($"The first line must read '# SECTION{Marker}SOURCE', not '{lines[0]}'.");
        return new PrescribedText(lines[0][2..marker], lines[0][(marker + Marker.Length)..], lines[1].TrimEnd('\n'));
    }
}
