using Gylebook.Engine.Readouts;
using Gylebook.Recipes.Foods;
using Gylebook.Science.Foods;
using Gylebook.Science.Foods.Labels;

namespace Gylebook.Forecast.Report.Labels;

/// <summary>What 100 g of a food hold of one thing.</summary>
/// <param name="Name">Stable name: <c>protein</c>.</param>
/// <param name="Band">How much; null when nobody says.</param>
public sealed record Constituent(string Name, Band? Band)
{
    internal static IReadOnlyList<Constituent> Of(MadeUpFood food)
    {
        FoodComposition? all = food.Composition;
        LabelBounds? bounds = food.Bounds is { IsPossible: true } ? food.Bounds : null;
        return
        [
            Line("protein", all?.Protein, bounds?.Protein),
            Line("fat", all?.Fat, bounds?.Fat),
            Line("carbohydrate", all?.Carbohydrate, bounds?.Carbohydrate),
            Line("fibre", all?.Fibre, bounds?.Fibre),
            Line("sugars", all?.Sugars, bounds?.Sugars),
            Line("sugarAlcohols", all?.Polyols, bounds is { PolyolsAreDeclared: true } ? bounds.Polyols : null),
            Line("starch", all?.Starch, null),
            Line("starchAndOther", all?.Carbohydrate - all?.Fibre - all?.Sugars - (all?.Polyols ?? 0), bounds?.StarchAndOther),
            Line("waterAshAlcohol", 100 - all?.Protein - all?.Fat - all?.Carbohydrate, bounds?.Remainder),
            Line("sodium", all?.SodiumMilligrams, bounds?.SodiumMilligrams, "mg"),
            Line("potassium", all?.PotassiumMilligrams, bounds?.PotassiumMilligrams, "mg"),
        ];
    }

    /// <summary>A figure inside its bounds; one that an analysis puts outside them stands alone.</summary>
    private static Constituent Line(string name, double? likely, Interval? bounds, string unit = "g")
    {
        if (likely is not double value)
        {
            return new(name, null);
        }

        double point = Math.Max(0, value);
        bool holds = bounds is { } range && point >= range.Low - MeansNothing && point <= range.High + MeansNothing;
        return new(name, holds
            ? new Band(Math.Min(point, bounds!.Value.Low), point, Math.Max(point, bounds.Value.High), unit, BandKind.Bounds)
            : Engine.Readouts.Band.Point(point, unit));
    }

    /// <summary>Rounding, far below any figure of a panel.</summary>
    private const double MeansNothing = 1e-6;
}
