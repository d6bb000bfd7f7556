using System.Globalization;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Pictures;
using Gylebook.Web.Features.Recipes.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>Five sliders, each from the 5 % of a figure over what is likely to its 95 %, and the beer they come to.</summary>
public sealed partial class WhatIfPanel : IDisposable
{
    /// <summary>From likely to an end; an arrow key moves a fiftieth.</summary>
    private const int Steps = 50;

    /// <summary>While a thumb slides, the run follows so often and no more: more, nobody sees.</summary>
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(60);

    private readonly Dictionary<int, int> _positions = [];
    private readonly CancellationTokenSource _left = new();
    private RecipeOutlook? _of;
    private bool _isWaiting;

    /// <summary>The recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeDesk Desk { get; set; }

    /// <summary>What knows the figures: of the text in view, or, until that is drawn, of the text before.</summary>
    [Parameter]
    [EditorRequired]
    public required HowSure Sure { get; set; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <inheritdoc/>
    public void Dispose()
    {
        _left.Cancel();
        _left.Dispose();
    }

    /// <summary>Another outlook is as likely again.</summary>
    protected override void OnParametersSet()
    {
        if (!ReferenceEquals(_of, Desk.WhatIf?.Likely))
        {
            _of = Desk.WhatIf?.Likely;
            _positions.Clear();
        }
    }

    private static IEnumerable<(HeadlineCell Likely, HeadlineCell Supposed)> Cells(Supposition whatIf, Shown shown) =>
        HeadlineCell.First(whatIf.Likely, shown).Join(
            HeadlineCell.First(whatIf.Outlook ?? whatIf.Likely, shown), likely => likely.Name, supposed => supposed.Name, (likely, supposed) => (likely, supposed));

    private IEnumerable<(HeadlineCell Likely, HeadlineCell Supposed)> Cells(Supposition whatIf) => Cells(whatIf, Desk.Shown);

    private int PositionOf(MovableFigure figure) => _positions.GetValueOrDefault(figure.Place);

    private string Text(MovableFigure figure, int position) => FigureText.Of(Desk.Shown, figure.Parameter, Sure.FigureAt(figure, (double)position / Steps));

    private async Task MoveAsync(MovableFigure figure, ChangeEventArgs moved)
    {
        if (!int.TryParse(moved.Value as string, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int position) || position is < -Steps or > Steps)
        {
            return;
        }

        _positions[figure.Place] = position;
        if (_isWaiting)
        {
            return;
        }

        _isWaiting = true;
        try
        {
            await Task.Delay(Beat, Clock, _left.Token);
        }
        catch (OperationCanceledException)
        {
            return;
        }

        _isWaiting = false;
        Suppose();
    }

    private void PutBack(MovableFigure figure)
    {
        _positions.Remove(figure.Place);
        Suppose();
    }

    private void PutAllBack()
    {
        _positions.Clear();
        Suppose();
    }

    private void Suppose() => Desk.Suppose(
        _positions.Where(entry => entry.Value != 0).ToDictionary(entry => entry.Key, entry => (double)entry.Value / Steps));
}
