using Gylebook.Pictures;
using Gylebook.Recipes.Foods;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Foods;

/// <summary>Where a food may go, and what becomes of it there: what the balance does, in words.</summary>
public sealed partial class FoodPlaces
{
    private const double Fermentable = 0.005;

    private IReadOnlyList<string> _sentences = [];

    /// <summary>The food, made up for the balance.</summary>
    [Parameter]
    [EditorRequired]
    public required FoodMakeup Makeup { get; set; }

    /// <summary>Whose habits it borrows.</summary>
    [Parameter]
    [EditorRequired]
    public required FoodFamily Family { get; set; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    /// <inheritdoc/>
    protected override void OnParametersSet() => _sentences = [.. Sugar(), .. Starch(), .. Solids(), .. Dose()];

    private IEnumerable<string> Sugar()
    {
        double sugar = Makeup.Sucrose + Makeup.Glucose + Makeup.Fructose + Makeup.Maltose;
        double extract = sugar + Makeup.Lactose + Makeup.Polyols + Makeup.Dextrin + Makeup.SolubleProtein + Makeup.Minerals;
        yield return $"A kilogram brings {Grams(extract)} of extract wherever it goes, {(sugar > Fermentable ? $"of which {Grams(sugar)} are sugars that ferment" : "next to none of it fermentable")}.";
    }

    private IEnumerable<string> Starch()
    {
        if (Makeup.Starch <= 0)
        {
            yield break;
        }

        yield return Makeup.StarchIsOpen
            ? $"Its starch ({Grams(Makeup.Starch)}) is open: in the mash, enzymes turn it into sugar. In the kettle or later nothing does, and it stays as haze."
            : $"Its starch ({Grams(Makeup.Starch)}) is raw: in the mash it stays with the grain unless it is cooked first. In the kettle heat opens it and nothing converts it: haze. In cold beer it settles.";
    }

    private IEnumerable<string> Solids()
    {
        if (Makeup.Insoluble <= 0)
        {
            yield return "It dissolves completely: no sludge of its own.";
            yield break;
        }

        double settles = Makeup.Insoluble;
        string low = Kilograms(settles * Family.SettledHoldLow);
        string high = Kilograms(settles * Family.SettledHoldHigh);
        yield return $"{Grams(settles)} of it never dissolve. In the mash they stay with the grain. After that they become sludge, and hold {Kilograms(settles * Makeup.SettledHold)} of beer back with them ({low} to {high}).";
    }

    private IEnumerable<string> Dose()
    {
        if (Family is { DoseLow: { } low, DoseTypical: { } usual, DoseHigh: { } high })
        {
            yield return $"Usual dose: {Shown.Number(usual, 0)} g in a litre of finished beer, from {Shown.Number(low, 0)} to {Shown.Number(high, 0)} (common practice, no source).";
        }
    }

    private string Grams(double kilograms) => $"{Shown.Number(kilograms * 1000, 0)}{Shown.Space}g";

    private string Kilograms(double kilograms) => Shown.Kilograms(kilograms);
}
