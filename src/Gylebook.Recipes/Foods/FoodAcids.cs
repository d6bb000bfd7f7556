using Gylebook.Recipes.Data;
using Gylebook.Science.Data;

namespace Gylebook.Recipes.Foods;

/// <summary>Acids of a food, g/100 g as is: acid and its salt together, as tables print them.</summary>
/// <param name="Lactic">Lactic acid.</param>
/// <param name="Acetic">Acetic acid.</param>
/// <param name="Citric">Citric acid.</param>
/// <param name="Malic">Malic acid.</param>
/// <param name="Tartaric">Tartaric acid.</param>
/// <param name="Quinic">Quinic acid, gluconic counted with it.</param>
public sealed record FoodAcids(double Lactic, double Acetic, double Citric, double Malic, double Tartaric, double Quinic)
{
    /// <summary>The least that a table has, as a share of these; 1 when there is one table.</summary>
    public double LowShare { get; init; } = 1;

    /// <summary>The most that a table has, as a share of these.</summary>
    public double HighShare { get; init; } = 1;

    /// <summary>All of them together, g/100 g.</summary>
    public double Total => Lactic + Acetic + Citric + Malic + Tartaric + Quinic;
}

/// <summary>Acids of foods by table: <c>data/food-acids.csv</c>. A food's are the mean of its rows, its ends their least and most.</summary>
public static class FoodAcidTable
{
    private static readonly Lazy<Dictionary<string, FoodAcids>> Rows = new(() => ReferenceData.Table("food-acids.csv").Rows
        .Where(row => row.Required("status") != "seen-suspect")
        .GroupBy(row => row.Required("food"))
        .ToDictionary(rows => rows.Key, rows => Of([.. rows.Select(Make)]), StringComparer.Ordinal));

    /// <summary>The acids of the food of that id; null where no table here has them.</summary>
    public static FoodAcids? Find(string food) => Rows.Value.GetValueOrDefault(food);

    private static FoodAcids Of(FoodAcids[] tables)
    {
        FoodAcids mean = new(
            tables.Average(t => t.Lactic), tables.Average(t => t.Acetic), tables.Average(t => t.Citric),
            tables.Average(t => t.Malic), tables.Average(t => t.Tartaric), tables.Average(t => t.Quinic));
        return mean.Total > 0
            ? mean with { LowShare = tables.Min(t => t.Total) / mean.Total, HighShare = tables.Max(t => t.Total) / mean.Total }
            : mean;
    }

    private static FoodAcids Make(CsvRow row)
    {
        double Grams(string acid) => row.NumberOrNull(acid + "_g") ?? 0;
        return new FoodAcids(Grams("lactic"), Grams("acetic"), Grams("citric"), Grams("malic"), Grams("tartaric"), Grams("quinic"));
    }
}
