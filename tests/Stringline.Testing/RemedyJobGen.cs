using CsCheck;
using Stringline.Law.Facts;

namespace Stringline.Testing;

/// <summary>
/// Job files that a hard case would make: private, public and federal work, every role, papers given to the wrong one, in a wrong
/// manner, in a wrong order,
/// days about the ends of the periods of the Code, and days in doubt. Each file comes with a day of asking.
/// </summary>
public static class RemedyJobGen
{
    /// <summary>A file and the day on which it is asked about.</summary>
    public static Gen<(JobFile Job, LocalDate AsOf)> Asked { get; } = Gen.ULong.Select(Of);

    /// <summary>The file of a seed.</summary>
    public static (JobFile Job, LocalDate AsOf) Of(ulong seed) => new RemedyJob(new Drawing(seed)).Build();
}
