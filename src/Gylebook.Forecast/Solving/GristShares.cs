using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Solving;

/// <summary>A grist as a function of how much it weighs in all: some lines hold a share of it, foods stay as weighed, the other malts take the rest.</summary>
/// <remarks>The grist is what is weighed into the mash; malt extract goes along with the malts that take the rest.</remarks>
internal sealed class GristShares
{
    private readonly Recipe _recipe;
    private readonly IReadOnlyDictionary<int, double> _held;
    private readonly int[] _rest;
    private readonly double _restKilograms;
    private readonly double _fixedKilograms;

    /// <summary>The grist of a recipe.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="held">Shares held, by number of the line.</param>
    public GristShares(Recipe recipe, IReadOnlyDictionary<int, double> held)
    {
        (_recipe, _held) = (recipe, held);
        _rest = [.. Lines(line => line.Kind is IngredientKind.Malt or IngredientKind.Extract).Where(line => !held.ContainsKey(line))];
        _restKilograms = _rest.Sum(Kilograms);
        _fixedKilograms = Lines(line => line.At.Point == AdditionPoint.Mash).Except(_rest).Where(line => !held.ContainsKey(line)).Sum(Kilograms);
    }

    /// <summary>What it weighs now.</summary>
    public double Now => _restKilograms + _fixedKilograms + _held.Keys.Sum(Kilograms);

    /// <summary>Whether there is anything to weigh.</summary>
    public bool IsThere => _rest.Length + _held.Count > 0 && Now > 0;

    /// <summary>Whether every share is what it is held at, to a part in ten thousand of the grist: less than its scale shows.</summary>
    public bool IsAsHeld => _held.All(share => Math.Abs(Kilograms(share.Key) - (share.Value * Now)) <= 1e-4 * Now);

    /// <summary>Share of the grist that is not held.</summary>
    public double Free => 1 - _held.Values.Sum();

    /// <summary>The least it can weigh: there must be room for the foods, and for the malts that take the rest.</summary>
    public double Least => Free > 0 ? _fixedKilograms / Free : 0;

    /// <summary>Whether it can weigh anything but the least: without a malt that takes the rest, shares and foods decide.</summary>
    public bool CanGrow => _rest.Length > 0 || (_fixedKilograms == 0 && Free < 1e-9);

    /// <summary>The recipe with so much grist.</summary>
    public Recipe With(double kilograms)
    {
        double times = _restKilograms > 0 ? Math.Max(0, (kilograms * Free) - _fixedKilograms) / _restKilograms : 0;
        return _recipe.WithKilograms(
            [.. _held.Select(share => (share.Key, share.Value * kilograms)), .. _rest.Select(line => (line, Kilograms(line) * times))]);
    }

    private double Kilograms(int line) => _recipe.Ingredients[line].Amount.Mass?.Value.Kilograms ?? 0;

    private IEnumerable<int> Lines(Func<IngredientLine, bool> which) =>
        Enumerable.Range(0, _recipe.Ingredients.Count).Where(i => which(_recipe.Ingredients[i]) && Kilograms(i) > 0);
}
