namespace Stringline.Law.Tests.Habits.Statutes;

/// <summary>
/// Whatever a cited section makes its effect hang on can be said in a job file, is asked, or is told why not: a table with no empty row,
/// held against the law as it is.
/// </summary>
[Slow(Slow.Lasting)]
public sealed class AskedByStatuteTests
{
    [Fact]
    public void Every_row_says_of_which_section_what_it_is_in_which_words_and_where_it_lives() => Assert.All(AskedByStatute.All, row =>
    {
        Assert.True(RuleMarks.LooksLikeASection(row.Section), row.Place);
        Assert.Contains(row.Kind, AskedByStatute.Kinds);
        Assert.True(row.Words.Trim().Length >= 4 && row.Words.Trim() == row.Words, row.Place);
        var means = Assert.Single(AskedByStatute.Means, m => row.By(m) is not null);
        Assert.False(string.IsNullOrWhiteSpace(row.By(means)), row.Place);
    });

    [Fact]
    public void No_row_stands_twice() =>
        Assert.Empty(AskedByStatute.All.GroupBy(r => (r.Section, r.Words, r.Where)).Where(g => g.Count() > 1)
            .Select(g => string.Join(" and ", g.Select(r => r.Place))));

    /// <summary>Days that the claimant counts on are counted by a finding, and no field alone does that.</summary>
    [Fact]
    public void Every_period_is_counted_by_a_finding_or_says_why_not() =>
        Assert.Empty(AskedByStatute.All.Where(r => r.Kind == "period" && (r.By("field ") ?? r.By("question ")) is not null)
            .Select(r => r.Place));

    /// <summary>What a day is counted from is a fact of the file, and no finding alone holds that.</summary>
    [Fact]
    public void Every_start_day_is_a_field_or_says_why_not() =>
        Assert.Empty(AskedByStatute.All.Where(r => r.Kind == "start day" && (r.By("finding ") ?? r.By("question ")) is not null)
            .Select(r => r.Place));

    [Fact]
    public void Every_field_that_is_named_can_be_said_in_a_job_file()
    {
        Assert.False(FieldsOfTheFile.Has("work.no-such-field"));
        Assert.Empty(Rows("field ")
            .SelectMany(r => r.What.Split(", ").Where(path => !FieldsOfTheFile.Has(path)).Select(path => $"{r.Row.Place}: {path}")));
    }

    [Fact]
    public void Every_finding_that_is_named_is_made_and_names_the_section()
    {
        Assert.SkipWhen(SaidOfDrawnFiles.TooFew is not null, SaidOfDrawnFiles.TooFew ?? "");
        bool Names(AskedByStatute row, string id) => SaidOfDrawnFiles.SectionsOfFindings.TryGetValue(id, out var sections)
            && sections.Any(s => AskedByStatute.WithoutSubdivision(s) == AskedByStatute.WithoutSubdivision(row.Section));
        Assert.Empty(Rows("finding ").Where(r => !Names(r.Row, r.What))
            .Select(r => $"{r.Row.Place}: {r.What} does not name {r.Row.Section}"));
    }

    [Fact]
    public void Every_question_that_is_named_is_asked()
    {
        Assert.SkipWhen(SaidOfDrawnFiles.TooFew is not null, SaidOfDrawnFiles.TooFew ?? "");
        Assert.Empty(Rows("question ").Where(r => !SaidOfDrawnFiles.Questions.Any(q => q.Contains(r.What, StringComparison.Ordinal)))
            .Select(r => $"{r.Row.Place}: {r.What}"));
    }

    [Fact]
    public void Every_section_of_a_rule_has_a_row() =>
        Assert.Empty(RuleMarks.All.Select(r => r.Rule.Section).Distinct().Where(HasNoRow).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_section_that_a_reason_names_has_a_row()
    {
        Assert.SkipWhen(SaidOfDrawnFiles.TooFew is not null, SaidOfDrawnFiles.TooFew ?? "");
        Assert.Empty(SaidOfDrawnFiles.SectionsOfFindings.Values.SelectMany(s => s).Where(s => s.Length > 0).Distinct().Where(HasNoRow)
            .Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Nothing_that_a_section_asks_for_is_missing() => Assert.Empty(Rows("missing: ").Select(r => r.Row.Place));

    private static IEnumerable<(AskedByStatute Row, string What)> Rows(string means) =>
        AskedByStatute.All.Where(r => r.By(means) is not null).Select(r => (r, r.By(means)!));

    private static bool HasNoRow(string section) => !AskedByStatute.All.Any(r => AskedByStatute.AreOfOneAnother(r.Section, section));
}
