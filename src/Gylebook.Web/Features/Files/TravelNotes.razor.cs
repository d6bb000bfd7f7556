using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Interchange.OpenFormats;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Files;

/// <summary>What was defaulted, converted, repaired or left between a format of ours and another.</summary>
public sealed partial class TravelNotes
{
    /// <summary>So many lines are shown unasked.</summary>
    private const int FewLines = 12;

    /// <summary>What happened.</summary>
    [Parameter]
    [EditorRequired]
    public required IReadOnlyList<Travel> Travels { get; set; }

    /// <summary>What the list is about.</summary>
    [Parameter]
    public string Label { get; set; } = "What did not come as it stood";

    /// <summary>Whether the places are those of a file of ours, which people call by words.</summary>
    [Parameter]
    public bool IsOurs { get; set; }

    private string Place(Travel travel) => IsOurs ? PlaceWords.Of(travel.Where) : travel.Where;

    private string Counted => string.Join(", ", Travels.GroupBy(travel => travel.Did).OrderBy(group => group.First().Kind).Select(group => Invariant($"{group.Count()} {group.Key}")));
}
