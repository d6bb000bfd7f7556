namespace Gylebook.Science.Conditioning;

/// <summary>Bottles of one size that are at hand.</summary>
/// <param name="Millilitres">What is filled into one, mL.</param>
/// <param name="Count">How many there are.</param>
public readonly record struct BottlesAtHand(int Millilitres, int Count);

/// <summary>Which bottles take up how much beer, so that least of it is left over.</summary>
/// <remarks>
/// <para>Source: counting: a sum of sizes that lies nearest below the beer, large bottles first, found by trying every sum.</para>
/// <para>Accuracy: exact to the millilitre; what is left is beer for the glass, no loss.</para>
/// </remarks>
/// <param name="Filled">How many of each size, in the order they were given in.</param>
/// <param name="LeftMillilitres">Beer left over.</param>
public sealed record BottleCount(IReadOnlyList<int> Filled, int LeftMillilitres)
{
    /// <summary>The most beer that is parted.</summary>
    public const int MostMillilitres = 1_000_000;

    /// <summary>Parts beer.</summary>
    /// <param name="beerMillilitres">Beer, mL.</param>
    /// <param name="atHand">Bottles, sizes above 0.</param>
    public static BottleCount Of(int beerMillilitres, IReadOnlyList<BottlesAtHand> atHand)
    {
        Argument.MustBeWithin(beerMillilitres, 0, MostMillilitres);
        foreach (BottlesAtHand bottles in atHand)
        {
            Argument.MustBeWithin(bottles.Millilitres, 1, MostMillilitres, "millilitres");
            Argument.MustNotBeNegative(bottles.Count, "count");
        }

        // For each sum: how many of the size just taken reach it from sums that larger sizes reach; −1 where nothing does.
        int[] order = [.. Enumerable.Range(0, atHand.Count).OrderByDescending(i => atHand[i].Millilitres)];
        bool[] reached = new bool[beerMillilitres + 1];
        reached[0] = true;
        int[][] taken = new int[atHand.Count][];
        foreach (int size in order)
        {
            taken[size] = Taken(reached, atHand[size]);
        }

        int sum = Array.LastIndexOf(reached, true), left = beerMillilitres - sum;
        int[] filled = new int[atHand.Count];
        foreach (int size in order.Reverse())
        {
            filled[size] = taken[size][sum];
            sum -= filled[size] * atHand[size].Millilitres;
        }

        return new(filled, left);
    }

    private static int[] Taken(bool[] reached, BottlesAtHand bottles)
    {
        int[] taken = new int[reached.Length];
        for (int sum = bottles.Millilitres; sum < reached.Length; sum++)
        {
            int before = sum - bottles.Millilitres;
            if (!reached[sum] && reached[before] && taken[before] < bottles.Count)
            {
                reached[sum] = true;
                taken[sum] = taken[before] + 1;
            }
        }

        return taken;
    }
}
