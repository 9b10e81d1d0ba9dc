using Stringline.Store;

namespace Stringline.Web;

/// <summary>
/// Papers that were sent with a form and are not written yet, while what they would change is looked at. They end with the process.
/// </summary>
internal sealed class WaitingProofs
{
    /// <summary>How many bytes wait at most; beyond that the oldest are given up and must be chosen again.</summary>
    public const long MostBytes = 8L * Proof.LargestFile;

    private readonly Lock gate = new();
    private readonly LinkedList<(string Token, Proof Proof)> waiting = [];

    /// <summary>Keeps a paper; the token is handed back with the form.</summary>
    public string Keep(Proof proof)
    {
        var token = Guid.NewGuid().ToString("N");
        lock (gate)
        {
            waiting.AddLast((token, proof));
            for (var bytes = waiting.Sum(kept => (long)kept.Proof.Content.Length); bytes > MostBytes; waiting.RemoveFirst())
                bytes -= waiting.First!.Value.Proof.Content.Length;
        }

        return token;
    }

    /// <summary>The paper of a token; null where it waits no more.</summary>
    public Proof? Find(string token)
    {
        lock (gate)
            return waiting.FirstOrDefault(kept => kept.Token == token).Proof;
    }

    /// <summary>Lets papers go, once they are written.</summary>
    public void Release(IEnumerable<string> tokens)
    {
        var written = tokens.ToHashSet(StringComparer.Ordinal);
        lock (gate)
        {
            for (var node = waiting.First; node is not null;)
            {
                var next = node.Next;
                if (written.Contains(node.Value.Token))
                    waiting.Remove(node);
                node = next;
            }
        }
    }
}
