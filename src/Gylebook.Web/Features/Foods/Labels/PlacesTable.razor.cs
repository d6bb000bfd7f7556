using Gylebook.Engine.Readouts;
using Gylebook.Forecast;
using Gylebook.Forecast.Report.Labels;
using Gylebook.Pictures;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>One dose in two places, side by side.</summary>
public sealed partial class PlacesTable
{
    /// <summary>The report.</summary>
    [Parameter]
    [EditorRequired]
    public required FoodLabelReport Report { get; set; }

    /// <summary>What was asked.</summary>
    [Parameter]
    [EditorRequired]
    public required FoodQuestion Question { get; set; }

    /// <summary>Something else is asked.</summary>
    [Parameter]
    public EventCallback<FoodQuestion> Asked { get; set; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private IEnumerable<(string Name, IReadOnlyList<Band?> Bands)> Rows
    {
        get
        {
            // A place of which nothing can be reckoned keeps its column: a finding says why it is empty.
            AdditionTime[] asked = [Question.At, Question.Beside];
            List<IReadOnlyList<(string Name, Band? Band)>> columns =
                [.. asked.Select(at => EffectNames.Of(Report.Places.FirstOrDefault(place => place.At == Words.Of(at))?.Effect))];
            return EffectNames.Of(null).Select((row, i) => (row.Name, (IReadOnlyList<Band?>)[.. columns.Select(column => column[i].Band)]));
        }
    }

    private static IEnumerable<AdditionTime> Offered(AdditionTime asked) =>
        FoodQuestion.Offered.Contains(asked) ? FoodQuestion.Offered : FoodQuestion.Offered.Append(asked);

    private Task AskAsync(ChangeEventArgs change, Func<FoodQuestion, AdditionTime, FoodQuestion> with) =>
        AdditionTimeText.TryParse(change.Value?.ToString() ?? "", out AdditionTime at, out _) ? Asked.InvokeAsync(with(Question, at)) : Task.CompletedTask;
}
