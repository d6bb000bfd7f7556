namespace Gylebook.Recipes.Checks;

/// <summary>Whether rests, of a mash or of a fermentation, lie where anything can come of them.</summary>
/// <param name="Code">The finding's code.</param>
/// <param name="Coolest">°C below which nothing comes of it.</param>
/// <param name="Warmest">°C above which nothing comes of it.</param>
/// <param name="Why">What goes wrong at either end.</param>
internal sealed record RestCheck(string Code, double Coolest, double Warmest, string Why)
{
    internal void Check(IReadOnlyList<Rest> rests, string path, FindingList findings)
    {
        for (var i = 0; i < rests.Count; i++)
        {
            var temperature = rests[i].Temperature;
            if (temperature.Value.Celsius < Coolest || temperature.Value.Celsius > Warmest)
            {
                findings.Error(
                    Code, Invariant($"{path}[{i}].temperature"), Invariant($"{temperature}; must be {Coolest} °C to {Warmest} °C: {Why}"),
                    temperature.Text, Invariant($"{Coolest} °C to {Warmest} °C"));
            }
        }
    }
}
