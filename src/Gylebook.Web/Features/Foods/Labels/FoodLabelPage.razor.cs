using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Science.Foods.Labels;
using Gylebook.Store;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Logging;
using Microsoft.JSInterop;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>A food's label, typed as printed and saved as one goes, beside what it means and does.</summary>
public sealed partial class FoodLabelPage : IDisposable
{
    private static readonly IReadOnlyList<(PanelStyle, string)> Styles = [(PanelStyle.Us, "US: a serving"), (PanelStyle.Eu, "EU, UK: 100 g")];

    private readonly CancellationTokenSource _page = new();
    private LabelDesk? _desk;
    private Guid? _asked;
    private FoodQuestion _question = FoodQuestion.Read(null, null, null, null);
    private ElementReference _form;
    private PageScript? _script;
    private bool _isUnfolded;

    /// <summary>Which sheet; null for a new one.</summary>
    [Parameter]
    public Guid? SheetId { get; set; }

    /// <summary>How much of it.</summary>
    [SupplyParameterFromQuery(Name = "amount")]
    public string? Amount { get; set; }

    /// <summary>Into how much.</summary>
    [SupplyParameterFromQuery(Name = "into")]
    public string? Into { get; set; }

    /// <summary>Where.</summary>
    [SupplyParameterFromQuery(Name = "at")]
    public string? Place { get; set; }

    /// <summary>And where else, for comparison.</summary>
    [SupplyParameterFromQuery(Name = "beside")]
    public string? Beside { get; set; }

    /// <summary>What this page has yet to save.</summary>
    [CascadingParameter]
    public PageSaves? Saves { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>Keeps the address in step.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <summary>What the terminal is told.</summary>
    [Inject]
    public required ILogger<FoodLabelPage> Log { get; init; }

    /// <summary>The way to the page's script.</summary>
    [Inject]
    public required IJSRuntime Script { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private string Title => _desk switch
    {
        { Sheet.Id: null } => "New food from its label",
        { Food: { } food } => food.Name,
        { Unread: null } => "There is no such food",
        _ => "Food",
    };

    private LabelPanel Panel => _desk!.Food!.Label ?? new LabelPanel { Style = UsualStyle };

    // Who weighs in pounds or measures in US gallons shops where panels are American.
    private PanelStyle UsualStyle => Shown.Units is { Mass: MassUnit.Pound } or { Volume: VolumeUnit.UsGallon } ? PanelStyle.Us : PanelStyle.Eu;

    // The style has its own line, and an empty panel needs no scolding.
    private IReadOnlyList<Finding> Told =>
        [.. _desk!.Findings.Where(f => f.Severity != Severity.Note && f.Code is not ("label.style" or "food.nothingKnown"))];

    private IReadOnlyList<Finding> Elsewhere =>
        [.. Told.Where(f => !f.Where.StartsWith("assume.", StringComparison.Ordinal) && Lines.All(line => f.Where != WhereOf(line)))];

    private IEnumerable<PanelField> Lines => PanelFields.Of(Panel.Style).Concat(PanelFields.FurtherDown(Panel.Style));

    /// <inheritdoc/>
    public void Dispose()
    {
        _page.Cancel();
        _page.Dispose();
        _script?.Leave();
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _question = FoodQuestion.Read(Amount, Into, Place, Beside);

        // Between the first save of a new food and its own address the page is asked for "a new one" again, whenever a
        // setting changes: that is still the food on this desk.
        bool isOnDesk = _desk is not null && (SheetId == _asked || SheetId == _desk.Sheet.Id);
        _asked = SheetId;
        if (isOnDesk)
        {
            await _desk!.ReckonAsync(_question);
        }
        else
        {
            await LoadAsync(SheetId);
        }
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            _ = Book.Changes.WatchAllAsync(_page.Token).HearAsync(change => _desk?.Sheet.IsNews(change) == true, () => InvokeAsync(ReloadAsync));
        }

        if (_desk?.Food is not null)
        {
            _script ??= new PageScript(Script, "./Features/Foods/Labels/FoodLabelPage.razor.js");
            await _script.EnterAsync(_form);
        }
    }

    private static string WhereOf(PanelField field) => "label." + field.Key;

    private static string? Said(ChangeEventArgs change) => change.Value?.ToString()?.Trim() is { Length: > 0 } said ? said : null;

    private IReadOnlyList<Finding> At(PanelField field) => [.. Told.Where(f => f.Where == WhereOf(field))];

    private async Task LoadAsync(Guid? sheet)
    {
        _desk = sheet is { } id ? await LabelDesk.OpenAsync(Book, Clock, id, Saves, new ReckoningDoor(Log)) : await LabelDesk.BeginAsync(Book, Clock, UsualStyle, Saves, new ReckoningDoor(Log));
        Saves?.Opened();
        UnfoldWhenFilled();
        await _desk.ReckonAsync(_question);
    }

    /// <summary>What is further down is open once it holds a figure, and stays so: it must not fold away under the fingers that empty a field.</summary>
    private void UnfoldWhenFilled() => _isUnfolded |= _desk is { Food: not null } && PanelFields.FurtherDown(Panel.Style).Any(line => line.Text(Panel) is not null);

    private Task StyleAsync(PanelStyle style) => ChangePanelAsync(panel => panel with { Style = style });

    private async Task ChangePanelAsync(Func<LabelPanel, LabelPanel> change)
    {
        await EditAsync(food => food with { Label = change(Panel) });
        UnfoldWhenFilled();
    }

    private Task EditAsync(Func<FoodSheet, FoodSheet> change) => AfterAsync(desk => desk.EditAsync(change));

    private Task NamedAsync(ChangeEventArgs change) => Said(change) is { } name ? AfterAsync(desk => desk.NameAsync(name)) : Task.CompletedTask;

    /// <summary>The first save gives a new food its address.</summary>
    private async Task AfterAsync(Func<LabelDesk, Task> edit)
    {
        LabelDesk desk = _desk!;
        using (PageSaves.Run? run = Saves?.Begin())
        {
            await edit(desk);
            run?.LeavesItToOthers();
        }

        if (SheetId is null && desk.Sheet.Id is { } made)
        {
            Navigation.NavigateTo(_question.Url(made), replace: true);
        }

        await desk.ReckonAsync(_question);
    }

    private void Ask(FoodQuestion question) => Navigation.NavigateTo(question.Url(_desk!.Sheet.Id), replace: true);

    private Task KeepYoursAsync() => _desk!.KeepMineAsync();

    private async Task ReloadAsync()
    {
        await LoadAsync(_desk?.Sheet.Id ?? SheetId);
        StateHasChanged();
    }
}
