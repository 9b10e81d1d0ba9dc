using Stringline.Tables;
using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Testing;

namespace Stringline.Answers;

/// <summary>A job file is refused in words, or read, assessed, and written back with nothing lost.</summary>
public static class JobFileAnswer
{
    // Read against the whole list of a file's faults; the others are counted (see ManyFaultsTests).
    private const int MostFaults = 101;

    private static readonly LocalDate AsOf = new(2026, 6, 22);

    /// <summary>Reads it.</summary>
    /// <returns>Whether it is one.</returns>
    /// <exception cref="InvalidOperationException">The answer is neither.</exception>
    public static bool Of(ReadOnlyMemory<byte> bytes)
    {
        switch (JobFileReader.Read(bytes, "bad.json"))
        {
            case JobFileResult.Refused { Faults: var faults }:
                Must.Hold(faults.Count is > 0 and <= MostFaults, $"{faults.Count} faults");
                foreach (var fault in faults)
                    Refusal.Check(fault);
                return false;
            case JobFileResult.Read { Job: var job }:
                Must.Hold(AssessmentJson.Write(Assessment.Of(job, AsOf, OpenDays.Statutory)).Length > 0, "an assessment without a word");
                var written = JobFileWriter.Write(job);
                var again = JobFileReader.Read(written, "again.json");
                Must.Hold(again is JobFileResult.Read, $"what was read and written is refused: {again}");
                var difference = JobFileDifference.Between(job, ((JobFileResult.Read)again).Job);
                Must.Hold(difference is null, $"what was read and written differs: {difference}");
                return true;
            case var other:
                throw new InvalidOperationException($"neither read nor refused: {other}");
        }
    }
}
