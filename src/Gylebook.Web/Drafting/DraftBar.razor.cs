using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Drafting;

/// <summary>Saved when, undo and redo, versions and history.</summary>
public sealed partial class DraftBar
{
    /// <summary>What lies on the desk.</summary>
    [Parameter]
    [EditorRequired]
    public required DraftDesk Desk { get; set; }

    /// <summary>The address of the page with that panel open, null for none.</summary>
    [Parameter]
    [EditorRequired]
    public required Func<string?, string> Address { get; set; }

    /// <summary>The number of the version kept last; null when none was.</summary>
    [Parameter]
    public int? LatestVersion { get; set; }

    /// <summary>The address of the same as a sheet to print; null where there is none.</summary>
    [Parameter]
    public string? Print { get; set; }

    /// <summary>Where it is given out for other programs; null for what is not.</summary>
    [Parameter]
    public string? Others { get; set; }

    /// <summary>Where a gyle of it begins; null for what is not brewed.</summary>
    [Parameter]
    public string? Gyle { get; set; }

    /// <summary>Where it is given out; null for what is not.</summary>
    [Parameter]
    public string? Publish { get; set; }

    /// <summary>Whether it came with the demo.</summary>
    [Parameter]
    public bool IsDemo { get; set; }

    /// <summary>What is open beside the fields: <c>versions</c>, <c>history</c>.</summary>
    [Parameter]
    public string? Panel { get; set; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    private string VersionWords => LatestVersion is int latest ? Invariant($"Version {latest}") : "Keep a version";

    /// <summary>A link that opens a panel, and closes it when it is open.</summary>
    private string Link(string panel) => Address(Panel == panel ? null : panel);
}
