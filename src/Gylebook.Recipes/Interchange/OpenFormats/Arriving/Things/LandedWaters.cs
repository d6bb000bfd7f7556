using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving.Things;

/// <summary>Waters from elsewhere as water plans.</summary>
internal static class LandedWaters
{
    private const double LowestPh = 4.5, HighestPh = 11;

    /// <summary>A plan of one water.</summary>
    public static WaterSheet Of(OpenWater water, TravelList travels)
    {
        string name = OpenNames.Of(water.Name, "Water without a name", $"{water.Path}.name", travels);
        return new WaterSheet { Name = name, Notes = water.Notes, Sources = [Source(water, name, null, travels)] };
    }

    /// <summary>A plan of the waters of a recipe; null when it names none.</summary>
    public static WaterSheet? Of(OpenRecipe recipe, string name, TravelList travels)
    {
        if (recipe.Waters.Count == 0)
        {
            return null;
        }

        double all = recipe.Waters.Sum(water => water.Amount?.Value.Litres ?? 0);
        List<WaterSourceSheet> sources = [];
        foreach (OpenWater water in recipe.Waters)
        {
            string called = OpenNames.Of(water.Name, "Water without a name", $"{water.Path}.name", travels);
            double? share = recipe.Waters.Count == 1 ? null : all > 0 ? (water.Amount?.Value.Litres ?? 0) / all : 1.0 / recipe.Waters.Count;
            sources.Add(Source(water, called, share, travels));
            if (water.Amount is { } amount)
            {
                travels.Convert($"{water.Path}.amount", Invariant($"{called}: {amount} of {all:0.##} L; a plan of ours has shares, and litres are planned"));
            }
        }

        travels.Convert(recipe.Waters[0].Path, $"the waters of this recipe are a water plan of their own, \"Liquor of {name}\"");
        string plan = $"Liquor of {name}";
        return new WaterSheet { Name = OpenNames.IsName(plan) ? plan : "Liquor of a recipe", Sources = sources };
    }

    private static WaterSourceSheet Source(OpenWater water, string name, double? share, TravelList travels)
    {
        if (water.Ph is { } ph && ph is < LowestPh or > HighestPh)
        {
            travels.Leave($"{water.Path}.pH", Invariant($"{ph}; must be from {LowestPh} to {HighestPh}"));
        }

        ReportSheet report = new()
        {
            Calcium = Ion(water.Calcium, "calcium"),
            Magnesium = Ion(water.Magnesium, "magnesium"),
            Bicarbonate = Ion(water.Bicarbonate, "bicarbonate"),
            Carbonate = Ion(water.Carbonate, "carbonate"),
            Sulphate = Ion(water.Sulphate, "sulfate"),
            Chloride = Ion(water.Chloride, "chloride"),
            Nitrate = Ion(water.Nitrate, "nitrate"),
            Sodium = Ion(water.Sodium, "sodium"),
            Potassium = Ion(water.Potassium, "potassium"),
            Ph = water.Ph is >= LowestPh and <= HighestPh ? water.Ph : null,
        };
        return new WaterSourceSheet(name, share is { } part ? new(Fraction.FromRatio(part), Invariant($"{100 * part:0.####} %")) : null, null, report, null, null);

        Entered<Concentration>? Ion(Entered<Concentration>? ion, string key)
        {
            if (ion is not { } there || there.Value.MilligramsPerLitre <= Interchange.WaterLimits.MostMilligramsPerLitre)
            {
                return ion;
            }

            travels.Leave($"{water.Path}.{key}", Invariant($"{there}; at most {Interchange.WaterLimits.MostMilligramsPerLitre} mg/L is read: look at the unit"));
            return null;
        }
    }
}
