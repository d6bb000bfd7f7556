using Gylebook.Recipes;
using Gylebook.Web.Features.Liquors.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Liquors;

/// <summary>What comes of the plan.</summary>
public sealed partial class LiquorAnswer
{
    private static readonly string[] ShownElsewhere =
        ["name", "sources", "balance", "targets", "salts", "acids", "dilution", "mashPh", "spargePh", "wortPh", "mashReading", "wortReading", "malts", "strike", "sparge", "package", "grist"];

    /// <summary>The plan.</summary>
    [Parameter]
    [EditorRequired]
    public required LiquorDesk Desk { get; set; }

    private string WhyNothing => Desk.Brewed switch
    {
        null => "Say how much liquor there is, and this place tells what to weigh out. A plan for a recipe takes its litres from there.",
        { Recipe: null } => $"{Desk.Brewed.Name} cannot be read just now, so nobody knows how much liquor it takes.",
        _ => $"{Desk.Brewed.Name} cannot be brewed as it stands, so nobody knows how much liquor it takes. Its page says why.",
    };

    private IReadOnlyList<Finding> Findings =>
        [.. Desk.Beside(ShownElsewhere).Where(f => !ShownElsewhere.Contains(f.Where)), .. Places];

    /// <summary>A place's own findings share the first word with a field: <c>sparge.calcium</c> is no finding of the field.</summary>
    private IEnumerable<Finding> Places => Desk.In("sparge").Concat(Desk.In("package")).Where(f => f.Where is not ("sparge" or "package"));
}
