using Stringline.Law.Reasoning;

namespace Stringline.Law.Completion;

/// <summary>Whether two names may be those of one firm. Our rule, for papers that name a firm as the owner writes it.</summary>
internal static class FirmNames
{
    // What a firm is says nothing of which it is.
    private static readonly string[] Forms =
        ["INC", "INCORPORATED", "LLC", "CO", "COMPANY", "CORP", "CORPORATION", "LTD", "LIMITED", "LP", "LLP", "THE"];

    /// <summary>Yes where they are the same but for case, marks and the form of the firm; open where they begin alike; else no.</summary>
    public static Verdict AreOne(string a, string b)
    {
        var (one, other) = (Words(a), Words(b));
        if (one.Count == 0 || other.Count == 0)
            return Verdict.Open;
        return one.SequenceEqual(other, StringComparer.Ordinal) ? Verdict.Yes
            : one[0] == other[0] ? Verdict.Open
            : Verdict.No;
    }

    private static List<string> Words(string name)
    {
        var words = new List<string>();
        var from = -1;
        for (var i = 0; i <= name.Length; i++)
        {
            if (i < name.Length && char.IsLetterOrDigit(name[i]))
            {
                if (from < 0)
                    from = i;
            }
            else if (from >= 0)
            {
                var word = name[from..i].ToUpperInvariant();
                if (!Forms.Contains(word, StringComparer.Ordinal))
                    words.Add(word);
                from = -1;
            }
        }

        return words;
    }
}
