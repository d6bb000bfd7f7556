using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace Gylebook.Web.Layout;

/// <summary>The head with the way to every page, and the page under it.</summary>
public sealed partial class MainLayout
{
    private ErrorBoundary? _boundary;

    /// <summary>Where we are.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    // A bare #page would be read against the base address, and lead to Today.
    private string SkipTo => new Uri(Navigation.Uri).PathAndQuery + "#page";

    /// <inheritdoc/>
    protected override void OnParametersSet() => _boundary?.Recover();
}
