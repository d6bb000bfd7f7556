namespace Gylebook.Science.Foods.Words;

/// <summary>Says where the US and the EU list part ways for the words in hand.</summary>
/// <remarks>
/// <para>What: one sentence a difference, with its source.</para>
/// <para>Source: as given with each sentence.</para>
/// <para>Valid for: words found by <see cref="IngredientText"/>.</para>
/// <para>Accuracy: the lists as of January 2025.</para>
/// </remarks>
public static class AllergenDifferences
{
    private const string Fda = "FDA, Questions and Answers Regarding Food Allergens, edition 5, January 2025";
    private const string AnnexTwo = "Regulation (EU) 1169/2011, Annex II";
    private const string Both = "21 U.S.C. 321(qq); " + AnnexTwo;

    private static readonly (IngredientKind Kind, string Text, string Source)[] All =
    [
        (IngredientKind.Barley, "Barley is an allergen in the EU (gluten), not one of the US nine; say it all the same.", Both),
        (IngredientKind.Rye, "Rye is an allergen in the EU (gluten), not one of the US nine.", Both),
        (IngredientKind.Oats, "Oats are an allergen in the EU (gluten), not one of the US nine.", Both),
        (IngredientKind.NutNoLongerUs,
            "Coconut, chestnut and some other nuts are off the US list of tree nuts since January 2025 and were never on the EU list; "
            + "name them as ingredients.",
            Fda + "; " + AnnexTwo),
        (IngredientKind.TreeNutUsOnly, "Pine nut is a tree nut in the US, not in the EU.", Fda + "; " + AnnexTwo),
        (IngredientKind.Isinglass, "Isinglass is fish in the US; in the EU it is exempt when it fines beer or wine.", Both),
        (IngredientKind.WheatSyrup, "Glucose syrup, dextrose and maltodextrin of wheat are exempt in the EU, wheat in the US.", Both),
        (IngredientKind.BarleySyrup, "Glucose syrup of barley is exempt in the EU.", AnnexTwo),
        (IngredientKind.Celery, "Celery is an allergen in the EU only.", Both),
        (IngredientKind.Mustard, "Mustard is an allergen in the EU only.", Both),
        (IngredientKind.Lupin, "Lupin is an allergen in the EU only.", Both),
        (IngredientKind.Mollusc, "Molluscs are an allergen in the EU only.", Both),
        (IngredientKind.Sulphite,
            "Sulphites are stated above 10 mg/L in the EU, as one of the fourteen; in the US from 10 mg/kg, outside the nine.",
            AnnexTwo + "; 21 CFR 101.100(a)(4) (from memory)"),
    ];

    /// <summary>The differences that touch those words.</summary>
    public static IReadOnlyList<SourcedSentence> For(IReadOnlyCollection<IngredientHit> hits) =>
        [.. All.Where(row => hits.Any(hit => hit.Kind == row.Kind)).Select(row => new SourcedSentence(row.Text, row.Source))];
}
