using Stringline.Law.Facts;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.DesignLien;

/// <summary>
/// An architect hired by the landowner for a fee of 24,000.00, services from 5 March to 30 June 2025, a permit obtained, the work not
/// commenced.
/// </summary>
internal static class Architect
{
    public static JobBuilder Job(string? commenced = "2027-12-31", string until = "2025-06-30") =>
        new JobBuilder().Role(ClaimantRole.DesignProfessional, "owner").NoParty("direct").Price(24_000m)
        .Contract(c => c with { Written = true })
        .Work(w => w with { Permit = new Permit { Number = "B-1" }, Commenced = commenced is null ? null : Day(commenced) })
        .Furnished("2025-03-05", 24_000m, until: until).Ended(until);

    public static JobBuilder Design(this JobBuilder job, string recorded, decimal? amount = 24_000m) =>
        job.ClaimRecorded(recorded, amount, lien: LienKind.Design, id: "design");
}
