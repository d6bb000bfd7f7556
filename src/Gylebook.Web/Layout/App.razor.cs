using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.AspNetCore.Http;

namespace Gylebook.Web.Layout;

/// <summary>The document. Workbench pages are interactive; a page marked so is plain HTML and holds no circuit.</summary>
public sealed partial class App
{
    /// <summary>Whose theme it wears.</summary>
    [Inject]
    public required Reader Reader { get; init; }

    [CascadingParameter]
    private HttpContext HttpContext { get; set; } = default!;

    private string? Chosen => HttpContext.Request.Cookies[ReaderChoice.Cookie];

    private IComponentRenderMode? Mode => HttpContext.AcceptsInteractiveRouting() ? RenderMode.InteractiveServer : null;

    /// <inheritdoc/>
    protected override void OnInitialized() => Reader.Recall(Chosen);
}
