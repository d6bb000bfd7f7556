using System.Globalization;
using Gylebook.Store;
using Gylebook.Web.Hosting.Entry;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;

namespace Gylebook.Web.Widgets;

/// <summary>The way out for a book whose file was removed or replaced while it was open.</summary>
public sealed partial class BookCopy
{
    private string _said = "";
    private bool _isHelper;

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The time, for the name of the copy.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>Who came in: a helper writes no copies.</summary>
    [CascadingParameter]
    public Task<AuthenticationState>? Entered { get; set; }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync() => _isHelper = Entered is not null && Who.RoleOf((await Entered).User) == Who.Helper;

    private async Task WriteAsync()
    {
        string stamp = Clock.GetUtcNow().ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture);
        string copy = $"{Path.ChangeExtension(Book.File, null)}-{stamp}{Path.GetExtension(Book.File)}";
        try
        {
            // Beside the book, and nowhere else: a page has no say over where its computer writes.
            await Book.BackupAsync(copy);
            _said = $"Written to {copy}. Close Gylebook, and open it with --book. What is marked as not saved is not in it: keep that as a file.";
        }
        catch (BookUnavailableException trouble)
        {
            _said = $"Not written: {trouble.Message}";
        }
    }
}
