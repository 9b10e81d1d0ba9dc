using Stringline.Law.Facts;

namespace Stringline.Comparison.Jobs;

/// <summary>One job in the two forms: the job file for the law library, the plain facts for everyone else.</summary>
internal sealed record ComparedJob(JobFile File, LocalDate AsOf, PlainJob Plain);
