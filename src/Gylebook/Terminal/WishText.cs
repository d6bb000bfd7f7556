using Gylebook.Forecast.Solving;
using Gylebook.Recipes;
using Gylebook.Science.Quantities;

namespace Gylebook.Terminal;

/// <summary>The beer wanted, as typed: <c>package=20L,og=1.054,ibu=28,gas=2.3 volumes,pitch=100%,munich malt=10%</c>.</summary>
internal static class WishText
{
    private const string Known = "package, og, ibu, gas, pitch, or the name of a malt of the recipe with its share";

    /// <summary>Reads it.</summary>
    /// <returns>False when a part cannot be: <paramref name="problem"/> says which, with its limits.</returns>
    public static bool TryRead(string? typed, Recipe recipe, out BeerWish wish, out string problem)
    {
        wish = new BeerWish();
        problem = "";
        foreach (string part in (typed ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            int equals = part.IndexOf('=', StringComparison.Ordinal);
            if (equals <= 0)
            {
                problem = $"--for: {part}; must be a number and what it is of: {Known}.";
                return false;
            }

            if (!TryRead(part[..equals].Trim(), part[(equals + 1)..].Trim(), recipe, ref wish, out problem))
            {
                problem = $"--for {part[..equals].Trim()}: {problem}";
                return false;
            }
        }

        return true;
    }

    private static bool TryRead(string of, string text, Recipe recipe, ref BeerWish wish, out string problem)
    {
        switch (of.ToLowerInvariant())
        {
            case "package":
                bool isVolume = UnitTable.TryParse(text, out Entered<VolumeAt20C> volume, out problem);
                wish = wish with { Package = volume };
                return isVolume && IsSome(volume.Value.Litres, text, ref problem);
            case "og":
                bool isGravity = UnitTable.TryParse(text, out Entered<SpecificGravity> gravity, out problem);
                wish = wish with { OriginalGravity = gravity.Value };
                return isGravity;
            case "ibu":
                bool isIbu = UnitTable.TryParse(text.EndsWith("IBU", StringComparison.OrdinalIgnoreCase) ? text : $"{text} IBU", out Entered<Bitterness> bitterness, out problem);
                wish = wish with { Bitterness = bitterness.Value };
                return isIbu;
            case "gas":
                bool isGas = UnitTable.TryParse(text, out Entered<Carbonation> gas, out problem);
                wish = wish with { Carbonation = gas };
                return isGas;
            case "pitch":
                bool isPitch = UnitTable.TryParse(text, out Entered<Fraction> pitch, out problem);
                wish = wish with { Pitch = pitch.Value.Ratio };
                return isPitch && IsPitch(pitch.Value.Ratio, text, ref problem);
            default:
                return TryShare(of, text, recipe, ref wish, out problem);
        }
    }

    private static bool TryShare(string of, string text, Recipe recipe, ref BeerWish wish, out string problem)
    {
        int[] lines = [.. recipe.Ingredients.Index().Where(entry => string.Equals(entry.Item.As ?? entry.Item.Of, of, StringComparison.OrdinalIgnoreCase) || string.Equals(entry.Item.Of, of, StringComparison.OrdinalIgnoreCase)).Select(entry => entry.Index)];
        if (lines.Length != 1)
        {
            problem = lines.Length == 0 ? $"nothing of that name is asked for or goes in; must be {Known}." : "several lines have that name; call one of them something else with \"as\".";
            return false;
        }

        if (!UnitTable.TryParse(text, out Entered<Fraction> share, out problem))
        {
            return false;
        }

        if (share.Value.Ratio is not (> 0 and <= 1))
        {
            problem = $"{text}: a share of the grist is above 0 % and up to 100 %.";
            return false;
        }

        wish = wish with { Shares = new Dictionary<int, double>(wish.Shares) { [lines[0]] = share.Value.Ratio } };
        return true;
    }

    /// <summary>Of the cells a wort wants nobody pitches less than a tenth, or ten times as many.</summary>
    private static bool IsPitch(double share, string text, ref string problem)
    {
        problem = share is >= 0.1 and <= 10 ? "" : $"{text}: must be from 10 % to 1000 % of the cells wanted.";
        return problem.Length == 0;
    }

    private static bool IsSome(double litres, string text, ref string problem)
    {
        problem = litres > 0 ? "" : $"{text}: must be above 0 L.";
        return litres > 0;
    }
}
