using Gylebook.Science.Numerics;

namespace Gylebook.Science.Tests.Numerics;

public sealed class SeededRandomTests
{
    // The first numbers of SplitMix64 from 1234567, as published with its reference code; from memory.
    [Fact]
    public void The_numbers_are_those_of_the_published_generator()
    {
        SeededRandom stream = new(1234567);
        ulong[] first = [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];
        Assert.All(first, number => Assert.Equal(number, stream.Next()));
    }

    // Test vectors of FNV-1a, 64 bits, published with its reference code; from memory.
    [Theory]
    [InlineData("", 0xcbf29ce484222325)]
    [InlineData("a", 0xaf63dc4c8601ec8c)]
    [InlineData("foobar", 0x85944171f73967e8)]
    public void Words_are_hashed_as_published(string words, ulong hash) => Assert.Equal(hash, SeededRandom.Hashed(words));

    [Fact]
    public void A_stream_hangs_on_both_words_and_on_where_they_part()
    {
        string[] pairs = ["ab c", "a bc", "abc ", " abc", "abd c", "ab d"];
        ulong[] first = [.. pairs.Select(pair => pair.Split(' ')).Select(pair => SeededRandom.Of(pair[0], pair[1]).Next())];
        Assert.Equal(first.Length, first.Distinct().Count());
        Assert.Equal(SeededRandom.Of("ab", "c").Next(), first[0]);
    }

    [Fact]
    public void A_shuffle_meets_every_place_once_and_any_of_them_anywhere()
    {
        int[] places = new int[6];
        int[,] met = new int[6, 6];
        for (int turn = 0; turn < 6000; turn++)
        {
            SeededRandom.Of("shuffle", turn.ToString(System.Globalization.CultureInfo.InvariantCulture)).Shuffle(places);
            Assert.Equal([0, 1, 2, 3, 4, 5], places.Order());
            for (int i = 0; i < 6; i++)
            {
                met[i, places[i]]++;
            }
        }

        // 1000 on average, sd 29; five of them.
        Assert.All(met.Cast<int>(), times => Assert.InRange(times, 855, 1145));
    }
}
