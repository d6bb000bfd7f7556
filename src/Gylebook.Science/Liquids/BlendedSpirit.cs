using Gylebook.Science.Quantities;

namespace Gylebook.Science.Liquids;

/// <summary>What two spirits, or spirit and water, became when mixed.</summary>
/// <param name="Volume">The litres at 20 °C, fewer than went in.</param>
/// <param name="Alcohol">The strength.</param>
public readonly record struct BlendedSpirit(VolumeAt20C Volume, AlcoholByVolume Alcohol);
