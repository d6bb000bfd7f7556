using Gylebook.Forecast.Solving;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Science.Quantities;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>Weighs one line of hops for a bitterness of the whole beer, or says which limit binds.</summary>
public sealed partial class HopWish
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

    /// <summary>Which line of it.</summary>
    [Parameter]
    [EditorRequired]
    public required int Line { get; set; }

    private string Ibu => Desk.Outlook?["bitterness"] is { } band ? Desk.Shown.Number(band.Likely, 0) : "";

    private async Task SolveAsync()
    {
        string text = string.IsNullOrWhiteSpace(_wish) ? Ibu : _wish.Trim();
        if (!UnitTable.TryParse($"{text} IBU", out Entered<Bitterness> wish, out string problem))
        {
            (_note, _isTrouble) = (problem, true);
            return;
        }

        HopSolution? found = Desk.Door.Reckon(
            () => new HopSolver(Desk.Kit, Desk.Larder, Desk.Asked.Bitterness).AmountFor(Desk.Now.Recipe!, Line, wish.Value.Ibu),
            () => $"bitterness {text}\n{Desk.Now.Text}", out Finding? trouble);
        if (found?.Amount is not { } amount)
        {
            (_note, _isTrouble) = (found is null ? trouble!.Message : $"Not to be had: {found.Problem!.Message}.", true);
            return;
        }

        await Desk.EditAsync(draft => draft.Amounts(new Dictionary<int, string> { [Line] = amount.Text }, $"bitterness of the beer: weighed for {text} IBU"));
        _note = $"Weighed: {amount.Text}, rounded to what a scale shows: it comes to {Desk.Shown.Number(found.Ibu, 1)}{Shown.Space}IBU. Undo takes it back.";
        _isTrouble = false;
    }
}
