using Gylebook.Forecast.Report.Labels;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Science.Quantities;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>What a label means, what that much of the food does in two places, and what was assumed for it.</summary>
public sealed partial class FoodAnswer
{
    private const double MilligramsInGram = 1000;
    private const string FileUnit = "L/kg";

    private QuestionDesk _question = null!;

    /// <summary>The desk the food lies on, with its answer reckoned.</summary>
    [Parameter]
    [EditorRequired]
    public required LabelDesk Desk { get; set; }

    /// <summary>Something else is asked.</summary>
    [Parameter]
    public EventCallback<FoodQuestion> Asked { get; set; }

    private Shown Shown => Desk.Shown;

    private FoodLabelReport Report => Desk.Report!;

    private FoodMakeup Makeup => Desk.Makeup!;

    private double Held => Makeup.InsolubleUnmashed * Makeup.SettledHold;

    /// <summary>Without an ingredient list allergens are unknown, not absent.</summary>
    private IReadOnlyList<Finding> AllergensRead => [.. Report.Findings.Where(f => f.Code == "food.allergensRead")];

    /// <inheritdoc/>
    protected override void OnParametersSet() => _question = _question?.IsOn(Desk) == true ? _question : new QuestionDesk(Desk, question => Asked.InvokeAsync(question));

    /// <summary>The file holds a bare number of litres a kilogram; a reader sees and types their own unit.</summary>
    private string WithUnit(string text) =>
        UnitTable.TryParse($"{text} {FileUnit}", out Entered<SpecificVolume> held, out _) ? TypedText.Show(held, Shown.Units) : text;

    private string WithoutUnit(string typed) => TypedText.TryRead(typed, null, Shown.Units, out Entered<SpecificVolume> held, out _)
        ? Invariant($"{held.Value.LitresPerKilogram:0.######}")
        : typed;

    private string Milligrams(double milligrams) => milligrams >= MilligramsInGram
        ? $"{AnswerWords.Number(milligrams / MilligramsInGram, Shown)}{Shown.Space}g"
        : $"{AnswerWords.Number(milligrams, Shown)}{Shown.Space}mg";
}
