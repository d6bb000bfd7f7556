using System.Text;
using Gylebook.Store;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Gylebook.Web.Features.Gyles.Cellar;

/// <summary>Takes a table of readings into a portion of a gyle.</summary>
public sealed partial class CsvIntake
{
    private bool _isBusy;
    private string _said = "";
    private TableReport? _report;

    /// <summary>Into which portion.</summary>
    [Parameter]
    [EditorRequired]
    public long Portion { get; set; }

    /// <summary>Something is in the book that was not.</summary>
    [Parameter]
    public EventCallback Taken { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    private async Task ChosenAsync(InputFileChangeEventArgs chosen)
    {
        (_isBusy, _said, _report) = (true, "Reading…", null);
        try
        {
            if (chosen.File.Size > TableIntake.MostBytes)
            {
                _said = Invariant($"{chosen.File.Name} has {chosen.File.Size} bytes; at most {TableIntake.MostBytes} are taken.");
                return;
            }

            await using Stream stream = chosen.File.OpenReadStream(TableIntake.MostBytes);
            using StreamReader text = new(stream, Encoding.UTF8);
            _report = await TableIntake.TakeAsync(Book, Portion, chosen.File.Name, await text.ReadToEndAsync(), Clock);
            _said = _report.Sentence;
            await Taken.InvokeAsync();
        }
        catch (Exception failure) when (failure is IOException or TimeoutException or OperationCanceledException or BookUnavailableException)
        {
            _said = $"Nothing was taken: {failure.Message}";
        }
        finally
        {
            _isBusy = false;
        }
    }
}
