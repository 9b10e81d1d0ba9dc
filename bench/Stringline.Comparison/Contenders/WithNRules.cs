using NRules;
using NRules.Fluent;
using Stringline.Comparison.Jobs;

namespace Stringline.Comparison.Contenders;

/// <summary>NRules: the rules of <see cref="DayRules"/>, compiled once into a network.</summary>
/// <param name="sessionPerJob">A session for each job, or one session into which all jobs are put together.</param>
internal sealed class WithNRules(bool sessionPerJob) : Contender
{
    private readonly ISessionFactory factory = Compile();

    public override string Name => sessionPerJob ? "NRules 1.0.4, a session a job" : "NRules 1.0.4, one session for all jobs";

    public override void Answer(IReadOnlyList<ComparedJob> jobs, SixDays[] answers)
    {
        var facts = new JobAndDays[jobs.Count];
        for (var i = 0; i < jobs.Count; i++)
            facts[i] = new JobAndDays(jobs[i].Plain);
        if (sessionPerJob)
        {
            foreach (var fact in facts)
            {
                var session = factory.CreateSession();
                session.Insert(fact);
                session.Fire();
            }
        }
        else
        {
            var session = factory.CreateSession();
            session.InsertAll(facts);
            session.Fire();
        }

        for (var i = 0; i < facts.Length; i++)
            answers[i] = facts[i].Days;
    }

    private static ISessionFactory Compile()
    {
        var repository = new RuleRepository();
        repository.Load(load => load.PrivateTypes().NestedTypes().From(typeof(DayRules).GetNestedTypes()));
        return repository.Compile();
    }
}
