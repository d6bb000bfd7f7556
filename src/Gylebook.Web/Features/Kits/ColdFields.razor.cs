using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Kits;

namespace Gylebook.Web.Features.Kits;

/// <summary>How this kit cools its wort, and what it ferments in.</summary>
public sealed partial class ColdFields
{
    private static readonly Caution FirstWater = new(
        "chill.scald", Stage.Chill,
        "The first water out of a chiller is near boiling, and so is wort in hoses. Tie hoses down, clamp every joint, start slowly.",
        "common practice, no source");

    private static readonly Caution HotVessel = new(
        "chill.hotVessel", Stage.Chill,
        "A closed vessel of hot wort scalds and draws a vacuum. Fill only what its maker made for boiling liquid, never glass; pitch as soon as it is cool.",
        "common practice, no source");

    private static readonly (string Word, string Said)[] Known =
    [
        ("none", "none: it cools by itself"),
        ("immersion", "immersion: a coil in the kettle"),
        ("counterflow", "counterflow: a tube in a hose"),
        ("plate", "plate: wort and water between plates"),
    ];

    private ChillerKind? Means => Desk.TextAt("chiller.kind") is { } kind ? ChillerKinds.Of(kind) : ChillerKind.None;

    private bool IsAlone => Means == ChillerKind.None;

    private bool RunsThrough => Means.RunsThrough();

    private Caution Hazard => IsAlone ? HotVessel : FirstWater;

    /// <summary>Figures stay when the kind changes, so that going back loses nothing.</summary>
    private Task ChosenAsync(string kind) => Desk.EditAsync(draft => draft.Has("chiller") ? draft.Put("chiller.kind", kind) : draft.AddPart("chiller", ("kind", kind)));
}
