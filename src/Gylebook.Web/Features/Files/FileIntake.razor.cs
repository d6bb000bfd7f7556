using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Interchange.Arrivals;
using Gylebook.Store;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Gylebook.Web.Features.Files;

/// <summary>Takes files into the book; what they say is never put over anything unasked.</summary>
public sealed partial class FileIntake
{
    private const int MostFiles = 200;

    private readonly string _tab = Guid.CreateVersion7().ToString();
    private List<IntakeFile> _files = [];
    private bool _isBusy;
    private string _said = "";

    /// <summary>Something is in the book that was not.</summary>
    [Parameter]
    public EventCallback Taken { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    private string Status => _isBusy ? "Reading…"
        : _said.Length > 0 ? _said
        : _files.Count == 0 ? ""
        : Invariant($"{_files.Count(file => file.IsIn)} of {_files.Count} {(_files.Count == 1 ? "file is" : "files are")} in the book.");

    private async Task ChosenAsync(InputFileChangeEventArgs chosen)
    {
        _said = "";
        if (chosen.FileCount > MostFiles)
        {
            _said = Invariant($"{chosen.FileCount} files; at most {MostFiles} at a time.");
            return;
        }

        (_isBusy, _files) = (true, []);
        foreach (IBrowserFile file in chosen.GetMultipleFiles(MostFiles))
        {
            IntakeFile read = await ReadAsync(file);
            _files.Add(read);
            await PutAsync(read, new ClashAnswer.Ask());
        }

        _isBusy = false;
        await TellAsync();
    }

    private async Task<IntakeFile> ReadAsync(IBrowserFile file)
    {
        if (file.Size > FileInHand.MostBytes)
        {
            return new IntakeFile(file.Name) { File = FileInHand.TooLarge(file.Size) };
        }

        try
        {
            await using Stream stream = file.OpenReadStream(FileInHand.MostBytes);
            using MemoryStream whole = new();
            await stream.CopyToAsync(whole);
            ReadOnlyMemory<byte> bytes = whole.GetBuffer().AsMemory(0, (int)whole.Length);
            return OpenFile.Is(bytes.Span)
                ? new IntakeFile(file.Name) { Arrival = OpenFile.Read(bytes, await ArrivalDesk.WishesAsync(Book)) }
                : new IntakeFile(file.Name) { File = FileInHand.Read(bytes) };
        }
        catch (Exception failure) when (failure is IOException or TimeoutException or OperationCanceledException)
        {
            return new IntakeFile(file.Name) { Failure = failure.Message };
        }
    }

    private async Task PutAsync(IntakeFile file, ClashAnswer answer)
    {
        if (file.Arrival is { Files.Count: > 0 } arrival)
        {
            await TryAsync(file, async () => file.Landing = await ArrivalDesk.LandAsync(Book, arrival, file.Name, _tab));
            return;
        }

        if (file.File?.MayEnter(file.IsTakenUnread) != true)
        {
            return;
        }

        await TryAsync(file, async () => file.Put = await Book.Files.PutAsync(file.File.Text, answer, _tab));
    }

    private static async Task TryAsync(IntakeFile file, Func<Task> act)
    {
        try
        {
            await act();
            file.Failure = null;
        }
        catch (BookUnavailableException trouble)
        {
            file.Failure = trouble.Message;
        }
    }

    private async Task TakeBackAsync(IntakeFile file)
    {
        await TryAsync(file, async () => file.Undone = await Book.Landings.UndoAsync(file.Landing!.Id));
        await Taken.InvokeAsync();
    }

    private async Task AnswerAsync(IntakeFile file, ClashAnswer answer)
    {
        await PutAsync(file, answer);
        await TellAsync();
    }

    private Task TakeUnreadAsync(IntakeFile file)
    {
        file.IsTakenUnread = true;
        return AnswerAsync(file, new ClashAnswer.Ask());
    }

    private async Task CallAsync(IntakeFile file)
    {
        file.Failure = FileInHand.FaultOf(file.Wanted) is { } fault ? $"the other name {fault}" : null;
        if (file.Failure is null)
        {
            await AnswerAsync(file, new ClashAnswer.Called(file.Wanted));
        }
    }

    private Task TellAsync() => _files.Exists(file => file.IsIn) ? Taken.InvokeAsync() : Task.CompletedTask;
}
