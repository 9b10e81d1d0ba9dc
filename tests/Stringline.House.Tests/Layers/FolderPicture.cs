using System.Text;

namespace Stringline.House.Tests.Layers;

/// <summary>
/// Draws folders as boxes in layers, the lowest at the bottom, and what each knows as arrows. An arrow that follows from others, because a
/// folder that it knows knows the other in turn, is left out, so that the picture can be read. The same arrows give the same bytes.
/// </summary>
internal static class FolderPicture
{
    private const int High = 34;
    private const int Step = 92;
    private const int Gap = 22;
    private const int Margin = 20;

    // Of a long arrow one in each layer that it passes, with no name.
    private sealed class Box(string name, int layer)
    {
        public string Name { get; } = name;

        public int Layer { get; } = layer;

        public int Wide { get; } = name.Length == 0 ? 8 : (name.Length * 8) + 24;

        public List<Box> Below { get; } = [];

        public List<Box> Above { get; } = [];

        public int Left { get; set; }

        public int Middle => Left + (Wide / 2);
    }

    /// <summary>The picture.</summary>
    /// <param name="arrows">The arrows, none against the order.</param>
    /// <param name="order">The folders, each after all that it knows.</param>
    public static string Of(IEnumerable<Arrow> arrows, IReadOnlyList<string> order)
    {
        var known = order.ToDictionary(static name => name, static _ => new SortedSet<string>(StringComparer.Ordinal));
        foreach (var arrow in arrows)
            known[arrow.From].Add(arrow.To);
        var reached = new Dictionary<string, HashSet<string>>();
        var boxes = new Dictionary<string, Box>();
        foreach (var name in order)
        {
            reached[name] = [.. known[name], .. known[name].SelectMany(below => reached[below])];
            boxes[name] = new Box(name, known[name].Count == 0 ? 0 : known[name].Max(below => boxes[below].Layer) + 1);
        }

        var layers = boxes.Values.GroupBy(static box => box.Layer)
            .OrderBy(static group => group.Key).Select(static group => group.ToList()).ToList();
        foreach (var name in order)
        {
            foreach (var below in known[name].Where(below => !known[name].Any(other => reached[other].Contains(below))))
                Join(boxes[name], boxes[below], layers);
        }

        Place(layers);
        return Drawn(layers);
    }

    private static void Join(Box from, Box to, List<List<Box>> layers)
    {
        for (var layer = from.Layer - 1; layer > to.Layer; layer--)
        {
            var bend = new Box("", layer);
            layers[layer].Add(bend);
            Link(from, bend);
            from = bend;
        }

        Link(from, to);

        static void Link(Box above, Box below)
        {
            above.Below.Add(below);
            below.Above.Add(above);
        }
    }

    // Each layer in turn is put in the order of the middles of what it is joined to, up and down a few times, and then moved toward them.
    private static void Place(List<List<Box>> layers)
    {
        foreach (var layer in layers)
            Close(layer);
        for (var round = 0; round < 12; round++)
        {
            var up = round % 2 == 0;
            foreach (var layer in up ? layers : Enumerable.Reverse(layers))
            {
                var sorted = layer.Select((box, at) => (box, at, Wish: Wish(up ? box.Below : box.Above, box)))
                    .OrderBy(static item => item.Wish).ThenBy(static item => item.at).ToList();
                layer.Clear();
                var free = int.MinValue;
                foreach (var (box, _, wish) in sorted)
                {
                    box.Left = Math.Max(free, wish - (box.Wide / 2));
                    free = box.Left + box.Wide + Gap;
                    layer.Add(box);
                }
            }
        }

        var left = layers.Min(static layer => layer[0].Left);
        foreach (var box in layers.SelectMany(static layer => layer))
            box.Left += Margin - left;

        static int Wish(List<Box> joined, Box box) =>
            joined.Count == 0 ? box.Middle : joined.Sum(static other => other.Middle) / joined.Count;

        static void Close(List<Box> layer)
        {
            var left = 0;
            foreach (var box in layer)
            {
                box.Left = left;
                left += box.Wide + Gap;
            }
        }
    }

    private static string Drawn(List<List<Box>> layers)
    {
        var wide = layers.Max(static layer => layer[^1].Left + layer[^1].Wide) + Margin;
        var tall = ((layers.Count - 1) * Step) + High + (2 * Margin);
        var svg = new StringBuilder();
        svg.Append(Invariant($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {wide} {tall}\" width=\"{wide}\" height=\"{tall}\""))
            .Append(" font-family=\"monospace\" font-size=\"13\" text-anchor=\"middle\">\n")
            .Append("<title>The folders of the law library, each above all that it knows</title>\n")
            .Append(Invariant($"<rect width=\"{wide}\" height=\"{tall}\" fill=\"#fff\"/>\n"));
        foreach (var box in layers.SelectMany(static layer => layer).Where(static box => box.Name.Length > 0))
        {
            foreach (var below in box.Below)
                Line(box, below);
        }

        foreach (var box in layers.SelectMany(static layer => layer).Where(static box => box.Name.Length > 0))
        {
            svg.Append(Invariant($"<rect x=\"{box.Left}\" y=\"{Top(box)}\" width=\"{box.Wide}\" height=\"{High}\" rx=\"4\""))
                .Append(" fill=\"#eef3f8\" stroke=\"#456\"/>")
                .Append(Invariant($"<text x=\"{box.Middle}\" y=\"{Top(box) + 21}\">{box.Name}</text>\n"));
        }

        return svg.Append("</svg>\n").ToString();

        int Top(Box box) => Margin + ((layers.Count - 1 - box.Layer) * Step);

        void Line(Box from, Box to)
        {
            svg.Append(Invariant($"<path d=\"M{from.Middle} {Top(from) + High}"));
            while (true)
            {
                svg.Append(Invariant($"C{from.Middle} {Top(from) + High + 25} {to.Middle} {Top(to) - 25} {to.Middle} {Top(to)}"));
                if (to.Name.Length > 0)
                    break;
                svg.Append(Invariant($"V{Top(to) + High}"));
                (from, to) = (to, to.Below[0]);
            }

            // An arrow ends straight down, so that its head needs no turning.
            svg.Append("\" fill=\"none\" stroke=\"#456\"/>")
                .Append(Invariant($"<path d=\"M{to.Middle - 4} {Top(to) - 8}h8l-4 8z\" fill=\"#456\"/>\n"));
        }
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
