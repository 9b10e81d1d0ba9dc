using Stringline.Golden;

return args switch
{
    ["make", var folder] => Corpus.Make(folder, Corpus.Usual),
    ["make", var folder, var files] => Corpus.Make(folder, int.Parse(files, CultureInfo.InvariantCulture)),
    ["run", var corpus, var kept] => await GoldenRun.OfAsync(corpus, kept).ConfigureAwait(false),
    ["compare", var before, var after] => Comparison.Of(before, after, shown: 40),
    ["compare", var before, var after, var shown] => Comparison.Of(before, after, int.Parse(shown, CultureInfo.InvariantCulture)),
    ["show", var kept, var job, var what] => Comparison.Show(kept, job, what),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("make FOLDER [FILES] | run FOLDER KEPT | compare KEPT KEPT [SHOWN] | show KEPT JOB WHAT: see eng/golden.sh.");
    return 2;
}
