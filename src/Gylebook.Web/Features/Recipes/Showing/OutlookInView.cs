using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>What comes of a text, or, while it cannot be read or brewed, of the last one that could.</summary>
internal sealed class OutlookInView
{
    private readonly ReckoningDoor _door;
    private int _drawn;

    /// <summary>A view of what comes of that text.</summary>
    public OutlookInView(RecipeDraft text, RecipeSurroundings around, ReckoningDoor door)
    {
        (_door, Text) = (door, text);
        Reckon(text, around);
    }

    /// <summary>The text that was reckoned last, readable or not.</summary>
    public RecipeDraft Text { get; private set; }

    /// <summary>What comes of it; null until one could be read for the first time.</summary>
    public RecipeOutlook? Outlook { get; private set; }

    /// <summary>Whether the outlook is of an earlier text.</summary>
    public bool IsStale { get; private set; }

    /// <summary>How often it was reckoned.</summary>
    public int Times { get; private set; }

    /// <summary>The recipe whose bands are still to be drawn; null when they are, or there is none in view.</summary>
    public Recipe? Undrawn => Outlook is { HasRun: true, Forecast.HowSure: null } outlook && !IsStale && _drawn != Times ? outlook.Recipe : null;

    /// <summary>Everything found, in the text or by the forecast.</summary>
    public IReadOnlyList<Finding> Findings { get; private set; } = [];

    /// <summary>Reckons a text.</summary>
    public void Reckon(RecipeDraft text, RecipeSurroundings around)
    {
        Times++;
        Text = text;
        if (text.Recipe is not { } recipe)
        {
            Findings = [.. text.Findings.Select(FindingWords.Plain)];
            IsStale = true;
            return;
        }

        if (_door.Reckon(() => around.OutlookOf(recipe), () => around.Told(text.Text), out Finding? problem) is not { } outlook)
        {
            Findings = [.. text.Findings.Append(problem!).Select(FindingWords.Plain)];
            IsStale = true;
            return;
        }

        _door.Note(outlook.Forecast.Failure, () => around.Told(text.Text));
        Findings = [.. text.Findings.Concat(outlook.Forecast.Findings.Where(IsShownHere)).Select(FindingWords.Plain)];
        IsStale = !outlook.HasRun && Outlook is { HasRun: true };
        Outlook = IsStale ? Outlook : outlook with { Before = Outlook is { Forecast.HowSure: not null } drawn ? drawn with { Before = null } : Outlook?.Before };
    }

    /// <summary>Takes bands over, unless another text is in view by now.</summary>
    /// <param name="times">Which reckoning they are of.</param>
    /// <param name="outlook">What came of it with its bands; null when that could not be reckoned.</param>
    public void TakeBands(int times, RecipeOutlook? outlook)
    {
        if (times == Times)
        {
            _drawn = times;
            Outlook = outlook ?? Outlook;
        }
    }

    /// <summary>Shows what a recipe that could be read once came to, where there is nothing to show yet.</summary>
    public void Recall(Recipe earlier, RecipeSurroundings around)
    {
        if (Outlook is null)
        {
            Outlook = _door.Reckon(() => around.OutlookOf(earlier), () => around.Told(earlier.Name), out _);
            IsStale = true;
        }
    }

    /// <summary>What a water plan cannot reach is told on its own page.</summary>
    private static bool IsShownHere(Finding finding) =>
        finding.Severity == Severity.Error || !finding.Where.StartsWith("water.", StringComparison.Ordinal);
}
