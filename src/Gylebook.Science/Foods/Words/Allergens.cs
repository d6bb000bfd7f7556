namespace Gylebook.Science.Foods.Words;

/// <summary>Whose allergen list applies.</summary>
public enum AllergenList
{
    /// <summary>The nine major food allergens of the United States.</summary>
    UsNine,

    /// <summary>The fourteen of the European Union (and the United Kingdom).</summary>
    EuFourteen,
}

/// <summary>What must be said of the allergens in a beer.</summary>
/// <param name="List">Whose list.</param>
/// <param name="Contains">Names to state, in the list's order, with species in brackets where the list asks for them.</param>
/// <param name="MayContain">Names that only came from "may contain" wording.</param>
/// <param name="Text">Ready to print; never a promise that anything is absent.</param>
public sealed record AllergenStatement(
    AllergenList List, IReadOnlyList<string> Contains, IReadOnlyList<string> MayContain, string Text);

/// <summary>States the allergens of ingredient words by either list.</summary>
/// <remarks>
/// <para>What: the names each list asks for, from words found by <see cref="IngredientText"/>.</para>
/// <para>Source: US, 21 U.S.C. 321(qq) and 343(w), FASTER Act 2021 (sesame), FDA Questions and Answers Regarding Food Allergens,
/// edition 5, January 2025 (tree nuts); EU, Regulation (EU) 1169/2011, Articles 9 and 21 and Annex II.</para>
/// <para>Valid for: words; equipment used for other foods too is for the brewer to add.</para>
/// <para>Accuracy: when in doubt a word counts. Silence is not proof.</para>
/// <para>Notes: beer above 1.2 % alcohol needs no ingredient list in the EU, but its allergens must be stated. In the US the
/// statement on malt beverages is voluntary today (27 CFR part 7; a rule to require it was proposed, 90 FR 5763, 2025).
/// Local law decides.</para>
/// </remarks>
public static class Allergens
{
    /// <summary>Sulphur dioxide in the drink as served above which both lists want it stated, mg/L.</summary>
    public const double SulphiteLimitMilligramsPerLitre = 10;

    private static readonly (string Name, bool WithSpecies, IngredientKind[] Kinds)[] UsNine =
    [
        ("Milk", false, [IngredientKind.Milk]),
        ("Egg", false, [IngredientKind.Egg]),
        ("Fish", true, [IngredientKind.Fish, IngredientKind.Isinglass]),
        ("Crustacean shellfish", true, [IngredientKind.Crustacean]),
        ("Tree nuts", true, [IngredientKind.TreeNut, IngredientKind.TreeNutUsOnly]),
        ("Wheat", false, [IngredientKind.Wheat, IngredientKind.WheatSyrup]),
        ("Peanuts", false, [IngredientKind.Peanut]),
        ("Soybeans", false, [IngredientKind.Soy]),
        ("Sesame", false, [IngredientKind.Sesame]),
    ];

    private static readonly (string Name, bool WithSpecies, IngredientKind[] Kinds)[] EuFourteen =
    [
        ("barley (gluten)", false, [IngredientKind.Barley]),
        ("wheat (gluten)", false, [IngredientKind.Wheat]),
        ("rye (gluten)", false, [IngredientKind.Rye]),
        ("oats (gluten)", false, [IngredientKind.Oats]),
        ("crustaceans", false, [IngredientKind.Crustacean]),
        ("eggs", false, [IngredientKind.Egg]),
        ("fish", false, [IngredientKind.Fish]),
        ("peanuts", false, [IngredientKind.Peanut]),
        ("soybeans", false, [IngredientKind.Soy]),
        ("milk", false, [IngredientKind.Milk]),
        ("nuts", true, [IngredientKind.TreeNut]),
        ("celery", false, [IngredientKind.Celery]),
        ("mustard", false, [IngredientKind.Mustard]),
        ("sesame", false, [IngredientKind.Sesame]),
        ("lupin", false, [IngredientKind.Lupin]),
        ("molluscs", false, [IngredientKind.Mollusc]),
    ];

    /// <summary>The statement for those words.</summary>
    /// <param name="list">Whose list.</param>
    /// <param name="hits">Words found in the ingredient lists of everything in the beer.</param>
    /// <param name="sulphurDioxideMilligramsPerLitre">In the drink as served, or null if nobody knows: then sulphites are stated.</param>
    public static AllergenStatement State(
        AllergenList list, IReadOnlyCollection<IngredientHit> hits, double? sulphurDioxideMilligramsPerLitre = null)
    {
        List<string> contains = Names(list, [.. hits.Where(hit => !hit.MayContainOnly)]);
        List<string> mayContain =
        [
            .. Names(list, [.. hits.Where(hit => hit.MayContainOnly)]).Where(name => !contains.Contains(name)),
        ];
        // The US asks from 10 mg/kg on, the EU above 10 mg/L: at exactly 10 only the first.
        bool sulphites = hits.Any(hit => hit.Kind == IngredientKind.Sulphite && !hit.MayContainOnly)
            && (sulphurDioxideMilligramsPerLitre is not { } found
                || (list == AllergenList.UsNine ? found >= SulphiteLimitMilligramsPerLitre : found > SulphiteLimitMilligramsPerLitre));
        if (sulphites)
        {
            contains.Add(list == AllergenList.UsNine ? "Sulfites" : "sulphites");
        }

        return new(list, contains, mayContain, Text(list, contains, mayContain, hits));
    }

    private static List<string> Names(AllergenList list, List<IngredientHit> hits)
    {
        List<string> names = [];
        HashSet<IngredientKind> found = [.. hits.Select(hit => hit.Kind)];
        Predicate<IngredientKind> isFound = found.Contains;
        foreach ((string name, bool withSpecies, IngredientKind[] kinds) in list == AllergenList.UsNine ? UsNine : EuFourteen)
        {
            if (Array.Exists(kinds, isFound))
            {
                names.Add(withSpecies ? $"{name} ({WordsOf(kinds, hits)})" : name);
            }
        }

        return names;
    }

    private static string WordsOf(IngredientKind[] kinds, List<IngredientHit> hits) =>
        string.Join(", ", hits.Where(hit => kinds.Contains(hit.Kind)).Select(hit => hit.Word).Distinct());

    private static string Text(
        AllergenList list, List<string> contains, List<string> mayContain, IReadOnlyCollection<IngredientHit> hits)
    {
        List<string> sentences = [];
        sentences.Add(contains.Count > 0
            ? $"Contains: {string.Join(", ", contains)}."
            : $"No allergen of the {(list == AllergenList.UsNine ? "US nine" : "EU fourteen")} was recognised; the packets have the last word.");
        if (mayContain.Count > 0)
        {
            sentences.Add($"May contain: {string.Join(", ", mayContain)}.");
        }

        if (list == AllergenList.UsNine)
        {
            string[] grains =
            [
                .. GlutenRules.GrainsBeyondUsNine.Where(grain => hits.Any(hit => hit.Kind == grain.Kind && !hit.MayContainOnly))
                    .Select(grain => grain.Name),
            ];
            if (grains.Length > 0)
            {
                sentences.Add($"Made with {string.Join(", ", grains)} (gluten).");
            }
        }

        if (hits.Any(hit => hit.Kind == IngredientKind.LecithinOfUnknownOrigin))
        {
            sentences.Add("Lecithin: check whether it is from soy or egg.");
        }

        return string.Join(' ', sentences);
    }
}
