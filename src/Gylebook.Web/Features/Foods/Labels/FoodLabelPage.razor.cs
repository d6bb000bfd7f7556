using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Foods.Labels;
using Gylebook.Store;
using Gylebook.Store.Rows;
using Gylebook.Web.Drafting;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>A food's label, typed as printed and saved as one goes, beside what it means and does.</summary>
public sealed partial class FoodLabelPage
{
    private static readonly IReadOnlyList<(PanelStyle, string)> Styles = [(PanelStyle.Us, "US: a serving"), (PanelStyle.Eu, "EU, UK: 100 g")];
    private static readonly Func<string, string> Nothing = _ => "";

    private FoodQuestion _question = FoodQuestion.Read(null, null, null, null);
    private HashSet<string> _taken = [];
    private ElementReference _form;
    private PageScript? _script;
    private bool _isUnfolded;

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

    /// <summary>What a new food is called, where somebody looked for it by a name.</summary>
    [SupplyParameterFromQuery(Name = "name")]
    public string? NewName { get; set; }

    /// <summary>The recipe that wants it.</summary>
    [SupplyParameterFromQuery(Name = "for")]
    public Guid? For { get; set; }

    /// <summary>The way to the page's script.</summary>
    [Inject]
    public required IJSRuntime Script { get; init; }

    /// <inheritdoc/>
    protected override BookSheets<FoodRow> Sheets => Book.Foods;

    private string Title => Desk switch
    {
        null => "Food",
        { Draft.IsInBook: false } => "New food from its label",
        _ => Desk.Now.Name,
    };

    private IReadOnlyList<Finding> Elsewhere
    {
        get
        {
            IEnumerable<string> lines = PanelLines.Of(Desk!.Style).Concat(PanelLines.FurtherDown(Desk.Style)).Select(line => line.Path);
            return Desk.Beside([.. lines, "ingredients", "mayContain", "name", "pack", "lots", "trials", .. Desk.Makeup is null ? (string[])[] : ["assume"]]);
        }
    }

    /// <inheritdoc/>
    protected override string Address(string? panel) => _question.Url(Desk is { Draft.IsInBook: true } ? Which : null, panel);

    /// <inheritdoc/>
    protected override FileDraft<FoodSheet> Read(string text) => LabelDesk.TextOf(text);

    /// <inheritdoc/>
    protected override Task<string?> BeginAsync()
    {
        (string name, string id) = NewName?.Trim() is { Length: > 0 } asked
            ? NewFoodName.Of(asked, _taken)
            : NewFoodName.For(TimeZoneInfo.ConvertTime(Clock.GetUtcNow(), Clock.LocalTimeZone), _taken);
        FoodSheet food = new() { Id = id, Name = name, Family = "other", Label = new LabelPanel { Style = LabelDesk.UsualStyle(Shown) } };
        return Task.FromResult<string?>(FoodFile.Write(food));
    }

    /// <inheritdoc/>
    protected override async Task LookAsync()
    {
        await base.LookAsync();
        IEnumerable<Sheet> others = (await Book.Foods.ListAsync()).Where(sheet => sheet.Id != Which && WholeText.Is(sheet));
        _taken = [.. others.Select(sheet => Read(sheet.Document)["id"]).OfType<string>()];
    }

    /// <inheritdoc/>
    protected override async Task<LabelDesk> LayOutAsync(OpenDraft<FileDraft<FoodSheet>> draft)
    {
        LabelDesk desk = new(draft, _taken, (await KitInUse.FindAsync(Book)).Own, _question, Shown, new ReckoningDoor(Log));
        if (desk.IsUnreadable && await LastReadable.OfAsync(Drafts, Which, text => Read(text).Value) is { } earlier)
        {
            desk.Recall(earlier);
        }

        Unfold(desk);
        return desk;
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _question = FoodQuestion.Read(Amount, Into, Place, Beside, For);
        await base.OnParametersSetAsync();
        if (Desk is { } desk && desk.Asked != _question)
        {
            desk.Ask(_question);
        }
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (Desk is not null)
        {
            _script ??= new PageScript(Script, "./Features/Foods/Labels/FoodLabelPage.razor.js");
            await _script.EnterAsync(_form);
        }
    }

    /// <inheritdoc/>
    protected override void Redrawing() => Unfold(Desk!);

    /// <inheritdoc/>
    protected override bool IsNews(BookChange change) =>
        (change.Noun is BookNoun.Food && change.TabId != TabId) || KitInUse.MayHaveChanged(change);

    /// <inheritdoc/>
    protected override async Task TakeChangeAsync(BookChange change)
    {
        await base.TakeChangeAsync(change);
        Desk!.Use((await KitInUse.FindAsync(Book)).Own, _taken);
    }

    /// <inheritdoc/>
    protected override void Dispose(bool isLeft)
    {
        _script?.Leave();
        base.Dispose(isLeft);
    }

    /// <summary>What is further down is open once it holds a figure, and stays so: it must not fold away under the fingers that empty a field.</summary>
    private void Unfold(LabelDesk desk) => _isUnfolded |= PanelLines.FurtherDown(desk.Style).Any(line => desk.TextAt(line.Path) is not null);

    private void Ask(FoodQuestion question)
    {
        _question = question;
        Navigation.NavigateTo(Address(Panel), replace: true);
    }
}
