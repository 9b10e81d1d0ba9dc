namespace Stringline.Law.Facts;

/// <summary>Which part of the Public Contract Code governs the money of a public work, by the body that contracted for it.</summary>
internal static class PublicPayer
{
    /// <summary>Whether it is surely a department or agency of the State; null where the file does not say.</summary>
    public static bool? IsState(FactsAsOf facts) => facts.Job.Work.Body switch
    {
        PublicBody.State or PublicBody.GeneralServices or PublicBody.Transportation => true,
        PublicBody.Local or PublicBody.UniversityOrCourt or PublicBody.StateUniversity => false,
        null => facts.Job.Work.StateContractAct == true ? true : null,
        _ => throw new InvalidOperationException($"No such body: {facts.Job.Work.Body}."),
    };
}
