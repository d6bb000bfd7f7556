using Gylebook.Store;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.Extensions.Logging;

namespace Gylebook.Web.Features.Trouble;

/// <summary>Stands around a page, or a part of one. A book in trouble leaves all of it standing, under a note; any other fault takes its place.</summary>
public sealed class TroubleBoundary : ErrorBoundaryBase
{
    /// <summary>Whether it stands around a part only: then the rest of the page goes on.</summary>
    [Parameter]
    public bool IsPart { get; set; }

    /// <summary>Hears that something failed, so that no typed text is taken for stored.</summary>
    [CascadingParameter]
    public PageSaves? Saves { get; set; }

    /// <summary>Where the terminal's part of the message goes.</summary>
    [Inject]
    public required ILogger<TroubleBoundary> Log { get; init; }

    /// <inheritdoc/>
    protected override Task OnErrorAsync(Exception exception)
    {
        ArgumentNullException.ThrowIfNull(exception);
        Saves?.Fail(exception.Message);
        Log.PageFailed(exception);
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        bool staysUp = CurrentException is null or BookUnavailableException;
        if (CurrentException is { } fault)
        {
            builder.OpenComponent<TroubleNote>(0);
            builder.AddComponentParameter(1, nameof(TroubleNote.Fault), fault);
            builder.AddComponentParameter(2, nameof(TroubleNote.StandsIn), staysUp ? TroublePlace.AbovePage : IsPart ? TroublePlace.Part : TroublePlace.Page);
            builder.CloseComponent();
        }

        if (staysUp)
        {
            builder.AddContent(3, ChildContent);
        }
    }
}
