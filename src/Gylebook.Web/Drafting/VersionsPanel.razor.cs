using System.Globalization;
using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Drafting;

/// <summary>Keeps, compares and brings back versions.</summary>
public sealed partial class VersionsPanel
{
    /// <summary>Stands for the draft among the numbers of versions, which begin at 1.</summary>
    private const int Draft = 0;

    private List<NumberedVersion> _versions = [];
    private IReadOnlyList<DraftChange> _differences = [];
    private string _note = "";
    private int _left;
    private int _right = Draft;

    /// <summary>What lies on the desk.</summary>
    [Parameter]
    [EditorRequired]
    public required DraftDesk Desk { get; set; }

    /// <summary>Where its versions are kept.</summary>
    [Parameter]
    [EditorRequired]
    public required BookVersions Kept { get; set; }

    /// <summary>Another version is the latest now.</summary>
    [Parameter]
    public EventCallback<NumberedVersion?> Keeps { get; set; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    private IEnumerable<NumberedVersion> Whole => _versions.Where(version => !version.IsDamaged);

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
        _versions = await Kept.ListAsync(Desk.Draft.Id);
        if (_left == Draft && Whole.FirstOrDefault() is { } latest)
        {
            _left = latest.Number;
        }

        Compare();
    }

    private async Task KeepAsync()
    {
        await Kept.KeepAsync(Desk.Draft.Id, string.IsNullOrWhiteSpace(_note) ? null : _note.Trim());
        _note = "";
        await LoadAsync();
        await Keeps.InvokeAsync(Whole.FirstOrDefault());
    }

    private async Task RestoreAsync(NumberedVersion version)
    {
        await Desk.ReturnAsync(version.Document, Invariant($"brought back version {version.Number}"));
        Compare();
    }

    // Methods, and no binding: a binding is another one at each drawing, and a choice made between two drawings would be lost.
    private void ChooseLeft(ChangeEventArgs chosen)
    {
        _left = NumberIn(chosen);
        Compare();
    }

    private void ChooseRight(ChangeEventArgs chosen)
    {
        _right = NumberIn(chosen);
        Compare();
    }

    private static int NumberIn(ChangeEventArgs chosen) => int.Parse((string)chosen.Value!, CultureInfo.InvariantCulture);

    private void Compare() => _differences = DraftComparison.Between(TextOf(_left), TextOf(_right));

    private FileDraft TextOf(int number) =>
        _versions.FirstOrDefault(v => v.Number == number) is { } version ? Desk.Read(version.Document) : Desk.Now;
}
