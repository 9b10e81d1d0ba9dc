using Microsoft.AspNetCore.Razor.TagHelpers;
using Stringline.Law.Counting;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Html;

/// <summary><c>&lt;day of="..." /&gt;</c>: a day with its weekday.</summary>
[HtmlTargetElement("day", TagStructure = TagStructure.WithoutEndTag)]
public sealed class DayTag : TagHelper
{
    /// <summary>The day; nothing is written where there is none.</summary>
    public LocalDate? Of { get; set; }

    /// <inheritdoc/>
    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        if (Of is not { } day)
        {
            output.SuppressOutput();
            return;
        }

        output.TagName = "time";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.Attributes.SetAttribute("datetime", LawText.IsoDay(day));
        output.Content.SetContent(LawText.Day(day));
    }
}

/// <summary><c>&lt;money of="..." /&gt;</c>: dollars and cents, or the words that no amount is known.</summary>
[HtmlTargetElement("money", TagStructure = TagStructure.WithoutEndTag)]
public sealed class MoneyTag : TagHelper
{
    /// <summary>Dollars and cents.</summary>
    public decimal? Of { get; set; }

    /// <summary>What is said where there is no amount.</summary>
    public string None { get; set; } = "no amount yet";

    /// <inheritdoc/>
    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        output.TagName = "span";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.Attributes.SetAttribute("class", Of is null ? "no-money" : "money");
        output.Content.SetContent(Of is { } dollars ? LawText.Money(dollars) : None);
    }
}

/// <summary><c>&lt;standing of="..." /&gt;</c>: where a right stands, in words first; how it looks only repeats them.</summary>
[HtmlTargetElement("standing", TagStructure = TagStructure.WithoutEndTag)]
public sealed class StandingTag : TagHelper
{
    /// <summary>The standing.</summary>
    public Standing Of { get; set; }

    /// <inheritdoc/>
    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        output.TagName = "strong";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.Attributes.SetAttribute("class", "standing " + Of.Word().Replace(' ', '-'));
        output.Content.SetContent(Of.Word());
    }
}

/// <summary><c>&lt;why of="..." /&gt;</c>: reasons as nested details.</summary>
[HtmlTargetElement("why", TagStructure = TagStructure.WithoutEndTag)]
public sealed class WhyTag : TagHelper
{
    /// <summary>The reasons.</summary>
    public IReadOnlyList<Reason> Of { get; set; } = [];

    /// <summary>The address of the page that lists the entries; empty for this page.</summary>
    public string EntriesAt { get; set; } = "";

    /// <inheritdoc/>
    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        output.TagName = null;
        output.Content.SetHtmlContent(WhyTree.Of(Of, EntriesAt));
    }
}

/// <summary><c>&lt;law-section of="..." /&gt;</c>: a section, linked to its place on the page of the law.</summary>
[HtmlTargetElement("law-section", TagStructure = TagStructure.WithoutEndTag)]
public sealed class SectionTag : TagHelper
{
    /// <summary>The section.</summary>
    public string? Of { get; set; }

    /// <inheritdoc/>
    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        output.TagName = null;
        if (string.IsNullOrEmpty(Of))
            output.SuppressOutput();
        else
            output.Content.SetHtmlContent(WhyTree.Section(Of));
    }
}
