using Gylebook.Store;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Drafting;

/// <summary>The way back from a text that cannot be opened: the versions and the log, which are other texts.</summary>
public sealed partial class DamagedDraft
{
    private List<NumberedVersion> _versions = [];
    private List<(string Text, string Label, DateTimeOffset At)> _texts = [];
    private string? _text;
    private string _said = "";

    /// <summary>What it is, in a word: <c>kit</c>.</summary>
    [Parameter]
    [EditorRequired]
    public required string Noun { get; set; }

    /// <summary>Which one.</summary>
    [Parameter]
    [EditorRequired]
    public required Guid Id { get; set; }

    /// <summary>What it is called; null when that is not known either.</summary>
    [Parameter]
    public string? Name { get; set; }

    /// <summary>Where its edits are kept.</summary>
    [Parameter]
    [EditorRequired]
    public required BookDrafts Log { get; set; }

    /// <summary>Where its versions are kept.</summary>
    [Parameter]
    [EditorRequired]
    public required BookVersions Kept { get; set; }

    /// <summary>What is wrong with it, in a sentence.</summary>
    [Parameter]
    [EditorRequired]
    public required string Why { get; set; }

    /// <summary>Which tab.</summary>
    [Parameter]
    [EditorRequired]
    public required string TabId { get; set; }

    /// <summary>A whole text is the draft again.</summary>
    [Parameter]
    public EventCallback Mended { get; set; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        _versions = [.. (await Kept.ListAsync(Id)).Where(version => !version.IsDamaged && WholeText.Is(version.Document))];
        _texts =
        [
            .. (await Log.HistoryAsync(Id))
                .Where(edit => !edit.IsDamaged)
                .SelectMany(edit => new[] { (edit.After, edit.Label, edit.At), (edit.Before, $"before {edit.Label}", edit.At) })
                .Where(text => WholeText.Is(text.Item1))
                .DistinctBy(text => text.Item1),
        ];
        _text = await TextAsync();
    }

    private async Task<string?> TextAsync()
    {
        try
        {
            return (await Log.FindAsync(Id))?.Document;
        }
        catch (BookUnavailableException)
        {
            // The page says already why.
            return null;
        }
    }

    private async Task ReturnAsync(string text, string label)
    {
        try
        {
            long revision = (await Log.FindAsync(Id))?.Revision ?? 0;
            await Log.SaveAsync(Id, revision, text, label, TabId);
        }
        catch (BookUnavailableException trouble)
        {
            _said = $"Not done: {trouble.Message}";
            return;
        }

        await Mended.InvokeAsync();
    }
}
