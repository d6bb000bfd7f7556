using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Kits;

/// <summary>How this kit cools its wort, and what it ferments in.</summary>
public sealed partial class ColdFields
{
    private static readonly Caution FirstWater = new(
        "chill.scald", Severity.Warning, Stage.Chill,
        "The first water out of a chiller is near boiling, and so is wort in hoses. Tie hoses down, clamp every joint, start slowly.",
        "common practice, no source");

    private static readonly Caution HotVessel = new(
        "chill.hotVessel", Severity.Warning, Stage.Chill,
        "A closed vessel of hot wort scalds and draws a vacuum. Fill only what its maker made for boiling liquid, never glass; pitch as soon as it is cool.",
        "common practice, no source");

    private static readonly (string Word, string Said)[] Known =
    [
        ("none", "none: it cools by itself"),
        ("immersion", "immersion: a coil in the kettle"),
        ("counterflow", "counterflow: a tube in a hose"),
        ("plate", "plate: wort and water between plates"),
    ];

    private string Word => Kit.Chiller?.Kind ?? "none";

    private bool IsAlone => Kit.Chiller is null or { Means: ChillerKind.None };

    private bool RunsThrough => Kit.Chiller?.Means.RunsThrough() == true;

    private Caution Hazard => IsAlone ? HotVessel : FirstWater;

    /// <summary>The known kinds, and the kit's own word where it is none of them.</summary>
    private IEnumerable<(string Word, string Said)> Choices => Kit.Chiller is { Means: null } own ? [.. Known, (own.Kind, own.Kind)] : Known;

    /// <summary>Figures stay when the kind changes, so that going back loses nothing.</summary>
    private Task Chosen(ChangeEventArgs change)
    {
        string kind = change.Value?.ToString() ?? "none";
        return Put(Kit with { Chiller = Kit.Chiller is { } chiller ? chiller with { Kind = kind } : new Chiller(kind, null) });
    }
}
