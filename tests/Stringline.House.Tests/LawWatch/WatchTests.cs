using Stringline.LawWatch;

namespace Stringline.House.Tests.LawWatch;

/// <summary><c>eng/law-watch</c> over a made repository and made texts of codes, in the form of the Legislature's.</summary>
public sealed class WatchTests : IDisposable
{
    private static readonly LocalDate Day = new(2026, 7, 10);

    private readonly string root = Scratch.Folder();

    public WatchTests()
    {
        Write("docs/sources-of-law.md",
            """
            | File | Section | Text of the Code | Read | Type the section asks for |
            | `8416-notice.txt` | Civ. Code § 8416(a)(8), notice of mechanics lien | as updated | 2026-11-25 | boldface |
            | Section | Governs | How sure | Rule | Tests |
            | Civ. Code § 8306(b)(2) | since 2012-07-01 | read | `DesignLien.Expiry.Of` | `ExpiryTests.A`, `ExpiryTests.B` and 3 more |
            | Civ. Code § 8414 | since 2012-07-01 | read | `ClaimOfLien.LastDay.Of`, `ClaimOfLien.FirstDay.Of` | `LastDayTests.A` |
            | Civ. Code § 1170 | since 2012-07-01 | read | `ClaimOfLien.Rank.Of` | `RankTests.A` |
            | Code Civ. Proc. § 415.20 | since 2012-07-01 | read | `Enforcement.Service.Of` | `ServiceTests.A` |
            | Gov. Code § 27361 | since 2012-07-01 | read | `Recording.Fee.Of` | `FeeTests.A` |
            """);
        Write("docs/papers.md", "| `claim` | Claim of Mechanics Lien | Civ. Code §§ 8414-8416; Gov. Code § 27361.6 | the claimant |\n");
        Write("data/numbers.csv", "id,value,unit,section,from\n# what an amendment would change\nRecordClaim,90,Days,"
            + "Civ. Code § 8414(a),2012-07-01\n");
    }

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public void A_text_that_breaks_its_lines_elsewhere_is_the_same()
    {
        Keep(("civ.txt", Section("8414", "A direct contractor shall record a claim of lien within 90 days.")));
        Assert.Equal(Watch.Same,
            Compare(out var told,
                ("Civil Code.txt", Section("8414", "A direct contractor shall\r\n  record a claim\r\nof lien within 90 days."))));
        Assert.Equal("1 sections compared: 0 changed, 0 gone, 0 new.", Assert.Single(told));
    }

    [Fact]
    public void A_changed_section_is_told_with_its_history_and_all_that_stands_on_it()
    {
        Keep(("civ.txt", Section("8414", "within 90 days") + Section("8416", "the contents")));
        Assert.Equal(Watch.Different, Compare(out var told, ("civ.txt",
            Section("8414", "within 100 days", "Amended by Stats. 2027, Ch. 12,\nSec. 3.") + Section("8416", "the contents"))));
        Assert.Equal(
        [
            "Civ. Code § 8414 changed since the text of 2026-07-10",
            "  now      (Amended by Stats. 2027, Ch. 12, Sec. 3.)",
            "  rule     ClaimOfLien.LastDay.Of",
            "  rule     ClaimOfLien.FirstDay.Of",
            "  number   RecordClaim (90 Days)",
            "  paper    claim",
            "  test     LastDayTests.A",
            "",
            "2 sections compared: 1 changed, 0 gone, 0 new.",
        ], told);
    }

    [Fact]
    public void One_letter_one_comma_and_one_case_are_a_change()
    {
        Keep(("civ.txt", Section("8414", "within 90 days, whichever is earlier")));
        foreach (var other in (string[])["within 90 day, whichever is earlier", "within 90 days whichever is earlier",
            "Within 90 days, whichever is earlier"])
            Assert.Equal(Watch.Different, Compare(out _, ("civ.txt", Section("8414", other))));
    }

    [Fact]
    public void A_section_that_is_not_there_is_gone_and_one_among_those_kept_whole_is_new()
    {
        Keep(("civ.txt", Section("8414", "a") + Section("8416", "b") + Section("1170", "c")));
        Assert.Equal(Watch.Different, Compare(out var told, ("civ.txt", Section("1170", "c") + Section("1171", "new, and of no concern")
            + Section("8415", "new") + Section("8416", "b"))));
        Assert.Contains("Civ. Code § 8414 gone since the text of 2026-07-10", told);
        Assert.Contains("  rule     ClaimOfLien.LastDay.Of", told);
        Assert.Contains("Civ. Code § 8415 new", told);
        Assert.DoesNotContain(told, line => line.Contains("1171", StringComparison.Ordinal));
        Assert.Equal("3 sections compared: 0 changed, 1 gone, 1 new.", told[^1]);
    }

    [Fact]
    public void Two_entries_of_one_number_are_two_versions_in_any_order()
    {
        var (old, later) = (Section("415.20", "until 2028"), Section("415.20", "from 2028"));
        Keep(("ccp.txt", old + later));
        Assert.Equal(Watch.Same, Compare(out _, ("ccp.txt", later + old)));
        Assert.Equal(Watch.Different, Compare(out var one, ("ccp.txt", later)));
        Assert.Equal("Code Civ. Proc. § 415.20 changed: one version now, 2 versions in the text of 2026-07-10", one[0]);
        Assert.Equal(Watch.Different, Compare(out var three, ("ccp.txt", old + later + Section("415.20", "from 2030"))));
        Assert.StartsWith("Code Civ. Proc. § 415.20 changed: 3 versions now, 2 versions", three[0], StringComparison.Ordinal);
        Assert.Equal(Watch.Different, Compare(out var other, ("ccp.txt", old + Section("415.20", "from 2029"))));
        Assert.Equal("Code Civ. Proc. § 415.20 changed since the text of 2026-07-10", other[0]);
    }

    [Fact]
    public void A_number_on_a_line_that_ends_a_sentence_begins_no_section()
    {
        var text = "The lien of Section\n8306.\n\nand of no other, expires on the day in Section\n8414.";
        Keep(("civ.txt", Section("8306", text)));
        Assert.Equal(Watch.Same, Compare(out var told, ("civ.txt", Section("8306", text.Replace('\n', ' ')))));
        Assert.Equal("1 sections compared: 0 changed, 0 gone, 0 new.", Assert.Single(told));
    }

    [Fact]
    public void Headings_between_sections_belong_to_none_and_a_number_may_stand_in_brackets()
    {
        Keep(("civ.txt", Section("1170", "recorded") + Section("8414", "a")));
        Assert.Equal(Watch.Same, Compare(out _, ("civ.txt",
            "CIVIL CODE\n\n" + Section("[1170.]", "recorded") + "CHAPTER 4. Mechanics Lien [8400. - 8494.]\n\n" + Section("8414", "a"))));
    }

    [Fact]
    public void What_was_not_compared_is_said()
    {
        Keep(("civ.txt", Section("8414", "a")), ("ccp/1.txt", Section("415.20", "b")));
        Assert.Equal(Watch.Same,
            Compare(out var told, ("civ.txt", Section("8414", "a") + Section("1170", "cited and never kept")), ("fish-and-game.txt", "x")));
        Assert.Equal(
        [
            "fish-and-game.txt: passed over, since its name names no code that the rules cite.",
            "Code Civ. Proc.: not in this folder, so not compared.",
            "No text was kept of these, so they were not compared: Civ. Code § 1170.",
            "1 sections compared: 0 changed, 0 gone, 0 new.",
        ], told);
    }

    [Fact]
    public void Keeping_a_text_replaces_its_sections_and_leaves_the_others()
    {
        Keep(("civ.txt", Section("8414", "a")), ("ccp.txt", Section("415.20", "b")));
        Put("text", ("civ.txt", Section("8414", "another")));
        using var output = new StringWriter();
        Watch.Keep(root, Path.Combine(root, "text"), new LocalDate(2027, 1, 4), "made", output);
        Assert.Equal(["section,fingerprint,text_of,source", "2027-01-04", "2026-07-10"],
            File.ReadLines(Path.Combine(root, "data/law-fingerprints.csv"))
                .Select(line => line.Split(',') is [_, _, var day, _] && day[0] == '2' ? day : line));
        Assert.DoesNotContain("another", File.ReadAllText(Path.Combine(root, "data/law-fingerprints.csv")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("civ.txt", "8414.\n\nwithin 90 days\n\n--------\n", "civ.txt: line 1: Civ. Code § 8414 ends without its history.")]
    [InlineData("civ.txt", "x\n\n8414.\n\n--------\n", "civ.txt: line 3: nothing stands under Civ. Code § 8414.")]
    [InlineData("civ.txt", "", "civ.txt: line 1: no section begins on any line.")]
    [InlineData("civ.txt", "<html>8414.</html>", "civ.txt: line 1: no section begins on any line.")]
    [InlineData("civ.txt", "8414.\n\nwithin \u00FF days\n\n(Added.)\n", "civ.txt: line 3: a byte that is no UTF-8.")]
    [InlineData("fish.txt", "8414.\n\na\n\n(Added.)\n", ": no file of a code that the rules cite.")]
    public void What_is_no_such_text_is_refused_by_its_file_and_line(string name, string text, string why)
    {
        Keep(("civ.txt", Section("8414", "a")));
        Put("text", (name, ""));
        File.WriteAllBytes(Path.Combine(root, "text", name), [.. text.Select(letter => (byte)letter)]);
        Assert.Contains(why, Refused("text"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_not_there_and_a_broken_table_are_refused()
    {
        Keep(("civ.txt", Section("8414", "a")));
        Assert.Contains("nowhere: no such folder.", Refused("nowhere"), StringComparison.Ordinal);
        File.AppendAllText(Path.Combine(root, "data/law-fingerprints.csv"), "Civ. Code § 8416,abc,2026-07-10,x\n");
        Assert.Contains("law-fingerprints.csv: line 3: 'Civ. Code § 8416,abc,2026-07-10,x'.", Refused("text"), StringComparison.Ordinal);
    }

    // The table that is committed: of the form, in order, with nothing twice, and every section of the Civil Code's part on works of
    // improvement on which a rule stands.
    [Fact]
    public void The_committed_table_covers_what_the_rules_stand_on()
    {
        var kept = KeptSection.Read(Repository.Path("data/law-fingerprints.csv"));
        Assert.Equal(kept, kept.Distinct());
        Assert.Equal(kept.Select(section => section.Section), kept.Select(section => section.Section).Order(SectionOrder.Instance));
        var standing = Standing.Of(Repository.Path(""));
        var sections = kept.Select(section => section.Section).ToHashSet();
        Assert.Empty(standing.Sections.Where(section => Codes.IsInWholePart(section) && standing.On(section, "rule").Any())
            .Except(sections));
    }

    private static string Section(string number, string text, string history = "Added by Stats. 2010, Ch. 697, Sec. 20. (SB 189)") =>
        $"{(number[0] == '[' ? number : number + ".")}\n\n{text}\n\n({history})\n\n----------------------------------------\n\n";

    private void Keep(params (string Name, string Text)[] files)
    {
        Put("text", files);
        using var output = new StringWriter();
        Assert.Equal(Watch.Same, Watch.Keep(root, Path.Combine(root, "text"), Day, "made", output));
    }

    private int Compare(out string[] told, params (string Name, string Text)[] files)
    {
        Put("text", files);
        using var output = new StringWriter();
        var status = Watch.Compare(root, Path.Combine(root, "text"), output);
        told = output.ToString().ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
        return status;
    }

    private string Refused(string folder)
    {
        using var output = new StringWriter();
        return Assert.Throws<UnreadableException>(() => Watch.Compare(root, Path.Combine(root, folder), output)).Message;
    }

    private void Put(string folder, params (string Name, string Text)[] files)
    {
        var path = Path.Combine(root, folder);
        if (Directory.Exists(path))
            Directory.Delete(path, recursive: true);
        foreach (var (name, text) in files)
            Write($"{folder}/{name}", text);
    }

    private void Write(string path, string text)
    {
        var whole = Path.Combine(root, path);
        Directory.CreateDirectory(Path.GetDirectoryName(whole)!);
        File.WriteAllText(whole, text);
    }
}
