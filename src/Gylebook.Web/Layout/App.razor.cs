using Gylebook.Store;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Layout;

/// <summary>The document. Workbench pages are interactive; a page marked so is plain HTML and holds no circuit.</summary>
public sealed partial class App
{
    private string _theme = Themes.System;

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    [CascadingParameter]
    private HttpContext HttpContext { get; set; } = default!;

    private IComponentRenderMode? Mode => HttpContext.AcceptsInteractiveRouting() ? RenderMode.InteractiveServer : null;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        try
        {
            _theme = Themes.Known(await Book.Settings.FindAsync(Themes.Key));
        }
        catch (BookUnavailableException)
        {
            // The page itself says what is wrong with the book; it can do so in either theme.
        }
    }
}
