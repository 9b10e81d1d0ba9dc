using Stringline.Law.Facts;

namespace Stringline.Law.Reasoning;

/// <summary>
/// One node of a why tree: what was found, the section it rests on, the entries it used, and what it was worked out from.
/// The text is put together only when somebody reads it.
/// </summary>
public sealed class Reason
{
    private Reason(Sentence sentence, string section, bool applied, IReadOnlyList<Entry> facts, IReadOnlyList<Reason> children)
    {
        Sentence = sentence;
        Section = section;
        Applied = applied;
        Facts = facts;
        Children = children;
    }

    /// <summary>The section it rests on, such as <c>Civ. Code § 8414(b)(2)</c>; empty where it only groups others.</summary>
    public string Section { get; }

    /// <summary>False for a road not taken: a rule that was looked at and did not apply.</summary>
    public bool Applied { get; }

    /// <summary>The entries it used.</summary>
    public IReadOnlyList<Entry> Facts { get; }

    /// <summary>What it was worked out from.</summary>
    public IReadOnlyList<Reason> Children { get; }

    /// <summary>The sentence, for a door to write in its own words.</summary>
    public Sentence Sentence { get; }

    /// <summary>
    /// The sentence in the words of the job file. Days are written as <c>2026-06-27 (Sat)</c>, money as <c>$1,234.56</c>.
    /// </summary>
    public string Text => Sentence.ToString();

    /// <summary>A rule that applied.</summary>
    public static Reason Of(string section, Sentence text, params Reason[] children) =>
        new(text, section, true, [], children);

    /// <summary>A rule that applied to some entries.</summary>
    public static Reason Of(string section, Sentence text, IReadOnlyList<Entry> facts, params Reason[] children) =>
        new(text, section, true, facts, children);

    /// <summary>A rule that was looked at and did not apply; the text says why not.</summary>
    public static Reason NotApplied(string section, Sentence text, params Entry[] facts) =>
        new(text, section, false, facts, []);
}
