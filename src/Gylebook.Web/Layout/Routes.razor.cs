using System.Reflection;
using Gylebook.Web.Hosting.Entry;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;

namespace Gylebook.Web.Layout;

/// <summary>The page that an address leads to, for the reader whose browser asked for it.</summary>
/// <remarks>A page that is open goes from one to the next without asking the server's gate, so this asks again.</remarks>
public sealed partial class Routes
{
    private string? _who;

    /// <summary>What the browser had kept of its reader's choice; null for nothing.</summary>
    [Parameter]
    public string? Chosen { get; set; }

    /// <summary>The reader, who must be known before anything is drawn.</summary>
    [Inject]
    public required Reader Reader { get; init; }

    /// <summary>Who reads.</summary>
    [CascadingParameter]
    public required Task<AuthenticationState> Entered { get; set; }

    /// <inheritdoc/>
    protected override void OnInitialized() => Reader.Recall(Chosen);

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync() => _who = Who.RoleOf((await Entered).User);

    /// <summary>The owner sees every page, a helper those that say so.</summary>
    private bool MaySee(Type page) => _who == Who.Owner
        || (_who == Who.Helper && page.GetCustomAttributes<AuthorizeAttribute>().Any(asked => asked.Policy == Who.OnBrewDay));
}
