namespace Gylebook.Science.Numerics;

/// <summary>Random numbers that are the same on every machine, and hang on nothing but the words they are asked for with.</summary>
/// <remarks>
/// <para>Source: the key is FNV-1a over the words' UTF-16 units (Fowler, Noll, Vo; from memory). The numbers are SplitMix64: Steele,
/// Lea, Flood, Fast splittable pseudorandom number generators, OOPSLA 2014, figure 17. A number below a limit is the high
/// half of a product (Lemire, ACM TOMACS 29:3, 2019, without the rejection).</para>
/// <para>Valid for: drawing, never for secrets.</para>
/// <para>Accuracy: a limit of 2^16 favours some numbers by 2^-48 of their share.</para>
/// </remarks>
public struct SeededRandom
{
    private const ulong Offset = 14695981039346656037;

    private ulong _state;

    internal SeededRandom(ulong state) => _state = state;

    /// <summary>The stream of a seed and what is drawn with it.</summary>
    public static SeededRandom Of(string seed, string what)
    {
        ArgumentNullException.ThrowIfNull(seed);
        ArgumentNullException.ThrowIfNull(what);
        ulong key = Hashed(what, Hashed("\n", Hashed(seed)));

        // FNV leaves words that differ in their last letter close together.
        SeededRandom mixed = new(key);
        return new SeededRandom(mixed.Next());
    }

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        ulong z = _state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>The next number from 0 to below the limit.</summary>
    public int Below(int limit) => (int)Math.BigMul(Next(), (ulong)limit, out _);

    /// <summary>Fills in 0, 1, 2 and so on in an order of chance.</summary>
    public void Shuffle(Span<int> places)
    {
        for (int i = 0; i < places.Length; i++)
        {
            int other = Below(i + 1);
            places[i] = places[other];
            places[other] = i;
        }
    }

    /// <summary>FNV-1a of words, carried on from a key.</summary>
    internal static ulong Hashed(string words, ulong key = Offset)
    {
        foreach (char unit in words)
        {
            key = (key ^ unit) * 1099511628211;
        }

        return key;
    }
}
