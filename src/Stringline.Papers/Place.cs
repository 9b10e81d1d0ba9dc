using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;

namespace Stringline.Papers;

/// <summary>What a refusal is about, and so where it is mended; each door says it in its own words.</summary>
public abstract record Place
{
    private protected Place()
    {
    }

    /// <summary>The assessment as a whole.</summary>
    public static Place Assessment { get; } = new OfAssessment();

    /// <summary>The demand.</summary>
    public static Place Demand { get; } = new OfDemand();

    /// <summary>The list of parties: one is missing.</summary>
    public static Place Parties { get; } = new OfParties();

    /// <summary>The journal.</summary>
    public static Place Journal { get; } = new OfJournal();

    /// <summary>Everything the paper says.</summary>
    public static Place PaperTexts { get; } = new InWords("the texts of the paper");

    /// <summary>As the command line and the job file have it.</summary>
    protected abstract string Plain { get; }

    /// <summary>What is told with the request, or either of two.</summary>
    public static Place Of(PaperInput input, PaperInput? or = null) => new OfInput(input, or);

    /// <summary>An entry, or a field of it.</summary>
    public static Place Of(Entry entry, string? field = null) => new OfEntry(entry.Index, field);

    /// <summary>A field of a party.</summary>
    public static Place Of(JobFile job, Party party, string? field = null) =>
        new OfParty(job.Parties.TakeWhile(p => p != party).Count(), field);

    /// <inheritdoc/>
    public sealed override string ToString() => Plain;

    private protected static string Dotted(string? field) => field is null ? "" : "." + field;

    /// <summary>What is told with the request: <c>--amount</c>.</summary>
    /// <param name="Input">What.</param>
    /// <param name="Or">What else would do; null where nothing else would.</param>
    public sealed record OfInput(PaperInput Input, PaperInput? Or) : Place
    {
        /// <summary>Both.</summary>
        public IEnumerable<PaperInput> All => Or is { } or ? [Input, or] : [Input];

        /// <inheritdoc/>
        protected override string Plain => string.Join(", ", All.Select(input => "--" + input.Word()));
    }

    /// <summary>An entry, or a field of it: <c>entries[3].on</c>.</summary>
    /// <param name="Index">Its place in the file's list of entries, from 0.</param>
    /// <param name="Field">The field; null for the whole.</param>
    public sealed record OfEntry(int Index, string? Field) : Place
    {
        /// <inheritdoc/>
        protected override string Plain => $"entries[{Index}]{Dotted(Field)}";
    }

    /// <summary>A party, or a field of it: <c>parties[1].address</c>.</summary>
    /// <param name="Index">Its place in the file's list of parties, from 0.</param>
    /// <param name="Field">The field; null for the whole.</param>
    public sealed record OfParty(int Index, string? Field) : Place
    {
        /// <inheritdoc/>
        protected override string Plain => $"parties[{Index}]{Dotted(Field)}";
    }

    /// <summary>A field of the head of the file: <c>claimant.hiredBy</c>.</summary>
    /// <param name="Path">Its path.</param>
    public sealed record OfHead(string Path) : Place
    {
        /// <inheritdoc/>
        protected override string Plain => Path;
    }

    /// <summary>A finding of the assessment.</summary>
    /// <param name="Id">Its id.</param>
    public sealed record OfFinding(string Id) : Place
    {
        /// <inheritdoc/>
        protected override string Plain => Id;
    }

    /// <summary>The journal: what stands in several entries, or an entry that is missing.</summary>
    /// <param name="Missing">The kind of entry that would mend it, by its word in the job file; null where no one entry would.</param>
    public sealed record OfJournal(string? Missing = null) : Place
    {
        /// <inheritdoc/>
        protected override string Plain => "entries";
    }

    /// <summary>The demand.</summary>
    public sealed record OfDemand : Place
    {
        /// <inheritdoc/>
        protected override string Plain => "amount.demand";
    }

    /// <summary>The list of parties.</summary>
    public sealed record OfParties : Place
    {
        /// <inheritdoc/>
        protected override string Plain => "parties";
    }

    /// <summary>The assessment as a whole.</summary>
    public sealed record OfAssessment : Place
    {
        /// <inheritdoc/>
        protected override string Plain => "assessment";
    }

    /// <summary>Something that is no fact of the job and is not asked for: the paper, its texts, a row of a table.</summary>
    /// <param name="Words">In words.</param>
    public sealed record InWords(string Words) : Place
    {
        /// <inheritdoc/>
        protected override string Plain => Words;
    }
}
