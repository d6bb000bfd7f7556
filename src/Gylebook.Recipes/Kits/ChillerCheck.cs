namespace Gylebook.Recipes.Kits;

/// <summary>Whether the kit's chiller is one we can reckon with.</summary>
internal static class ChillerCheck
{
    private const double Coldest = -30;
    private const double Warmest = 60;

    /// <summary>An unknown kind is a warning, not an error: kits were written before there were words for it.</summary>
    public static void Check(Chiller chiller, FindingList findings)
    {
        if (chiller.Means is null)
        {
            string known = string.Join(", ", ChillerKinds.Words);
            findings.Warning(
                "chiller.kind", "chiller.kind",
                $"{chiller.Kind}; how it chills is not known; known: {known}; did you mean {NearestWord.To(chiller.Kind, ChillerKinds.Words)}?",
                chiller.Kind, known);
        }

        if (chiller.Coolant is { } coolant)
        {
            KitCheck.Between(coolant, Coldest, Warmest, "chiller.coolant", "it could not cool wort to where yeast lives", findings);
        }
    }
}
