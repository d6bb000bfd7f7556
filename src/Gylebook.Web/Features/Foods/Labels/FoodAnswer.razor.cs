using Gylebook.Forecast.Report.Labels;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Science.Quantities;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>What a label means, what that much of the food does in two places, and what was assumed for it.</summary>
public sealed partial class FoodAnswer
{
    private const double MilligramsInGram = 1000;

    /// <summary>The report.</summary>
    [Parameter]
    [EditorRequired]
    public required FoodLabelReport Report { get; set; }

    /// <summary>The food as the balance takes it.</summary>
    [Parameter]
    [EditorRequired]
    public required FoodMakeup Makeup { get; set; }

    /// <summary>The food, for what the brewer knows better.</summary>
    [Parameter]
    [EditorRequired]
    public required FoodSheet Food { get; set; }

    /// <summary>What was asked.</summary>
    [Parameter]
    [EditorRequired]
    public required FoodQuestion Question { get; set; }

    /// <summary>The amount asked for, or the usual one.</summary>
    [Parameter]
    [EditorRequired]
    public Entered<Mass> Amount { get; set; }

    /// <summary>Something else is asked.</summary>
    [Parameter]
    public EventCallback<FoodQuestion> Asked { get; set; }

    /// <summary>The brewer knows something better, or no longer.</summary>
    [Parameter]
    public EventCallback<FoodAssume> Assumed { get; set; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private double Held => Makeup.InsolubleUnmashed * Makeup.SettledHold;

    private Entered<SpecificVolume>? HeldAsTyped => Food.Assume.HeldLitresPerKg is { } litres
        && UnitTable.TryParse(UnitTable.Format(SpecificVolume.FromLitresPerKilogram(litres), "L/kg"), out Entered<SpecificVolume> entered, out _) ? entered : null;

    /// <summary>Without an ingredient list allergens are unknown, not absent.</summary>
    private IReadOnlyList<Finding> AllergensRead => [.. Report.Findings.Where(f => f.Code == "food.allergensRead")];

    private IReadOnlyList<Finding> At(string where) => [.. Report.Findings.Where(f => f.Where == where && f.Severity != Severity.Note)];

    private string Milligrams(double milligrams) => milligrams >= MilligramsInGram
        ? $"{AnswerWords.Number(milligrams / MilligramsInGram, Shown)}{Shown.Space}g"
        : $"{AnswerWords.Number(milligrams, Shown)}{Shown.Space}mg";
}
