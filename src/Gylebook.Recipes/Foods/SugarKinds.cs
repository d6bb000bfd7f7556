namespace Gylebook.Recipes.Foods;

/// <summary>An amount of sugars, or a share of 1, parted by kind.</summary>
/// <param name="Sucrose">Sucrose.</param>
/// <param name="Glucose">Glucose.</param>
/// <param name="Fructose">Fructose.</param>
/// <param name="Maltose">Maltose.</param>
/// <param name="Lactose">Lactose.</param>
/// <param name="Dextrin">What is printed among the sugars and does not ferment.</param>
public readonly record struct SugarKinds(
    double Sucrose, double Glucose, double Fructose, double Maltose, double Lactose, double Dextrin)
{
    /// <summary>Named kinds and their total agree when they differ by less than this share of the total.</summary>
    private const double Agreement = 0.02;

    /// <summary>Or by less than this, g/100 g: five kinds, each rounded to 0.01 g, twice over.</summary>
    private const double Rounding = 0.05;

    /// <summary>All kinds together.</summary>
    public double Total => Sucrose + Glucose + Fructose + Maltose + Lactose + Dextrin;

    /// <summary>Both together.</summary>
    public static SugarKinds operator +(SugarKinds left, SugarKinds right) => new(
        left.Sucrose + right.Sucrose, left.Glucose + right.Glucose, left.Fructose + right.Fructose,
        left.Maltose + right.Maltose, left.Lactose + right.Lactose, left.Dextrin + right.Dextrin);

    /// <summary>That many times as much.</summary>
    public static SugarKinds operator *(SugarKinds kinds, double factor) => new(
        kinds.Sucrose * factor, kinds.Glucose * factor, kinds.Fructose * factor,
        kinds.Maltose * factor, kinds.Lactose * factor, kinds.Dextrin * factor);

    /// <summary>The kinds that an analysis names; null is none of it.</summary>
    internal static SugarKinds Named(FoodComposition food) => new(
        food.Sucrose ?? 0, food.Glucose ?? 0, food.Fructose ?? 0, food.Maltose ?? 0, food.Lactose ?? 0, 0);

    /// <summary>All sugars by kind: those named as they are, the rest as the family has it.</summary>
    /// <remarks>
    /// The rest goes first to kinds that were not measured. Where all the family's kinds were, it goes to them in the family's
    /// shares: galactose in honey, and what analyses miss.
    /// </remarks>
    /// <param name="food">The analysis.</param>
    /// <param name="total">All sugars, g/100 g.</param>
    /// <param name="family">Whose split to borrow.</param>
    /// <param name="borrowed">How many g/100 g were split by the family.</param>
    internal static SugarKinds Split(FoodComposition food, double total, FoodFamily family, out double borrowed)
    {
        var named = Named(food);
        borrowed = 0;
        if (named.Total > total || total - named.Total <= Math.Max(Rounding, Agreement * total))
        {
            var isNamed = named.Total > 0;
            borrowed = isNamed || total == 0 ? 0 : total;
            return isNamed ? named : family.SugarSplit * total;
        }
        borrowed = total - named.Total;
        var split = family.SugarSplit;
        var unmeasured = new SugarKinds(
            food.Sucrose is null ? split.Sucrose : 0,
            food.Glucose is null ? split.Glucose : 0,
            food.Fructose is null ? split.Fructose : 0,
            food.Maltose is null ? split.Maltose : 0,
            food.Lactose is null ? split.Lactose : 0,
            split.Dextrin);
        var shares = unmeasured.Total > 0 ? unmeasured : split;
        return named + (shares * (borrowed / shares.Total));
    }
}
