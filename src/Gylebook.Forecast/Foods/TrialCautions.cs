using Gylebook.Engine.State;

namespace Gylebook.Forecast.Foods;

/// <summary>What to take care of where a food is dosed into glasses and tasted.</summary>
public static class TrialCautions
{
    /// <summary>All of them: they are so of every food.</summary>
    public static IReadOnlyList<Caution> All { get; } =
    [
        new("trial.allergens", Stage.Pour, "Tell tasters what is in the glasses before they taste: its allergens, its traces, its alcohol, spices with a dose. Nobody tastes blind what could hurt them.", Words.Trade),
        new("trial.germs", Stage.Pour, "Raw powders, herbs and nuts may carry germs, and nothing kills them in a glass of cold beer: heat them first or steep them in spirit, make no more than is drunk at once, and pour the rest away.", Words.Trade),
        new("trial.weigh", Stage.Pour, "Weigh the dose on a fine scale or pipette it: spoons differ, and drops differ twofold. For a small dose weigh a strong solution and pipette that.", Words.Trade),
    ];
}
