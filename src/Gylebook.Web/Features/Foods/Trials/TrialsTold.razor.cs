using Gylebook.Pictures;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;
using Gylebook.Web.Reading;
using Gylebook.Web.Widgets.Fields;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Foods.Trials;

/// <summary>The bench trials of a food, and their best doses in so much beer.</summary>
public sealed partial class TrialsTold
{
    private Entered<VolumeAt20C> _beer = KeptTrial.UsualBatch;
    private string? _typed;
    private string _problem = "";

    /// <summary>The trials.</summary>
    [Parameter]
    [EditorRequired]
    public required IReadOnlyList<KeptTrial> Trials { get; set; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    /// <inheritdoc/>
    protected override void OnParametersSet() => _typed ??= FieldText.Volume.Show(_beer.Text, Shown.Units);

    /// <summary>What was typed stays, and the answer is of the last volume that could be read.</summary>
    private void Change(ChangeEventArgs typed)
    {
        _typed = (string?)typed.Value ?? "";
        if (TypedText.TryRead(_typed, _beer.Text, Shown.Units, out Entered<VolumeAt20C> beer, out _problem))
        {
            _beer = beer;
        }
    }

    private string Best(KeptTrial trial) => trial.Best is { Dose: var dose }
        ? $"{dose.Text}: {Told(dose.In(_beer.Value))} in {FieldText.Volume.Show(_beer.Text, Shown.Units)}. Begin with {Told(dose.FirstIn(_beer.Value))}, taste, and top up (common practice)."
        : "No glass is called the best, and none has the highest mark alone.";

    private string Told(Amount amount) => FieldText.Amount.Show(amount.Text, Shown.Units);
}
