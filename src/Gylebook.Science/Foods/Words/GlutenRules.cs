namespace Gylebook.Science.Foods.Words;

/// <summary>What may be said about gluten.</summary>
/// <remarks>
/// <para>What: the rules as sentences, those first that forbid.</para>
/// <para>Source: as given with each sentence.</para>
/// <para>Valid for: labels of fermented drinks; local law decides.</para>
/// <para>Accuracy: a summary, not the statute.</para>
/// </remarks>
public static class GlutenRules
{
    /// <summary>Grains with gluten that the US nine do not hold.</summary>
    internal static IReadOnlyList<(IngredientKind Kind, string Name)> GrainsBeyondUsNine { get; } =
        [(IngredientKind.Barley, "barley"), (IngredientKind.Rye, "rye"), (IngredientKind.Oats, "oats")];

    private static readonly IngredientKind[] GlutenGrains =
        [IngredientKind.Wheat, IngredientKind.Barley, IngredientKind.Rye];

    /// <summary>Whether a grain with gluten is in it, traces aside.</summary>
    public static bool HasGlutenGrain(IReadOnlyCollection<IngredientHit> hits) =>
        hits.Any(hit => GlutenGrains.Contains(hit.Kind) && !hit.MayContainOnly);

    /// <summary>The rules for those words.</summary>
    public static IReadOnlyList<SourcedSentence> For(IReadOnlyCollection<IngredientHit> hits)
    {
        List<SourcedSentence> rules = [];
        if (HasGlutenGrain(hits))
        {
            rules.Add(new(
                "A beer of barley, wheat or rye cannot be called gluten-free in the US, whatever an enzyme did to it: no valid test counts "
                + "gluten once it is cut into pieces.",
                "FDA final rule on fermented and hydrolysed foods, 85 FR 49240 (2020)"));
            rules.Add(new(
                "In the US it may say that it was processed, treated or crafted to remove gluten, with the qualifying statement.",
                "TTB Ruling 2020-2"));
        }
        else
        {
            rules.Add(new(
                "In the US a fermented drink may be called gluten-free below 20 mg/kg only with records that its ingredients were "
                + "gluten-free before fermentation.",
                "21 CFR 101.91; 85 FR 49240 (2020)"));
        }

        rules.Add(new(
            "In the EU up to 20 mg/kg may be called gluten-free and up to 100 mg/kg very low gluten; the grain is still stated.",
            "Regulation (EU) 828/2014 (from memory)"));
        return rules;
    }
}
