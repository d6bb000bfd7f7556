using CsCheck;
using Gylebook.Science.Conditioning;

namespace Gylebook.Science.Tests.Conditioning;

public class BottleCountTests
{
    [Fact]
    public void Known_by_hand()
    {
        // 19 L: 25 of 750 mL are 18.75, and 250 mL are left for nothing; 24 of them and 2 of 500 leave nothing at all.
        BottleCount count = BottleCount.Of(19_000, [new(500, 10), new(750, 30)]);
        Assert.Equal([2, 24], count.Filled);
        Assert.Equal(0, count.LeftMillilitres);

        Assert.Equal("3 0, 100", Told(BottleCount.Of(1_600, [new(500, 3), new(330, 0)])));
        Assert.Equal(", 700", Told(BottleCount.Of(700, [])));
        Assert.Equal("0, 300", Told(BottleCount.Of(300, [new(330, 20)])));
    }

    /// <summary>No other choice of at most three sizes and six bottles of each leaves less.</summary>
    [Fact]
    public void Balance_what_is_filled_and_left_is_the_beer_and_nothing_leaves_less() =>
        Gen.Select(Gen.Int[0, 4000], Gen.Int[100, 900], Gen.Int[100, 900], Gen.Int[100, 900], Gen.Int[0, 6]).Sample((beer, one, two, three, many) =>
        {
            BottleCount count = BottleCount.Of(beer, [new(one, many), new(two, 6 - many), new(three, 2)]);
            Assert.Equal(beer, count.LeftMillilitres + (count.Filled[0] * one) + (count.Filled[1] * two) + (count.Filled[2] * three));
            Assert.True(count.Filled[0] <= many && count.Filled[1] <= 6 - many && count.Filled[2] <= 2);
            int least = beer;
            for (int i = 0; i <= many; i++)
            {
                for (int j = 0; j <= 6 - many; j++)
                {
                    for (int k = 0; k <= 2; k++)
                    {
                        int left = beer - (i * one) - (j * two) - (k * three);
                        least = left >= 0 ? Math.Min(least, left) : least;
                    }
                }
            }

            Assert.Equal(least, count.LeftMillilitres);
        });

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BottleCount.Of(-1, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => BottleCount.Of(1000, [new(0, 5)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => BottleCount.Of(1000, [new(330, -5)]));
    }

    private static string Told(BottleCount count) => Invariant($"{string.Join(' ', count.Filled)}, {count.LeftMillilitres}");
}
