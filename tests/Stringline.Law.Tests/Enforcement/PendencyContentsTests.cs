using Stringline.Law.Enforcement;
using Stringline.Law.Facts;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>What a notice of pendency of action must say (Code Civ. Proc. § 405.20, from memory).</summary>
public sealed class PendencyContentsTests
{
    private static readonly ActionFiled Filed = new()
    {
        Index = 0, On = DayFact.On(new LocalDate(2026, 6, 1)), Court = "Superior Court of Yolo County", Case = "CV-26-1",
    };

    private static readonly Site Described = new() { County = "Yolo", Legal = "Lot 14" };

    [Fact]
    [Proves("Code Civ. Proc. § 405.20")]
    public void It_names_the_court_the_case_and_the_property()
    {
        Assert.Empty(PendencyContents.Lacks(Filed, Described));
        Assert.Equal([PendencyLack.Court], PendencyContents.Lacks(Filed with { Court = " " }, Described));
        Assert.Equal([PendencyLack.CaseNumber], PendencyContents.Lacks(Filed with { Case = null }, Described));
        Assert.Equal([PendencyLack.Description], PendencyContents.Lacks(Filed, Described with { Legal = null }));
        Assert.Equal([PendencyLack.Action, PendencyLack.Description], PendencyContents.Lacks(null, new Site { County = "Yolo" }));
    }
}
