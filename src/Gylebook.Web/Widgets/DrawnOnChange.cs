using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Widgets;

/// <summary>A piece of a page that is drawn again only when what it shows is not what it showed.</summary>
public abstract class DrawnOnChange : ComponentBase
{
    private object? _drawn;

    /// <summary>All that its drawing depends on: while that is the same, it is not drawn again.</summary>
    private protected abstract object Look { get; }

    /// <inheritdoc/>
    protected override void OnParametersSet() =>
        // The first drawing follows at once, and nobody asks about it.
        _drawn ??= Look;

    /// <inheritdoc/>
    protected override bool ShouldRender()
    {
        object look = Look;
        bool isNew = !look.Equals(_drawn);
        _drawn = look;
        return isNew;
    }
}
