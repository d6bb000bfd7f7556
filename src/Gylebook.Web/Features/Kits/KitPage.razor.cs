using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Kits;
using Gylebook.Store;
using Gylebook.Store.Rows;
using Gylebook.Web.Drafting;

namespace Gylebook.Web.Features.Kits;

/// <summary>One kit, edited in place and saved as one goes.</summary>
public sealed partial class KitPage
{
    private static readonly string[] Parts =
        ["name", "kettle", "conversion", "grainTemperature", "bag", "tun", "chiller", "fermenter", "racking", "packages", "vessels", "cleaning", "altitude", "mashCooling", "wortCooling", "instruments"];

    /// <inheritdoc/>
    protected override BookSheets<KitRow> Sheets => Book.Kits;

    private IReadOnlyList<Finding> Elsewhere => [.. Desk!.Beside(Parts).Where(f => f.Severity != Severity.Note)];

    /// <inheritdoc/>
    protected override string Address(string? panel) => PageUrls.Kit(Which, panel);

    /// <inheritdoc/>
    protected override FileDraft<Kit> Read(string text) => KitDesk.TextOf(text);

    /// <inheritdoc/>
    protected override Task<KitDesk> LayOutAsync(OpenDraft<FileDraft<Kit>> draft) => Task.FromResult(new KitDesk(draft, Shown));
}
