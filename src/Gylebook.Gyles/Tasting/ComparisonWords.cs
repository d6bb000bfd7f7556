using Gylebook.Science.Numerics.Distributions;
using Gylebook.Science.Senses;

namespace Gylebook.Gyles.Tasting;

/// <summary>What answers of a tasting show, and what they do not, in plain words.</summary>
/// <remarks>Source: exact binomials (<see cref="TasteTests"/>). "Shows" is one chance in twenty, as the standards' tables have it; a difference that one person in two tells is a large one.</remarks>
public static class ComparisonWords
{
    private const double Risk = 0.05, Sure = 0.80, OneInTwo = 0.5, OneInFour = 0.25;

    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Of(Compared asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        (TasteTest test, int tasters, int right) = (asked.Test, asked.Tasters, asked.Right);
        double chance = TasteTests.ByChance(test, right, tasters);
        Quantiles who = TasteTests.WhoTell(test, right, tasters);
        bool shows = TasteTests.CriticalCount(test, tasters, Risk) is { } needed && right >= needed;
        yield return Invariant($"{right} of {tasters} answered right. By luck alone so many or more would happen {Often(chance)}.");
        yield return shows
            ? Invariant($"So it shows: about {100 * who.Middle:0} % of people tell them apart, though anything from {100 * who.Low:0} to {100 * who.High:0} % would fit.")
            : TasteTests.CriticalCount(test, tasters, Risk) is { } least
                ? Invariant($"That shows no difference; {least} right answers would have. It does not show that there is none: up to {100 * who.High:0} % of people may tell them apart.")
                : Invariant($"{tasters} tasters cannot show a difference in this test, however they answer.");
        double large = TasteTests.Power(test, tasters, Risk, TasteTests.RightWhen(test, OneInTwo)), small = TasteTests.Power(test, tasters, Risk, TasteTests.RightWhen(test, OneInFour));
        int? enough = TasteTests.TastersFor(test, Sure, Risk, TasteTests.RightWhen(test, OneInTwo));
        yield return Invariant($"A panel of {tasters} finds what one person in two can taste {100 * large:0} times in 100, and what one in four can {100 * small:0} times{(enough is { } many && many > tasters ? Invariant($"; {many} tasters would find the first four times in five") : "")}.");
        yield return "It does not say which is better.";
    }

    private static string Often(double chance) => chance >= 0.5 ? "more often than not" : chance < 0.0005 ? "less than once in 2,000 tries" : Invariant($"once in {1 / chance:0} tries");
}
