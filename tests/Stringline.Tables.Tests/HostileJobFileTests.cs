using System.Text;
using Stringline.Answers;
using Stringline.Testing;

namespace Stringline.Tables.Tests;

/// <summary>
/// Job files of many megabytes, each made to have one check of one part against another seek in vain, for every part of the file anew,
/// or to fill the memory. So taken they took minutes or gigabytes; what takes a walk of the file takes a second.
/// </summary>
[Collection(LargeFiles.Name)]
[Slow(Slow.Fuzz)]
public sealed class HostileJobFileTests
{
    private const string Head = """
        { "format": "stringline-job/1", "name": "Alder Court", "work": { "kind": "private", "site": { "county": "Yolo" } },
          "claimant": { "name": "Sierra Block Supply, Inc.", "role": "supplier" },
        """;

    private const string Furnished = """{"what":"furnished","on":"2026-03-01","amount":1,""";
    private const string Paid = """{"what":"paid","on":"2026-03-02","amount":1,""";

    private const string Given = """{"what":"notice-given","on":"2026-03-02","notice":"preliminary","manner":"certified-mail",""";

    public static TheoryData<string> Names =>
    [
        "one ref many times", "wrong refs among a thousand", "wrong parties", "parties of another capacity", "many replace one",
        "wrong entries", "unknown kinds", "unknown fields", "days", "small values", "empty lists",
    ];

    [Theory]
    [MemberData(nameof(Names))]
    [Attack("job files of many megabytes, made to be sought through again for every part, or of millions of values")]
    public void It_is_answered_in_time(string name)
    {
        var file = Encoding.UTF8.GetBytes(Make(name));
        Assert.InRange(file.Length, 1_000_000, JobFileReader.LargestFile);
        Assert.False(Hang.Never(() => JobFileAnswer.Of(file)));
    }

    [Fact]
    public void What_cannot_be_seen_is_spelled_out_in_every_part_of_a_refusal()
    {
        var file = Encoding.UTF8.GetBytes(Head + $$"""
            "entries": [ {{Furnished}}"ref":"A\u202E1"}, {{Paid}}"toward":"B"}, {"what":"paid","\u001B[2J":1} ] }
            """);
        var refused = Assert.IsType<JobFileResult.Refused>(JobFileReader.Read(file, "job.json"));
        Assert.Contains(refused.Faults, fault => fault.Expected.Contains("\"A\\u202E1\"", StringComparison.Ordinal));
        Assert.False(JobFileAnswer.Of(file));
    }

    [Fact]
    public void Long_names_are_told_by_their_beginnings()
    {
        var field = new string('x', 1_000_000);
        var refs = string.Join(",", Enumerable.Range(0, 12).Select(i => $"{Furnished}\"ref\":\"{new string((char)('a' + i), 480)}\"}}"));
        var file = Encoding.UTF8.GetBytes(Head + $"\"{field}\":1, \"entries\": [ {refs}, {Paid}\"toward\":\"B\"}} ] }}");
        var refused = Assert.IsType<JobFileResult.Refused>(JobFileReader.Read(file, "job.json"));
        Assert.All(refused.Faults, fault => Assert.InRange(fault.ToString().Length, 1, 2_000));
    }

    private static string Make(string name)
    {
        var entries = name switch
        {
            "one ref many times" => Each(60_000, i => $$"""{{Furnished}}"ref":"A"}"""),
            "wrong refs among a thousand" => Each(1_000, i => $$"""{{Furnished}}"ref":"{{Long(i)}}"}""")
                + "," + Each(40_000, i => $$"""{{Paid}}"toward":"{{Long(5_000 + i)}}"}"""),
            "wrong parties" => Each(50_000, i => $$"""{{Given}}"to":["x{{i}}"]}"""),
            "parties of another capacity" => "",
            "many replace one" => Each(20_000, i => $$"""{{Furnished}}"id":"c{{i}}","ref":"r{{i}}","supersedes":"c{{i - 1}}"}""")
                + "," + Each(40_000, i => $$"""{{Furnished}}"id":"d{{i}}","ref":"X","supersedes":"c19999"}"""),
            "wrong entries" => Each(30_000, i => $$"""{{Furnished}}"id":"c{{i}}"}""")
                + "," + Each(30_000, i => $$"""{{Furnished}}"supersedes":"d{{i}}"}"""),
            "unknown kinds" => Each(200_000, i => $$"""{"what":"furnishd{{i}}"}"""),
            "unknown fields" => "{" + Each(900_000, i => $"\"wha{i}\":1") + "}",
            "days" => """{"what":"waived","on":"2026-03-02","form":"8136","unpaidWaivers":["""
                + Each(500_000, i => $"\"{new LocalDate(2000, 1, 1).PlusDays(i):uuuu-MM-dd}\"") + "]}",
            "small values" => $"[{Each(8_000_000, i => "0")}]",
            "empty lists" => $"[{Each(5_000_000, i => "[]")}]",
            _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No such file."),
        };
        var parties = name == "parties of another capacity"
            ? Each(45_000, i =>
                $$"""{"id":"p{{i}}","capacity":"subcontractor","name":"n","worksUnder":"p44999"}""") : "";
        return Head + $"\"parties\": [ {parties} ], \"entries\": [ {entries} ] }}";
    }

    private static string Long(int number) => number.ToString("x60", System.Globalization.CultureInfo.InvariantCulture);

    private static string Each(int times, Func<int, string> one) => string.Join(',', Enumerable.Range(0, times).Select(one));
}
