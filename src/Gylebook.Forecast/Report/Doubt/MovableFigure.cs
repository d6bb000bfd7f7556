using Gylebook.Engine.Drawing;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Report.Doubt;

/// <summary>A figure of a brew that weighs much in its doubt, to be moved by hand: what if it is more, or less?</summary>
/// <param name="Place">Its place in a draw.</param>
/// <param name="Parameter">The parameter; its median is the likely figure.</param>
/// <param name="Words">As a brewer says it: "how much of the malt your mash converts".</param>
/// <param name="Low">Its 5 %.</param>
/// <param name="High">Its 95 %.</param>
public sealed record MovableFigure(int Place, Parameter Parameter, string Words, double Low, double High)
{
    /// <summary>So many are offered: what comes after them hardly moves anything.</summary>
    public const int Most = 5;

    /// <summary>
    /// The numbers whose doubt counts: litres to drink, strength of wort and beer, bitterness. They are what a brewer plans for, and what a reading is
    /// told to narrow; colour and pH would fill the row with figures that move nothing else.
    /// </summary>
    private static readonly Readout[] Counted =
        [BeerReadouts.PackagedLitres, BeerReadouts.OriginalGravity, BeerReadouts.FinalGravity, BeerReadouts.Bitterness];

    /// <summary>The figures with the largest shares of that doubt, all four numbers together, the largest first.</summary>
    /// <remarks>What a model itself leaves open is added after a run, and no run moves with it: it is not among them.</remarks>
    /// <param name="causes">Where the doubt comes from, number by number.</param>
    /// <param name="draws">The draws.</param>
    /// <param name="ownCount">How many of the drawn parameters are the plan's own; the others follow.</param>
    /// <param name="supposing">What knows their ends.</param>
    internal static IReadOnlyList<MovableFigure> Of(IEnumerable<NumberDoubt> causes, Draws draws, int ownCount, Supposing supposing) =>
    [
        .. causes.Where(doubt => Counted.Contains(doubt.Readout))
            .SelectMany(doubt => doubt.Causes)
            .Where(cause => cause.Lead < ownCount)
            .GroupBy(cause => cause.Id)
            .OrderByDescending(cause => cause.Sum(share => share.Share))
            .Select(cause => cause.MaxBy(share => share.Share)!.Lead)
            .Where(place => supposing.EndsOf(place) is var ends && ends.High > ends.Low)
            .Take(Most)
            .Select(place => New(place, draws.Parameters[place], supposing)),
    ];

    private static MovableFigure New(int place, Parameter parameter, Supposing supposing)
    {
        (double low, double high) = supposing.EndsOf(place);
        return new(place, parameter, WordsOf(parameter), low, high);
    }

    /// <summary>Parts of one whole share their words: which of them it is, the last part of the id says.</summary>
    private static string WordsOf(Parameter parameter)
    {
        string words = ParameterWords.Of(parameter.Id) ?? parameter.Id;
        return parameter.Prior is Prior.Label or Prior.Spread { Tie.Kind: TieKind.Sum } ? $"{words}: {Spaced(parameter.Id[(parameter.Id.LastIndexOf('.') + 1)..])}" : words;
    }

    private static string Spaced(string name) => string.Concat(name.Select(letter => char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : letter.ToString()));
}
