using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Settings;

/// <summary>One choice out of a few, all in view.</summary>
/// <typeparam name="T">What is chosen.</typeparam>
public sealed partial class ChoiceOf<T>
    where T : struct, Enum
{
    private readonly string _name = FieldIds.Next();

    /// <summary>What the choice is about.</summary>
    [Parameter]
    [EditorRequired]
    public required string Legend { get; set; }

    /// <summary>What there is to choose, and its words.</summary>
    [Parameter]
    [EditorRequired]
    public required IReadOnlyList<(T Value, string Text)> Choices { get; set; }

    /// <summary>What is chosen.</summary>
    [Parameter]
    public T Value { get; set; }

    /// <summary>Something else was chosen.</summary>
    [Parameter]
    public EventCallback<T> ValueChanged { get; set; }
}
