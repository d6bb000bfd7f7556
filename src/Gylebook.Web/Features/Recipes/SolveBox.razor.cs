using Gylebook.Forecast.Solving;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Science.Quantities;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>Solves amounts backwards for a wish, or says which limit binds.</summary>
public sealed partial class SolveBox
{
    private readonly string _id = FieldIds.Next();
    private readonly string _noteId = FieldIds.Next();
    private string _wish = "";
    private string _note = "";
    private bool _isTrouble;

    /// <summary>The recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeDesk Desk { get; set; }

    /// <summary>What is wished.</summary>
    [Parameter]
    [EditorRequired]
    public required string Label { get; set; }

    /// <summary>Its unit; empty for a gravity, which is read in SG or °P.</summary>
    [Parameter]
    public string Unit { get; set; } = "";

    /// <summary>What it is now.</summary>
    [Parameter]
    public string Start { get; set; } = "";

    /// <summary>What the button does.</summary>
    [Parameter]
    [EditorRequired]
    public required string Button { get; set; }

    /// <summary>Finds the amounts.</summary>
    [Parameter]
    [EditorRequired]
    public required Func<double, AmountsFound> Find { get; set; }

    private async Task SolveAsync()
    {
        if (!TryRead(out double wish, out string problem))
        {
            (_note, _isTrouble) = (problem, true);
            return;
        }

        if (Desk.Door.Reckon(() => Find(wish), () => $"{Label} {_wish}\n{Desk.Now.Text}", out Finding? problemFound) is not { } found)
        {
            (_note, _isTrouble) = (problemFound!.Message, true);
            return;
        }

        _isTrouble = found.Binding is not null;
        if (_isTrouble)
        {
            _note = $"Not to be had: {found.Binding}.";
            return;
        }

        string wished = Unit.Length > 0 ? $"{_wish.Trim()} {Unit}" : _wish.Trim();
        await Desk.EditAsync(draft => draft.Amounts(found.Amounts, $"{Label.ToLowerInvariant()}: weighed for {wished}"));
        _note = found.Amounts.Count == 1 ? $"Weighed: {found.Amounts.Values.Single()}." : $"{found.Amounts.Count} weights changed. Undo takes them back.";
    }

    private bool TryRead(out double wish, out string problem)
    {
        string text = string.IsNullOrWhiteSpace(_wish) ? Start : _wish;
        if (Unit.Length == 0)
        {
            bool isGravity = UnitTable.TryParse(text, out Entered<SpecificGravity> gravity, out problem);
            wish = gravity.Value.Ratio;
            return isGravity;
        }

        bool isIbu = UnitTable.TryParse($"{text} IBU", out Entered<Bitterness> bitterness, out problem);
        wish = bitterness.Value.Ibu;
        return isIbu;
    }
}
