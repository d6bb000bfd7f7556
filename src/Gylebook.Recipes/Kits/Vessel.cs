using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Kits;

/// <summary>A fermenter or a keg that stands somewhere and has a name.</summary>
/// <param name="Name">What the brewer calls it: what is written on its lid.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Holds">Litres to the rim; null when nobody said.</param>
public sealed record Vessel(string Name, VesselKind Kind, Entered<VolumeAt20C>? Holds);

/// <summary>Sorts of vessel in which beer stands for days. Their names stand in books: none changes what it means.</summary>
public enum VesselKind
{
    /// <summary>From cast to package.</summary>
    Fermenter,

    /// <summary>From package until it is empty.</summary>
    Keg,
}

/// <summary>How long what cleans and what sanitises has to stay on, as the products' own labels say.</summary>
/// <param name="Cleaner">Contact time of the cleaner; null when nobody said.</param>
/// <param name="Sanitiser">Contact time of the sanitiser; null when nobody said.</param>
public sealed record Cleaning(Entered<Duration>? Cleaner, Entered<Duration>? Sanitiser);
