using Gylebook.Engine.Readouts;
using Gylebook.Gyles.Cellar;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Boiling;

namespace Gylebook.Gyles.Packaging;

/// <summary>Packages of one kind that beer is to be filled into.</summary>
/// <param name="Kind">Which, by the kit.</param>
/// <param name="Count">How many; null for as many as what is left of the beer fills.</param>
public sealed record PackageFill(PackageKind Kind, int? Count)
{
    /// <summary>Litres in each.</summary>
    public double LitresEach => (Kind.Fill ?? Kind.Brim).Value.Litres;

    /// <summary>Whether gas comes from a cylinder: a keg or a cask that is told a pressure.</summary>
    public bool IsKeg => Kind.IsKeg;
}

/// <summary>What is known and wanted before beer is packaged.</summary>
public sealed record PackageQuestion
{
    /// <summary>"Finished?"</summary>
    public required FinishedAnswer Finished { get; init; }

    /// <summary>Clear beer there is, L at 20 °C.</summary>
    public required Band Litres { get; init; }

    /// <summary>What it is filled into, in order.</summary>
    public required IReadOnlyList<PackageFill> Fills { get; init; }

    /// <summary>Volumes of gas wanted in the glass.</summary>
    public required double Volumes { get; init; }

    /// <summary>What it is primed with; null where gas comes from a cylinder, or nothing is added.</summary>
    public PrimingSource? Priming { get; init; }

    /// <summary>How much of that the brewer has weighed already, g; null to have it weighed for the volumes wanted.</summary>
    public double? PrimingGrams { get; init; }

    /// <summary>The warmest it has stood since the yeast stopped, °C.</summary>
    public required double WarmestSince { get; init; }

    /// <summary>The warmest it may come to stand in its package, °C.</summary>
    public required double WarmestStore { get; init; }

    /// <summary>Air outside, bar.</summary>
    public double AirBar { get; init; } = BoilingPoint.KilopascalsPerAtmosphere / 100;

    /// <summary>Gas that foods and syrups make in the package, as the engine counts it, volumes.</summary>
    public double FoodVolumes { get; init; }

    /// <summary>What ferments what other yeast leaves, or lives on in the package, by name.</summary>
    public IReadOnlyList<string> Unending { get; init; } = [];

    /// <summary>Whether a forced ferment said where this wort ends.</summary>
    public bool HasForced { get; init; }

    /// <summary>Pressure of a keg's other parts, bar above the air: tap, regulator, relief valve, the least of them; null where nobody says.</summary>
    public double? WeakestPart { get; init; }

    /// <summary>How cold kegs are kept, °C.</summary>
    public double KegCelsius { get; init; } = 4;

    /// <summary>Pressure a keg is to be carbonated at in a burst, bar above the air; null for the usual one, as far as its weakest part holds it.</summary>
    public double? BurstBar { get; init; }
}
