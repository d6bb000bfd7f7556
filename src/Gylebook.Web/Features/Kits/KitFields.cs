using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Kits;

/// <summary>What the parts of the kit's form have in common: the desk the kit lies on.</summary>
public abstract class KitFields : ComponentBase
{
    /// <summary>The desk.</summary>
    [Parameter]
    [EditorRequired]
    public required KitDesk Desk { get; set; }
}
