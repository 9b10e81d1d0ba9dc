using System.Globalization;
using Stringline.Testing;
using System.Text;
using CsCheck;
using Stringline.Law.Facts;

namespace Stringline.Tables.Tests;

/// <summary>
/// Which characters come into a job, and what a cell of comma-separated text does to one. Character data: The Unicode Standard, sections
/// 23.2, 23.7.
/// </summary>
public sealed class SignsTests
{
    public static TheoryData<int> Refused =>
    [
        0x0000, 0x0007, 0x001B, 0x007F, 0x0085, 0x00AD, 0x061C, 0x180E, 0x200B, 0x200E, 0x200F, 0x2028, 0x2029, 0x202A, 0x202E, 0x2060,
            0x2064, 0x2066, 0x2069, 0xFEFF,
        0xFFF9, 0xFFFB, 0xFDD0, 0xFDEF, 0xFFFE, 0xFFFF, 0x1FFFE, 0x1FFFF, 0x10FFFE, 0x10FFFF, 0xE0001, 0xE0041, 0xE007F, 0x1D173,
    ];

    public static TheoryData<string> Taken =>
    [
        "José", "Jose\u0301", "Nguyễn", "Nguye\u0302\u0303n", "Škoda & Søn", "O’Neil", "دانش\u200Cآموز", "क\u094D\u200Dष", "張偉", "Ωmega",
            "Zoë 👩\u200D🌾", "\u0601 12", "A\u00A0B", "✓\uFE0F", "\U000E0100",
    ];

    [Theory]
    [MemberData(nameof(Refused))]
    [Attack("noncharacters, controls, format characters")]
    public void A_sign_that_cannot_be_seen_or_is_no_character_is_refused_with_its_field(int sign)
    {
        foreach (var (field, path) in (ValueTuple<string, string>[])[("\"name\": \"Alder Court, building 2\"", "name"),
            ("\"text\": \"Sill plate, studs and wall sheathing\"", "entries[0].text")])
        {
            var text = Demo.Replace(field, field[..^1] + Escaped(sign) + "\"", StringComparison.Ordinal);
            var fault = Assert.Single(
                Assert.IsType<JobFileResult.Refused>(JobFileReader.Read(Encoding.UTF8.GetBytes(text), "job.json")).Faults);
            Assert.Equal(path, fault.Path);
            Assert.Contains($"U+{sign:X4}", fault.Expected, StringComparison.Ordinal);
            Assert.All(fault.ToString().EnumerateRunes(), rune => Assert.True(rune.Value == '\n' || !Signs.IsRefused(rune)));
        }
    }

    [Theory]
    [MemberData(nameof(Taken))]
    public void Accents_joiners_and_all_scripts_are_taken(string name)
    {
        var text = Demo.Replace("Alder Court, building 2", name, StringComparison.Ordinal);
        Assert.Equal(name, Assert.IsType<JobFileResult.Read>(JobFileReader.Read(Encoding.UTF8.GetBytes(text), "job.json")).Job.Name);
    }

    // A journal erases nothing, so what came in by an earlier rule is read on, and entries are added to it; but no more of it comes in.
    [Fact]
    public void What_a_journal_holds_is_read_on_and_only_what_is_new_is_held_to_the_rule()
    {
        var job = Assert.IsType<JobFileResult.Read>(JobFileReader.Read(Encoding.UTF8.GetBytes(Demo), "job.json")).Job with { Name =
            "Alder\u200BCourt\uFFFF" };
        var head = JournalText.Head(job);
        List<ReadOnlyMemory<byte>> entries = [.. job.Entries.Select(entry => (ReadOnlyMemory<byte>)JournalText.Entry(entry))];
        var bad = (ReadOnlyMemory<byte>)JournalText.Entry(
            ((Furnished)job.Entries[0]) with { Text = "pallet\u200B", Ref = "new", Index = 0 });
        Assert.Equal(job.Name, Assert.IsType<JobFileResult.Read>(JournalText.Read("a", head, entries)).Job.Name);
        Assert.IsType<JobFileResult.Read>(JournalText.Read("a", head, [.. entries, bad]));
        Assert.IsType<JobFileResult.Read>(JournalText.ReadAdded("a", head, entries, newHead: false, known: 3));
        Assert.Equal("name",
            Assert.Single(
                Assert.IsType<JobFileResult.Refused>(
                    JournalText.ReadAdded("a", head, entries, newHead: true, known: entries.Count)).Faults).Path);
        Assert.Equal(
            string.Create(CultureInfo.InvariantCulture, $"entries[{entries.Count}].text"),
            Assert.Single(
                Assert.IsType<JobFileResult.Refused>(
                    JournalText.ReadAdded("a", head, [.. entries, bad], newHead: false, known: entries.Count)).Faults).Path);
        Assert.IsType<JobFileResult.Read>(JournalText.ReadAdded("a", head, [bad, .. entries], newHead: false, known: 1));
    }

    [Fact]
    [Attack("noncharacters, controls, format characters", 200_000)]
    public void The_guard_of_a_cell_is_taken_off_again_and_leaves_no_formula()
    {
        const string Signs = "='+-@＝＋－＠ \t\r\na1,.\"$\u00A0\u200B";
        Gen.Char[Signs].Array[0, 8].Select(signs => new string(signs)).Sample(
            text =>
            {
                var cell = CsvLine.Guarded(text);
                Assert.Equal(text, CsvLine.Unguarded(cell));
                Assert.True(cell.TrimStart(' ', '\t', '\r', '\n', '\u00A0',
                    '\u200B') is not [('=' or '+' or '-' or '@' or '＝' or '＋' or '－' or '＠'), ..]
                    || cell[1..].All(c => char.IsAsciiDigit(c) || c is '.' or ',' or '$'));
                Assert.True(cell.Length - text.Length is 0 or 1);
            },
            iter: 200_000,
            threads: 1);
        Assert.Equal("-5.00", CsvLine.Guarded("-5.00"));
        Assert.Equal("-$1,250.00", CsvLine.Guarded("-$1,250.00"));
        Assert.Equal("'-5*2", CsvLine.Guarded("-5*2"));
        Assert.Equal("'t", CsvLine.Unguarded("'t"));
        Assert.Equal("a,\"b,\"\"c\",' =d,\r\n", CsvLine.Of("a", "b,\"c", " =d", ""));
    }

    [Fact]
    [Attack("noncharacters, controls, format characters", 50_000)]
    public void A_text_for_xml_loses_only_what_xml_and_unicode_have_no_place_for()
    {
        Gen.Char.Array[0, 12].Select(signs => new string(signs)).Sample(
            text =>
            {
                var kept = Signs.ForXml(text);
                Assert.Equal(kept, Signs.ForXml(kept));
                System.Xml.XmlConvert.VerifyXmlChars(kept);
                Assert.DoesNotContain(kept.EnumerateRunes(), Signs.IsNoncharacter);
            },
            iter: 50_000,
            threads: 1);
        Assert.Equal("José 👩\u200D🌾\n\t", Signs.ForXml("José 👩\u200D🌾\n\t"));
    }

    private static readonly string Demo = File.ReadAllText(Stringline.Testing.Repository.Path("data/demo/alder-court.json"));

    private static string Escaped(int sign) =>
        string.Concat(char.ConvertFromUtf32(sign).Select(unit => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)unit:X4}")));
}
