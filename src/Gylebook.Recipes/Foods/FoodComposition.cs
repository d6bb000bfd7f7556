namespace Gylebook.Recipes.Foods;

/// <summary>What a food is made of, in grams per 100 g of it as is; null where nobody measured or stated it.</summary>
public sealed record FoodComposition
{
    /// <summary>Water, g/100 g.</summary>
    public double? Water { get; init; }

    /// <summary>Protein, g/100 g.</summary>
    public double? Protein { get; init; }

    /// <summary>Fat, g/100 g.</summary>
    public double? Fat { get; init; }

    /// <summary>Ash: what is left of it when burnt, mostly minerals, g/100 g.</summary>
    public double? Ash { get; init; }

    /// <summary>All carbohydrate, by difference: 100 less water, protein, fat, ash and ethanol. Fibre and sugar alcohols are in it, g/100 g.</summary>
    public double? Carbohydrate { get; init; }

    /// <summary>Dietary fibre, g/100 g.</summary>
    public double? Fibre { get; init; }

    /// <summary>Starch, g/100 g.</summary>
    public double? Starch { get; init; }

    /// <summary>All sugars, g/100 g.</summary>
    public double? Sugars { get; init; }

    /// <summary>Sucrose, g/100 g.</summary>
    public double? Sucrose { get; init; }

    /// <summary>Glucose, g/100 g.</summary>
    public double? Glucose { get; init; }

    /// <summary>Fructose, g/100 g.</summary>
    public double? Fructose { get; init; }

    /// <summary>Maltose, g/100 g.</summary>
    public double? Maltose { get; init; }

    /// <summary>Lactose, anhydrous, g/100 g.</summary>
    public double? Lactose { get; init; }

    /// <summary>Sugar alcohols, g/100 g.</summary>
    public double? Polyols { get; init; }

    /// <summary>Ethanol, g/100 g.</summary>
    public double? Ethanol { get; init; }

    /// <summary>Sodium, mg/100 g.</summary>
    public double? SodiumMilligrams { get; init; }

    /// <summary>Potassium, mg/100 g.</summary>
    public double? PotassiumMilligrams { get; init; }

    /// <summary>Calcium, mg/100 g.</summary>
    public double? CalciumMilligrams { get; init; }

    /// <summary>Magnesium, mg/100 g.</summary>
    public double? MagnesiumMilligrams { get; init; }

    /// <summary>Phosphorus, mg/100 g of the element.</summary>
    public double? PhosphorusMilligrams { get; init; }

    /// <summary>Chloride, mg/100 g.</summary>
    public double? ChlorideMilligrams { get; init; }

    /// <summary>Acids with their salts; null where nobody measured them.</summary>
    public FoodAcids? Acids { get; init; }

    /// <summary>pH of the food as it is; null where nobody measured it.</summary>
    public FoodPh? Ph { get; init; }

    /// <summary>Energy, kcal/100 g; only ever a check on the rest.</summary>
    public double? EnergyKilocalories { get; init; }

    /// <summary>Who says so; null when unsaid.</summary>
    public string? Source { get; init; }

    /// <summary>The same with those minerals.</summary>
    internal FoodComposition With(FoodMinerals? minerals) => minerals is null ? this : this with
    {
        PotassiumMilligrams = minerals.Potassium,
        CalciumMilligrams = minerals.Calcium,
        MagnesiumMilligrams = minerals.Magnesium,
        PhosphorusMilligrams = minerals.Phosphorus,
        ChlorideMilligrams = minerals.Chloride,
    };

    /// <summary>These figures, and where there are none, those of another.</summary>
    public FoodComposition OrElse(FoodComposition other) => this with
    {
        Water = Water ?? other.Water,
        Protein = Protein ?? other.Protein,
        Fat = Fat ?? other.Fat,
        Ash = Ash ?? other.Ash,
        Carbohydrate = Carbohydrate ?? other.Carbohydrate,
        Fibre = Fibre ?? other.Fibre,
        Starch = Starch ?? other.Starch,
        Sugars = Sugars ?? other.Sugars,
        Sucrose = Sucrose ?? other.Sucrose,
        Glucose = Glucose ?? other.Glucose,
        Fructose = Fructose ?? other.Fructose,
        Maltose = Maltose ?? other.Maltose,
        Lactose = Lactose ?? other.Lactose,
        Polyols = Polyols ?? other.Polyols,
        Ethanol = Ethanol ?? other.Ethanol,
        SodiumMilligrams = SodiumMilligrams ?? other.SodiumMilligrams,
        PotassiumMilligrams = PotassiumMilligrams ?? other.PotassiumMilligrams,
        CalciumMilligrams = CalciumMilligrams ?? other.CalciumMilligrams,
        MagnesiumMilligrams = MagnesiumMilligrams ?? other.MagnesiumMilligrams,
        PhosphorusMilligrams = PhosphorusMilligrams ?? other.PhosphorusMilligrams,
        ChlorideMilligrams = ChlorideMilligrams ?? other.ChlorideMilligrams,
        Acids = Acids ?? other.Acids,
        Ph = Ph ?? other.Ph,
        EnergyKilocalories = EnergyKilocalories ?? other.EnergyKilocalories,
        Source = Source ?? other.Source,
    };
}
