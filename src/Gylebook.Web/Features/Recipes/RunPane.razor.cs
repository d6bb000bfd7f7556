using Gylebook.Engine.State;
using Gylebook.Pictures;
using Gylebook.Pictures.Drawing;
using Gylebook.Web.Features.Recipes.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>What comes of the recipe, always in view.</summary>
public sealed partial class RunPane
{
    private RunPicture? _drawn;
    private bool _drawnNarrow;
    private MarkupString _svg;

    /// <summary>The recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeDesk Desk { get; set; }

    /// <summary>Whether it is drawn for a phone.</summary>
    [Parameter]
    public bool IsNarrow { get; set; }

    private string StaleWords => Desk.IsUnreadable
        ? "Something typed cannot be read yet; it is marked at its field. These numbers are of the recipe before it."
        : "The recipe cannot be brewed as it is; the reason is marked. These numbers are of the recipe before.";

    /// <summary>Touching a stage lands on its fields.</summary>
    private string FieldsOf(Stage stage) => $"{Desk.Address(null)}#{StagePlaces.AnchorOf(StagePlaces.Of(stage))}";

    private MarkupString Picture(RunPicture picture)
    {
        if (_drawn != picture || _drawnNarrow != IsNarrow)
        {
            (_drawn, _drawnNarrow) = (picture, IsNarrow);
            _svg = new MarkupString(IsNarrow ? RunSvg.Narrow(picture, link: FieldsOf) : RunSvg.Wide(picture, link: FieldsOf));
        }

        return _svg;
    }
}
