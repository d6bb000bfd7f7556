using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Ingredients;

/// <summary>A food's makeup as the engine's figures, in their order, and as parameters.</summary>
internal static class FoodFigures
{
    /// <summary>Stands where the pH of a food is not known: its acids are not counted then, and nothing hangs on it.</summary>
    private const double Neutral = 7;

    /// <summary>The figures as they are likely.</summary>
    public static double[] Of(FoodMakeup food)
    {
        double[] figures = new double[FoodInPlace.FigureCount];
        Fill(food, figures);
        return figures;
    }

    private static void Fill(FoodMakeup food, Span<double> figures) => ((ReadOnlySpan<double>)
    [
        food.Water, food.Sucrose, food.Glucose, food.Fructose, food.Maltose, food.Lactose, food.Polyols, food.Dextrin,
        food.SolubleProtein, food.Minerals, food.Ethanol, food.Lactic, food.Acetic, food.Citric, food.Malic, food.Tartaric, food.Quinic,
        food.Fat, food.Starch, food.Insoluble, food.StarchThatSettles,
        food.SettledHold, food.BagHold, food.SodiumMilligramsPerKilogram, food.PotassiumMilligramsPerKilogram,
        food.CalciumMilligramsPerKilogram, food.MagnesiumMilligramsPerKilogram, food.PhosphorusMilligramsPerKilogram,
        food.ChlorideMilligramsPerKilogram, food.OwnPh?.Likely ?? Neutral, 1,
    ]).CopyTo(figures);

    /// <summary>The same as parameters: what a label prints is as wide as its ends, the rest as wide as the file of priors says.</summary>
    public static Parameter[] ParametersOf(FoodMakeup food)
    {
        double[] figures = Of(food);
        double[][] ends = [.. food.LabelEnds.Select(Of)];
        return [.. Enum.GetValues<FoodFigure>().Select(figure => ParameterOf(food, figure, figures[(int)figure], ends))];
    }

    /// <summary>Where a food goes in, as far as its starch is concerned.</summary>
    public static FoodPlace PlaceOf(AdditionPoint point) => point switch
    {
        AdditionPoint.Mash => FoodPlace.Mash,
        <= AdditionPoint.Stand => FoodPlace.Kettle,
        _ => FoodPlace.Cellar,
    };

    /// <summary>So many kilograms of a food where it goes in, at its likely figures.</summary>
    public static Wort Placed(FoodMakeup food, double kilograms, AdditionPoint at)
    {
        Span<double> figures = stackalloc double[FoodInPlace.FigureCount];
        Fill(food, figures);
        return FoodInPlace.Of(figures, food.StarchIsOpen, PlaceOf(at), kilograms);
    }

    /// <summary>Ends of a food's own pH and of all its acids, as tables differ; null for what has none of its own.</summary>
    public static (double Low, double High)? EndsOf(FoodMakeup food, FoodFigure figure) => (figure, food.OwnPh) switch
    {
        (FoodFigure.OwnPh, { } ph) when food.Acids > 0 => (ph.Low, ph.High),
        (FoodFigure.AcidScale, not null) when food.Acids > 0 => food.AcidEnds,
        _ => null,
    };

    private static Parameter ParameterOf(FoodMakeup food, FoodFigure figure, double median, double[][] ends)
    {
        string name = figure.ToString();
        string key = char.ToLowerInvariant(name[0]) + name[1..];
        string? assumed = food.Assumed.FirstOrDefault(a => a.What == key)?.Source;
        string unit = figure switch
        {
            >= FoodFigure.Sodium and <= FoodFigure.Chloride => "mg/kg",
            FoodFigure.OwnPh => "pH",
            FoodFigure.AcidScale => "1",
            _ => "kg/kg",
        };
        Parameter own = StartingParameters.New($"food.{food.Id}.{key}", median, unit, new(assumed ?? "food sheet", assumed is null ? "entered" : "assumed"));
        if (EndsOf(food, figure) is { } stated)
        {
            return stated.High > stated.Low ? own with { Prior = new Prior.Spread(new Width(Family.Triangular, 0, stated.Low, stated.High, WidthEnds.Value), null, Tie.None) } : own;
        }

        double low = ends.Select(end => end[(int)figure]).Append(median).Min(), high = ends.Select(end => end[(int)figure]).Append(median).Max();
        return high > low && own.Prior is Prior.Still ? own with { Prior = new Prior.Label(food.Id, low, high, figure <= FoodFigure.Insoluble) } : own;
    }
}
