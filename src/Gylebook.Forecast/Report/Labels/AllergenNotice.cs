using System.Collections.Concurrent;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Foods.Words;
using IngredientKind = Gylebook.Recipes.Ingredients.IngredientKind;

namespace Gylebook.Forecast.Report.Labels;

/// <summary>Allergens in what was used.</summary>
/// <param name="Us">Those of the US list.</param>
/// <param name="Eu">Those of the EU list.</param>
/// <param name="StatementUs">Ready to print, US.</param>
/// <param name="StatementEu">Ready to print, EU.</param>
public sealed record AllergenOutlook(
    IReadOnlyList<string> Us, IReadOnlyList<string> Eu, string StatementUs, string StatementEu)
{
    /// <summary>Those of the US list that a "may contain" line names alone.</summary>
    public required IReadOnlyList<string> MayContainUs { get; init; }

    /// <summary>Those of the EU list that a "may contain" line names alone.</summary>
    public required IReadOnlyList<string> MayContainEu { get; init; }
}

/// <summary>What must be told of allergens, from everything that goes in: malt, sugar, food, fining, and yeast of an earlier beer.</summary>
internal static class AllergenNotice
{
    /// <summary>The lists and the ready statements. Gylebook informs; the brewer checks the packets.</summary>
    public static AllergenOutlook Of(IReadOnlyList<PlannedLine> lines) => Of([.. lines.SelectMany(WordsOf)]);

    /// <summary>The same for words that were found already.</summary>
    public static AllergenOutlook Of(IReadOnlyList<IngredientHit> hits)
    {
        AllergenStatement us = Allergens.State(AllergenList.UsNine, hits);
        AllergenStatement eu = Allergens.State(AllergenList.EuFourteen, hits);
        return new AllergenOutlook(us.Contains, eu.Contains, us.Text, eu.Text) { MayContainUs = us.MayContain, MayContainEu = eu.MayContain };
    }

    private static IReadOnlyList<IngredientHit> WordsOf(PlannedLine line) => line switch
    {
        { Malt: Malt malt } => OfTable(malt.Cereal),
        { Sugar: Sugar sugar } => OfTable(sugar.Allergen),
        { Food: { } food } => food.Words,
        { Line.Kind: IngredientKind.Fining } => IngredientWords.In(line.Line.Of),
        _ when line.Hand?.Lot.Harvest() is { MayContain: { } traces } => IngredientWords.InTraces(traces),
        _ => [],
    };

    /// <summary>The tables' own few words for allergens: read once, not at every key.</summary>
    private static IReadOnlyList<IngredientHit> OfTable(string word) => TableWords.GetOrAdd(word, IngredientWords.In);

    private static readonly ConcurrentDictionary<string, IReadOnlyList<IngredientHit>> TableWords = new(StringComparer.Ordinal);
}
