using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Web.Features.Recipes.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>Keeps, compares and brings back versions.</summary>
public sealed partial class VersionsPanel
{
    /// <summary>Stands for the draft among the numbers of versions, which begin at 1.</summary>
    private const int Draft = 0;

    private List<RecipeVersion> _versions = [];
    private IReadOnlyList<DraftChange> _differences = [];
    private string _note = "";
    private int _left;
    private int _right = Draft;

    /// <summary>The recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeDesk Desk { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    private IEnumerable<RecipeVersion> Whole => _versions.Where(version => !version.IsDamaged);

    private IEnumerable<(int Number, string Words)> Sides => [(Draft, Words(Draft)), .. Whole.Select(v => (v.Number, Words(v.Number)))];

    /// <inheritdoc/>
    protected override Task OnInitializedAsync() => LoadAsync();

    /// <inheritdoc/>
    protected override void OnParametersSet() => Compare();

    private static string Words(int number) => number == Draft ? "the draft" : $"version {number.ToString(System.Globalization.CultureInfo.InvariantCulture)}";

    private static string Why(CutReason reason) => reason switch
    {
        CutReason.Gyle => "a gyle was started from it",
        CutReason.Published => "it was published",
        _ => "",
    };

    private async Task LoadAsync()
    {
        _versions = await Book.Versions.ListAsync(Desk.Draft.Id);
        if (_left == Draft && Whole.FirstOrDefault() is { } latest)
        {
            _left = latest.Number;
        }

        Compare();
    }

    private async Task KeepAsync()
    {
        await Book.Versions.KeepAsync(Desk.Draft.Id, string.IsNullOrWhiteSpace(_note) ? null : _note.Trim());
        _note = "";
        await LoadAsync();
        Desk.HoldAgainst(Whole.FirstOrDefault());
    }

    private async Task RestoreAsync(RecipeVersion version)
    {
        await Desk.EditAsync(_ => new RecipeEdit(RecipeDraft.Of(version.Document), Invariant($"brought back version {version.Number}")));
        Compare();
    }

    private void Compare() => _differences = DraftComparison.Between(TextOf(_left), TextOf(_right));

    private RecipeDraft TextOf(int number) =>
        _versions.FirstOrDefault(v => v.Number == number) is { } version ? RecipeDraft.Of(version.Document) : Desk.Now;
}
