using Gylebook.Gyles.Tasting;

namespace Gylebook.Gyles.Tests;

/// <summary>How a taste moves with the age of a beer.</summary>
public sealed class AgeingTests
{
    [Fact]
    public void A_scale_that_was_marked_at_two_ages_is_told_and_one_of_a_single_evening_is_not()
    {
        (string?, TimeSpan?, Tasted)[] said =
        [
            (null, TimeSpan.FromDays(14), Of("Ash", ("seed", 7), ("body", 5))), (null, TimeSpan.FromDays(15), Of("Rowan", ("Seed", 6))),
            (null, TimeSpan.FromDays(98), Of("Ash", ("seed", 4))), (null, null, Of("Ash", ("seed", 9))),
        ];
        Ageing aged = Assert.Single(Ageing.Of(said));
        Assert.Equal("seed: 6.5 after 2 weeks (2 tasters), 4 after 3 months.", aged.Sentence);
    }

    [Fact]
    public void Portions_age_apart() => Assert.Empty(Ageing.Of([("on fruit", TimeSpan.FromDays(7), Of("Ash", ("seed", 7))), ("plain", TimeSpan.FromDays(70), Of("Ash", ("seed", 7)))]));

    [Theory]
    [InlineData(1, "a day")]
    [InlineData(9, "9 days")]
    [InlineData(21, "3 weeks")]
    [InlineData(122, "4 months")]
    public void An_age_is_told_as_people_say_it(double days, string words) => Assert.Equal(words, Ageing.Words(TimeSpan.FromDays(days)));

    private static Tasted Of(string taster, params (string Scale, double Value)[] marks) => new(taster, [.. marks.Select(mark => new TasteMark(mark.Scale, "none", "much", mark.Value))], "");
}
