using Gylebook.Forecast.Solving;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Quantities;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>Moves a hop, or swaps it for another, and weighs it anew so that the beer stays as bitter as it is.</summary>
public sealed partial class HopKeep
{
    private readonly string _placeId = FieldIds.Next();
    private readonly string _hopId = FieldIds.Next();
    private AdditionPoint _place = AdditionPoint.Boil;
    private string _count = "";
    private string _hop = "";
    private string _alpha = "";
    private string _note = "";
    private IReadOnlyList<Finding> _problems = [];

    /// <summary>The recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeDesk Desk { get; set; }

    /// <summary>The line, as typed.</summary>
    [Parameter]
    [EditorRequired]
    public required DraftLine Line { get; set; }

    /// <summary>What the page calls it.</summary>
    [Parameter]
    [EditorRequired]
    public required string Name { get; set; }

    /// <summary>Hops go in before the beer is racked, if they are to bitter.</summary>
    private static IEnumerable<(AdditionPoint Point, string Word)> Places => WhenText.Places.Where(p => p.Point < AdditionPoint.Rack);

    private string CountLabel => _place switch
    {
        AdditionPoint.Ferment => "On day",
        AdditionPoint.Boil => "Minutes before knock-out",
        _ => "Minutes before the stand ends",
    };

    private HopSolver Solver => new(Desk.Kit, Desk.Larder, Desk.Asked.Bitterness);

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        _place = Line.Time.Point < AdditionPoint.Rack ? Line.Time.Point : AdditionPoint.Boil;
        _count = WhenText.IsCounted(_place) ? Desk.Shown.Number(Line.Time.Count, 0) : "";
    }

    private void UsualCount() => _count = WhenText.IsCounted(_place) ? WhenText.UsualCount(_place) : "";

    private Task MoveAsync()
    {
        string at = WhenText.Of(_place, _count.Replace(',', '.'));
        if (!AdditionTimeText.TryParse(at, out AdditionTime time, out string? problem))
        {
            return Refuse(new Finding("at.unknown", Severity.Error, $"{Line.Path}.at", $"\"{at}\"; {problem}"));
        }

        // The line may end up under another stage: its amount takes the focus there.
        return TakeAsync(
            () => Solver.Move(Desk.Now.Recipe!, Line.Number, time),
            (draft, amount) => draft.Moved(Line.Number, at, amount, $"{Line.Name}: moved to {at}, {amount}, IBU kept"),
            $"moved to {at}");
    }

    private Task SwapAsync()
    {
        Entered<Fraction>? alpha = null;
        if (!string.IsNullOrWhiteSpace(_alpha))
        {
            string typed = _alpha.Contains('%') ? _alpha : $"{_alpha.Trim()} %";
            if (!UnitTable.TryParse(typed, out Entered<Fraction> read, out string problem))
            {
                return Refuse(new Finding("alpha.wrong", Severity.Error, $"{Line.Path}.alpha", problem));
            }

            alpha = read;
        }

        string hop = _hop;
        return TakeAsync(
            () => Solver.Swap(Desk.Now.Recipe!, Line.Number, hop, alpha),
            (draft, amount) => draft.Swapped(Line.Number, hop, alpha?.Text, amount, $"{Line.Name}: swapped for {hop}, {amount}, IBU kept"),
            $"swapped for {hop}");
    }

    private async Task TakeAsync(Func<HopSolution> find, Func<RecipeDraft, string, DraftEdit<RecipeDraft>?> edit, string done)
    {
        HopSolution? found = Desk.Door.Reckon(find, () => $"{Line.Name} {done}\n{Desk.Now.Text}", out Finding? fault);
        if ((fault ?? found!.Problem) is { } problem)
        {
            await Refuse(problem);
            return;
        }

        string amount = found!.Amount!.Value.Text;
        (_note, _problems) = ($"{Name}: {done}, {amount}, as a scale shows it. The beer comes to {Desk.Shown.Number(found.Ibu, 1)}{Shown.Space}IBU.", []);
        Desk.NewLine = Line.Number;
        await Desk.EditAsync(draft => edit(draft, amount));
    }

    private Task Refuse(Finding problem)
    {
        (_note, _problems) = ("", [FindingWords.Plain(problem)]);
        return Task.CompletedTask;
    }
}
