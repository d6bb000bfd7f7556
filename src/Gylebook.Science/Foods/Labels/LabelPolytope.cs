namespace Gylebook.Science.Foods.Labels;

/// <summary>All compositions that a panel allows: points and corners of the bounds that also keep the mass balance.</summary>
/// <remarks>
/// <para>What: the box of bounds cut by the balance. A point is reached by letting one part after the other take the value
/// nearest to a wish and tightening the rest; a corner, by letting each in turn be as large as it still can.</para>
/// <para>Source: the relations are sums over a tree, so the polytope is the base polytope of a laminar family; the greedy
/// order reaches each of its corners, and for a linear quantity the best one (Edmonds, Submodular functions, matroids and
/// certain polyhedra, 1970; from memory).</para>
/// <para>Valid for: possible panels. Open ends count as reachable: the closure is taken.</para>
/// <para>Accuracy: every corner lies in the bounds; a quantity that is linear in the composition, or a ratio of two such, has
/// both its ends at corners. For others the corners show how far it moves, and are no proof.</para>
/// </remarks>
internal static class LabelPolytope
{
    /// <summary>Parts that are not made of others: they determine all the rest.</summary>
    private static readonly MassPart[] Leaves =
    [
        MassPart.Protein, MassPart.Fat, MassPart.Fibre, MassPart.Sugars, MassPart.Polyols, MassPart.StarchAndOther, MassPart.Remainder,
    ];

    /// <summary>The composition that comes nearest to the wishes, the first wish first; g per 100 g.</summary>
    public static LabelPoint Near(ReadOnlySpan<Interval> bounds, IEnumerable<(MassPart Part, double Wish)> wishes)
    {
        Interval[] parts = Closed(bounds);
        foreach ((MassPart part, double wish) in wishes)
        {
            Fix(parts, part, LabelPrior.PointEstimate(parts[(int)part], wish));
        }

        foreach (MassPart part in Leaves)
        {
            Fix(parts, part, (parts[(int)part].Low + parts[(int)part].High) / 2);
        }

        return LabelPoint.Of(parts);
    }

    /// <summary>All corners, each once.</summary>
    public static IReadOnlyList<LabelPoint> Corners(ReadOnlySpan<Interval> bounds)
    {
        Dictionary<LabelPoint, LabelPoint> corners = [];
        Branch(Closed(bounds), [.. Leaves], corners);
        return [.. corners.Values];
    }

    // A part that cannot move any more takes no turn of its own: that keeps the branches few.
    private static void Branch(Interval[] parts, List<MassPart> left, Dictionary<LabelPoint, LabelPoint> corners)
    {
        List<MassPart> loose = [.. left.Where(part => parts[(int)part].Width > MeansNothing)];
        if (loose.Count == 0)
        {
            var corner = LabelPoint.Of(parts);
            corners.TryAdd(Rounded(corner), corner);
            return;
        }

        foreach (MassPart part in loose)
        {
            Interval[] next = [.. parts];
            Fix(next, part, next[(int)part].High);
            Branch(next, [.. loose.Where(other => other != part)], corners);
        }
    }

    private static void Fix(Interval[] parts, MassPart part, double value)
    {
        // Bounds are rounded outwards by a last bit or two: a value at their very end needs that much room inside.
        parts[(int)part] = parts[(int)part].Intersect(new(value - Room, value + Room));
        if (!MassBalance.TryTighten(parts))
        {
            throw new InvalidOperationException(Invariant($"{part} of {value} g per 100 g lies outside bounds that were tight."));
        }
    }

    private static Interval[] Closed(ReadOnlySpan<Interval> bounds)
    {
        var closed = new Interval[bounds.Length];
        for (int i = 0; i < closed.Length; i++)
        {
            closed[i] = new(bounds[i].Low, bounds[i].High);
        }

        MassBalance.TryTighten(closed);
        return closed;
    }

    /// <summary>g per 100 g within which a part counts as fixed: far below what any panel shows, far above the rounding of doubles.</summary>
    private const double Room = 1e-10;

    /// <summary>g per 100 g below which a width is only that room, summed over the parts.</summary>
    private const double MeansNothing = 1e-8;
    // So that one corner, reached in two orders, is found to be one.
    private static LabelPoint Rounded(LabelPoint p) => new(
        Round(p.Protein), Round(p.Fat), Round(p.Carbohydrate), Round(p.Fibre), Round(p.Sugars), Round(p.Polyols),
        Round(p.StarchAndOther), Round(p.Remainder));

    private static double Round(double grams) => Math.Round(grams, 6);
}
