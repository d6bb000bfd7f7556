using System.Globalization;

namespace Gylebook.Gyles.Tasting;

/// <summary>A taste at several ages of a beer.</summary>
/// <param name="Portion">Of which portion; null for the whole.</param>
/// <param name="Scale">What is tasted for.</param>
/// <param name="Marks">The middle of the tasters' marks at each age, the youngest first.</param>
public sealed record Ageing(string? Portion, string Scale, IReadOnlyList<(TimeSpan Age, double Middle, int Tasters)> Marks)
{
    /// <summary>Marks of one week count as one age: common practice, no source.</summary>
    private const double DaysTogether = 7;

    /// <summary>It in a sentence: "Toasted seed: 7 after 2 weeks, 4 after 3 months".</summary>
    public string Sentence => string.Create(CultureInfo.InvariantCulture, $"{Scale}{(Portion is null ? "" : $" ({Portion})")}: {string.Join(", ", Marks.Select(mark => Invariant($"{mark.Middle:0.#} after {Words(mark.Age)}{(mark.Tasters > 1 ? Invariant($" ({mark.Tasters} tasters)") : "")}")))}.");

    /// <summary>Every scale that was marked at more than one age.</summary>
    /// <param name="tasted">What tasters said, and how long the beer had been packaged; what was said before tells of no age.</param>
    public static IEnumerable<Ageing> Of(IEnumerable<(string? Portion, TimeSpan? Age, Tasted Said)> tasted) =>
        from one in tasted
        where one.Age is not null
        from mark in one.Said.Marks
        group (Age: one.Age!.Value, mark.Scale, mark.Value) by (one.Portion, Folded: mark.Scale.ToUpperInvariant()) into own
        let ages = own.GroupBy(mark => Math.Floor(mark.Age.TotalDays / DaysTogether)).OrderBy(age => age.Key)
            .Select(age => (TimeSpan.FromDays(age.Average(mark => mark.Age.TotalDays)), Middle([.. age.Select(mark => mark.Value).Order()]), age.Count())).ToArray()
        where ages.Length > 1
        select new Ageing(own.Key.Portion, own.First().Scale, ages);

    /// <summary>An age as people say it: "5 days", "3 weeks", "4 months".</summary>
    public static string Words(TimeSpan age) => age.TotalDays switch
    {
        < 1.5 => "a day",
        < 14 => Invariant($"{age.TotalDays:0} days"),
        < 84 => Invariant($"{age.TotalDays / 7:0} weeks"),
        _ => Invariant($"{age.TotalDays / 30.4:0} months"),
    };

    private static double Middle(double[] sorted) => sorted.Length % 2 == 1 ? sorted[sorted.Length / 2] : (sorted[(sorted.Length / 2) - 1] + sorted[sorted.Length / 2]) / 2;
}
