using Stringline.Law.Facts;

namespace Stringline.Store;

/// <summary>
/// The journal of every job: append-only, the same on SQLite and PostgreSQL. Safe to use from several threads and processes at once.
/// Every method throws <see cref="StoreException"/> where the store cannot be used; what was being written is then not in it, unless the
/// exception says that it may be.
/// </summary>
public interface IJournal : IDisposable
{
    /// <summary>The store as the user named it, without a password.</summary>
    public string Name { get; }

    /// <summary>
    /// How far the clock of this computer was behind the journal at the last writing through here; null where it was not by much.
    /// </summary>
    public ClockBehind? ClockBehind { get; }

    /// <summary>
    /// What a damaged log of the store has lost, each in words; found before the store was opened, or by an earlier program that kept the
    /// log beside the store. Looked for once.
    /// </summary>
    public IReadOnlyList<string> LogFaults { get; }

    /// <summary>Appends to a job: all changes or none, durably before it returns.</summary>
    /// <param name="job">The job's id.</param>
    /// <param name="expectedSequence">The number of the last change the writer has seen.</param>
    /// <param name="changes">The changes, at least one.</param>
    /// <param name="who">Who records them: one line of at most <see cref="Journals.LongestName"/> characters.</param>
    /// <exception cref="ArgumentException">
    /// There is no change, or no name of who records it, or an entry that the job file cannot say.
    /// </exception>
    public AppendOutcome Append(long job, long expectedSequence, IReadOnlyList<JobChange> changes, string who);

    /// <summary>
    /// Brings the store to a job file: adds the job, or appends what the file has beyond the journal. A second time it does nothing.
    /// </summary>
    public PutOutcome Put(KeyedJob job, string who);

    /// <summary>
    /// Adds a job under a key that the store does not have; where it has it, nothing is written and the job that has it stays as it is.
    /// </summary>
    public PutOutcome Add(KeyedJob job, string who);

    /// <summary>
    /// Brings the store to many job files in one transaction: all of them or, where one is refused, none. Made for hundreds of thousands
    /// of jobs; the jobs are drawn from <paramref name="jobs"/> as they are written.
    /// </summary>
    public PutReport PutMany(IEnumerable<KeyedJob> jobs, string who, IProgress<StoreProgress>? progress = null);

    /// <summary>The job with that id, or null.</summary>
    public StoredJob? Read(long job);

    /// <summary>The job with that key, or null.</summary>
    public StoredJob? Find(string key);

    /// <summary>
    /// Reads jobs one after another in the order of their ids, as they were when the reading began. Memory does not grow with the store.
    /// </summary>
    public IEnumerable<StoredJob> ReadAll(JobsToRead which);

    /// <summary>
    /// Works on jobs on several cores, as now known and without the history of their changes; the results come in the order of their ids.
    /// Made for questions over the whole store: the history is not read, and the work is spread over the cores.
    /// </summary>
    /// <param name="which">Which jobs.</param>
    /// <param name="cores">On how many cores the work is done; one more thread reads.</param>
    /// <param name="work">The work; it runs on several threads at once.</param>
    public IEnumerable<T> OfEach<T>(JobsToRead which, int cores, Func<JobTip, JobFile, T> work);

    /// <summary>Where every job is, in the order of their ids, as it was when the reading began.</summary>
    public IEnumerable<JobTip> Tips();

    /// <summary>An attached paper as <paramref name="link"/> names it, or null.</summary>
    /// <exception cref="StoreException">What is stored is not what was attached.</exception>
    public Proof? ReadProof(ProofLink link);

    /// <summary>
    /// The jobs in which every word that is sought begins a word of some text: first those that have the very words, each in the order of
    /// their ids. Accents and case do not matter; numbers are found with and without the marks between their digits.
    /// </summary>
    /// <param name="words">The words. Without a letter or digit nothing is found.</param>
    /// <param name="limit">At most so many.</param>
    public IReadOnlyList<SearchHit> Search(string words, int limit);

    /// <summary>Keeps what assessments found, in place of what the one before found for the same jobs; all or nothing.</summary>
    public void WriteAssessed(IEnumerable<AssessedJob> jobs);

    /// <summary>What the last assessment of a job found, or null.</summary>
    public AssessedJob? ReadAssessed(long job);

    /// <summary>The desk's list: jobs with a day to act, nearest day first, then by id.</summary>
    public IReadOnlyList<DeskLine> Desk(DeskPage page);

    /// <summary>Steps in a span of days, most dollars first.</summary>
    public IReadOnlyList<StepLine> Steps(StepQuery query);

    /// <summary>How much lies up to each of some days and after the last of them: one total more than days.</summary>
    /// <param name="filter">Which jobs and remedies.</param>
    /// <param name="ends">The last day of each span, earliest first, at least one; each span begins after the one before.</param>
    public IReadOnlyList<StepTotal> StepTotals(StepFilter filter, IReadOnlyList<LocalDate> ends);

    /// <summary>The watches due by a day, gathered by county.</summary>
    public IReadOnlyList<WatchTotal> Watches(StepFilter filter, LocalDate through);

    /// <summary>How many times steps were written: while it is the same, all sums over steps are the same.</summary>
    public long StepsWritten();

    /// <summary>What steps can be filtered by, at most so many of each.</summary>
    public StepChoices Choices(int limit);

    /// <summary>The jobs of a customer, in the order of their ids.</summary>
    public IReadOnlyList<JobTip> JobsOf(string customer, int limit);

    /// <summary>
    /// The jobs of a customer with what their last assessments found, in the order of their ids. Their steps are not read.
    /// </summary>
    public IReadOnlyList<DeskLine> AssessedOf(string customer, int limit);

    /// <summary>What each customer owes, in the order of their names; jobs whose file names no customer are left out.</summary>
    /// <param name="from">The day from which a day to act is not past.</param>
    /// <param name="after">The last name of the page before; empty for the first page.</param>
    /// <param name="limit">At most so many.</param>
    public IReadOnlyList<CustomerTotal> Customers(LocalDate from, string after, int limit);

    /// <summary>
    /// The jobs of which a derived row that is not as it was written was met while reading, by id. Such a row shows nothing until its job
    /// is assessed anew.
    /// </summary>
    public IReadOnlyList<long> DamagedMet { get; }

    /// <summary>
    /// Reads every derived row of what assessments found, and gives the ids of the jobs of which one is not as it was written.
    /// </summary>
    public IReadOnlyList<long> FindDamaged();

    /// <summary>Forgets what assessments found of some jobs, so that they count as not yet assessed.</summary>
    public void EraseAssessed(IReadOnlyList<long> jobs);

    /// <summary>Throws away everything that is derived from the journal and makes anew what needs no law: by what jobs are found.</summary>
    public void Renew();

    /// <summary>What the office has set for all its desks, as it was written; null where nothing was.</summary>
    public string? ReadSettings();

    /// <summary>Keeps what the office sets.</summary>
    /// <param name="seen">What <see cref="ReadSettings"/> gave to the writer.</param>
    /// <param name="document">What is to be kept.</param>
    /// <returns>False where something else was written since, and nothing was changed.</returns>
    public bool WriteSettings(string? seen, string document);

    /// <summary>How many jobs there are.</summary>
    public long CountJobs();

    /// <summary>How many jobs there are, and how many of them were assessed as they are now by these rules on this day.</summary>
    public (long Jobs, long Assessed) CountAssessed(string rules, LocalDate asOf);

    /// <summary>
    /// Seals the journal as it is now. Whatever is recorded later gets a later moment, so that the seal can be compared at any time.
    /// </summary>
    public Seal MakeSeal();

    /// <summary>
    /// Compares the journal with a seal that was made earlier. It trusts the hashes that stand there: <see cref="Check"/> proves them.
    /// </summary>
    public SealReport Compare(Seal seal);

    /// <summary>Walks every chain and every attached paper, and reads everything that is derived from them.</summary>
    public CheckReport Check(IProgress<StoreProgress>? progress = null);
}
